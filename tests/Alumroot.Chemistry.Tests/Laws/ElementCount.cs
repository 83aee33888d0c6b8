using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>Counts every element by the formulas of reagents, species, solids and gas. Oxidation states of a metal count as one element.</summary>
internal static class ElementCount
{
    public static void Check(TitrationCase c, TitrationRun run, double titrantMol)
    {
        var sum = new Dictionary<string, double>(StringComparer.Ordinal);
        var gross = new Dictionary<string, double>(StringComparer.Ordinal);
        double acidGross = 0;
        Add("H2O", c.StartWaterKg * AqueousSystem.WaterMolesPerKg);
        foreach ((Reagent reagent, double moles) in c.Start) Add(reagent.Formula, moles);
        if (c.Titrant is { } titrant) Add(titrant.Formula, titrantMol);

        EquilibriumState state = run.State;
        Add("H2O", -state.WaterKg * AqueousSystem.WaterMolesPerKg);
        foreach (Species s in state.System.Species) Add(Component.SplitCharge(s.Name).Formula, -state.WaterKg * state.MolalityOf(s.Name));
        foreach (AllowedPhase phase in c.Phases)
            Add(run.Constants.FindPhase(phase.Name)!.Formula, -(phase.Rule == PhaseRule.Vents ? run.GasEvolvedMol : state.PhaseMoles(phase.Name)));

        foreach ((string element, double left) in sum)
            Assert.True(Math.Abs(left) <= 1e-9 * gross[element] + 1e-18, $"{c.Name} at {titrantMol}: {left:g3} mol of {element} out of {gross[element]:g3} unaccounted for");
        // Beyond water itself: acid and base, which the mass of water would hide.
        double acid = sum.GetValueOrDefault("H") - 2 * sum.GetValueOrDefault("O");
        Assert.True(Math.Abs(acid) <= 1e-9 * acidGross + 1e-13 * c.StartWaterKg, $"{c.Name} at {titrantMol}: acid out of balance by {acid:g3} of {acidGross:g3} mol");

        void Add(string formula, double moles)
        {
            IReadOnlyDictionary<string, double> counts = ChemicalFormula.Count(formula.Replace("(g)", "", StringComparison.Ordinal));
            foreach ((string element, double n) in counts)
            {
                string plain = element.TrimEnd('I');
                sum[plain] = sum.GetValueOrDefault(plain) + n * moles;
                gross[plain] = gross.GetValueOrDefault(plain) + Math.Abs(n * moles);
            }
            double excess = counts.GetValueOrDefault("H") - 2 * counts.GetValueOrDefault("O");
            acidGross += Math.Abs(excess * moles);
        }
    }
}
