using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A use of a lot that counts.</summary>
/// <param name="By">The batch or paint that used it.</param>
/// <param name="At">When.</param>
/// <param name="Amount">How much.</param>
public sealed record LotTaken(SubjectKey By, DateTimeOffset At, Measured Amount);

/// <summary>A lot as it stands today: what came or was counted, less what batches and paints used since.</summary>
/// <param name="Key">The lot.</param>
/// <param name="Bought">What came; null when the first entry is missing.</param>
/// <param name="Taken">What batches and paints took and counts, in order of time.</param>
/// <param name="LeftSi">What is left, in the unit of the lot; null when it is not known how much came.</param>
/// <param name="Entries">All entries about the lot itself.</param>
public sealed record LotState(SubjectKey Key, LotBought? Bought, IReadOnlyList<LotTaken> Taken, double? LeftSi, IReadOnlyList<StandingEntry> Entries)
{
    // Sums of decimal grams in binary may miss nothing by their last digit.
    private const double RoundingSi = 1e-9;

    /// <summary>The maker's own words for it.</summary>
    public IReadOnlyList<string> Tags { get; init; } = [];

    /// <summary>How many uses are in a unit that cannot be taken from the lot, such as litres from grams; they are not counted.</summary>
    public int UsesInOtherUnit => Bought is null ? 0 : Taken.Count(t => t.Amount.SiUnit != Bought.Amount.SiUnit);

    /// <summary>Whether more was used than came: a weighing or a lot number is wrong, and the maker is told.</summary>
    public bool BelowNothing => LeftSi < -RoundingSi;

    /// <summary>Projects a lot.</summary>
    /// <param name="key">The lot.</param>
    /// <param name="entries">Its own entries and those of every batch and paint that used it, in any order.</param>
    public static LotState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        ILookup<SubjectKey, Entry> bySubject = entries.ToLookup(e => e.Subject);
        IReadOnlyList<StandingEntry> own = Standings.Of(bySubject[key]);
        (DateTimeOffset At, StudioDocument Document)[] standing = [.. Documents(own)];
        LotBought? bought = standing.Select(d => d.Document).OfType<LotBought>().LastOrDefault();
        LotTaken[] taken =
        [
            .. bySubject.Where(g => g.Key != key)
                .SelectMany(g => Documents(Standings.Of(g)).SelectMany(d => d.Document.TakenFromShelf.Where(u => u.Key == key).Select(u => new LotTaken(g.Key, d.At, u.Amount))))
                .OrderBy(t => t.At.UtcTicks).ThenBy(t => t.By.ToString(), StringComparer.Ordinal),
        ];
        (DateTimeOffset At, LotCounted? Count) counted = standing.Where(d => d.Document is LotCounted c && c.Left.SiUnit == bought?.Amount.SiUnit).Select(d => (d.At, (LotCounted?)d.Document)).LastOrDefault();
        double? from = counted.Count?.Left.SiValue ?? bought?.Amount.SiValue;
        double used = taken.Where(t => t.Amount.SiUnit == bought?.Amount.SiUnit && (counted.Count is null || t.At > counted.At)).Sum(t => t.Amount.SiValue);
        return new LotState(key, bought, taken, from - used, own) { Tags = standing.Select(d => d.Document).OfType<Tagged>().LastOrDefault()?.Tags ?? [] };
    }

    private static IEnumerable<(DateTimeOffset At, StudioDocument Document)> Documents(IReadOnlyList<StandingEntry> entries) =>
        entries.Where(e => e.Standing == Standing.Stands).Select(e => (e.Entry.At, Reading: DocumentText.Read(e.Entry) as DocumentReading.Known)).Where(e => e.Reading is not null).Select(e => (e.At, e.Reading!.Document));
}
