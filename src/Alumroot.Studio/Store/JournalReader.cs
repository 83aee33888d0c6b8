using System.Globalization;
using Alumroot.Studio.Journal;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Alumroot.Studio.Store;

/// <summary>Reads entries and lists.</summary>
internal sealed class JournalReader(Database database)
{
    public Entry? Find(EntryId id) => With(context =>
    {
        string text = id.Text;
        return context.Entries.FirstOrDefault(e => e.Id == text)?.ToEntry();
    });

    /// <summary>A subject's entries in the order they came.</summary>
    public IReadOnlyList<Entry> EntriesOf(SubjectKey subject) => With(context => Of(context, [subject.ToString()]));

    /// <summary>A lot's entries and those of all batches that used it.</summary>
    public IReadOnlyList<Entry> EntriesTouching(SubjectKey lot) => With(context =>
    {
        string key = lot.ToString();
        string[] users = [.. context.Uses.Where(u => u.Lot == key).Join(context.Entries, u => u.Sequence, e => e.Sequence, (u, e) => e.Subject).Distinct()];
        return Of(context, [key, .. users]);
    });

    /// <summary>All entries in the order they came, read as they are asked for.</summary>
    public IEnumerable<Entry> All()
    {
        using StudioContext context = Outside.Do(database.Context);
        foreach (EntryRow row in context.Entries.OrderBy(e => e.Sequence)) yield return row.ToEntry();
    }

    public long Count() => With(context => context.Entries.LongCount());

    /// <summary>Batches and lots, the latest touched first.</summary>
    /// <param name="words">Only those with entries that hold every one of these words or their beginnings; null for all.</param>
    /// <param name="most">At most so many.</param>
    /// <param name="kind">Only batches or only lots; null for both.</param>
    /// <param name="stages">Only these stages; none for all.</param>
    public IReadOnlyList<SubjectLine> List(string? words, int most, SubjectClass? kind, IReadOnlyCollection<string>? stages) => With(context =>
    {
        string studio = SubjectLine.Word(SubjectClass.Studio);
        IQueryable<SubjectRow> rows = context.Subjects.Where(r => r.Class != studio);
        if (kind is { } only)
        {
            string word = SubjectLine.Word(only);
            rows = context.Subjects.Where(r => r.Class == word);
        }
        if (stages is { Count: > 0 }) rows = rows.Where(r => stages.Contains(r.Stage));
        if (!string.IsNullOrWhiteSpace(words))
        {
            HashSet<string>? found = null;
            var connection = (SqliteConnection)context.Database.GetDbConnection();
            foreach (string question in SearchWords.Questions(words))
            {
                IReadOnlyList<string> holding = connection.Texts("SELECT DISTINCT subject FROM entry_text WHERE entry_text MATCH $question", ("$question", question));
                if (found is null) found = [.. holding];
                else found.IntersectWith(holding);
            }
            if (found is null) return [];
            rows = rows.Where(r => found.Contains(r.Subject));
        }
        return (IReadOnlyList<SubjectLine>)[.. rows.OrderByDescending(r => r.LastUnixMs).ThenByDescending(r => r.Subject).Take(most).AsEnumerable().Select(Line)];
    });

    /// <summary>The latest entries, newest first.</summary>
    public IReadOnlyList<Entry> Latest(int most, EntryId? before) => With(context =>
    {
        string? text = before?.Text;
        long end = text is null ? long.MaxValue : context.Entries.Where(e => e.Id == text).Select(e => e.Sequence).FirstOrDefault();
        return (IReadOnlyList<Entry>)[.. context.Entries.Where(e => e.Sequence < end).OrderByDescending(e => e.Sequence).Take(most).AsEnumerable().Select(e => e.ToEntry())];
    });

    /// <summary>Subjects that wait for the maker, the earliest first.</summary>
    public IReadOnlyList<SubjectLine> Due(int most) => With(context =>
        (IReadOnlyList<SubjectLine>)[.. context.Subjects.Where(s => s.DueUnixMs != null).OrderBy(s => s.DueUnixMs).Take(most).AsEnumerable().Select(Line)]);

    /// <summary>How many entries from elsewhere are kept aside.</summary>
    public long AsideCount() => With(context => context.Aside.LongCount());

    private static SubjectLine Line(SubjectRow row) =>
        row.TryLine() ?? throw new StudioException(new StudioFailure(TroubleKind.Damaged, string.Create(CultureInfo.InvariantCulture, $"the list's line of '{row.Subject}' cannot be read")));

    private static IReadOnlyList<Entry> Of(StudioContext context, string[] subjects) =>
        [.. context.Entries.Where(e => subjects.Contains(e.Subject)).OrderBy(e => e.Sequence).AsEnumerable().Select(e => e.ToEntry())];

    private T With<T>(Func<StudioContext, T> read) => Outside.Do(() =>
    {
        using StudioContext context = database.Context();
        return read(context);
    });
}
