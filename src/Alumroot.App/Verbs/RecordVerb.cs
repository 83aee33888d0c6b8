using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Verbs.Record;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot record</c>: one entry into the record.</summary>
public static class RecordVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var options = new RecordOptions();
        var verb = new Verb(
            "record",
            "Writes one entry into the record.",
            "alumroot record 26-014 added \"3.0 g\" --strip 5.5",
            "alumroot record new --from plan.json",
            "alumroot record lot salt \"potash alum\" \"500 g\"");
        verb.Add(options.Words);
        foreach (Option option in options.All) verb.Add(option);
        verb.SetAction(parsed => Run(options, parsed, channels));
        return verb;
    }

    private static int Run(RecordOptions options, ParseResult parsed, Channels channels)
    {
        RecordDraft draft = new RecordReader(options, parsed).Read();
        if (draft.Trouble is { } trouble) return channels.End(ExitCode.InputWrong, trouble);
        DateTimeOffset now = TimeProvider.System.GetLocalNow();
        EntryId id = EntryId.New(now);
        if (parsed.GetValue(options.Entry) is { } typed)
        {
            if (EntryId.TryRead(typed) is not { } given) return channels.End(ExitCode.InputWrong, $"'--entry {typed}' cannot be the number of an entry. It is 8 to 64 letters, digits and dashes.");
            id = given;
        }
        foreach (string remark in draft.Remarks) channels.Messages.WriteLine(remark);
        return StudioVerb.Run(parsed.GetValue(options.Studio), StudioAccess.Write, channels, studio =>
        {
            if (draft.Later is { } later && (draft = later(studio)).Trouble is { } wrong) return channels.End(ExitCode.InputWrong, wrong);
            StudioDocument document = draft.Document! with { Note = parsed.GetValue(options.Note) };
            foreach (string file in parsed.GetValue(options.Photo) ?? [])
            {
                if (Photo(studio, file, out string? hash) is { } why) return channels.End(ExitCode.InputWrong, why);
                document = document with { Photos = [.. document.Photos.Append(hash!).Distinct()] };
            }
            if (draft.Subject is { } about && studio.EntriesOf(about).Count == 0) return channels.End(ExitCode.CannotBeMet, $"There is no {about} in this studio. 'alumroot list' shows what there is.");
            AppendResult result = draft.Subject is { } subject
                ? studio.Append(document.ToEntry(id, subject, now, draft.Corrects))
                : studio.AppendNew(document switch { LotBought => SubjectClass.Lot, TrialBegun => SubjectClass.Trial, _ => SubjectClass.Batch }, id, document, now);
            return Said(result, studio, parsed.GetValue(options.Json), channels);
        });
    }

    private static int Said(AppendResult result, StudioStore studio, bool json, Channels channels)
    {
        if (StudioWords.WhyNot(result) is { } why) return channels.End(ExitCode.CannotBeMet, why);
        (Entry entry, bool wasThere) = result is AppendResult.AlreadyThere there ? (there.Entry, true) : (((AppendResult.Kept)result).Entry, false);
        if (json) channels.Data.WriteLine(Json.Text(new { Subject = entry.Subject.ToString(), Entry = entry.Id.Text, entry.At, WasThere = wasThere }));
        else channels.Data.WriteLine(StudioWords.Kept(entry, wasThere));
        if (DocumentText.Read(entry) is DocumentReading.Known { Document: BatchStep step })
            foreach (LotUse use in step.Uses)
                if (SubjectKey.TryRead(use.Lot) is { } key && StudioWords.Stock(key, studio.Lot(key)) is { } remark) channels.Messages.WriteLine(remark);
        return ExitCode.Done;
    }

    private static string? Photo(StudioStore studio, string file, out string? hash)
    {
        hash = null;
        try
        {
            using FileStream content = File.OpenRead(file);
            PhotoOutcome outcome = studio.Photos.Keep(content);
            if (outcome is PhotoOutcome.Refused refused) return $"{StudioWords.Of(refused.Why, $"'{file}'")} Nothing was recorded.";
            hash = ((PhotoOutcome.Kept)outcome).Hash;
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"'{file}' could not be read, so nothing was recorded. Check the name and whether you may read it.";
        }
    }
}
