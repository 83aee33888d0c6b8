using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A step that counts, with the entry that says it.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Step">What it says.</param>
/// <param name="At">When it was done: the time of the entry, or of the first one that it corrects.</param>
public sealed record StepTaken(Entry Entry, BatchStep Step, DateTimeOffset At);

/// <summary>A batch as it stands today: a projection of its entries.</summary>
/// <param name="Key">The batch.</param>
/// <param name="Plan">The plan that counts; null when the first entry is missing.</param>
/// <param name="Taken">What was done and counts, in order of time.</param>
/// <param name="GivenUp">Why it was given up, or null.</param>
/// <param name="Entries">All entries, those that no longer count too.</param>
/// <param name="PlanCount">How many plans count; more than one after two studios that used the same number were merged.</param>
public sealed record BatchState(SubjectKey Key, BatchPlanned? Plan, IReadOnlyList<StepTaken> Taken, BatchGivenUp? GivenUp, IReadOnlyList<StandingEntry> Entries, int PlanCount)
{
    /// <summary>What was done and counts, in order of time.</summary>
    public IReadOnlyList<BatchStep> Steps { get; } = [.. Taken.Select(t => t.Step)];

    /// <summary>Whether nothing of it is left.</summary>
    public bool IsUsedUp { get; init; }

    /// <summary>The maker's own words for it.</summary>
    public IReadOnlyList<string> Tags { get; init; } = [];

    /// <summary>The latest step that was recorded, or null.</summary>
    public StepKind? Reached => Steps.Count > 0 ? Steps[^1].Step : null;

    /// <summary>How far it has come.</summary>
    public BatchStage Stage => BatchStages.Of(Steps, IsUsedUp, GivenUp is not null);

    /// <summary>When the maker is to look again; null when nothing is waited for, or it is over.</summary>
    public DateTimeOffset? ReadyAt => Stage is BatchStage.GivenUp or BatchStage.UsedUp || Steps.Count == 0 ? null : Steps[^1].ReadyAt;

    /// <summary>The pigment's mass in kilograms as last weighed after drying, grinding or sieving; null before.</summary>
    public double? PigmentKg => Stage >= BatchStage.DryCake && Stage != BatchStage.GivenUp
        ? Steps.Where(s => s.Step is StepKind.Dry or StepKind.Grind or StepKind.Sieve).SelectMany(s => s.Values).LastOrDefault(v => v is { Name: "amount", SiUnit: Measured.Kilogram })?.SiValue
        : null;

    /// <summary>The photographs of all entries that count, in order of time.</summary>
    public IReadOnlyList<string> Photos => [.. Entries.Where(e => e.Standing == Standing.Stands).SelectMany(e => e.Entry.Payload.PhotoHashes())];

    /// <summary>Projects a batch.</summary>
    /// <param name="key">The batch.</param>
    /// <param name="entries">Its entries in any order.</param>
    public static BatchState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        (Entry Entry, StudioDocument Document)[] standing =
            [.. all.Where(e => e.Standing == Standing.Stands).Select(e => (e.Entry, Reading: DocumentText.Read(e.Entry) as DocumentReading.Known)).Where(e => e.Reading is not null).Select(e => (e.Entry, e.Reading!.Document))];
        Dictionary<EntryId, Entry> byId = all.ToDictionary(e => e.Entry.Id, e => e.Entry);
        BatchPlanned[] plans = [.. standing.Select(s => s.Document).OfType<BatchPlanned>()];
        return new BatchState(
            key, plans.FirstOrDefault(),
            [.. standing.Where(s => s.Document is BatchStep).Select(s => new StepTaken(s.Entry, (BatchStep)s.Document, DoneAt(s.Entry, byId))).OrderBy(s => s.At.UtcTicks)],
            standing.Select(s => s.Document).OfType<BatchGivenUp>().LastOrDefault(), all, plans.Length)
        {
            IsUsedUp = standing.Any(s => s.Document is BatchUsedUp),
            Tags = standing.Select(s => s.Document).OfType<Tagged>().LastOrDefault()?.Tags ?? [],
        };
    }

    // A correction stands where the entry stood that it corrects.
    private static DateTimeOffset DoneAt(Entry entry, Dictionary<EntryId, Entry> byId)
    {
        for (int turns = byId.Count; turns > 0 && entry.Corrects is { } corrects && byId.TryGetValue(corrects, out Entry? before); turns--) entry = before;
        return entry.At;
    }
}
