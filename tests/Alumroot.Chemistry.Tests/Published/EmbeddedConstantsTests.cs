using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Tests.Published;

/// <summary>The tables that come with the program: each row balances, masses follow from atomic weights, names resolve.</summary>
public class EmbeddedConstantsTests
{
    // Conventional atomic weights, Prohaska and others 2022 [prohaska_2022], from memory. Ligands: acetate C2H3O2, citrate C6H5O7, tartrate C4H4O6.
    private static readonly Dictionary<string, double> Weight = new(StringComparer.Ordinal)
    {
        ["H"] = 1.008,
        ["C"] = 12.011,
        ["N"] = 14.007,
        ["O"] = 15.999,
        ["Na"] = 22.990,
        ["Mg"] = 24.305,
        ["Al"] = 26.982,
        ["S"] = 32.06,
        ["Cl"] = 35.45,
        ["K"] = 39.098,
        ["Ca"] = 40.078,
        ["Fe"] = 55.845,
        ["FeII"] = 55.845,
        ["FeIII"] = 55.845,
        ["Cu"] = 63.546,
        ["Zn"] = 65.38,
        ["SnII"] = 118.71,
        ["Sn"] = 118.71,
        ["Acetate"] = 59.044,
        ["Citrate"] = 189.099,
        ["Tartrate"] = 148.070,
    };

    private static ConstantSet Set => EmbeddedConstants.Set;

    [Fact]
    public void Every_species_balances_in_elements_and_charge()
    {
        foreach (Species s in Set.Species)
        {
            Balance(s.Name, Counts(Component.SplitCharge(s.Name).Formula), s.Formation);
            Assert.Equal(s.Charge, Component.SplitCharge(s.Name).Charge);
            Assert.Equal(s.Charge, ChargeOf(s.Formation), 9);
        }
    }

    [Fact]
    public void Every_phase_balances_in_elements_and_charge()
    {
        foreach (Phase p in Set.Phases)
        {
            Balance(p.Name, Counts(p.Formula.Replace("(g)", "", StringComparison.Ordinal)), p.Dissolution);
            Assert.Equal(0, ChargeOf(p.Dissolution), 9);
        }
    }

    [Fact]
    public void Every_reagent_balances_in_elements_and_charge()
    {
        foreach (Reagent r in Set.Reagents)
        {
            Balance(r.Key, Counts(r.Formula), r.Delivers);
            Assert.Equal(0, ChargeOf(r.Delivers), 9);
        }
    }

    [Fact]
    public void Molar_masses_follow_from_atomic_weights()
    {
        foreach (Reagent r in Set.Reagents.Where(r => r.Key != "plant-acid")) Mass(r.Key, r.Formula, r.GramsPerMole);
        foreach (Phase p in Set.Phases.Where(p => !p.IsGas)) Mass(p.Name, p.Formula, p.GramsPerMole ?? 0);
        foreach (Component c in Set.Components.Where(c => c.GramsPerMole is not null)) Mass(c.Name, Component.SplitCharge(c.Name).Formula, c.GramsPerMole!.Value);
    }

    /// <summary>Same names, same reagents, our own copy of the constants: the reference cases come out the same [phreeqc389].</summary>
    [Fact]
    public void The_embedded_set_reproduces_the_reference_cases()
    {
        ReferenceData data = ReferenceData.Of("extended");
        int cases = 0;
        foreach (TitrationCase c in data.Cases.Values)
        {
            string[] solids = [.. c.Phases.Where(p => p.Rule == PhaseRule.MayForm).Select(p => p.Name)];
            if (c.Start.Any(r => Set.FindReagent(r.Reagent.Key) is null) || (c.Titrant is not null && Set.FindReagent(c.Titrant.Key) is null) || solids.Any(s => Set.FindPhase(s) is null)) continue;
            cases++;
            var ours = new TitrationRun(Set, c with
            {
                Start = [.. c.Start.Select(r => (Set.FindReagent(r.Reagent.Key)!, r.Moles))],
                Titrant = c.Titrant is null ? null : Set.FindReagent(c.Titrant.Key),
            });
            foreach (TableRow row in data.Expected[c.Name])
            {
                Assert.Equal(WhyNot.None, ours.Step(row.Number("titrant_mol_total")));
                Assert.True(Math.Abs(ours.State.Ph - row.Number("ph")) <= 0.01, $"{c.Name} step {row["step"]}: pH {ours.State.Ph:f4} against {row["ph"]}");
            }
        }
        Assert.True(cases > 40, $"only {cases} cases could be compared");
    }

    [Fact]
    public void Fresh_solids_are_phases_of_their_component()
    {
        foreach (TableRow row in EmbeddedConstants.Table("fresh_solids.csv").Rows)
        {
            Phase phase = Assert.IsType<Phase>(Set.FindPhase(row["phase"]));
            Assert.NotEqual(0, phase.Dissolution[row["component"]]);
            Assert.Contains(row["kind"], (string[])["plain", "basic"]);
        }
    }

    [Fact]
    public void Substances_are_made_of_known_reagents()
    {
        TableRow[] rows = [.. EmbeddedConstants.Table("substances.csv").Rows];
        Assert.Equal(rows.Length, rows.Select(r => r["key"]).Distinct().Count());
        foreach (TableRow row in rows)
        {
            foreach (string part in row["parts"].Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                string[] sides = part.Split('=');
                Assert.True(Set.FindReagent(sides[0]) is not null, $"{row["key"]}: nothing is known of {sides[0]}");
                Assert.InRange(double.Parse(sides[1], CultureInfo.InvariantCulture), 0, 1);
            }
            Assert.True(row.Number("strength_low") <= row.Number("strength_high"));
        }
    }

    private static void Balance(string name, IReadOnlyDictionary<string, double> expected, Reaction reaction)
    {
        var sum = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach ((string component, double n) in reaction.Terms)
            foreach ((string element, double count) in Counts(Component.SplitCharge(component).Formula)) sum[element] = sum.GetValueOrDefault(element) + n * count;
        foreach (string element in sum.Keys.Union(expected.Keys))
            Assert.True(Math.Abs(sum.GetValueOrDefault(element) - expected.GetValueOrDefault(element)) < 1e-9, $"{name}: {sum.GetValueOrDefault(element)} {element} instead of {expected.GetValueOrDefault(element)}");
    }

    // Formulas of minerals write Fe and Sn where the components say which oxidation state; both count as the metal.
    private static Dictionary<string, double> Counts(string formula) =>
        ChemicalFormula.Count(formula).GroupBy(e => e.Key.TrimEnd('I'), StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Sum(e => e.Value), StringComparer.Ordinal);

    private static double ChargeOf(Reaction reaction) => reaction.Terms.Sum(t => t.Coefficient * Component.SplitCharge(t.Component).Charge);

    private static double MassOf(string formula) => ChemicalFormula.Count(formula).Sum(e => e.Value * Weight[e.Key]);

    private static void Mass(string name, string formula, double grams) =>
        Assert.True(Math.Abs(MassOf(formula) - grams) <= 1e-4 * grams, FormattableString.Invariant($"{name}: {grams} g/mol, from atomic weights {MassOf(formula):f3}"));
}
