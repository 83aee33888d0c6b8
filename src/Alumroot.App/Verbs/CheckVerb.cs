using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Integrity;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot check</c>: verifies the record and its photographs.</summary>
public static class CheckVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        Option<string?> folder = StudioVerb.FolderOption();
        Option<bool> json = StudioVerb.JsonOption();
        var verb = new Verb(
            "check",
            "Verifies the record, its photographs and its lists.",
            "alumroot check",
            "alumroot check --studio ~/my-studio",
            "alumroot check --json");
        verb.Add(folder);
        verb.Add(json);
        verb.SetAction(parsed => StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio => Write(studio, parsed.GetValue(json), channels)));
        return verb;
    }

    private static int Write(StudioStore studio, bool json, Channels channels)
    {
        IReadOnlyList<StudioFinding> findings = studio.Check();
        bool lost = findings.Any(f => f.Level == FindingLevel.Loss);
        if (json) channels.Data.WriteLine(Json.Text(new { Findings = findings.Select(f => new { f.Key, f.Level, f.Where, f.Detail, Text = StudioWords.Of(f) }) }));
        else
        {
            foreach (StudioFinding finding in findings.OrderByDescending(f => f.Level)) channels.Data.WriteLine(Columns.Beside(LevelWord(finding.Level), StudioWords.Of(finding), 6));
            if (!lost) channels.Data.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{studio.Count()} entries and {studio.Photos.All().Count} photographs are whole."));
        }
        return lost ? channels.End(ExitCode.RecordTrouble, "Something that was kept is damaged or gone. Make no further entries here until it is put right.") : ExitCode.Done;
    }

    private static string LevelWord(FindingLevel level) => level switch
    {
        FindingLevel.Loss => "Lost",
        FindingLevel.Look => "Look",
        _ => "Note",
    };
}
