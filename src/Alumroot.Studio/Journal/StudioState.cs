using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>The studio's own ways as they stand today: a projection of its entries.</summary>
/// <param name="Set">How it likes to work.</param>
/// <param name="Bowls">The latest weighing of each bowl, by name.</param>
/// <param name="Entries">All entries about the studio itself.</param>
public sealed record StudioState(StudioSet Set, IReadOnlyList<BowlWeighed> Bowls, IReadOnlyList<StandingEntry> Entries)
{
    /// <summary>The targets of known colours, the latest of each name, by name.</summary>
    public IReadOnlyList<TargetKept> Targets { get; init; } = [];

    /// <summary>Projects the studio.</summary>
    /// <param name="entries">Its own entries in any order.</param>
    public static StudioState Of(IEnumerable<Entry> entries)
    {
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        StudioDocument[] standing = [.. all.Where(e => e.Standing == Standing.Stands).Select(e => DocumentText.Read(e.Entry)).OfType<DocumentReading.Known>().Select(r => r.Document)];
        return new StudioState(
            standing.OfType<StudioSet>().LastOrDefault() ?? new StudioSet(),
            [.. standing.OfType<BowlWeighed>().GroupBy(b => b.Bowl, StringComparer.OrdinalIgnoreCase).Select(g => g.Last()).OrderBy(b => b.Bowl, StringComparer.OrdinalIgnoreCase)],
            all)
        {
            Targets = [.. standing.OfType<TargetKept>().GroupBy(t => t.Title, StringComparer.OrdinalIgnoreCase).Select(g => g.Last()).OrderBy(t => t.Title, StringComparer.OrdinalIgnoreCase)],
        };
    }
}
