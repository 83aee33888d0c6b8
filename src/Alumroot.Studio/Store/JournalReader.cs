using System.Globalization;
using Alumroot.Studio.Documents;
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

    /// <summary>A lot's entries, the steps and paints that used it, and what was corrected in their batches and paints: all that its stock hangs on.</summary>
    public IReadOnlyList<Entry> EntriesTouching(SubjectKey lot) => With(context =>
    {
        string key = lot.ToString();
        IQueryable<long> uses = context.Uses.Where(u => u.Lot == key).Select(u => u.Sequence);
        IQueryable<string> users = context.Entries.Where(e => uses.Contains(e.Sequence)).Select(e => e.Subject);
        IQueryable<EntryRow> corrections = context.Entries.Where(e => e.CorrectsId != null && users.Contains(e.Subject));
        return (IReadOnlyList<Entry>)[.. context.Entries
            .Where(e => e.Subject == key || uses.Contains(e.Sequence) || corrections.Any(c => c.Sequence == e.Sequence || c.CorrectsId == e.Id))
            .OrderBy(e => e.Sequence).AsEnumerable().Select(e => e.ToEntry())];
    });

    /// <summary>The entries of everything of one class.</summary>
    public IReadOnlyList<Entry> EntriesOf(SubjectClass kind) => With(context =>
    {
        string word = SubjectLine.Word(kind);
        return Of(context, [.. context.Subjects.Where(s => s.Class == word).Select(s => s.Subject)]);
    });

    /// <summary>The entries of all paints that ever named a lake, or of all paints there are.</summary>
    /// <param name="lake">The lake; null for all paints.</param>
    public IReadOnlyList<Entry> EntriesOfPaints(SubjectKey? lake) => With(context =>
    {
        string? key = lake?.ToString();
        string[] paints = key is null
            ? [.. context.Subjects.Where(s => s.Class == "paint").Select(s => s.Subject)]
            : [.. context.Uses.Where(u => u.Lot == key).Join(context.Entries.Where(e => e.Document == PaintMade.Name), u => u.Sequence, e => e.Sequence, (u, e) => e.Subject).Distinct()];
        return Of(context, paints);
    });

    /// <summary>The entries of all exposures in which a lake or paint ever lay, or of all exposures there are.</summary>
    /// <param name="of">The lake or paint; null for all exposures.</param>
    public IReadOnlyList<Entry> EntriesOfExposures(SubjectKey? of) => With(context =>
    {
        string? key = of?.ToString();
        string[] exposures = key is null
            ? [.. context.Subjects.Where(s => s.Class == "exposure").Select(s => s.Subject)]
            : [.. context.Uses.Where(u => u.Lot == key).Join(context.Entries.Where(e => e.Document == ExposureBegun.Name), u => u.Sequence, e => e.Sequence, (u, e) => e.Subject).Distinct()];
        return Of(context, exposures);
    });

    /// <summary>All entries in the order they came, read as they are asked for.</summary>
    public IEnumerable<Entry> All()
    {
        using StudioContext context = Outside.Do(database.Context);
        foreach (EntryRow row in context.Entries.OrderBy(e => e.Sequence)) yield return row.ToEntry();
    }

    // Entries are numbered without gaps and never removed.
    public long Count() => With(context => context.Entries.Max(e => (long?)e.Sequence) ?? 0);

    /// <summary>Batches and lots, the latest touched first.</summary>
    /// <param name="typed">Only those with entries that hold every one of these words or their beginnings; null for all.</param>
    /// <param name="most">At most so many.</param>
    /// <param name="kind">Only batches or only lots; null for both.</param>
    /// <param name="stages">Only these stages; none for all.</param>
    public IReadOnlyList<SubjectLine> List(string? typed, int most, SubjectClass? kind, IReadOnlyCollection<string>? stages) => With(context =>
    {
        SubjectClass[] classes = kind is { } only ? [only] : [SubjectClass.Batch, SubjectClass.Lot, SubjectClass.Paint, SubjectClass.Exposure, SubjectClass.Trial];
        string[] words = [.. classes.Select(SubjectLine.Word)];
        if (string.IsNullOrWhiteSpace(typed))
        {
            // One ordered walk for each class and stage, cut off where enough was seen.
            IEnumerable<SubjectRow> rows = words.SelectMany(w => stages is { Count: > 0 }
                ? stages.Distinct().SelectMany(s => Newest(context.Subjects.Where(r => r.Class == w && r.Stage == s), most))
                : Newest(context.Subjects.Where(r => r.Class == w), most));
            return [.. rows.OrderByDescending(r => r.LastUnixMs).ThenByDescending(r => r.Subject, StringComparer.Ordinal).Take(most).Select(Line)];
        }
        if (SearchWords.Question(typed, words, stages ?? []) is not { } question) return [];
        long[] found = [.. ((SqliteConnection)context.Database.GetDbConnection()).Numbers("SELECT rowid FROM subject_text WHERE subject_text MATCH $question ORDER BY rowid DESC LIMIT $most", ("$question", question), ("$most", most))];
        return (IReadOnlyList<SubjectLine>)[.. Newest(context.Subjects.Where(r => r.SearchRow != null && found.Contains(r.SearchRow.Value)), most).Select(Line)];
    });

    private static List<SubjectRow> Newest(IQueryable<SubjectRow> rows, int most) =>
        [.. rows.OrderByDescending(r => r.LastUnixMs).ThenByDescending(r => r.Subject).Take(most)];

    /// <summary>The latest entries, newest first.</summary>
    public IReadOnlyList<Entry> Latest(int most, EntryId? before) => With(context =>
    {
        string? text = before?.Text;
        long end = text is null ? long.MaxValue : context.Entries.Where(e => e.Id == text).Select(e => e.Sequence).FirstOrDefault();
        return (IReadOnlyList<Entry>)[.. context.Entries.Where(e => e.Sequence < end).OrderByDescending(e => e.Sequence).Take(most).AsEnumerable().Select(e => e.ToEntry())];
    });

    /// <summary>The subjects of which a colour was read last, newest first.</summary>
    public IReadOnlyList<SubjectKey> WithColours(int most) => With(context =>
        (IReadOnlyList<SubjectKey>)[.. context.Entries.Where(e => e.Document == SwatchRead.Name).GroupBy(e => e.Subject).Select(g => new { Subject = g.Key, Last = g.Max(e => e.Sequence) })
            .OrderByDescending(g => g.Last).Take(most).Select(g => g.Subject).AsEnumerable().Select(k => SubjectKey.TryRead(k)).OfType<SubjectKey>()]);

    /// <summary>Subjects that wait for the maker, the earliest first.</summary>
    public IReadOnlyList<SubjectLine> Due(int most) => With(context =>
        (IReadOnlyList<SubjectLine>)[.. context.Subjects.Where(s => s.DueUnixMs != null).OrderBy(s => s.DueUnixMs).Take(most).AsEnumerable().Select(Line)]);

    /// <summary>How many entries from elsewhere are kept aside.</summary>
    public long AsideCount() => With(context => context.Aside.LongCount());

    /// <summary>The entries kept aside, the latest first, each with the one here that has its number.</summary>
    public IReadOnlyList<AsideEntry> Aside(int most) => With(context => (IReadOnlyList<AsideEntry>)[.. context.Aside
        .OrderByDescending(a => a.AsideUnixMs).ThenBy(a => a.Id).Take(most)
        .Join(context.Entries, a => a.Id, e => e.Id, (a, e) => new { a.EntryJson, a.AsideUnixMs, Here = e }).AsEnumerable()
        .OrderByDescending(p => p.AsideUnixMs).ThenBy(p => p.Here.Sequence)
        .Select(p => Exchange.EntryLine.TryRead(p.EntryJson) is { } other ? new AsideEntry(other, p.Here.ToEntry(), DateTimeOffset.FromUnixTimeMilliseconds(p.AsideUnixMs)) : null).OfType<AsideEntry>()]);

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
