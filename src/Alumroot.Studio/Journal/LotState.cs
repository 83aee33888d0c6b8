using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A lot as it stands today: what came, less what batches used.</summary>
/// <param name="Key">The lot.</param>
/// <param name="Bought">What came; null when the first entry is missing.</param>
/// <param name="UsedSi">What was used, in the unit of the lot.</param>
/// <param name="UsesInOtherUnit">How many uses are in a unit that cannot be taken from the lot, such as litres from grams; they are not counted.</param>
/// <param name="Entries">All entries about the lot itself.</param>
public sealed record LotState(SubjectKey Key, LotBought? Bought, double UsedSi, int UsesInOtherUnit, IReadOnlyList<StandingEntry> Entries)
{
    // Sums of decimal grams in binary may miss nothing by their last digit.
    private const double RoundingSi = 1e-9;

    /// <summary>What is left, in the unit of the lot; null when it is not known how much came.</summary>
    public double? LeftSi => Bought is null ? null : Bought.Amount.SiValue - UsedSi;

    /// <summary>Whether batches used more than came: a weighing or a lot number is wrong, and the maker is told.</summary>
    public bool BelowNothing => LeftSi < -RoundingSi;

    /// <summary>Projects a lot.</summary>
    /// <param name="key">The lot.</param>
    /// <param name="entries">Its own entries and those of every batch that used it, in any order.</param>
    public static LotState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        ILookup<SubjectKey, Entry> bySubject = entries.ToLookup(e => e.Subject);
        IReadOnlyList<StandingEntry> own = Standings.Of(bySubject[key]);
        LotBought? bought = Documents(own).OfType<LotBought>().LastOrDefault();
        LotUse[] uses = [.. bySubject.Where(g => g.Key != key).SelectMany(g => Documents(Standings.Of(g))).OfType<BatchStep>().SelectMany(s => s.Uses).Where(u => u.Key == key)];
        LotUse[] counted = [.. uses.Where(u => bought is null || u.Amount.SiUnit == bought.Amount.SiUnit)];
        return new LotState(key, bought, counted.Sum(u => u.Amount.SiValue), uses.Length - counted.Length, own);
    }

    private static IEnumerable<StudioDocument> Documents(IReadOnlyList<StandingEntry> entries) =>
        entries.Where(e => e.Standing == Standing.Stands).Select(e => DocumentText.Read(e.Entry)).OfType<DocumentReading.Known>().Select(r => r.Document);
}
