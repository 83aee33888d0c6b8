using Alumroot.Paint.Recipes;
using Alumroot.Quantities;

namespace Alumroot.Paint.Tests;

/// <summary>Paint from the wet cake, and the rows of pastel.</summary>
public sealed class WetCakeTests
{
    private static PaintAsk Ask(string medium, double water) => new(Medium.Find(medium)!, 20, Estimate.Exact(60), Estimate.Exact(2.1), CakeWaterFraction: water);

    // 20 g in a cake of 60 % water weigh 50 g: mass balance by hand.
    [Fact]
    public void The_cake_is_weighed_with_its_water() => Assert.Equal(50, Ask("oil", 0.6).CakeGrams, 1e-12);

    [Theory]
    [InlineData("watercolour", 0.3)]
    [InlineData("watercolour", 0.8)]
    [InlineData("gouache", 0.5)]
    [InlineData("egg-tempera", 0.5)]
    [InlineData("soft-pastel", 0.2)]
    [InlineData("ink", 0.6)]
    [InlineData("oil", 0.6)]
    [InlineData("glair", 0.6)]
    public void The_water_of_the_cake_is_counted_once(string medium, double water)
    {
        PaintRecipe dry = PaintRecipe.For(Ask(medium, 0)), wet = PaintRecipe.For(Ask(medium, water));
        double brought = 20 / (1 - water) - 20;
        Assert.Equal(Water(dry), Water(wet), 1e-9);
        Assert.Equal(brought, wet.Parts.Where(p => p.Name == "water in the cake").Sum(p => p.Grams.Value) + wet.WaterToLeaveGrams, 1e-9);
        Assert.Equal(dry.WetMillilitres.Value, wet.WetMillilitres.Value, 1e-9);
        Assert.Equal(dry.VolumeFraction.Value, wet.VolumeFraction.Value, 1e-12);

        static double Water(PaintRecipe r) => r.Parts.Where(p => p.Name.StartsWith("water", StringComparison.Ordinal)).Sum(p => p.Grams.Value);
    }

    // Oil takes no water: all of it is driven out in flushing.
    [Fact]
    public void Oil_drives_out_all_of_it() => Assert.Equal(30, PaintRecipe.For(Ask("oil", 0.6)).WaterToLeaveGrams, 1e-9);

    // 1 part to 30, let down with two parts twice: 3.23, 1.08, 0.36 % (the numbers of a page on pastel making).
    [Fact]
    public void Three_strengths_of_gum()
    {
        IReadOnlyList<PastelTrial> row = PastelSeries.TestRow(2);
        Assert.Equal([3.23, 1.08, 0.36], row.Select(t => Math.Round(100 * t.GumFraction, 2)));
        Assert.All(row, t => Assert.Equal(0.7, t.SolutionGrams, 1e-12));
    }

    [Fact]
    public void Halving_gives_tints_and_loses_no_pigment()
    {
        IReadOnlyList<PastelTint> tints = PastelSeries.Tints(40);
        Assert.Equal([1, 0.5, 0.25, 0.125, 0.0625], tints.Select(t => t.PigmentFraction));
        Assert.Equal(40, tints.Sum(t => t.PigmentFraction * t.DoughPowderGrams), 1e-9);
        Assert.Equal(40 + tints.Sum(t => t.ChalkGrams), tints.Sum(t => t.DoughPowderGrams), 1e-9);
    }
}
