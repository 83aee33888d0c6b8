using System.Text.Json;
using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A batch or lot as one line of a list.</summary>
/// <param name="Subject">Which.</param>
/// <param name="Title">A few words to know it by; empty when there are none.</param>
/// <param name="Stage">For a batch: <c>planned</c>, the latest step, or <c>given-up</c>; for a lot what kind of thing it is; empty when not known.</param>
/// <param name="FirstAt">Time of its first entry.</param>
/// <param name="LastAt">Time of its latest entry.</param>
/// <param name="EntryCount">How many entries it has, those that no longer count too.</param>
public sealed record SubjectLine(SubjectKey Subject, string Title, string Stage, DateTimeOffset FirstAt, DateTimeOffset LastAt, int EntryCount)
{
    /// <summary>The stage of a batch of which only the plan is there.</summary>
    public const string Planned = "planned";

    /// <summary>The stage of a batch that was given up.</summary>
    public const string GivenUp = "given-up";

    /// <summary>Projects the line of a subject.</summary>
    /// <param name="subject">Which.</param>
    /// <param name="entries">Its entries, one or more, in any order.</param>
    public static SubjectLine Of(SubjectKey subject, IReadOnlyCollection<Entry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        (string title, string stage, IReadOnlyList<StandingEntry> all) = subject.Class == SubjectClass.Batch ? OfBatch(BatchState.Of(subject, entries)) : OfLot(LotState.Of(subject, entries));
        return new SubjectLine(subject, title, stage, all[0].Entry.At, all[^1].Entry.At, all.Count);
    }

    /// <summary>The word of a step or kind as it stands in lists, files and on the command line.</summary>
    public static string Word<T>(T value) where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    private static (string, string, IReadOnlyList<StandingEntry>) OfBatch(BatchState batch) =>
        (batch.Plan?.Title ?? "", batch.GivenUp is not null ? GivenUp : batch.Reached is { } step ? Word(step) : batch.Plan is null ? "" : Planned, batch.Entries);

    private static (string, string, IReadOnlyList<StandingEntry>) OfLot(LotState lot) =>
        (lot.Bought?.Title ?? "", lot.Bought is { } bought ? Word(bought.Substance) : "", lot.Entries);
}
