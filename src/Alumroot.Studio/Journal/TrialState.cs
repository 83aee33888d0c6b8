using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>A jar as it stands today.</summary>
/// <param name="Jar">As it was laid out.</param>
/// <param name="Results">The latest result of each name.</param>
/// <param name="Colour">The latest reading of its colour; null before.</param>
/// <param name="ReadyAt">When it is to be looked at; null when nothing is waited for.</param>
public sealed record JarState(TrialJar Jar, IReadOnlyDictionary<string, TrialResult> Results, TrialJarRead? Colour, DateTimeOffset? ReadyAt)
{
    /// <summary>Whether anything was read of it.</summary>
    public bool IsRead => Results.Count > 0 || Colour is not null;
}

/// <summary>A trial as it stands today: a projection of its entries.</summary>
/// <param name="Key">The trial.</param>
/// <param name="Begun">Its design; null when that entry is missing or taken back.</param>
/// <param name="At">When it began.</param>
/// <param name="IsEnded">Whether it is over.</param>
/// <param name="Jars">Its jars in the order of making.</param>
/// <param name="Entries">All entries, those that no longer count too.</param>
public sealed record TrialState(SubjectKey Key, TrialBegun? Begun, DateTimeOffset At, bool IsEnded, IReadOnlyList<JarState> Jars, IReadOnlyList<StandingEntry> Entries)
{
    /// <summary>The words for how a trial stands.</summary>
    public const string LaidOut = "laid-out", Reading = "reading", AllRead = "all-read", Ended = "ended", TakenBack = "taken-back";

    /// <summary>How it stands, in one of the words.</summary>
    public string Stage => Begun is null ? TakenBack : IsEnded ? Ended : Jars.All(j => j.IsRead) ? AllRead : Jars.Any(j => j.IsRead) ? Reading : LaidOut;

    /// <summary>When a jar is next to be looked at; null when nothing is waited for, or the trial is over.</summary>
    public DateTimeOffset? ReadyAt => IsEnded ? null : Jars.Select(j => j.ReadyAt).Min();

    /// <summary>The names of results that are asked for or were read, in the order of asking, then of reading.</summary>
    public IReadOnlyList<string> ResultNames => [.. (Begun?.Results ?? []).Concat(Jars.SelectMany(j => j.Results.Keys)).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Projects a trial.</summary>
    /// <param name="key">The trial.</param>
    /// <param name="entries">Its entries in any order, one or more.</param>
    public static TrialState Of(SubjectKey key, IEnumerable<Entry> entries)
    {
        IReadOnlyList<StandingEntry> all = Standings.Of(entries);
        StudioDocument[] standing = [.. all.Where(e => e.Standing == Standing.Stands).Select(e => DocumentText.Read(e.Entry)).OfType<DocumentReading.Known>().Select(r => r.Document)];
        TrialBegun? begun = standing.OfType<TrialBegun>().FirstOrDefault(HoldsTogether);
        ILookup<int, TrialJarRead> read = standing.OfType<TrialJarRead>().ToLookup(r => r.Jar);
        return new TrialState(key, begun, all[0].Entry.At, standing.OfType<TrialEnded>().Any(), [.. (begun?.Jars ?? []).Select(j => Jar(j, [.. read[j.Order]], begun!.ReadyAt))], all);
    }

    // A file from elsewhere may name settings that it does not have.
    private static bool HoldsTogether(TrialBegun begun) =>
        begun.Jars.All(j => j.Levels.Count == begun.Factors.Count && j.Levels.Zip(begun.Factors).All(p => p.First >= 0 && p.First < p.Second.Settings.Count)) && begun.Jars.DistinctBy(j => j.Order).Count() == begun.Jars.Count;

    private static JarState Jar(TrialJar jar, TrialJarRead[] read, DateTimeOffset? ready)
    {
        var results = new Dictionary<string, TrialResult>(StringComparer.OrdinalIgnoreCase);
        foreach (TrialResult result in read.SelectMany(r => r.Results)) results[result.Value.Name] = result;
        return new JarState(jar, results, read.LastOrDefault(r => r.Colour is not null), read.Length > 0 ? read[^1].ReadyAt : ready);
    }
}
