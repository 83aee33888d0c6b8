using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Record;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot show 26-014</c>: a batch, lot, paint or trial with every entry.</summary>
public static class ShowVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var subject = new Argument<string>("number") { HelpName = "NUMBER", Description = "a batch such as 26-014, a lot such as lot-7, a paint such as P-07, or a trial such as T-05" };
        Option<bool> json = StudioVerb.JsonOption();
        Option<bool> csv = StudioVerb.TableOption(), utc = StudioVerb.UtcOption();
        Option<string?> folder = StudioVerb.FolderOption();
        var verb = new Verb(
            "show",
            "Shows a batch, lot, paint or trial in full.",
            "alumroot show 26-014",
            "alumroot show lot-7",
            "alumroot show 26-014 --json");
        verb.Add(subject);
        verb.Add(json);
        verb.Add(csv);
        verb.Add(utc);
        verb.Add(folder);
        verb.SetAction(parsed =>
        {
            string typed = parsed.GetRequiredValue(subject);
            if (SubjectKey.TryRead(typed) is not { } key) return channels.End(ExitCode.InputWrong, $"'{typed}' is not a number of the record. Write it like 26-014, lot-7, P-07 or T-05.");
            return StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio => Show(studio, key, (parsed.GetValue(json), parsed.GetValue(csv), parsed.GetValue(utc)), channels));
        });
        return verb;
    }

    private static int Show(StudioStore studio, SubjectKey key, (bool Json, bool Csv, bool Utc) how, Channels channels)
    {
        IReadOnlyList<Entry> entries = studio.EntriesOf(key);
        if (entries.Count == 0) return channels.End(ExitCode.CannotBeMet, $"There is no {key} in this studio. 'alumroot list' shows what there is.");
        SubjectLine line = SubjectLine.Of(key, entries);
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        LotState? lot = key.Class == SubjectClass.Lot ? studio.Lot(key) : null;
        DateTimeOffset At(StandingEntry e) => how.Utc ? e.Entry.At.ToUniversalTime() : e.Entry.At;
        if (how.Json) channels.Data.WriteLine(RecordJson.Of(key, line, lot, all, how.Utc));
        else if (how.Csv)
        {
            channels.Data.Write(Csv.Line("at", "entry", "document", "said", "standing"));
            foreach (StandingEntry e in all) channels.Data.Write(Csv.Line(At(e).ToString("O", CultureInfo.InvariantCulture), e.Entry.Id.Text, e.Entry.Kind.ToString(), EntryWords.Of(e.Entry), Json.Name(e.Standing)));
        }
        else
        {
            channels.Data.WriteLine(Columns.Beside(key.ToString(), $"{line.Title} ({line.Stage})", 10));
            if (lot is not null && StudioWords.Left(lot) is { } left) channels.Data.WriteLine(Columns.Beside("Left", left, 10));
            foreach (StandingEntry e in all) channels.Data.WriteLine(Columns.Beside(At(e).ToString("MM-dd HH:mm:ss", CultureInfo.InvariantCulture), AsText(e), 16));
        }
        if (lot is not null && StudioWords.Stock(key, lot) is { } remark) channels.Messages.WriteLine(remark);
        return ExitCode.Done;
    }

    private static string AsText(StandingEntry e) => EntryWords.Of(e.Entry) + e.Standing switch
    {
        Standing.Superseded => $" (corrected by {e.By})",
        Standing.Withdrawn => $" (undone by {e.By})",
        _ => "",
    } + $" [{e.Entry.Id}]";
}
