using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using CsCheck;

namespace Alumroot.Studio.Tests;

public sealed class JournalTests
{
    private static readonly LotBought Alum = new(LotClass.Salt, "potash alum", Measured.Of("amount", "500 g", Mass.FromGrams(500)));

    [Fact]
    public void The_same_number_twice_is_one_entry_even_when_the_second_press_came_later()
    {
        using var studio = new TempStudio();
        Entry first = studio.Keep(TempStudio.Step(1));
        Entry later = TempStudio.Added(3).ToEntry(first.Id, first.Subject, first.At.AddSeconds(4));
        Assert.Equal(first, Assert.IsType<AppendResult.AlreadyThere>(studio.Store.Append(later)).Entry);
        Assert.Equal(first, Assert.Single(studio.Store.All()));
    }

    [Fact]
    public void A_number_that_is_taken_changes_nothing()
    {
        using var studio = new TempStudio();
        Entry first = studio.Keep(TempStudio.Step(1));
        Assert.Equal(first, Assert.IsType<AppendResult.NumberTaken>(studio.Store.Append(TempStudio.Step(1, grams: 4))).Existing);
        Assert.Equal(first, Assert.Single(studio.Store.All()));
    }

    [Fact]
    public void Batches_are_numbered_by_year_and_count_and_a_resend_gets_the_same_number()
    {
        using var studio = new TempStudio();
        Assert.Equal("26-001", studio.Start(1, TempStudio.Plan("weld")).Subject.ToString());
        Assert.Equal("26-002", studio.Start(2, TempStudio.Plan("madder")).Subject.ToString());
        Assert.Equal("lot-1", studio.Start(3, Alum).Subject.ToString());
        var again = Assert.IsType<AppendResult.AlreadyThere>(studio.Store.AppendNew(SubjectClass.Batch, TempStudio.Id(2), TempStudio.Plan("madder"), TempStudio.Noon.AddDays(1)));
        Assert.Equal("26-002", again.Entry.Subject.ToString());
        var next = Assert.IsType<AppendResult.Kept>(studio.Store.AppendNew(SubjectClass.Batch, TempStudio.Id(4), TempStudio.Plan("rose madder"), new DateTimeOffset(2027, 1, 1, 0, 30, 0, TimeSpan.FromHours(1))));
        Assert.Equal("27-001", next.Entry.Subject.ToString());
    }

    [Fact]
    public void A_correction_takes_the_place_and_undoing_it_brings_the_old_back()
    {
        using var studio = new TempStudio();
        Entry wrong = studio.Keep(TempStudio.Step(1, grams: 30));
        Entry right = studio.Keep(TempStudio.Step(2, grams: 3, corrects: wrong.Id));
        Assert.Equal(0.003, Assert.Single(studio.Store.Batch(TempStudio.First)!.Steps).Values[0].SiValue);
        studio.Keep(new Withdrawn().ToEntry(TempStudio.Id(3), TempStudio.First, TempStudio.Noon.AddMinutes(1), right.Id));
        BatchState state = studio.Store.Batch(TempStudio.First)!;
        Assert.Equal(0.03, Assert.Single(state.Steps).Values[0].SiValue);
        Assert.Equal([Standing.Stands, Standing.Withdrawn, Standing.Stands], state.Entries.Select(e => e.Standing));
    }

    [Fact]
    public void A_circle_of_corrections_ends_and_counts_for_nothing()
    {
        Entry a = TempStudio.Step(1, corrects: TempStudio.Id(2)), b = TempStudio.Step(2, corrects: TempStudio.Id(1));
        Assert.All(Standings.Of([a, b]), e => Assert.Equal(Standing.Superseded, e.Standing));
    }

    [Fact]
    public void A_chain_of_twenty_thousand_corrections_is_followed_to_its_end()
    {
        Entry[] chain = [.. Enumerable.Range(0, 20_000).Select(i => TempStudio.Step(i, corrects: i == 0 ? null : TempStudio.Id(i - 1)))];
        Assert.Equal(chain[^1].Id, Assert.Single(Standings.Of(chain), e => e.Standing == Standing.Stands).Entry.Id);
    }

    [Fact]
    public void Stock_falls_by_use_comes_back_by_correction_and_below_nothing_is_told()
    {
        using var studio = new TempStudio();
        SubjectKey lot = studio.Start(1, Alum).Subject;
        Entry use = studio.Keep(Use(2, 200));
        Assert.Equal(0.3, studio.Store.Lot(lot)!.LeftSi!.Value, 9);
        studio.Keep(Use(3, 350));
        Assert.True(studio.Store.Lot(lot)!.BelowNothing);
        Assert.Contains(studio.Store.Check(), f => f.Key == Integrity.FindingKeys.StockBelowNothing && f.Where == "lot-1");
        studio.Keep(Use(4, 150, use.Id));
        Assert.False(studio.Store.Lot(lot)!.BelowNothing);
        Assert.Equal(0, studio.Store.Lot(lot)!.LeftSi!.Value, 9);

        static Entry Use(int n, double grams, EntryId? corrects = null) =>
            new BatchStep(StepKind.Salt) { Uses = [new LotUse("lot-1", Measured.Of("amount", $"{grams} g", Mass.FromGrams(grams)))] }.ToEntry(TempStudio.Id(n), TempStudio.First, TempStudio.Noon.AddSeconds(n), corrects);
    }

    [Fact]
    public void Every_document_reads_back_as_it_was_written()
    {
        StudioDocument[] all =
        [
            TempStudio.Plan("weld"), TempStudio.Added(3.1, "a \"note\", with ünïcode\nand lines"), new BatchGivenUp("mould"), new Noted { Note = "x", Photos = [new string('a', 64)] },
            Alum with { Cost = "12,50 EUR", CameOn = new DateOnly(2026, 3, 1), Source = "the market" }, new Withdrawn(),
        ];
        foreach (StudioDocument document in all)
        {
            Entry entry = document.ToEntry(TempStudio.Id(1), TempStudio.First, TempStudio.Noon);
            var read = Assert.IsType<DocumentReading.Known>(DocumentText.Read(entry)).Document;
            Assert.Equal(document.GetType(), read.GetType());
            Assert.Equal(entry.Payload, DocumentText.Write(read));
        }
    }

    [Fact]
    public void A_document_of_tomorrow_is_kept_to_the_letter()
    {
        using var studio = new TempStudio();
        Payload payload = Payload.TryRead("""{ "mood" : [1.50, "calm"], "photos": [] }""")!;
        Entry entry = studio.Keep(new Entry(TempStudio.Id(1), TempStudio.First, new DocumentKind("batch-mood", 7), payload, TempStudio.Noon));
        Assert.IsType<DocumentReading.Unknown>(DocumentText.Read(entry));
        Assert.Equal("""{"mood":[1.50,"calm"],"photos":[]}""", studio.Store.Find(entry.Id)!.Payload.Text);
        Assert.Equal(Integrity.FindingLevel.Note, Assert.Single(studio.Store.Check()).Level);
    }

    [Theory]
    [InlineData("26-014", true)]
    [InlineData("lot-7", true)]
    [InlineData("26-000", false)]
    [InlineData("26-14", false)]
    [InlineData("../etc", false)]
    [InlineData("lot-0", false)]
    [InlineData("26-014\n", false)]
    public void Keys_are_read_strictly(string text, bool known) => Assert.Equal(known ? text : null, SubjectKey.TryRead(text)?.ToString());

    [Fact]
    public void Any_text_can_be_read_as_a_key_a_number_or_content_without_falling() =>
        Gen.String.Sample(text => _ = (SubjectKey.TryRead(text), EntryId.TryRead(text), Payload.TryRead(text)));
}
