using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Alumroot.Studio.Store;

/// <summary>Adds entries. Whatever it says was kept was committed and flushed before it said so.</summary>
internal sealed class JournalWriter(Database database, PhotoFolder photos)
{
    private const int EntriesAtOnce = 2000;

    // "26-" or "lot".
    private const int SeriesCharacters = 3;

    /// <summary>Adds one entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="after">The latest entry of its subject that the maker had seen; null when that does not matter.</param>
    public AppendResult Append(Entry entry, EntryId? after) => InTransaction(context =>
    {
        if (Existing(context, entry.Id) is { } there) return Settled(there, there.SaysTheSameAs(entry));
        if (after is { } seen && Latest(context, entry.Subject) is { } latest && latest.Id != seen) return new AppendResult.MovedOn(latest);
        if (entry.Corrects is { } corrects && Existing(context, corrects)?.Subject != entry.Subject) return new AppendResult.NothingToCorrect(corrects);
        if (entry.Payload.PhotoHashes().FirstOrDefault(h => !photos.Has(h)) is { } missing) return new AppendResult.PhotoMissing(missing);
        Add(context, [entry]);
        return new AppendResult.Kept(entry);
    });

    /// <summary>Adds the first entry of a new batch or lot and gives it the next number.</summary>
    public AppendResult AppendNew(SubjectClass kind, EntryId id, StudioDocument document, DateTimeOffset at) => InTransaction(context =>
    {
        if (Existing(context, id) is { } there) return Settled(there, there.SaysTheSameAs(document.ToEntry(id, there.Subject, at)) && there.Subject.Class == kind);
        if (document.Photos.FirstOrDefault(h => !photos.Has(h)) is { } missing) return new AppendResult.PhotoMissing(missing);
        Entry entry = document.ToEntry(id, Next(context, kind, at.Year), at);
        Add(context, [entry]);
        return new AppendResult.Kept(entry);
    });

    /// <summary>Adds entries from elsewhere in one transaction: those that are new are added, others with a known number are told apart.</summary>
    /// <param name="entries">Each with its own number.</param>
    /// <param name="asideAt">The time to note beside an entry that is kept aside.</param>
    public MergeResult Merge(IReadOnlyCollection<Entry> entries, DateTimeOffset asideAt) => InTransaction(context =>
    {
        var added = new List<Entry>();
        var conflicts = new List<Entry>();
        int there = 0;
        foreach (Entry[] part in entries.Chunk(EntriesAtOnce))
        {
            string[] ids = [.. part.Select(e => e.Id.Text)];
            Dictionary<string, string> known = context.Entries.Where(e => ids.Contains(e.Id)).Select(e => new { e.Id, e.Checksum }).ToDictionary(e => e.Id, e => e.Checksum);
            foreach (Entry entry in part)
            {
                if (!known.TryGetValue(entry.Id.Text, out string? checksum)) added.Add(entry);
                else if (checksum == entry.Checksum) there++;
                else conflicts.Add(entry);
            }
        }
        Add(context, added);
        foreach (Entry conflict in conflicts)
            Connection(context).Run(
                "INSERT OR IGNORE INTO kept_aside (id, checksum_sha256, entry_json, aside_unix_ms) VALUES ($id, $sum, $json, $at)",
                ("$id", conflict.Id.Text), ("$sum", conflict.Checksum), ("$json", Exchange.EntryLine.Write(conflict)), ("$at", asideAt.ToUnixTimeMilliseconds()));
        return new MergeResult(added, there, conflicts);
    });

    /// <summary>Works out anew the lines of lists that an older program wrote. Does nothing when there are none.</summary>
    public void BringListsUpToDate() => InTransaction(context =>
    {
        string[] old = [.. context.Subjects.Where(s => s.Projection != SubjectRow.PresentProjection).Select(s => s.Subject)];
        Projector.Project(context, old.Select(SubjectKey.TryRead).OfType<SubjectKey>());
        return old.Length;
    });

    private T InTransaction<T>(Func<StudioContext, T> work) => Outside.Do(() =>
    {
        using StudioContext context = database.Context();
        // Immediate: the right to write is taken before anything is read, so that what was read still holds.
        using SqliteTransaction transaction = Connection(context).BeginTransaction(deferred: false);
        context.Database.UseTransaction(transaction);
        T result = work(context);
        transaction.Commit();
        return result;
    });

    private static void Add(StudioContext context, IReadOnlyList<Entry> entries)
    {
        if (entries.Count == 0) return;
        EntryRow? last = context.Entries.OrderByDescending(e => e.Sequence).FirstOrDefault();
        (long sequence, string chain) = last is null ? (0, Chain.Start) : (last.Sequence, last.Chain);
        foreach (Entry[] part in entries.Chunk(EntriesAtOnce))
        {
            foreach (Entry entry in part)
            {
                chain = Chain.Next(chain, entry.Checksum);
                context.Entries.Add(EntryRow.Of(entry, ++sequence, chain));
                foreach (string hash in entry.Payload.PhotoHashes().Distinct()) context.Photos.Add(new PhotoRow(sequence, hash));
                foreach (string lot in LotsOf(entry)) context.Uses.Add(new UseRow(sequence, lot));
            }
            context.SaveChanges();
            context.ChangeTracker.Clear();
        }
        Projector.Project(context, entries.Select(e => e.Subject).Distinct());
    }

    private static IEnumerable<string> LotsOf(Entry entry) =>
        DocumentText.Read(entry) switch
        {
            DocumentReading.Known { Document: ExposureBegun exposure } => exposure.Samples.Select(u => u.Key?.ToString()).OfType<string>().Distinct(),
            DocumentReading.Known { Document: PaintMade paint } => paint.Lakes.Select(u => u.Key?.ToString()).Concat(paint.Uses.Select(u => u.Key?.ToString())).OfType<string>().Distinct(),
            DocumentReading.Known { Document: var said } => said.TakenFromShelf.Select(u => u.Key?.ToString()).OfType<string>().Distinct(),
            _ => [],
        };

    private static AppendResult Settled(Entry there, bool same) => same ? new AppendResult.AlreadyThere(there) : new AppendResult.NumberTaken(there);

    private static Entry? Existing(StudioContext context, EntryId id)
    {
        string text = id.Text;
        return context.Entries.FirstOrDefault(e => e.Id == text)?.ToEntry();
    }

    private static Entry? Latest(StudioContext context, SubjectKey subject)
    {
        string key = subject.ToString();
        return context.Entries.Where(e => e.Subject == key).OrderByDescending(e => e.Sequence).FirstOrDefault()?.ToEntry();
    }

    private static SubjectKey Next(StudioContext context, SubjectClass kind, int year)
    {
        // The words of the indexes in 0005.sql and 0006.sql.
        if (kind == SubjectClass.Paint) return SubjectKey.Paint(1 + (int)Connection(context).Number("SELECT coalesce(max(CAST(substr(subject, 3) AS INTEGER)), 0) FROM subject WHERE class = 'paint'"));
        if (kind == SubjectClass.Exposure) return SubjectKey.Exposure(1 + (int)Connection(context).Number("SELECT coalesce(max(CAST(substr(subject, 3) AS INTEGER)), 0) FROM subject WHERE class = 'exposure'"));
        // Trials are few, and the index by class finds them.
        if (kind == SubjectClass.Trial) return SubjectKey.Trial(1 + (int)Connection(context).Number("SELECT coalesce(max(CAST(substr(subject, 3) AS INTEGER)), 0) FROM subject WHERE class = 'trial'"));
        string series = (kind == SubjectClass.Lot ? SubjectKey.Lot(1) : SubjectKey.Batch(year, 1)).ToString()[..SeriesCharacters];
        // The words of the index in 0003.sql.
        int count = 1 + (int)Connection(context).Number(
            "SELECT coalesce((SELECT CAST(ltrim(substr(subject, 4), '-') AS INTEGER) FROM subject WHERE substr(subject, 1, 3) = $series ORDER BY CAST(ltrim(substr(subject, 4), '-') AS INTEGER) DESC LIMIT 1), 0)",
            ("$series", series));
        return kind == SubjectClass.Lot ? SubjectKey.Lot(count) : SubjectKey.Batch(year, count);
    }

    private static SqliteConnection Connection(StudioContext context) => (SqliteConnection)context.Database.GetDbConnection();
}

/// <summary>What came of entries from elsewhere.</summary>
/// <param name="Added">Those that were new.</param>
/// <param name="AlreadyThereCount">How many were there already, the same to the letter.</param>
/// <param name="Conflicts">Those whose number belongs to another entry; they are kept aside.</param>
internal sealed record MergeResult(IReadOnlyList<Entry> Added, int AlreadyThereCount, IReadOnlyList<Entry> Conflicts);
