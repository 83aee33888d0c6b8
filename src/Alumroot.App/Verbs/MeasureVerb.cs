using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Photographs;
using Alumroot.App.Words;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot measure REQUEST.json</c>: colour from a photograph.</summary>
public static class MeasureVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var file = new Argument<string>("request") { HelpName = "REQUEST.json", Description = "the picture, the target's reference and corners (or \"find\"), the swatches and their corners; docs/guide/examples/photo.json is one" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of a table" };
        var csv = new Option<bool>("--csv") { Description = "a table with commas" };
        var verb = new Verb(
            "measure",
            "Measures colours in a photograph, best by a target.",
            "alumroot measure photo.json",
            "alumroot measure photo.json --json",
            "alumroot measure photo.json --csv");
        verb.Add(file);
        verb.Add(json);
        verb.Add(csv);
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(json), parsed.GetValue(csv), channels));
        return verb;
    }

    private static int Run(string path, bool json, bool csv, Channels channels)
    {
        (MeasureRequest? request, string? mistake) = MeasureFile.Read(path);
        if (request is null) return channels.End(ExitCode.InputWrong, mistake!);
        (Measured? measured, int code) = Measuring.Of(request, channels);
        if (measured is null) return code;
        foreach (string note in PhotoWords.Notes(measured.Answer)) channels.Messages.WriteLine(note);
        if (measured.Answer.Colours.Count == 0) return channels.End(ExitCode.CannotBeMet, "None of the swatches could be read.");
        if (json) MeasureOutput.WriteJson(measured, channels.Data);
        else if (csv) MeasureOutput.WriteCsv(measured, channels.Data);
        else MeasureOutput.WriteText(measured, channels.Data);
        return ExitCode.Done;
    }
}
