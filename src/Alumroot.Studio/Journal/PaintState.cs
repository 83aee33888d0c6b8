using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A paint as it stands today: a projection of its entries.</summary>
/// <param name="Key">The paint.</param>
/// <param name="Made">How it was made; null when that entry is missing or taken back.</param>
/// <param name="At">When it was made.</param>
/// <param name="IsUsedUp">Whether nothing of it is left.</param>
/// <param name="Entries">All entries, those that no longer count too.</param>
public sealed record PaintState(SubjectKey Key, PaintMade? Made, DateTimeOffset At, bool IsUsedUp, IReadOnlyList<StandingEntry> Entries)
{
    /// <summary>The word of a paint that is there, and of one that is not.</summary>
    public const string There = "made", Gone = "used-up", TakenBack = "taken-back";

    /// <summary>How it stands, in one of the words.</summary>
    public string Stage => Made is null ? TakenBack : IsUsedUp ? Gone : There;

    /// <summary>The photographs of all entries that count, in order of time.</summary>
    public IReadOnlyList<string> Photos => [.. Entries.Where(e => e.Standing == Standing.Stands).SelectMany(e => e.Entry.Payload.PhotoHashes())];

    /// <summary>The colours that were read of it, in order of time.</summary>
    public IReadOnlyList<SwatchRead> Colours { get; private init; } = [];

    /// <summary>Projects a paint.</summary>
    /// <param name="key">The paint.</param>
    /// <param name="entries">Its entries in any order, one or more.</param>
    public static PaintState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        StudioDocument[] standing = [.. all.Where(e => e.Standing == Standing.Stands).Select(e => DocumentText.Read(e.Entry)).OfType<DocumentReading.Known>().Select(r => r.Document)];
        return new PaintState(key, standing.OfType<PaintMade>().LastOrDefault(), all[0].Entry.At, standing.OfType<PaintUsedUp>().Any(), all) { Colours = [.. standing.OfType<SwatchRead>()] };
    }
}
