using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Tests.Published;

/// <summary>The estimate of conductance against standards, handbook tables and an independent program, with the limits it has.</summary>
public class ConductanceTests
{
    /// <summary>Standards of potassium chloride in microsiemens per centimetre, made of acid and base here [pratt2001].</summary>
    [Theory]
    [InlineData(0.01, 20, 1273.03, 0.02)]
    [InlineData(0.01, 25, 1408.23, 0.02)]
    [InlineData(0.1, 20, 11615.9, 0.02)]
    [InlineData(0.1, 25, 12824.6, 0.02)]
    // Away from room temperature the viscosity rule is a tenth off at the most.
    [InlineData(0.01, 0, 772.92, 0.1)]
    [InlineData(0.1, 0, 7116.85, 0.1)]
    [InlineData(0.01, 50, 2123.43, 0.1)]
    [InlineData(0.1, 50, 19180.9, 0.11)]
    public void Potassium_chloride(double molal, double celsius, double expected, double within) =>
        Near(expected, Beaker.Holding(FormattableString.Invariant($"hydrochloric-acid={molal} potassium-hydroxide={molal}"), celsius), within);

    /// <summary>CRC Handbook, equivalent conductivities at 25 C (from memory): sodium chloride 118.45 and 106.69, sodium sulfate 112.38 at 0.01 and 89.94 at 0.1 equivalents per litre.</summary>
    [Theory]
    [InlineData("sodium-chloride=0.01", 1184.5, 0.02)]
    [InlineData("sodium-chloride=0.1", 10669, 0.04)]
    [InlineData("sodium-sulfate=0.005", 1123.8, 0.04)]
    [InlineData("sodium-sulfate=0.05", 8994, 0.04)]
    public void Sodium_salts(string contents, double expected, double within) => Near(expected, Beaker.Holding(contents), within);

    /// <summary>Conductivities at 20 C by mass percent [crc_conductivity]: acetic acid, calcium chloride, citric acid, copper and magnesium sulfate read; sodium chloride and sulfate from memory. Printed to 0.1 mS/cm.</summary>
    [Theory]
    [InlineData("acetic-acid", 1, 60.05, 0.6, 0.1)]
    [InlineData("acetic-acid", 2, 60.05, 0.8, 0.12)]
    [InlineData("citric-acid", 0.5, 192.12, 1.2, 0.12)]
    [InlineData("citric-acid", 1, 192.12, 2.1, 0.15)]
    [InlineData("calcium-chloride", 0.5, 110.98, 8.1, 0.15)]
    [InlineData("calcium-chloride", 1, 110.98, 15.7, 0.15)]
    [InlineData("magnesium-sulfate-heptahydrate", 0.5, 120.37, 4.1, 0.12)]
    [InlineData("magnesium-sulfate-heptahydrate", 1, 120.37, 7.6, 0.08)]
    [InlineData("magnesium-sulfate-heptahydrate", 2, 120.37, 13.3, 0.1)]
    [InlineData("sodium-chloride", 0.5, 58.44, 8.2, 0.05)]
    [InlineData("sodium-chloride", 1, 58.44, 16.0, 0.05)]
    [InlineData("sodium-sulfate", 0.5, 142.04, 5.9, 0.05)]
    [InlineData("sodium-sulfate", 1, 142.04, 11.2, 0.05)]
    public void Handbook_by_mass_percent(string reagent, double percent, double gramsPerMole, double expectedMillisiemens, double within) =>
        Near(1000 * expectedMillisiemens, Percent(reagent, percent, gramsPerMole), within);

    /// <summary>
    /// A stated limit: the pairs that sulfate makes with copper and zinc and carbonate with sodium are too weak or missing in the data, and the estimate comes out a fifth to nearly a half too high
    /// [crc_conductivity]: copper sulfate read, soda and zinc sulfate from memory.
    /// </summary>
    [Theory]
    [InlineData("copper-ii-sulfate-pentahydrate", 1, 159.61, 5.4)]
    [InlineData("copper-ii-sulfate-pentahydrate", 2, 159.61, 9.3)]
    [InlineData("zinc-sulfate-heptahydrate", 1, 161.44, 5.4)]
    [InlineData("sodium-carbonate", 0.5, 105.99, 7.0)]
    [InlineData("sodium-carbonate", 1, 105.99, 13.1)]
    public void Too_high_for_soda_and_for_copper_and_zinc_sulfate(string reagent, double percent, double gramsPerMole, double expectedMillisiemens) =>
        Assert.InRange(Conductance.MicrosiemensPerCm(Percent(reagent, percent, gramsPerMole)) / (1000 * expectedMillisiemens), 1.1, 1.5);

    /// <summary>The formula's lowering was fitted to PHREEQC's conductances; here it meets those of the reference cases [phreeqc389]: nine in ten within -4.5 and +11 %.</summary>
    [Fact]
    public void Nine_in_ten_lie_near_the_reference_program()
    {
        ReferenceData data = ReferenceData.Of("extended");
        var ratios = new List<double>();
        foreach ((string name, TitrationCase c) in data.Cases)
        {
            var run = new TitrationRun(data.Constants, c);
            foreach (TableRow row in data.Expected[name])
            {
                Assert.Equal(WhyNot.None, run.Step(row.Number("titrant_mol_total")));
                if (row.OptionalNumber("conductance_us_cm_at_t") is { } expected) ratios.Add(Conductance.MicrosiemensPerCm(run.State) / expected);
            }
        }
        ratios.Sort();
        Assert.True(ratios.Count > 600);
        Assert.InRange(ratios[(int)(0.05 * ratios.Count)], 0.955, 1);
        Assert.InRange(ratios[(int)(0.95 * ratios.Count)], 1, 1.11);
    }

    private static EquilibriumState Percent(string reagent, double percent, double gramsPerMole) =>
        Beaker.Holding(FormattableString.Invariant($"{reagent}={Beaker.MolalOfPercent(percent, gramsPerMole)}"), 20);

    private static void Near(double expected, EquilibriumState state, double within)
    {
        double actual = Conductance.MicrosiemensPerCm(state);
        Assert.True(Math.Abs(actual / expected - 1) <= within, FormattableString.Invariant($"{actual:f1} against {expected} uS/cm, {100 * (actual / expected - 1):f1} %"));
    }
}
