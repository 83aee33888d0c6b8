using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Solve;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot solve CASES.csv</c>: aqueous equilibrium of the cases in a file.</summary>
public static class SolveVerb
{
    private const long LargestFileBytes = 64 << 20;

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var cases = new Argument<string>("cases") { HelpName = "CASES.csv", Description = "columns case, temperature_c, gas, start_water_kg, start_reagents_mol, titrant, solids_allowed" };
        var steps = new Option<string?>("--steps") { HelpName = "FILE", Description = "columns case, step, titrant_mol_total; without it each case is solved as it starts" };
        var constants = new Option<string?>("--constants") { HelpName = "DIR", Description = "other constants: constants_species.csv, _solids, _debye_hueckel, _reagents" };
        var sensitivities = new Option<bool>("--sensitivities") { Description = "adds the change of pH with each input" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of a table" };
        var verb = new Verb(
            "solve",
            "Solves aqueous equilibria of cases and proves each.",
            "alumroot solve cases.csv --steps steps.csv",
            "alumroot solve cases.csv --steps steps.csv --constants my-constants",
            "alumroot solve cases.csv --sensitivities --json");
        verb.Add(cases);
        verb.Add(steps);
        verb.Add(constants);
        verb.Add(sensitivities);
        verb.Add(json);
        verb.SetAction(parsed =>
        {
            try
            {
                ConstantSet set = parsed.GetValue(constants) is { } folder ? ReadConstants(folder) : EmbeddedConstants.Set;
                IReadOnlyList<TitrationCase> list = CaseTable.Read(ReadTable(parsed.GetRequiredValue(cases)), set);
                ILookup<string, (string Step, double TitrantMol)>? wanted = parsed.GetValue(steps) is { } file ? CaseTable.ReadSteps(ReadTable(file)) : null;
                var table = new SolveTable(set, parsed.GetValue(sensitivities));
                bool all = parsed.GetValue(json) ? table.WriteJson(list, wanted, channels.Data) : table.WriteCsv(list, wanted, channels.Data);
                return all ? ExitCode.Done : channels.End(ExitCode.CannotBeMet, "At least one case has no proven solution; its rows say why in the column error.");
            }
            catch (TableException e)
            {
                return channels.End(ExitCode.InputWrong, e.Message);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return channels.End(ExitCode.InputWrong, $"A file could not be read: {e.Message}");
            }
        });
        return verb;
    }

    private static ConstantSet ReadConstants(string folder) => ConstantSet.Read(
        ReadTable(Path.Combine(folder, "constants_species.csv")), ReadTable(Path.Combine(folder, "constants_solids.csv")),
        ReadTable(Path.Combine(folder, "constants_debye_hueckel.csv")), ReadTable(Path.Combine(folder, "constants_reagents.csv")));

    private static Table ReadTable(string path)
    {
        var file = new FileInfo(path);
        if (file.Exists && file.Length > LargestFileBytes) throw new TableException(path, 1, null, $"the file holds {file.Length >> 20} MiB; at most {LargestFileBytes >> 20} MiB are read, so split it");
        return Table.Parse(Path.GetFileName(path), File.ReadAllText(path));
    }
}
