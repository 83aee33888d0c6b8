using CsCheck;

namespace Alumroot.Catalogue.Tests;

public class SolubilityTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Theory]
    [InlineData("potash-alum", 20, 11.4, 0.05)]    // handbook value for the crystals, from 5.9 g anhydrous
    [InlineData("potash-alum", 25, 13.9, 0.9)]     // The Merck Index: 1 g in 7.2 mL; the straight line between 20 and 40 °C lies a little higher
    [InlineData("soda-ash", 20, 21.5, 0.05)]       // chemical tables 04-26
    [InlineData("soda-ash", 0, 7.0, 0.05)]         // chemical tables 04-26
    [InlineData("baking-soda", 20, 9.6, 0.05)]     // chemical tables 04-26
    [InlineData("copper-sulfate", 20, 36, 1)]      // about 36 g of pentahydrate per 100 g water at 20 °C: from memory, usual handbooks
    [InlineData("epsom-salt", 20, 113, 3)]         // about 113 g of heptahydrate per 100 mL at 20 °C: from memory, usual handbooks
    [InlineData("soda-crystals", 20, 92.0, 1)]     // worked by hand: 100 x 21.5 / (37.04 - 21.5 x 0.6296)
    public void Crystals_dissolve_as_the_handbooks_say(string key, double temperatureCelsius, double grams, double within) =>
        Assert.Equal(grams, Data.FindReagent(key)!.SolubilityGramsPer100GramsWater(temperatureCelsius)!.Value, within);

    [Fact]
    public void Dissolving_that_mass_gives_back_the_table()
    {
        Reagent[] salts = [.. Data.Reagents.Where(r => r.Solubility is not null)];
        Gen.Select(Gen.Int[0, salts.Length - 1], Gen.Double[-5, 105]).Sample((i, t) =>
        {
            Reagent r = salts[i];
            if (r.SolubilityGramsPer100GramsWater(t) is not { } crystals || double.IsInfinity(crystals)) return;
            double dry = crystals * r.AnhydrousGramsPerMole!.Value / r.MolarMassGramsPerMole!.Value;
            double water = 100 + crystals - dry;
            Assert.Equal(r.Solubility!.AnhydrousGramsPer100GramsWater(t)!.Value, 100 * dry / water, 1e-6);
        });
    }

    [Fact]
    public void Nothing_is_said_outside_the_table()
    {
        Reagent bicarbonate = Data.FindReagent("baking-soda")!;
        Assert.Null(bicarbonate.SolubilityGramsPer100GramsWater(-1));
        Assert.Null(bicarbonate.SolubilityGramsPer100GramsWater(61));
        Assert.Null(bicarbonate.SolubilityGramsPer100GramsWater(double.NaN));
        Assert.Null(Data.FindReagent("magnesium-carbonate")!.SolubilityGramsPer100GramsWater(20));
        Assert.Equal(double.PositiveInfinity, Data.FindReagent("vinegar")!.SolubilityGramsPer100GramsWater(20));
    }

    [Fact]
    public void Between_two_rows_lies_a_straight_line()
    {
        SolubilityCurve curve = Data.FindReagent("soda-ash")!.Solubility!;
        Assert.Equal((7 + 21.5) / 2, curve.AnhydrousGramsPer100GramsWater(10)!.Value, 9);
    }

    [Fact]
    public void Tables_rise_in_temperature_and_are_positive() =>
        Assert.All(Data.Reagents.Where(r => r.Solubility is not null).Select(r => r.Solubility!).Distinct(), c =>
        {
            Assert.Equal(c.Points.Select(p => p.TemperatureCelsius).Distinct().Order(), c.Points.Select(p => p.TemperatureCelsius));
            Assert.All(c.Points, p => Assert.InRange(p.AnhydrousGramsPer100GramsWater, 0.001, 600));
            Assert.All(c.Points, p => Assert.InRange(p.TemperatureCelsius, 0, 100));
        });

    [Fact]
    public void A_table_is_there_exactly_when_it_is_promised() =>
        Assert.All(Data.Reagents, r => Assert.Equal(r.SolubilityKind == SolubilityKind.Table, r.Solubility is not null));

    [Theory]
    [InlineData(10.119, 0.960, 5.70)]  // Cooley's Cyclopaedia, second table of ammonia
    [InlineData(25, 0.91, 13.36)]      // British Pharmacopoeia, appendix
    [InlineData(7, 0.9719, 3.99)]      // by hand, between 4.956 and 7.511 %
    public void Ammonia_is_read_by_percent(double percent, double density, double molesPerLitre)
    {
        AmmoniaStrength a = Data.AmmoniaAt(percent)!;
        Assert.Equal(density, a.DensityGramsPerMillilitre, 0.001);
        Assert.Equal(molesPerLitre, a.AmmoniaMolesPerLitre, 0.02);
    }

    [Fact]
    public void Ammonia_moles_follow_from_percent_and_density()
    {
        Assert.All(Data.AmmoniaStrengths, a => Assert.Equal(
            a.Percent / 100 * a.DensityGramsPerMillilitre * 1000 / 17.031, a.AmmoniaMolesPerLitre, 0.02));
        Assert.Null(Data.AmmoniaAt(0.5));
        Assert.Null(Data.AmmoniaAt(double.NaN));
    }
}
