using Alumroot.Studio.Journal;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Alumroot.Studio.Store;

/// <summary>Writes what lists and search show of a subject, worked out from its entries.</summary>
internal static class Projector
{
    private const int SubjectsAtOnce = 500;

    // Room for so many bits of subjects whose latest entry has the same millisecond.
    private const int SameTimeBits = 16;

    public static void Project(StudioContext context, IEnumerable<SubjectKey> subjects)
    {
        var connection = (SqliteConnection)context.Database.GetDbConnection();
        foreach (SubjectKey[] part in subjects.Chunk(SubjectsAtOnce))
        {
            string[] keys = [.. part.Select(s => s.ToString())];
            ILookup<string, Entry> entries = context.Entries.Where(e => keys.Contains(e.Subject)).OrderBy(e => e.Sequence).AsEnumerable().Select(e => e.ToEntry()).ToLookup(e => e.Subject.ToString());
            Dictionary<string, long?> before = context.Subjects.Where(s => keys.Contains(s.Subject)).Select(s => new { s.Subject, s.SearchRow }).ToDictionary(s => s.Subject, s => s.SearchRow);
            var taken = new HashSet<long>();
            foreach (SubjectKey subject in part)
            {
                Entry[] own = [.. entries[subject.ToString()]];
                SubjectRow row = SubjectRow.Of(SubjectLine.Of(subject, own));
                bool known = before.TryGetValue(row.Subject, out long? old);
                row = row with { SearchRow = Place(connection, row.LastUnixMs, old, taken) };
                if (old is not null) connection.Run("DELETE FROM subject_text WHERE rowid = $row", ("$row", old));
                connection.Run("INSERT INTO subject_text (rowid, words, marks) VALUES ($row, $words, $marks)", ("$row", row.SearchRow), ("$words", SearchWords.Of(own)), ("$marks", SearchWords.Marks(row)));
                context.Entry(row).State = known ? EntityState.Modified : EntityState.Added;
            }
            context.SaveChanges();
            context.ChangeTracker.Clear();
        }
    }

    /// <summary>A free number in the search: by the time of the latest entry, then in the order of coming.</summary>
    private static long Place(SqliteConnection connection, long lastUnixMs, long? old, HashSet<long> taken)
    {
        long first = Math.Max(0, lastUnixMs) << SameTimeBits;
        if (old >> SameTimeBits == first >> SameTimeBits) return old!.Value;
        long place = 1 + connection.Number("SELECT coalesce(max(search_row), $first - 1) FROM subject WHERE search_row >= $first AND search_row < $end", ("$first", first), ("$end", first + (1L << SameTimeBits)));
        while (!taken.Add(place) || connection.Number("SELECT count(*) FROM subject WHERE search_row = $place", ("$place", place)) > 0) place++;
        return place;
    }
}
