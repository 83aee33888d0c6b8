using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.Studio;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot list [WORDS]</c>: batches, lots, paints and trials, the latest touched first.</summary>
public static class ListVerb
{
    private const string TimeForm = "yyyy-MM-dd HH:mm";

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var words = new Argument<string[]>("words") { HelpName = "WORDS", Arity = ArgumentArity.ZeroOrMore, Description = "only those whose entries hold all these words or their beginnings" };
        Option<bool> csv = StudioVerb.TableOption(), utc = StudioVerb.UtcOption();
        var waiting = new Option<bool>("--waiting") { Description = "only what waits for you, the earliest first" };
        Option<bool> json = StudioVerb.JsonOption();
        Option<string?> folder = StudioVerb.FolderOption();
        var verb = new Verb(
            "list",
            "Lists what is kept, the latest touched first.",
            "alumroot list",
            "alumroot list madder alum",
            "alumroot list --csv");
        verb.Add(words);
        verb.Add(csv);
        verb.Add(waiting);
        verb.Add(utc);
        verb.Add(json);
        verb.Add(folder);
        verb.SetAction(parsed => StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio =>
        {
            string typed = string.Join(' ', parsed.GetValue(words) ?? []);
            bool onlyWaiting = parsed.GetValue(waiting);
            if (onlyWaiting && typed.Length > 0) return channels.End(ExitCode.InputWrong, "'list' takes either words or --waiting, not both.");
            IReadOnlyList<SubjectLine> lines = onlyWaiting ? studio.Due() : studio.List(typed);
            if (parsed.GetValue(utc)) lines = [.. lines.Select(l => l with { FirstAt = l.FirstAt.ToUniversalTime(), LastAt = l.LastAt.ToUniversalTime(), DueAt = l.DueAt?.ToUniversalTime() })];
            if (parsed.GetValue(json)) channels.Data.WriteLine(Json.Text(lines.Select(l => new { Subject = l.Subject.ToString(), l.Title, l.Stage, l.FirstAt, l.LastAt, l.EntryCount, l.DueAt })));
            else if (parsed.GetValue(csv)) WriteTable(lines, channels.Data);
            else foreach (SubjectLine line in lines)
                channels.Data.WriteLine(Columns.Beside(string.Create(CultureInfo.InvariantCulture, $"{line.Subject,-8} {(onlyWaiting ? line.DueAt!.Value : line.LastAt).ToString(TimeForm, CultureInfo.InvariantCulture)}  {line.Stage,-9}"), line.Title, 37));
            return lines.Count > 0 ? ExitCode.Done : channels.End(ExitCode.CannotBeMet, onlyWaiting ? "Nothing waits for a time." : typed.Length > 0 ? $"Nothing in the record fits '{typed}'. Try fewer words, or their beginnings." : "The record is empty. 'alumroot record new' begins a batch.");
        }));
        return verb;
    }

    private static void WriteTable(IReadOnlyList<SubjectLine> lines, TextWriter data)
    {
        data.Write(Csv.Line("subject", "title", "stage", "first_at", "last_at", "entries"));
        foreach (SubjectLine l in lines) data.Write(Csv.Line(l.Subject.ToString(), l.Title, l.Stage, l.FirstAt.ToString("O", CultureInfo.InvariantCulture), l.LastAt.ToString("O", CultureInfo.InvariantCulture), l.EntryCount));
    }
}
