using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A document of an exposure and when it was kept.</summary>
/// <typeparam name="T">Which document.</typeparam>
/// <param name="Id">Its entry.</param>
/// <param name="At">When.</param>
/// <param name="Said">What it says.</param>
public sealed record ExposureEntry<T>(EntryId Id, DateTimeOffset At, T Said) where T : StudioDocument;

/// <summary>An exposure as it stands today: a projection of its entries.</summary>
/// <param name="Key">The exposure.</param>
/// <param name="Begun">How it was begun; null when that entry is missing or taken back.</param>
/// <param name="At">When it was begun.</param>
/// <param name="EndedAt">When the strips were taken out of the light; null while they lie there.</param>
/// <param name="Entries">All entries, those that no longer count too.</param>
public sealed record ExposureState(SubjectKey Key, ExposureBegun? Begun, DateTimeOffset At, DateTimeOffset? EndedAt, IReadOnlyList<StandingEntry> Entries)
{
    /// <summary>The word of an exposure that goes on, of one that has ended, and of one that was taken back.</summary>
    public const string InTheLight = "in-the-light", Over = "ended", TakenBack = "taken-back";

    /// <summary>How it stands, in one of the words.</summary>
    public string Stage => Begun is null ? TakenBack : EndedAt is null ? InTheLight : Over;

    /// <summary>The strips as they were read, by time.</summary>
    public IReadOnlyList<ExposureEntry<ExposureRead>> Readings { get; private init; } = [];

    /// <summary>Levels read off a meter, by time.</summary>
    public IReadOnlyList<ExposureEntry<LightRead>> Levels { get; private init; } = [];

    /// <summary>Files of loggers, by the time of their first reading.</summary>
    public IReadOnlyList<ExposureEntry<LightLogged>> Logs { get; private init; } = [];

    /// <summary>When the maker is to read the strips; null when nothing is waited for.</summary>
    public DateTimeOffset? ReadyAt { get; private init; }

    /// <summary>The photographs of all entries that count, in order of time.</summary>
    public IReadOnlyList<string> Photos => [.. Entries.Where(e => e.Standing == Standing.Stands).SelectMany(e => e.Entry.Payload.PhotoHashes())];

    /// <summary>Projects an exposure.</summary>
    /// <param name="key">The exposure.</param>
    /// <param name="entries">Its entries in any order, one or more.</param>
    public static ExposureState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        (Entry Entry, StudioDocument Document)[] standing =
            [.. all.Where(e => e.Standing == Standing.Stands).Select(e => (e.Entry, (DocumentText.Read(e.Entry) as DocumentReading.Known)?.Document!)).Where(e => e.Item2 is not null)];
        ExposureEntry<ExposureBegun>? begun = Those<ExposureBegun>(standing) is [.., var latest] ? latest : null;
        ExposureEntry<ExposureEnded>? ended = Those<ExposureEnded>(standing) is [.., var last] ? last : null;
        IReadOnlyList<ExposureEntry<ExposureRead>> readings = Those<ExposureRead>(standing);
        return new ExposureState(key, begun?.Said, begun?.At ?? all[0].Entry.At, ended?.At, all)
        {
            Readings = readings,
            Levels = Those<LightRead>(standing),
            Logs = [.. Those<LightLogged>(standing).OrderBy(l => l.Said.From)],
            ReadyAt = begun is null || ended is not null ? null : readings.Count > 0 ? readings[^1].Said.ReadyAt : begun.Said.ReadyAt,
        };
    }

    private static IReadOnlyList<ExposureEntry<T>> Those<T>((Entry Entry, StudioDocument Document)[] standing) where T : StudioDocument =>
        [.. standing.Where(s => s.Document is T).Select(s => new ExposureEntry<T>(s.Entry.Id, s.Entry.At, (T)s.Document))];
}
