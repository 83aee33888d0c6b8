using System.IO.Compression;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Tests;

/// <summary>Paints in the record: their numbers, what they take of a lake, out and in again.</summary>
public sealed class PaintTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 14, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("P-07", 7)]
    [InlineData("P-123", 123)]
    public void Numbers_are_read_and_written(string text, int count) => Assert.Equal((text, SubjectClass.Paint, count), (SubjectKey.TryRead(text)!.Value.ToString(), SubjectKey.TryRead(text)!.Value.Class, SubjectKey.TryRead(text)!.Value.Count));

    [Theory]
    [InlineData("P-7")]
    [InlineData("P-00")]
    [InlineData("p-07")]
    [InlineData("P-07 ")]
    [InlineData("P-1234567")]
    public void What_is_no_number_is_not_read(string text) => Assert.Null(SubjectKey.TryRead(text));

    [Fact]
    public void Numbers_go_on_beyond_ninety_nine_and_the_same_entry_is_one_paint()
    {
        using var studio = new TempStudio();
        for (int n = 1; n <= 101; n++)
        {
            var kept = Assert.IsType<AppendResult.Kept>(studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon.AddSeconds(n)), Made(1), Noon));
            Assert.Equal(SubjectKey.Paint(n), kept.Entry.Subject);
        }
        EntryId id = EntryId.New(Noon);
        Assert.IsType<AppendResult.Kept>(studio.Store.AppendNew(SubjectClass.Paint, id, Made(1), Noon));
        Assert.IsType<AppendResult.AlreadyThere>(studio.Store.AppendNew(SubjectClass.Paint, id, Made(1), Noon));
        Assert.Equal(102, studio.Store.Paints().Count);
        Assert.Equal(SubjectKey.Paint(102), studio.Store.Paints()[^1].Key);
    }

    // 20 g weighed, 3 and 4 taken, the 4 corrected to 5, the 3 taken back: 15 g are left, counted by hand.
    [Fact]
    public void What_a_paint_takes_falls_off_the_lake_once()
    {
        using var studio = new TempStudio();
        SubjectKey lake = SubjectKey.Batch(26, 1);
        studio.Store.Append(new BatchPlanned("t", "", 0, "").ToEntry(EntryId.New(Noon), lake, Noon));
        studio.Store.Append(new BatchStep(StepKind.Grind) { Values = [new Measured("amount", "20 g", 0.02, Measured.Kilogram)], Ended = true }.ToEntry(EntryId.New(Noon), lake, Noon.AddHours(1)));
        Entry first = Kept(studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), Made(3), Noon.AddHours(2)));
        Entry second = Kept(studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), Made(4), Noon.AddHours(2)));
        Assert.Equal(0.013, Left(), 1e-12);
        studio.Store.Append(Made(5).ToEntry(EntryId.New(Noon), second.Subject, Noon.AddHours(3), second.Id));
        Assert.Equal(0.012, Left(), 1e-12);
        studio.Store.Append(new Withdrawn().ToEntry(EntryId.New(Noon), first.Subject, Noon.AddHours(4), first.Id));
        Assert.Equal(0.015, Left(), 1e-12);
        Assert.Equal(0.005, studio.Store.PigmentTakenKg()[lake], 1e-12);
        Assert.Equal([PaintState.TakenBack, PaintState.There], studio.Store.List(kind: SubjectClass.Paint).OrderBy(l => l.Subject).Select(l => l.Stage));
        Assert.Empty(studio.Store.Check());

        double Left() => studio.Store.PigmentLeftKg(studio.Store.Batch(lake)!)!.Value;
    }

    [Fact]
    public void Paints_go_out_and_come_in_with_a_table_for_people()
    {
        using var from = new TempStudio();
        using var to = new TempStudio();
        Entry paint = Kept(from.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), Made(3), Noon));
        from.Store.Append(new PaintUsedUp().ToEntry(EntryId.New(Noon), paint.Subject, Noon.AddDays(1)));
        string zip = Path.Combine(from.Folder, "out.zip");
        from.Store.Export(zip, "test");
        using (ZipArchive archive = ZipFile.OpenRead(zip))
        using (var reader = new StreamReader(archive.GetEntry("tables/paints.csv")!.Open()))
            Assert.Contains("P-01,rose,watercolour,used-up,2026-11-14T12:00:00+00:00,26-001,pigment,3 g,0.003,kg,2 half-pan", reader.ReadToEnd(), StringComparison.Ordinal);
        to.Store.Import(zip);
        Assert.Equal(from.Store.All(), to.Store.All());
        Assert.True(to.Store.Paint(SubjectKey.Paint(1))!.IsUsedUp);
        Assert.Equal(SubjectKey.Paint(1), Assert.Single(to.Store.Paints(SubjectKey.Batch(26, 1))).Key);
        Assert.Equal(SubjectKey.Paint(1), to.Store.List("rose").Single().Subject);
        Assert.Empty(to.Store.Check());
    }

    // What was added to the document later is there when it was told, and an older entry without it still reads.
    [Fact]
    public void The_preservative_and_what_came_off_are_kept_and_an_older_paint_reads_without_them()
    {
        using var studio = new TempStudio();
        PaintMade made = Made(3) with { Preservative = "thymol", PreservativeAmount = new Measured("amount", "12 mg", 0.000012, Measured.Kilogram), CameOff = new Measured("amount", "2.8 g", 0.0028, Measured.Kilogram) };
        studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), made, Noon);
        Assert.Equal(0.0028, studio.Store.Paint(SubjectKey.Paint(1))!.Made!.CameOff!.SiValue);
        string zip = Path.Combine(studio.Folder, "out.zip");
        studio.Store.Export(zip, "test");
        using (ZipArchive archive = ZipFile.OpenRead(zip))
        using (var reader = new StreamReader(archive.GetEntry("tables/paints.csv")!.Open()))
            Assert.Contains("preservative: thymol,12 mg,", reader.ReadToEnd(), StringComparison.Ordinal);
        var old = new Entry(EntryId.New(Noon), SubjectKey.Paint(2), new DocumentKind(PaintMade.Name, 1), Payload.TryRead("""{"title":"old","medium":"oil","lakes":[],"parts":[],"filled":[],"photos":[]}""")!, Noon);
        studio.Store.Append(old);
        Assert.Null(studio.Store.Paint(SubjectKey.Paint(2))!.Made!.CameOff);
    }

    // 50 g of gum came; 20 and 15 went into two paints, the second taken back: 30 are left, counted by hand. 60 of 50 is below nothing, and the check says so.
    [Fact]
    public void What_a_paint_takes_of_the_shelf_falls_off_its_lot_and_comes_back()
    {
        using var studio = new TempStudio();
        SubjectKey gum = Kept(studio.Store.AppendNew(SubjectClass.Lot, EntryId.New(Noon), new LotBought(LotClass.Binder, "gum arabic", Grams(50)), Noon)).Subject;
        Entry first = Kept(studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), WithGum(20), Noon.AddHours(1)));
        Entry second = Kept(studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), WithGum(15), Noon.AddHours(2)));
        Assert.Equal(0.015, studio.Store.Lot(gum)!.LeftSi!.Value, 1e-12);
        Assert.Equal([first.Subject, second.Subject], studio.Store.Lot(gum)!.Taken.Select(t => t.By));
        EntryId undo = EntryId.New(Noon);
        studio.Store.Append(new Withdrawn().ToEntry(undo, second.Subject, Noon.AddHours(3), second.Id));
        Assert.Equal(0.03, studio.Store.Lot(gum)!.LeftSi!.Value, 1e-12);
        Assert.Empty(studio.Store.Check());
        string zip = Path.Combine(studio.Folder, "out.zip");
        studio.Store.Export(zip, "test");
        using (var to = new TempStudio())
        {
            to.Store.Import(zip);
            Assert.Equal(0.03, to.Store.Lot(gum)!.LeftSi!.Value, 1e-12);
        }
        using (ZipArchive archive = ZipFile.OpenRead(zip))
        using (var reader = new StreamReader(archive.GetEntry("tables/paints.csv")!.Open()))
            Assert.Contains("gum arabic,20 g,0.02,kg,2 half-pan,lot-1", reader.ReadToEnd(), StringComparison.Ordinal);
        studio.Store.Append(WithGum(60).ToEntry(EntryId.New(Noon), first.Subject, Noon.AddHours(4), first.Id));
        Integrity.StudioFinding found = Assert.Single(studio.Store.Check());
        Assert.Equal((Integrity.FindingKeys.StockBelowNothing, "lot-1"), (found.Key, found.Where));

        PaintMade WithGum(double grams)
        {
            PaintMade made = Made(1);
            return made with { Parts = [.. made.Parts, Grams(grams) with { Name = "gum arabic" }], Uses = [new LotUse(gum.ToString(), Grams(grams) with { Name = "gum arabic" })] };
        }
    }

    private static Measured Grams(double grams) => new("amount", FormattableString.Invariant($"{grams} g"), grams / 1000, Measured.Kilogram);

    private static Entry Kept(AppendResult result) => Assert.IsType<AppendResult.Kept>(result).Entry;

    private static PaintMade Made(double grams)
    {
        var pigment = new Measured("pigment", FormattableString.Invariant($"{grams} g"), grams / 1000, Measured.Kilogram);
        return new PaintMade("rose", "watercolour") { Lakes = [new LakeUse("26-001", pigment)], Parts = [pigment], Filled = [new PaintFilled("half-pan", 2)] };
    }
}
