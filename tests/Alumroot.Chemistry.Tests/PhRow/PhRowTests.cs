using Alumroot.Chemistry.PhRow;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.PhRow;

/// <summary>Doses of a row against charge balances written out with handbook constants (CRC Handbook, from memory: acetic 4.756, citric 3.13, 4.76, 6.40, carbonic 6.35, 10.33, water 14.0), and laws that any row obeys.</summary>
public sealed class PhRowTests
{
    private static readonly RowSolution Citric = new(RowAcids.Find("citric-acid")!, 1), Vinegar = new(RowAcids.Find("vinegar")!, 0), Soda = new(SubstanceShelf.Find("soda-ash")!, 1);

    // In pure water at 25 °C: [H] = c (a1 + 2 a2 + 3 a3), with the shares of the ions at that pH.
    [Theory]
    [InlineData(3.0)]
    [InlineData(3.5)]
    [InlineData(4.0)]
    public void Citric_acid_in_pure_water(double ph)
    {
        double moles = Settled(strength =>
        {
            double h = Math.Pow(10, -ph), k1 = At(3.13, 0, 1, strength), k2 = At(4.76, 1, 2, strength), k3 = At(6.40, 2, 3, strength);
            double d = h * h * h + k1 * h * h + k1 * k2 * h + k1 * k2 * k3, c = h / Shield(1, strength) * d / (k1 * h * h + 2 * k1 * k2 * h + 3 * k1 * k2 * k3);
            return (c, h);
        });
        Assert.Equal(moles * 192.12 * 0.055, Jar(ph, Citric).DoseMillilitres.Value / 100, 0.04 * moles * 192.12 * 0.055);
    }

    // c Ka / (Ka + [H]) = [H].
    [Fact]
    public void Vinegar_in_pure_water()
    {
        double moles = Settled(strength =>
        {
            double h = 1e-3, k = At(4.756, 0, 1, strength);
            return (h / Shield(1, strength) * (k + h) / k, h);
        });
        Assert.Equal(moles * 60.05 / 0.05 * 0.055, Jar(3, Vinegar).DoseMillilitres.Value, 0.06 * moles * 60.05 / 0.05 * 0.055);
    }

    // Davies knows no pairs of sodium and carbonate, which take up some of it at pH 11.
    // 2 c + [H] = [OH] + [HCO3] + 2 [CO3] with [HCO3] + [CO3] = c.
    [Theory]
    [InlineData(10.0)]
    [InlineData(10.5)]
    [InlineData(11.0)]
    public void Soda_in_pure_water(double ph)
    {
        double moles = Settled(strength =>
        {
            double h = Math.Pow(10, -ph), oh = 1e-14 / h / Shield(1, strength), k2 = At(10.33, 1, 2, strength), c = oh / (h / (k2 + h));
            return (c, 3 * c);
        });
        Assert.Equal(moles * 105.99 * 0.055, Jar(ph, Citric).DoseMillilitres.Value / 100, 0.1 * moles * 105.99 * 0.055);
    }

    [Fact]
    public void A_row_rises_scales_with_its_jars_and_holds_its_aims()
    {
        PhRowInput madder = Madder(50);
        PhRowPlan row = PhRowPlanner.Plan(madder)!, doubled = PhRowPlanner.Plan(Madder(100))!;
        double[] signed = [.. row.Jars.Select(j => j.Dose == RowDose.Acid ? -j.DoseMillilitres.Value : j.DoseMillilitres.Value)];
        Assert.Equal(signed.Order(), signed);
        foreach ((PhRowJar jar, PhRowJar twice) in row.Jars.Zip(doubled.Jars))
        {
            Assert.Equal(2 * jar.DoseMillilitres.Value, twice.DoseMillilitres.Value, 0.03 * twice.DoseMillilitres.Value + 0.01);
            Assert.True(jar.DoseMillilitres.Low <= jar.DoseMillilitres.Value && jar.DoseMillilitres.Value <= jar.DoseMillilitres.High);
            Assert.InRange(jar.AimPh.Value, jar.PhWithIt.Low - 0.05, jar.PhWithIt.High + 0.05);
            Assert.Equal(row.FilledMillilitres - 50, jar.TopUpMillilitres + jar.DoseMillilitres.Value, 0.5);
        }
    }

    [Fact]
    public void Another_seed_gives_the_same_within_its_scatter_and_a_reading_moves_the_row()
    {
        PhRowPlan one = PhRowPlanner.Plan(Madder(50))!, other = PhRowPlanner.Plan(Madder(50) with { Seed = 9 })!;
        foreach ((PhRowJar a, PhRowJar b) in one.Jars.Zip(other.Jars).Where(p => p.First.AimPh.Value is <= 4 or >= 9))
            Assert.Equal(a.DoseMillilitres.Value, b.DoseMillilitres.Value, 0.15 * a.DoseMillilitres.Value);
        PhRowPlan sour = PhRowPlanner.Plan(Madder(50) with { LiquorPh = Ph.FromValue(4.5), HardnessIsAssumed = false, Hardness = Hardness.FromGermanDegrees(0) })!;
        Assert.Equal(4.5, sour.LiquorPh.Value, 0.25);
    }

    [Fact]
    public void What_a_solution_cannot_reach_is_said()
    {
        PhRowPlan row = PhRowPlanner.Plan(Madder(50) with { Acid = Vinegar, Aims = [Ph.FromValue(1.5), Ph.FromValue(13)] })!;
        Assert.All(row.Jars, j => Assert.Equal(RowDose.OutOfReach, j.Dose));
        Assert.InRange(row.Jars[0].PhWithIt.Value, 2, 3.5);
    }

    /// <summary>Moles in a litre with the ions' shielding found from their own strength (Davies 1962, from memory).</summary>
    private static double Settled(Func<double, (double Moles, double Strength)> reckoned)
    {
        double strength = 0, moles = 0;
        for (int round = 0; round < 50; round++) (moles, strength) = reckoned(strength);
        return moles;
    }

    private static double Shield(int charge, double strength) => Math.Pow(10, -0.509 * charge * charge * (Math.Sqrt(strength) / (1 + Math.Sqrt(strength)) - 0.3 * strength));

    // A step's constant for the activity of protons and the concentrations of the ions.
    private static double At(double pka, int before, int after, double strength) => Math.Pow(10, -pka) * Shield(before, strength) / Shield(after, strength);

    private static PhRowJar Jar(double ph, RowSolution acid, double celsius = 25) => PhRowPlanner.Plan(new PhRowInput
    {
        Liquor = Volume.FromMillilitres(50),
        Acid = acid,
        Alkali = Soda,
        Aims = [Ph.FromValue(ph)],
        Temperature = Temperature.FromCelsius(celsius),
    })!.Jars[0];

    private static PhRowInput Madder(double millilitres) => new()
    {
        Liquor = Volume.FromMillilitres(millilitres),
        DryGramsPerLitre = 20,
        Hardness = Hardness.FromGermanDegrees(14),
        PlantAcidMilliequivalentsPerGram = new Estimate(0.12, 0.03, 0.5),
        PlantAcidPk = 5.35,
        Acid = Citric with { GramsPer100Millilitres = 5 },
        Alkali = Soda with { GramsPer100Millilitres = 5 },
        Aims = [.. Enumerable.Range(3, 9).Select(ph => Ph.FromValue(ph))],
    };
}
