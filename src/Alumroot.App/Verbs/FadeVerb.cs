using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Fade;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot fade FILE.csv</c>: fading series to doses, equivalent blue wool class and category.</summary>
public static class FadeVerb
{
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
        verb.SetAction(parsed => TextFile.WithTable(parsed.GetRequiredValue(file), channels, table => Run(table, parsed.GetValue(json), parsed.GetValue(csv), channels)));
        return verb;
    }

    private static int Run(Table table, bool json, bool csv, Channels channels)
    {
        IReadOnlyList<FadingSeries> series = FadingTable.Read(table);
        if (series.All(s => s.Reference is not null)) return channels.End(ExitCode.CannotBeMet, series.Count == 0 ? $"{table.Name} has no rows, so there is nothing to fit." : $"{table.Name} holds references only. Add the readings of a sample under a name of its own.");
        IReadOnlyList<SampleFound> samples = FadingAnalysis.Analyse(series);
        if (!series.Any(s => s.Reference is not null)) channels.Messages.WriteLine("No references (BW1 to BW8) were exposed beside the samples, so there is no class. Put two that enclose the sample in the same light next time.");
        if (json) FadeOutput.WriteJson(samples, channels.Data);
        else if (csv) FadeOutput.WriteCsv(samples, channels.Data);
        else FadeOutput.WriteText(samples, channels.Data);
        return samples.Any(s => s.Model is not null) ? ExitCode.Done : channels.End(ExitCode.CannotBeMet, "No sample has enough readings for a fit: three doses after the start are the least.");
    }
}
