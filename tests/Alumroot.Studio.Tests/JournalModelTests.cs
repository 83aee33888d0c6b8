using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using CsCheck;

namespace Alumroot.Studio.Tests;

/// <summary>The journal against a plain list: the list is the truth, the rules are written a second time in the simplest way.</summary>
public sealed class JournalModelTests
{
    private static readonly SubjectKey Lot = SubjectKey.Lot(1);

    private sealed record Act(int Id, int Subject, int Corrects, int Note, bool Undo);

    private static readonly Gen<Act[]> Acts = Gen.Select(Gen.Int[0, 12], Gen.Int[1, 3], Gen.Int[-12, 12], Gen.Int[0, 2], Gen.Bool, (id, subject, corrects, note, undo) => new Act(id, subject, corrects, note, undo)).Array[1, 25];

    [Fact]
    public void The_store_does_what_a_list_would_do() => Acts.Sample(
        acts =>
        {
            using var studio = new TempStudio();
            var list = new List<Entry> { studio.Start(90, new LotBought(LotClass.Alkali, "soda ash", Measured.Of("amount", "100 g", Quantities.Mass.FromGrams(100)))) };
            foreach (Act act in acts)
            {
                Entry entry = ToEntry(act, list.Count);
                AppendResult said = studio.Store.Append(entry);
                Entry? there = list.Find(e => e.Id == entry.Id);
                if (there is not null) Assert.Equal(there.SaysTheSameAs(entry), said is AppendResult.AlreadyThere);
                else if (entry.Corrects is { } c && list.Find(e => e.Id == c)?.Subject != entry.Subject) Assert.IsType<AppendResult.NothingToCorrect>(said);
                else
                {
                    Assert.IsType<AppendResult.Kept>(said);
                    list.Add(entry);
                }
            }
            Assert.Equal(list, studio.Store.All());
            foreach (IGrouping<SubjectKey, Entry> subject in list.GroupBy(e => e.Subject))
            {
                Assert.Equal(subject, studio.Store.EntriesOf(subject.Key));
                // Lists are the projection of all entries, though they were brought up to date one by one.
                Assert.Contains(SubjectLine.Of(subject.Key, [.. subject]), studio.Store.List());
            }
            // The stock is read from fewer entries than there are, and is the same.
            LotState some = studio.Store.Lot(Lot)!, all = LotState.Of(Lot, list);
            Assert.Equal(all.LeftSi, some.LeftSi);
            Assert.Equal(all.Entries, some.Entries);
            Assert.Equal(all.Taken, some.Taken);
            // And it is what standing uses leave of the 100 g, summed a second time.
            double taken = list.GroupBy(e => e.Subject).SelectMany(g => g.Where(root => !TargetOf(root, [.. list]).Any()).Select(root => Counting(root, [.. list])))
                .OfType<EntryId>().Select(id => list.Single(e => e.Id == id)).Count(e => e.Subject != Lot && e.Payload.Text.Contains("\"lot\"", StringComparison.Ordinal)) * 0.003;
            Assert.Equal(0.1 - taken, some.LeftSi!.Value, 1e-12);
            Assert.DoesNotContain(studio.Store.Check(), f => f.Level == Integrity.FindingLevel.Loss);
        }, iter: 25, threads: 2);

    [Fact]
    public void What_counts_is_what_the_simplest_rules_say() => Acts.Sample(
        acts =>
        {
            Entry[] entries = [.. acts.Select(ToEntry).DistinctBy(e => e.Id)];
            Dictionary<EntryId, Standing> projected = Standings.Of(entries).ToDictionary(e => e.Entry.Id, e => e.Standing);
            // The order of arrival changes nothing.
            Assert.Equal(projected, Standings.Of(entries.Reverse()).ToDictionary(e => e.Entry.Id, e => e.Standing));
            foreach (Entry root in entries.Where(e => !TargetOf(e, entries).Any()))
            {
                EntryId? counting = Counting(root, entries);
                foreach (Entry e in Tree(root, entries).Where(e => e.Kind.Name != Withdrawn.Name))
                    Assert.Equal(e.Id == counting, projected[e.Id] == Standing.Stands);
            }
        }, iter: 3000);

    // The latest correction that was not undone takes the place; and so on from there. An undoing leaves nothing.
    private static EntryId? Counting(Entry entry, Entry[] all) => Winner(entry, all) switch
    {
        null => entry.Id,
        { Kind.Name: Withdrawn.Name } => null,
        var next => Counting(next, all),
    };

    private static Entry? Winner(Entry entry, Entry[] all) =>
        all.Where(e => TargetOf(e, all).Contains(entry) && Winner(e, all) is not { Kind.Name: Withdrawn.Name }).MaxBy(e => (e.At, e.Id.Text));

    private static IEnumerable<Entry> TargetOf(Entry entry, Entry[] all) => all.Where(e => e.Id == entry.Corrects && e.Subject == entry.Subject);

    private static IEnumerable<Entry> Tree(Entry root, Entry[] all) => all.Where(e => TargetOf(e, all).Contains(root)).SelectMany(e => Tree(e, all)).Prepend(root);

    // Only earlier numbers are corrected, so that there are no circles here; those have a test of their own.
    private static Entry ToEntry(Act act, int at)
    {
        EntryId? corrects = act.Corrects >= 0 && act.Corrects < act.Id ? TempStudio.Id(act.Corrects) : null;
        LotUse[] uses = act.Note == 1 ? [new LotUse(Lot.ToString(), Measured.Of("amount", "3 g", Quantities.Mass.FromGrams(3)))] : [];
        // The third subject is a paint; paints take from the shelf as batches do.
        SubjectKey subject = act.Subject == 3 ? SubjectKey.Paint(1) : SubjectKey.Batch(26, act.Subject);
        StudioDocument document = act.Undo && corrects is not null ? new Withdrawn()
            : act.Subject == 3 ? new PaintMade("rose", "watercolour") { Uses = uses, Note = $"note {act.Note}" }
            : TempStudio.Added(3, $"note {act.Note}") with { Uses = uses };
        return document.ToEntry(TempStudio.Id(act.Id), subject, TempStudio.Noon.AddSeconds(at % 7), corrects);
    }
}
