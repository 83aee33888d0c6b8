using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A batch as it stands today: a projection of its entries.</summary>
/// <param name="Key">The batch.</param>
/// <param name="Plan">The plan that counts; null when the first entry is missing.</param>
/// <param name="Steps">What was done and counts, in order of time.</param>
/// <param name="GivenUp">Why it was given up, or null.</param>
/// <param name="Entries">All entries, those that no longer count too.</param>
/// <param name="PlanCount">How many plans count; more than one after two studios that used the same number were merged.</param>
public sealed record BatchState(SubjectKey Key, BatchPlanned? Plan, IReadOnlyList<BatchStep> Steps, BatchGivenUp? GivenUp, IReadOnlyList<StandingEntry> Entries, int PlanCount)
{
    /// <summary>The latest step that was recorded, or null.</summary>
    public StepKind? Reached => Steps.Count > 0 ? Steps[^1].Step : null;

    /// <summary>Projects a batch.</summary>
    /// <param name="key">The batch.</param>
    /// <param name="entries">Its entries in any order.</param>
    public static BatchState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        StudioDocument[] standing = [.. all.Where(e => e.Standing == Standing.Stands).Select(e => DocumentText.Read(e.Entry)).OfType<DocumentReading.Known>().Select(r => r.Document)];
        BatchPlanned[] plans = [.. standing.OfType<BatchPlanned>()];
        return new BatchState(key, plans.FirstOrDefault(), [.. standing.OfType<BatchStep>()], standing.OfType<BatchGivenUp>().LastOrDefault(), all, plans.Length);
    }
}
