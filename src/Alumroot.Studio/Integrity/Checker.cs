using System.Globalization;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Alumroot.Studio.Integrity;

/// <summary>Verifies a record from the pages of its file up to what the lists show. Looks only; mends nothing.</summary>
internal sealed class Checker(Database database, PhotoFolder photos)
{
    private readonly List<StudioFinding> _findings = [];

    public IReadOnlyList<StudioFinding> Run() => Outside.Do(() =>
    {
        _findings.Clear();
        using StudioContext context = database.Context();
        var connection = (SqliteConnection)context.Database.GetDbConnection();
        connection.Open();
        foreach (string line in connection.Texts("PRAGMA integrity_check").Where(l => l != "ok")) Found(FindingKeys.DatabaseDamaged, FindingLevel.Loss, StudioStore.DatabaseName, line);
        // Pages that do not agree may say anything below; what they say is not worth a finding of its own.
        if (_findings.Count > 0) return _findings;
        List<Entry> entries = Entries(context);
        Corrections(entries);
        Pictures(context);
        Lists(context, connection, entries);
        Lots(entries);
        if (connection.Number("SELECT count(*) FROM subject_text") != context.Subjects.LongCount()) Found(FindingKeys.SearchDiffers, FindingLevel.Look, StudioStore.DatabaseName);
        long aside = context.Aside.LongCount();
        if (aside > 0) Found(FindingKeys.KeptAside, FindingLevel.Look, StudioStore.DatabaseName, aside.ToString(CultureInfo.InvariantCulture));
        return _findings;
    });

    private List<Entry> Entries(StudioContext context)
    {
        var entries = new List<Entry>();
        (long sequence, string chain, bool whole) = (0, Chain.Start, true);
        foreach (EntryRow row in context.Entries.OrderBy(e => e.Sequence).AsEnumerable())
        {
            chain = Chain.Next(chain, row.Checksum);
            if (whole && (row.Sequence != ++sequence || row.Chain != chain))
            {
                whole = false;
                Found(FindingKeys.ChainBroken, FindingLevel.Loss, row.Id);
            }
            if (row.TryEntry() is not { } entry)
            {
                Found(FindingKeys.EntryUnreadable, FindingLevel.Loss, row.Id);
                continue;
            }
            entries.Add(entry);
            if (entry.Checksum != row.Checksum) Found(FindingKeys.EntryChanged, FindingLevel.Loss, row.Id);
            if (DocumentText.Read(entry) is DocumentReading.Unreadable unreadable) Found(FindingKeys.DocumentUnreadable, FindingLevel.Look, row.Id, unreadable.Why);
            else if (DocumentText.Read(entry) is DocumentReading.Unknown) Found(FindingKeys.DocumentUnknown, FindingLevel.Note, row.Id, entry.Kind.ToString());
        }
        return entries;
    }

    private void Corrections(List<Entry> entries)
    {
        Dictionary<EntryId, SubjectKey> subjects = entries.ToDictionary(e => e.Id, e => e.Subject);
        foreach (Entry entry in entries)
            if (entry.Corrects is { } corrects && !(subjects.TryGetValue(corrects, out SubjectKey subject) && subject == entry.Subject))
                Found(FindingKeys.CorrectionLost, FindingLevel.Look, entry.Id.Text, corrects.Text);
    }

    private void Pictures(StudioContext context)
    {
        string[] named = [.. context.Photos.Select(p => p.Hash).Distinct().OrderBy(h => h)];
        foreach (string hash in named)
        {
            if (!photos.Has(hash)) Found(FindingKeys.PhotoMissing, FindingLevel.Loss, hash);
            else if (photos.HashNow(hash) is var now && now != hash) Found(FindingKeys.PhotoChanged, FindingLevel.Loss, hash, now);
        }
        foreach (string unnamed in photos.All().Except(named)) Found(FindingKeys.PhotoUnnamed, FindingLevel.Note, unnamed);
    }

    private void Lists(StudioContext context, SqliteConnection connection, List<Entry> entries)
    {
        Dictionary<string, SubjectRow> kept = context.Subjects.ToDictionary(s => s.Subject);
        foreach (IGrouping<SubjectKey, Entry> subject in entries.GroupBy(e => e.Subject))
        {
            string key = subject.Key.ToString();
            if (!kept.Remove(key, out SubjectRow? row) || row with { SearchRow = null } != SubjectRow.Of(SubjectLine.Of(subject.Key, [.. subject]))) Found(FindingKeys.ListDiffers, FindingLevel.Look, key);
            else if (!connection.Texts("SELECT words FROM subject_text WHERE rowid = $row", ("$row", row.SearchRow)).SequenceEqual([SearchWords.Of([.. subject])])) Found(FindingKeys.SearchDiffers, FindingLevel.Look, key);
            if (subject.Key.Class == SubjectClass.Batch && BatchState.Of(subject.Key, subject) is { PlanCount: > 1 and var plans })
                Found(FindingKeys.TwoPlans, FindingLevel.Look, key, plans.ToString(CultureInfo.InvariantCulture));
        }
        foreach (string left in kept.Keys) Found(FindingKeys.ListDiffers, FindingLevel.Look, left);
    }

    private void Lots(List<Entry> entries)
    {
        ILookup<SubjectKey, Entry> bySubject = entries.ToLookup(e => e.Subject);
        // A lot is judged with the whole of every batch and paint that ever named it, so that its corrections count.
        ILookup<SubjectKey, SubjectKey> users = entries
            .SelectMany(e => DocumentText.Read(e) is DocumentReading.Known { Document: var said } ? said.TakenFromShelf.Select(u => u.Key).OfType<SubjectKey>().Select(lot => (Lot: lot, e.Subject)) : [])
            .Distinct().ToLookup(u => u.Lot, u => u.Subject);
        foreach (SubjectKey lot in bySubject.Select(g => g.Key).Where(k => k.Class == SubjectClass.Lot))
            if (LotState.Of(lot, bySubject[lot].Concat(users[lot].SelectMany(u => bySubject[u]))) is { BelowNothing: true } state)
                Found(FindingKeys.StockBelowNothing, FindingLevel.Look, lot.ToString(), string.Create(CultureInfo.InvariantCulture, $"{state.LeftSi:0.######} {state.Bought!.Amount.SiUnit}"));
    }

    private void Found(string key, FindingLevel level, string where, string detail = "") => _findings.Add(new StudioFinding(key, level, where, detail));
}
