using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>One row of Cases/systems.csv: a solution, what is added to it, and the laws it is known to break.</summary>
internal sealed record LawCase(TitrationCase Case, IReadOnlyList<double> Steps, IReadOnlyList<string> Breaks, string Why)
{
    private static readonly Lazy<Dictionary<string, LawCase>> Read = new(() =>
    {
        Table table = Table.Parse("systems.csv", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Laws", "Cases", "systems.csv")));
        IReadOnlyList<TitrationCase> cases = CaseTable.Read(table, Constants);
        return table.Rows.Select((row, i) => new LawCase(cases[i], row["steps"].Split(' ').Select(s => double.Parse(s, CultureInfo.InvariantCulture)).ToArray(),
            row["breaks"].Split(' ', StringSplitOptions.RemoveEmptyEntries), row["why"])).ToDictionary(c => c.Case.Name, StringComparer.Ordinal);
    });

    public static ConstantSet Constants => EmbeddedConstants.Set;

    public static IReadOnlyCollection<LawCase> All => Read.Value.Values;

    public static LawCase Of(string name) => Read.Value[name];

    public bool IsVented => Case.Phases.Any(p => p.Rule == PhaseRule.Vents);

    /// <summary>Names of the cases that should obey a law.</summary>
    public static TheoryData<string> That(string law, Func<LawCase, bool>? when = null) =>
        [.. All.Where(c => !c.Breaks.Contains(law) && (when is null || when(c))).Select(c => c.Case.Name)];

    /// <summary>The state after these steps; a step that fails fails the test.</summary>
    public static TitrationRun Run(TitrationCase c, IEnumerable<double> steps, ConstantSet? constants = null, params IReadOnlyList<InputChange> inputs)
    {
        var run = new TitrationRun(constants ?? Constants, c, inputs);
        foreach (double x in steps)
        {
            WhyNot why = run.Step(x);
            Assert.True(why == WhyNot.None, $"{c.Name} at {x.ToString(CultureInfo.InvariantCulture)}: {why}");
        }
        return run;
    }

    /// <summary>System and totals at an amount of titrant, with no gas gone.</summary>
    public (AqueousSystem System, double[] TotalsMol) Mixed(double titrantMol)
    {
        List<(Reagent Reagent, double Moles)> all = [.. Case.Start.Where(r => r.Moles != 0)];
        if (Case.Titrant is { } titrant) all.Add((titrant, titrantMol));
        var system = new AqueousSystem(Constants, Case.Celsius, all.SelectMany(r => r.Reagent.Delivers.Terms.Select(t => t.Component)).Where(c => c != "H2O"), Case.Phases);
        double[] totals = new double[system.Components.Count + 1];
        totals[^1] = Case.StartWaterKg * AqueousSystem.WaterMolesPerKg;
        foreach ((Reagent reagent, double moles) in all) system.Add(reagent, moles, totals);
        return (system, totals);
    }
}
