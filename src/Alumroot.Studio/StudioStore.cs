using Alumroot.Studio.Documents;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Integrity;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio;

/// <summary>What the studio is opened for.</summary>
public enum StudioAccess
{
    /// <summary>To look only; another program may be writing.</summary>
    Read,

    /// <summary>To write; one program at a time.</summary>
    Write,
}

/// <summary>A studio: one folder with the record and its photographs. May be used from several threads.</summary>
public sealed class StudioStore : IDisposable
{
    /// <summary>The file of the record.</summary>
    public const string DatabaseName = "studio.db";

    /// <summary>The folder of the photographs.</summary>
    public const string PhotosName = "photos";

    /// <summary>The folder of their shrunken copies; it may be removed at any time and fills again.</summary>
    public const string SmallName = "small";

    /// <summary>The folder where copies go unless another is named.</summary>
    public const string BackupsName = "backups";

    private readonly Database _database;
    private readonly JournalWriter _writer;
    private readonly JournalReader _reader;
    private readonly TimeProvider _clock;
    private readonly WriterLock? _lock;

    private StudioStore(string folder, Database database, TimeProvider clock, WriterLock? held)
    {
        (Folder, _database, _clock, _lock) = (folder, database, clock, held);
        Photos = new PhotoFolder(Path.Combine(folder, PhotosName));
        _writer = new JournalWriter(database, Photos);
        _reader = new JournalReader(database);
    }

    /// <summary>The folder.</summary>
    public string Folder { get; }

    /// <summary>The photographs.</summary>
    public PhotoFolder Photos { get; }

    /// <summary>Opens a studio; one that is opened to write is made when missing.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="access">To look or to write.</param>
    /// <param name="clock">Whose time is noted beside copies.</param>
    /// <param name="wait">How long to wait for another program that writes; two seconds when left out.</param>
    /// <exception cref="StudioException">It is missing, cannot be written, is held by another program, is newer than this program, or is damaged.</exception>
    public static StudioStore Open(string folder, StudioAccess access, TimeProvider clock, TimeSpan? wait = null) =>
        Open(folder, access, clock, wait, Migrator.KnownSteps);

    internal static StudioStore Open(string folder, StudioAccess access, TimeProvider clock, TimeSpan? wait, IReadOnlyList<string> steps, int? mostPages = null) => Outside.Do(() =>
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        string file = Path.Combine(folder, DatabaseName);
        if (access == StudioAccess.Read && !File.Exists(file)) throw new StudioException(new StudioFailure(TroubleKind.Missing, file));
        if (access == StudioAccess.Write) Directory.CreateDirectory(folder);
        WriterLock? held = access == StudioAccess.Write ? WriterLock.Take(folder, wait ?? TimeSpan.FromSeconds(2)) : null;
        var database = new Database(file, mostPages);
        try
        {
            var migrator = new Migrator(steps, clock);
            using SqliteConnection connection = database.Open();
            if (!migrator.IsCurrent(connection) || connection.Number("SELECT count(*) FROM subject WHERE projection <> $now", ("$now", SubjectRow.PresentProjection)) > 0)
            {
                // Who only looks takes the lock for the moment in which the form is brought up to date.
                using WriterLock? briefly = held is null ? WriterLock.Take(folder, wait ?? TimeSpan.FromSeconds(2)) : null;
                migrator.Migrate(connection, Path.Combine(folder, BackupsName));
                if (steps.Count == Migrator.KnownSteps.Count) new JournalWriter(database, new PhotoFolder(Path.Combine(folder, PhotosName))).BringListsUpToDate();
            }
            return new StudioStore(folder, database, clock, held);
        }
        catch
        {
            database.Release();
            held?.Dispose();
            throw;
        }
    });

    /// <summary>Adds one entry. When it says kept, it is on disk.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="after">The latest entry of its subject that the maker had seen; with it, nothing is added when something else came since.</param>
    /// <exception cref="StudioException">It could not be written and is not in the record.</exception>
    public AppendResult Append(Entry entry, EntryId? after = null)
    {
        ArgumentNullException.ThrowIfNull(entry);
        MustWrite();
        return _writer.Append(entry, after);
    }

    /// <summary>Adds the first entry of a batch or lot, which gets the next number.</summary>
    /// <param name="kind">Batch or lot.</param>
    /// <param name="id">The entry's number; the same again gives the same batch.</param>
    /// <param name="document">The plan or the purchase.</param>
    /// <param name="at">When.</param>
    /// <exception cref="StudioException">It could not be written and is not in the record.</exception>
    public AppendResult AppendNew(SubjectClass kind, EntryId id, StudioDocument document, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(document);
        MustWrite();
        return _writer.AppendNew(kind, id, document, at);
    }

    /// <summary>Adds many entries at once, all or none; those that are there already are left.</summary>
    /// <param name="entries">Each with its own number, in the order they came.</param>
    /// <exception cref="StudioException">They could not be written and are not in the record.</exception>
    public void AppendAll(IReadOnlyCollection<Entry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        MustWrite();
        _writer.Merge(entries, _clock.GetUtcNow());
    }

    /// <summary>An entry by its number, or null.</summary>
    public Entry? Find(EntryId id) => _reader.Find(id);

    /// <summary>The entries about a batch or lot, in the order they came.</summary>
    public IReadOnlyList<Entry> EntriesOf(SubjectKey subject) => _reader.EntriesOf(subject);

    /// <summary>All entries in the order they came.</summary>
    public IEnumerable<Entry> All() => _reader.All();

    /// <summary>How many entries there are.</summary>
    public long Count() => _reader.Count();

    /// <summary>A batch as it stands, or null when there is none of that number.</summary>
    public BatchState? Batch(SubjectKey key) => EntriesOf(key) is { Count: > 0 } entries ? BatchState.Of(key, entries) : null;

    /// <summary>A lot as it stands, or null when there is none of that number.</summary>
    public LotState? Lot(SubjectKey key) => LotState.Of(key, _reader.EntriesTouching(key)) is { Entries.Count: > 0 } lot ? lot : null;

    /// <summary>A paint as it stands, or null when there is none of that number.</summary>
    public PaintState? Paint(SubjectKey key) => EntriesOf(key) is { Count: > 0 } entries ? PaintState.Of(key, entries) : null;

    /// <summary>The paints that a lake went into, or all, the earliest number first.</summary>
    /// <param name="lake">The lake; null for all paints.</param>
    public IReadOnlyList<PaintState> Paints(SubjectKey? lake = null) =>
        [.. _reader.EntriesOfPaints(lake).GroupBy(e => e.Subject).OrderBy(g => g.Key).Select(g => PaintState.Of(g.Key, g))];

    /// <summary>An exposure as it stands, or null when there is none of that number.</summary>
    public ExposureState? Exposure(SubjectKey key) => EntriesOf(key) is { Count: > 0 } entries ? ExposureState.Of(key, entries) : null;

    /// <summary>The exposures in which a lake or paint lay, or all, the earliest number first.</summary>
    /// <param name="of">The lake or paint; null for all exposures.</param>
    public IReadOnlyList<ExposureState> Exposures(SubjectKey? of = null) =>
        [.. _reader.EntriesOfExposures(of).GroupBy(e => e.Subject).OrderBy(g => g.Key).Select(g => ExposureState.Of(g.Key, g))];

    /// <summary>A trial as it stands, or null when there is none of that number.</summary>
    public TrialState? Trial(SubjectKey key) => EntriesOf(key) is { Count: > 0 } entries ? TrialState.Of(key, entries) : null;

    /// <summary>All trials, the earliest number first.</summary>
    public IReadOnlyList<TrialState> Trials() => [.. _reader.EntriesOf(SubjectClass.Trial).GroupBy(e => e.Subject).OrderBy(g => g.Key).Select(g => TrialState.Of(g.Key, g))];

    /// <summary>The pigment in kilograms that paints took of each lake.</summary>
    public IReadOnlyDictionary<SubjectKey, double> PigmentTakenKg() =>
        Paints().SelectMany(p => p.Made?.Lakes ?? []).Where(u => u.Amount.SiUnit == Measured.Kilogram).Select(u => (u.Key, u.Amount.SiValue)).Where(u => u.Key is not null)
            .GroupBy(u => u.Key!.Value).ToDictionary(g => g.Key, g => g.Sum(u => u.SiValue));

    /// <summary>The pigment in kilograms that is left of a lake: as last weighed, less what paints took since; null when it was never weighed.</summary>
    /// <param name="batch">The lake.</param>
    public double? PigmentLeftKg(BatchState batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        if (batch.PigmentKg is not { } weighed) return null;
        return weighed - Paints(batch.Key).SelectMany(p => p.Made?.Lakes ?? []).Where(u => u.Key == batch.Key && u.Amount.SiUnit == Measured.Kilogram).Sum(u => u.Amount.SiValue);
    }

    /// <summary>The studio's own ways.</summary>
    public StudioState State() => StudioState.Of(EntriesOf(SubjectKey.Studio));

    /// <summary>Batches and lots, the latest touched first.</summary>
    /// <param name="words">Only those whose entries hold every one of these words or their beginnings; null for all.</param>
    /// <param name="most">At most so many.</param>
    /// <param name="kind">Only batches or only lots; null for both.</param>
    /// <param name="stages">Only these stages or kinds of lot; none for all.</param>
    public IReadOnlyList<SubjectLine> List(string? words = null, int most = int.MaxValue, SubjectClass? kind = null, IReadOnlyCollection<string>? stages = null) =>
        _reader.List(words, most, kind, stages);

    /// <summary>The latest entries of the whole record, newest first.</summary>
    /// <param name="most">At most so many.</param>
    /// <param name="before">Only entries that came before this one; null for the newest.</param>
    public IReadOnlyList<Entry> Latest(int most, EntryId? before = null) => _reader.Latest(most, before);

    /// <summary>Batches that wait for the maker, the earliest first.</summary>
    /// <param name="most">At most so many.</param>
    public IReadOnlyList<SubjectLine> Due(int most = int.MaxValue) => _reader.Due(most);

    /// <summary>The batches of which a colour was read last, newest first.</summary>
    /// <param name="most">At most so many.</param>
    public IReadOnlyList<SubjectKey> WithColours(int most) => _reader.WithColours(most);

    /// <summary>How many entries from an import are kept aside because their number belongs to another.</summary>
    public long AsideCount() => _reader.AsideCount();

    /// <summary>The entries kept aside, the latest first, each beside the one here that has its number.</summary>
    /// <param name="most">At most so many.</param>
    public IReadOnlyList<AsideEntry> Aside(int most) => _reader.Aside(most);

    /// <summary>Verifies the file, every entry, the photographs and the projections.</summary>
    public IReadOnlyList<StudioFinding> Check() => new Checker(_database, Photos).Run();

    /// <summary>Copies the record and its photographs while it is in use, and verifies the copy.</summary>
    /// <param name="target">Where to; the studio's own folder of copies when null.</param>
    public BackupReport Backup(string? target = null) => new BackupMaker(_database, Photos, _clock).Make(target ?? Path.Combine(Folder, BackupsName));

    /// <summary>Writes the whole studio to one file.</summary>
    /// <param name="file">The zip to make; there must be none of that name.</param>
    /// <param name="programVersion">Noted in the file.</param>
    public ExportReport Export(string file, string programVersion) => Exporter.Write(this, file, programVersion, _clock.GetLocalNow());

    /// <summary>Merges an exported studio into this one. Importing the same file again changes nothing.</summary>
    /// <param name="file">The zip.</param>
    public ImportOutcome Import(string file)
    {
        MustWrite();
        return Importer.Read(file, Photos, _writer, _clock.GetUtcNow());
    }

    internal MergeResult Merge(IReadOnlyCollection<Entry> entries) => _writer.Merge(entries, _clock.GetUtcNow());

    /// <summary>Lets go of the folder.</summary>
    public void Dispose()
    {
        _database.Release();
        _lock?.Dispose();
    }

    private void MustWrite()
    {
        if (_lock is null) throw new InvalidOperationException("The studio was opened to look only.");
    }
}
