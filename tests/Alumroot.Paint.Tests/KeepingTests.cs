using Alumroot.Paint.Keeping;
using Alumroot.Paint.Recipes;
using Alumroot.Quantities;

namespace Alumroot.Paint.Tests;

/// <summary>Preservatives by weight and pH, and what stays on the slab.</summary>
public sealed class KeepingTests
{
    private static PaintRecipe Recipe(string medium) => PaintRecipe.For(new PaintAsk(Medium.Find(medium)!, 20, Estimate.Exact(65), Estimate.Exact(2.2)));

    // Share of free sorbic acid at pH 4 to 7 with pKa 4.76: 85, 37, 5.4, 0.6 % (tables of food science; the whole numbers are common to them).
    [Theory]
    [InlineData("potassium-sorbate", 4, 85.2)]
    [InlineData("potassium-sorbate", 5, 36.5)]
    [InlineData("potassium-sorbate", 6, 5.4)]
    [InlineData("potassium-sorbate", 7, 0.6)]
    [InlineData("sodium-benzoate", 4, 61.3)]
    [InlineData("sodium-benzoate", 5, 13.7)]
    [InlineData("phenoxyethanol", 8, 100)]
    public void The_free_share_of_an_acid(string key, double ph, double percent) => Assert.Equal(percent, 100 * Preservative.Find(key)!.ActiveFraction(ph), 0.05);

    // 0.2 % of the water of the recipe, 0.1 to 0.3 %: by hand from its own line of water.
    [Fact]
    public void It_is_weighed_on_the_water_or_the_binder()
    {
        PaintRecipe recipe = Recipe("watercolour");
        double water = recipe.Parts.Single(p => p.Name == "water").Grams.Value;
        PreservativeDose sorbate = PreservativeDose.For(Preservative.Find("potassium sorbate")!, recipe, null)!;
        Assert.Equal(0.002 * water, sorbate.Grams.Value, 1e-12);
        Assert.Equal(0.001 * water, sorbate.Grams.Low, 1e-12);
        Assert.Equal(0.003 * water, sorbate.Grams.High, 1e-12);
        double binder = recipe.Parts.Where(p => p.Name is "gum arabic" or "glycerine" or "honey").Sum(p => p.Grams.Value);
        Assert.Equal(0.003 * binder, PreservativeDose.For(Preservative.Find("clove-oil")!, recipe, null)!.Grams.Value, 1e-12);
        Assert.Null(PreservativeDose.For(Preservative.Find("potassium-sorbate")!, Recipe("oil"), null));
    }

    [Theory]
    [InlineData("potassium-sorbate", "watercolour", null, PreservativeWorking.Works)]
    [InlineData("sodium-benzoate", "watercolour", null, PreservativeWorking.MayFail)]
    [InlineData("potassium-sorbate", "watercolour", 8.0, PreservativeWorking.DoesNothing)]
    [InlineData("potassium-sorbate", "gouache", null, PreservativeWorking.MayFail)]
    [InlineData("potassium-sorbate", "casein", null, PreservativeWorking.DoesNothing)]
    [InlineData("phenoxyethanol", "casein", null, PreservativeWorking.Works)]
    public void Its_working_pH_is_held_against_the_paints(string key, string medium, double? strip, PreservativeWorking working) =>
        Assert.Equal(working, PreservativeDose.For(Preservative.Find(key)!, Recipe(medium), strip)!.Working);

    [Fact]
    public void Every_medium_says_how_long_it_keeps_and_those_that_need_one_have_one() => Assert.All(Medium.All, m =>
    {
        Assert.NotEmpty(m.KeepsWithout);
        if (m.Preservative is not ("needed" or "binder only")) return;
        Assert.NotEmpty(m.KeepsWith);
        Assert.NotEmpty(Preservative.For(m.Key));
    });

    // Student's t for 0.95 and 2 degrees of freedom is 2.920 (printed in every table): mean 5 %, spread 1 %, one more lies within 2.920 x 1 x sqrt(4/3) = 3.37 %.
    [Fact]
    public void Three_own_weighings_tell_the_loss_and_its_span()
    {
        SlabLoss loss = SlabLoss.Of([0.04, 0.05, 0.06]);
        Assert.Equal((LossOrigin.Weighed, 3), (loss.Origin, loss.Weighings));
        Assert.Equal(0.05, loss.Fraction.Value, 1e-12);
        Assert.Equal(0.0163, loss.Fraction.Low, 1e-4);
        Assert.Equal(0.0837, loss.Fraction.High, 1e-4);
        // One gram in, 0.95 out: for 10 g wanted 10.53 g are weighed.
        Assert.Equal(10.526, 10 * loss.ScaleUp.Value, 1e-3);
    }

    [Fact]
    public void Without_weighings_it_is_a_judgement_and_one_alone_keeps_its_width()
    {
        Assert.Equal(LossOrigin.Judged, SlabLoss.Of([]).Origin);
        Estimate one = SlabLoss.Of([0.1]).Fraction, judged = SlabLoss.Judged.Fraction;
        Assert.Equal(judged.High / judged.Value, one.High / one.Value, 1e-12);
        Assert.Equal(judged.Low / judged.Value, one.Low / one.Value, 1e-12);
        Assert.InRange(SlabLoss.Of([0.02, 0.5, 0.8]).Fraction.High, 0.8, SlabLoss.MostFraction);
    }
}
