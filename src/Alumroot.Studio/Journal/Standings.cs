using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>Works out which entries count. Pure, and independent of the order in which the entries came.</summary>
/// <remarks>
/// Of several corrections of one entry the latest counts. Undoing a correction brings back what it had corrected.
/// Entries that correct one another in a circle, which only a damaged import can hold, do not count.
/// </remarks>
public static class Standings
{
    /// <summary>All entries in order of time, each with whether it counts.</summary>
    /// <param name="entries">Entries with different numbers, in any order.</param>
    public static IReadOnlyList<StandingEntry> Of(IEnumerable<Entry> entries)
    {
        Entry[] ordered = [.. entries.OrderBy(e => e.At.UtcTicks).ThenBy(e => e.Id.Text, StringComparer.Ordinal)];
        Dictionary<EntryId, int> index = ordered.Select((e, i) => (e.Id, i)).ToDictionary(p => p.Id, p => p.i);
        int?[] target = [.. ordered.Select(e => e.Corrects is { } t && index.TryGetValue(t, out int at) && ordered[at].Subject == e.Subject ? at : (int?)null)];
        int[] waitingFor = new int[ordered.Length];
        foreach (int? t in target) if (t is { } at) waitingFor[at]++;

        // An entry is settled when all its corrections are; winner[i] is the latest correction that was not itself undone.
        int?[] winner = new int?[ordered.Length];
        bool[] settled = new bool[ordered.Length];
        var ready = new Stack<int>(Enumerable.Range(0, ordered.Length).Where(i => waitingFor[i] == 0));
        while (ready.TryPop(out int i))
        {
            settled[i] = true;
            if (target[i] is not { } t) continue;
            if (!IsUndone(i) && !(winner[t] > i)) winner[t] = i;
            if (--waitingFor[t] == 0) ready.Push(t);
        }

        // From each first entry the way leads over the winning corrections to the one that counts.
        bool[] counts = new bool[ordered.Length];
        for (int i = 0; i < ordered.Length; i++)
        {
            if (target[i] is not null) continue;
            int at = i;
            while (winner[at] is { } next && !IsUndoing(next)) at = next;
            counts[at] = winner[at] is null;
        }
        return [.. ordered.Select((e, i) => new StandingEntry(e, StandingOf(i), ByWhom(i) is { } by ? ordered[by].Id : null))];

        bool IsUndoing(int i) => ordered[i].Kind.Name == Withdrawn.Name;
        bool IsUndone(int i) => winner[i] is { } w && IsUndoing(w);
        Standing StandingOf(int i) => IsUndone(i) ? Standing.Withdrawn
            : settled[i] && winner[i] is null && (counts[i] || IsUndoing(i)) ? Standing.Stands : Standing.Superseded;
        int? ByWhom(int i) => winner[i] is { } w ? w : target[i] is { } t && winner[t] is { } rival && rival != i ? rival : null;
    }
}
