using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot show 26-014</c>: a batch or lot with every entry.</summary>
public static class ShowVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var subject = new Argument<string>("number") { HelpName = "NUMBER", Description = "a batch such as 26-014, or a lot such as lot-7" };
        Option<bool> json = StudioVerb.JsonOption();
        Option<string?> folder = StudioVerb.FolderOption();
        var verb = new Verb(
            "show",
            "Shows a batch or lot with every entry.",
            "alumroot show 26-014",
            "alumroot show lot-7",
            "alumroot show 26-014 --json");
        verb.Add(subject);
        verb.Add(json);
        verb.Add(folder);
        verb.SetAction(parsed =>
        {
            string typed = parsed.GetRequiredValue(subject);
            if (SubjectKey.TryRead(typed) is not { } key) return channels.End(ExitCode.InputWrong, $"'{typed}' is not the number of a batch or lot. Write it like 26-014 or lot-7.");
            return StudioVerb.Run(parsed.GetValue(folder), StudioAccess.Read, channels, studio => Show(studio, key, parsed.GetValue(json), channels));
        });
        return verb;
    }

    private static int Show(StudioStore studio, SubjectKey key, bool json, Channels channels)
    {
        IReadOnlyList<Entry> entries = studio.EntriesOf(key);
        if (entries.Count == 0) return channels.End(ExitCode.CannotBeMet, $"There is no {key} in this studio. 'alumroot list' shows what there is.");
        SubjectLine line = SubjectLine.Of(key, entries);
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        LotState? lot = key.Class == SubjectClass.Lot ? studio.Lot(key) : null;
        if (json) channels.Data.WriteLine(Json.Text(new { Subject = key.ToString(), line.Title, line.Stage, LeftSi = lot?.LeftSi, SiUnit = lot?.Bought?.Amount.SiUnit, Entries = all.Select(AsJson) }));
        else
        {
            channels.Data.WriteLine(Columns.Beside(key.ToString(), $"{line.Title} ({line.Stage})", 10));
            if (lot is not null && StudioWords.Left(lot) is { } left) channels.Data.WriteLine(Columns.Beside("Left", left, 10));
            foreach (StandingEntry e in all) channels.Data.WriteLine(Columns.Beside(e.Entry.At.ToString("MM-dd HH:mm:ss", CultureInfo.InvariantCulture), AsText(e), 16));
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

    private static object AsJson(StandingEntry e) => new
    {
        Entry = e.Entry.Id.Text,
        e.Entry.At,
        Document = e.Entry.Kind.Name,
        DocumentVersion = e.Entry.Kind.Version,
        e.Standing,
        By = e.By?.Text,
        Corrects = e.Entry.Corrects?.Text,
        Payload = JsonSerializer.Deserialize<JsonElement>(e.Entry.Payload.Text),
    };
}
