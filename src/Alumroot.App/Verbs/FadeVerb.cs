using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Fade;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot fade FILE.csv</c>: fading series to doses, equivalent blue wool class and category.</summary>
public static class FadeVerb
{
    private const long LargestFileBytes = 32 << 20;

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string>("file") { HelpName = "FILE.csv", Description = "columns series, replicate, dose_mlxh, de; series BW1 to BW8 are blue wool references exposed beside the samples" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas" };
        var verb = new Verb(
            "fade",
            "Fits light tests: dose, blue wool class, years.",
            "alumroot fade strips.csv",
            "alumroot fade strips.csv --json",
            "alumroot fade strips.csv --csv");
        verb.Add(file);
        verb.Add(json);
        verb.Add(csv);
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(json), parsed.GetValue(csv), channels));
        return verb;
    }

    private static int Run(string path, bool json, bool csv, Channels channels)
    {
        try
        {
            var file = new FileInfo(path);
            if (file.Exists && file.Length > LargestFileBytes) return channels.End(ExitCode.InputWrong, $"{file.Name} holds {file.Length >> 20} MiB; at most {LargestFileBytes >> 20} MiB are read, so split it.");
            IReadOnlyList<FadingSeries> series = FadingTable.Read(Table.Parse(file.Name, File.ReadAllText(path)));
            if (series.All(s => s.Reference is not null)) return channels.End(ExitCode.CannotBeMet, series.Count == 0 ? $"{file.Name} has no rows, so there is nothing to fit." : $"{file.Name} holds references only. Add the readings of a sample under a name of its own.");
            IReadOnlyList<SampleFound> samples = FadingAnalysis.Analyse(series);
            if (!series.Any(s => s.Reference is not null)) channels.Messages.WriteLine("No references (BW1 to BW8) were exposed beside the samples, so there is no class. Put two that enclose the sample in the same light next time.");
            if (json) FadeOutput.WriteJson(samples, channels.Data);
            else if (csv) FadeOutput.WriteCsv(samples, channels.Data);
            else FadeOutput.WriteText(samples, channels.Data);
            return samples.Any(s => s.Model is not null) ? ExitCode.Done : channels.End(ExitCode.CannotBeMet, "No sample has enough readings for a fit: three doses after the start are the least.");
        }
        catch (TableException e)
        {
            return channels.End(ExitCode.InputWrong, e.Message);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return channels.End(ExitCode.InputWrong, $"'{path}' could not be read. Check the name and whether you may read it.");
        }
    }
}
