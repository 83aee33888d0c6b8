using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests.Published;

/// <summary>How much dissolves, against measured solubilities.</summary>
public class SolubilityTests
{
    private static ConstantSet Set => EmbeddedConstants.Set;

    /// <summary>Published solubilities of gypsum at 25 C run from 0.0147 to 0.0182 mol/L [lebedev_kosorukov2017, abstract].</summary>
    [Fact]
    public void Gypsum() => Assert.InRange(Dissolved("calcium-sulfate=0.1", "Ca+2", 25, "Gypsum"), 0.0147, 0.0182);

    /// <summary>Gypsum dissolves best near 40 C, 0.2097 g CaSO4 in 100 g water against 0.176 at 0 C (Seidell and Linke, from memory): flat to within a fifth.</summary>
    [Fact]
    public void Gypsum_dissolves_best_lukewarm()
    {
        double cold = Dissolved("calcium-sulfate=0.1", "Ca+2", 0, "Gypsum"), warm = Dissolved("calcium-sulfate=0.1", "Ca+2", 40, "Gypsum"), hot = Dissolved("calcium-sulfate=0.1", "Ca+2", 90, "Gypsum");
        Assert.True(warm > cold && warm > hot);
        Assert.InRange(cold * 136.13, 1.65, 1.9);
        Assert.InRange(warm * 136.13, 1.95, 2.25);
    }

    /// <summary>Lime: 0.165 g in 100 g of water at 20 C, 0.16 at 25 C, less when hot (CRC Handbook, from memory); 1.5 g/L at 25 C in an entry that cites Seidell and Linke, read.</summary>
    [Fact]
    public void Lime_dissolves_less_when_hot()
    {
        Assert.InRange(Dissolved("calcium-hydroxide=0.1", "Ca+2", 25, "Portlandite") * 74.09, 1.45, 1.7);
        Assert.True(Dissolved("calcium-hydroxide=0.1", "Ca+2", 80, "Portlandite") < Dissolved("calcium-hydroxide=0.1", "Ca+2", 25, "Portlandite"));
    }

    /// <summary>Calcite: 14 mg/L shut off from air, 50 to 60 mg/L in air, 25 C (textbooks, from memory; 15 mg/L in a page on gypsum, read).</summary>
    [Fact]
    public void Chalk()
    {
        Assert.InRange(Dissolved("calcium-carbonate=0.1", "Ca+2", 25, "Calcite") * 100_086, 11, 16);
        Assert.InRange(Beaker.Holding("calcium-carbonate=0.1", 25, GasRule.Air, "Calcite").DissolvedMolal("Ca+2") * 100_086, 45, 62);
    }

    /// <summary>Alum put in water dissolves least near pH 6.0 at 20 C, higher in colder water; polyaluminium chlorides 6.2 to 6.4 [pernitsky_edzwald2003, abstract].</summary>
    [Fact]
    public void Aluminium_hydroxide_dissolves_least_between_ph_6_and_6_5()
    {
        (double ph20, double molal20) = LeastSoluble(20);
        (double ph5, double molal5) = LeastSoluble(5);
        Assert.InRange(ph20, 5.95, 6.5);
        Assert.True(ph5 > ph20 && molal5 < molal20);
    }

    /// <summary>Henry's constant of carbon dioxide 3.4e-4 mol/(m3 Pa), van 't Hoff 2300 to 2400 K [sander2023]: 0.034 mol/kg at one atmosphere and 25 C.</summary>
    [Fact]
    public void Carbon_dioxide()
    {
        Phase gas = Set.FindPhase("CO2(g)")!;
        Assert.InRange(Math.Pow(10, gas.LogK.Log10K(298.15)), 0.0335, 0.0345);
        double vantHoff = gas.LogK.Log10KPerKelvin(298.15) * Math.Log(10) * -298.15 * 298.15;
        Assert.InRange(vantHoff, 2200, 2500);
    }

    /// <summary>Ammonia: about 60 mol/kg at one atmosphere and 25 C (Henry's constant 0.59 mol/(m3 Pa), from memory).</summary>
    [Fact]
    public void Ammonia() => Assert.InRange(Math.Pow(10, Set.FindPhase("NH3(g)")!.LogK.Log10K(298.15)), 52, 68);

    private static double Dissolved(string contents, string component, double celsius, string solid) => Beaker.Holding(contents, celsius, GasRule.Closed, solid).DissolvedMolal(component);

    private static (double Ph, double Molal) LeastSoluble(double celsius)
    {
        var run = new TitrationRun(Set, new TitrationCase("gel", celsius, 1, [(Set.FindReagent("potassium-alum-dodecahydrate")!, 1e-3)], Set.FindReagent("sodium-hydroxide"),
            TitrationCase.Allow(["Al(OH)3(a)"], GasRule.Closed)));
        (double Ph, double Molal) least = (0, double.MaxValue);
        for (int i = 0; i < 2000; i++)
        {
            Assert.Equal(WhyNot.None, run.Step(0.0025 + i * 5e-7));
            double molal = run.State.DissolvedMolal("Al+3");
            if (molal < least.Molal) least = (run.State.Ph, molal);
        }
        return least;
    }
}
