using System.Globalization;
using System.Text;
using Alumroot.App.Output;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.App.Verbs.Solve;

/// <summary>Runs cases step by step and writes a row for each step; a step without a proven solution is a row with an error and no numbers.</summary>
internal sealed class SolveTable(ConstantSet constants, bool sensitivities)
{
    private static readonly (string Column, string Component)[] Dissolved =
    [
        ("al", "Al+3"), ("ca", "Ca+2"), ("mg", "Mg+2"), ("na", "Na+"), ("k", "K+"), ("n3", "NH4+"), ("c", "CO3-2"), ("s", "SO4-2"), ("cl", "Cl-"), ("zn", "Zn+2"), ("cu", "Cu+2"),
        ("fe2", "FeII+2"), ("fe3", "FeIII+3"), ("sn2", "SnII+2"), ("acetate", "Acetate-"), ("citrate", "Citrate-3"), ("tartrate", "Tartrate-2"),
    ];

    private static readonly (string Column, string Species)[] Single =
        [("al3_molal", "Al+3"), ("aloh4_molal", "Al(OH)4-"), ("hco3_molal", "HCO3-"), ("co3_molal", "CO3-2"), ("co2_molal", "CO2")];

    private static readonly string[] Activities = ["Al+3", "AlOH+2", "Al(OH)4-", "AlSO4+", "OH-", "HCO3-", "CO3-2", "CO2", "SO4-2", "Ca+2"];

    internal bool WriteCsv(IReadOnlyList<TitrationCase> cases, ILookup<string, (string Step, double TitrantMol)>? steps, TextWriter to)
    {
        bool all = true, first = true;
        foreach (IReadOnlyList<(string Name, object? Value)> row in Rows(cases, steps))
        {
            if (first) to.WriteLine(string.Join(',', row.Select(c => c.Name)));
            first = false;
            all &= row[^1].Value is null;
            to.WriteLine(string.Join(',', row.Select(c => Text(c.Value))));
        }
        return all;
    }

    internal bool WriteJson(IReadOnlyList<TitrationCase> cases, ILookup<string, (string Step, double TitrantMol)>? steps, TextWriter to)
    {
        List<Dictionary<string, object?>> rows = [.. Rows(cases, steps).Select(r => r.ToDictionary(c => c.Name, c => c.Value))];
        to.WriteLine(Json.Text(rows));
        return rows.All(r => r["error"] is null);
    }

    private IEnumerable<IReadOnlyList<(string Name, object? Value)>> Rows(IReadOnlyList<TitrationCase> cases, ILookup<string, (string Step, double TitrantMol)>? steps)
    {
        foreach (TitrationCase c in cases)
        {
            InputChange[] inputs = sensitivities ? Inputs(c) : [];
            var run = new TitrationRun(constants, c, inputs);
            bool vents = c.Phases.Any(p => p.Rule == PhaseRule.Vents);
            IEnumerable<(string Step, double TitrantMol)> list = steps is null ? [("0", 0)] : steps[c.Name];
            foreach ((string step, double titrant) in list)
                yield return Row(c, step, titrant, run.Step(titrant), run, vents, inputs);
        }
    }

    private List<(string Name, object? Value)> Row(TitrationCase c, string step, double titrant, WhyNot why, TitrationRun run, bool vents, InputChange[] inputs)
    {
        EquilibriumState? s = why == WhyNot.None ? run.State : null;
        var row = new List<(string, object?)>
        {
            ("case", c.Name), ("step", step), ("titrant_mol_total", titrant), ("ph", s?.Ph), ("ionic_strength_molal", s?.IonicStrengthMolal), ("water_kg", s?.WaterKg),
            ("gas_evolved_mol_total", s is not null && vents ? run.GasEvolvedMol : null),
        };
        foreach ((string column, string component) in Dissolved) row.Add(($"dissolved_{column}_molal", s?.DissolvedMolal(component)));
        foreach ((string column, string species) in Single) row.Add((column, s?.MolalityOf(species)));
        row.Add(("log10_co2_pressure_atm", constants.FindPhase(TitrationCase.CarbonDioxide) is { } co2 ? s?.Log10PressureAtm(co2) : null));
        row.Add(("water_activity", s?.WaterActivity));
        foreach (string species in Activities) row.Add(($"log10_activity_{species}", s?.Log10ActivityOf(species)));
        row.Add(("conductance_us_cm_at_t", s is null ? null : Conductance.MicrosiemensPerCm(s)));
        row.Add(("mass_residual", s?.Residuals.Mass));
        row.Add(("charge_residual", s?.Residuals.Charge));
        row.Add(("solids_mol", s is null ? null : Solids(c, s)));
        if (sensitivities)
        {
            // The columns stay the same for every case: reagents by place, then what all cases share.
            row.Add(("d_ph_by", s is null ? null : string.Join(' ', inputs.Select((x, k) => $"{Name(x)}={run.PhByInput[k].ToString("g6", CultureInfo.InvariantCulture)}"))));
        }
        row.Add(("error", s is null ? Words.SolveWords.Of(why) : null));
        return row;
    }

    private static InputChange[] Inputs(TitrationCase c)
    {
        List<InputChange> list = [.. c.Start.Select(r => new InputChange.StartAmount(r.Reagent))];
        if (c.Titrant is not null) list.AddRange([new InputChange.TitrantAmount(), new InputChange.TitrantStrength()]);
        list.AddRange([new InputChange.StartWater(), new InputChange.Temperature()]);
        list.AddRange(c.Phases.Select(p => new InputChange.PhaseLog10K(p.Name)));
        return [.. list];
    }

    private static string Name(InputChange input) => input switch
    {
        InputChange.StartAmount a => $"{a.Reagent.Key}_mol",
        InputChange.TitrantAmount => "titrant_mol",
        InputChange.TitrantStrength => "titrant_strength",
        InputChange.StartWater => "water_kg",
        InputChange.Temperature => "temperature_k",
        InputChange.PhaseLog10K p => $"log10k({p.Name})",
        InputChange.SpeciesLog10K p => $"log10k({p.Name})",
        _ => "",
    };

    private static string Solids(TitrationCase c, EquilibriumState s)
    {
        var text = new StringBuilder();
        foreach (AllowedPhase p in c.Phases.Where(p => p.Rule == PhaseRule.MayForm))
        {
            double moles = s.PhaseMoles(p.Name);
            if (moles <= 0) continue;
            if (text.Length > 0) text.Append(' ');
            text.Append(p.Name).Append('=').Append(moles.ToString("g8", CultureInfo.InvariantCulture));
        }
        return text.ToString();
    }

    private static string Text(object? value) => value switch
    {
        null => "",
        double x => x.ToString("g10", CultureInfo.InvariantCulture),
        string s => s.AsSpan().IndexOfAny(",\"\n\r") >= 0 ? $"\"{s.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : s,
        _ => string.Create(CultureInfo.InvariantCulture, $"{value}"),
    };
}
