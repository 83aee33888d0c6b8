using System.Globalization;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Tests.Published;

/// <summary>Every step of every reference case. Source: PHREEQC 3.8.9, U.S. Geological Survey; see Data/README.md.</summary>
public class ReferenceCasesTests
{
    [Theory]
    [MemberData(nameof(ReferenceData.AllCases), MemberType = typeof(ReferenceData))]
    public void Ph_solids_and_gas_agree(string folder, string name)
    {
        ReferenceData data = ReferenceData.Of(folder);
        var run = new TitrationRun(data.Constants, data.Cases[name]);
        foreach (TableRow expected in data.Expected[name])
        {
            string at = $"{folder} {name} step {expected["step"]}";
            WhyNot why = run.Step(expected.Number("titrant_mol_total"));
            Assert.True(why == WhyNot.None, $"{at}: {why}");
            Near(expected.Number("ph"), run.State.Ph, 0.0005, $"{at} pH");
            Near(expected.Number("ionic_strength_molal"), run.State.IonicStrengthMolal, 1e-4 * run.State.IonicStrengthMolal + 1e-9, $"{at} ionic strength");
            Near(expected.Number("water_kg"), run.State.WaterKg, 2e-6, $"{at} water");
            if (expected.OptionalNumber("gas_evolved_mol_total") is { } gas) Near(gas, run.GasEvolvedMol, 0.001 * gas + 1e-6, $"{at} gas");
            Near(expected.Number("dissolved_al_molal"), run.State.DissolvedMolal("Al+3"), 0.002 * expected.Number("dissolved_al_molal") + 1e-12, $"{at} dissolved aluminium");
            Dictionary<string, double> solids = Solids(expected["solids_mol"]);
            foreach (AllowedPhase phase in data.Cases[name].Phases.Where(p => p.Rule == PhaseRule.MayForm))
                Near(solids.GetValueOrDefault(phase.Name), run.State.PhaseMoles(phase.Name), 0.001 * solids.GetValueOrDefault(phase.Name) + 1e-6, $"{at} {phase.Name}");
        }
    }

    [Theory]
    [MemberData(nameof(ReferenceData.AllCases), MemberType = typeof(ReferenceData))]
    public void Every_state_proves_itself(string folder, string name)
    {
        ReferenceData data = ReferenceData.Of(folder);
        var run = new TitrationRun(data.Constants, data.Cases[name]);
        foreach (TableRow expected in data.Expected[name])
        {
            Assert.Equal(WhyNot.None, run.Step(expected.Number("titrant_mol_total")));
            Assert.True(run.State.Residuals.Hold, $"{name} step {expected["step"]}: {run.State.Residuals}");
        }
    }

    private static Dictionary<string, double> Solids(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .Select(part => (Name: part[..part.LastIndexOf('=')], Mol: double.Parse(part[(part.LastIndexOf('=') + 1)..], CultureInfo.InvariantCulture)))
        .ToDictionary(x => x.Name, x => x.Mol, StringComparer.Ordinal);

    private static void Near(double expected, double actual, double tolerance, string what) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"{what}: expected {expected:g8}, got {actual:g8}");
}
