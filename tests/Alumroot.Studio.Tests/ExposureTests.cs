using System.IO.Compression;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Tests;

/// <summary>Exposures in the record: their numbers, what they wait for, which lakes lay in them, out and in again.</summary>
public sealed class ExposureTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 14, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("E-03", 3)]
    [InlineData("E-123", 123)]
    public void Numbers_are_read_and_written(string text, int count) => Assert.Equal((text, SubjectClass.Exposure, count), (SubjectKey.TryRead(text)!.Value.ToString(), SubjectKey.TryRead(text)!.Value.Class, SubjectKey.TryRead(text)!.Value.Count));

    [Theory]
    [InlineData("E-3")]
    [InlineData("E-00")]
    [InlineData("e-03")]
    public void What_is_no_number_is_not_read(string text) => Assert.Null(SubjectKey.TryRead(text));

    [Fact]
    public void The_next_look_is_that_of_the_latest_reading_that_stands_and_none_after_the_end()
    {
        using var studio = new TempStudio();
        SubjectKey key = Kept(studio.Store.AppendNew(SubjectClass.Exposure, EntryId.New(Noon), Begun(Noon.AddDays(2)), Noon)).Subject;
        Assert.Equal(Noon.AddDays(2), studio.Store.Exposure(key)!.ReadyAt);
        Assert.Equal(key, Assert.Single(studio.Store.Due()).Subject);
        Entry read = Kept(studio.Store.Append(Read(Noon.AddDays(5)).ToEntry(EntryId.New(Noon), key, Noon.AddDays(2))));
        Assert.Equal(Noon.AddDays(5), studio.Store.Exposure(key)!.ReadyAt);
        studio.Store.Append(new Withdrawn().ToEntry(EntryId.New(Noon), key, Noon.AddDays(2.1), read.Id));
        Assert.Equal((Noon.AddDays(2), 0), (studio.Store.Exposure(key)!.ReadyAt, studio.Store.Exposure(key)!.Readings.Count));
        Entry end = Kept(studio.Store.Append(new ExposureEnded().ToEntry(EntryId.New(Noon), key, Noon.AddDays(3))));
        Assert.Equal((null, ExposureState.Over), (studio.Store.Exposure(key)!.ReadyAt, studio.Store.Exposure(key)!.Stage));
        Assert.Empty(studio.Store.Due());
        studio.Store.Append(new Withdrawn().ToEntry(EntryId.New(Noon), key, Noon.AddDays(4), end.Id));
        Assert.Equal(ExposureState.InTheLight, studio.Store.Exposure(key)!.Stage);
        Assert.Empty(studio.Store.Check());
    }

    // A paint that lay in the light takes no pigment, and a paint of the same lake does not lie in the light.
    [Fact]
    public void The_exposures_of_a_lake_are_found_and_do_not_mix_with_its_paints()
    {
        using var studio = new TempStudio();
        SubjectKey lake = SubjectKey.Batch(26, 1);
        studio.Store.Append(new BatchPlanned("t", "", 0, "").ToEntry(EntryId.New(Noon), lake, Noon));
        studio.Store.Append(new BatchStep(StepKind.Grind) { Values = [new Measured("amount", "20 g", 0.02, Measured.Kilogram)], Ended = true }.ToEntry(EntryId.New(Noon), lake, Noon.AddHours(1)));
        var pigment = new Measured("pigment", "3 g", 0.003, Measured.Kilogram);
        studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(Noon), new PaintMade("rose", "oil") { Lakes = [new LakeUse("26-001", pigment)], Parts = [pigment] }, Noon.AddHours(2));
        studio.Store.AppendNew(SubjectClass.Exposure, EntryId.New(Noon), Begun(null), Noon);
        studio.Store.AppendNew(SubjectClass.Exposure, EntryId.New(Noon), Begun(null) with { Samples = [new ExposedSample("else", 1)] }, Noon);
        Assert.Equal([SubjectKey.Exposure(1)], studio.Store.Exposures(lake).Select(e => e.Key));
        Assert.Equal(2, studio.Store.Exposures().Count);
        Assert.Equal([SubjectKey.Paint(1)], studio.Store.Paints(lake).Select(p => p.Key));
        Assert.Equal(0.017, studio.Store.PigmentLeftKg(studio.Store.Batch(lake)!)!.Value, 1e-12);
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public void Exposures_go_out_and_come_in_with_a_table_for_people()
    {
        using var from = new TempStudio();
        using var to = new TempStudio();
        SubjectKey key = Kept(from.Store.AppendNew(SubjectClass.Exposure, EntryId.New(Noon), Begun(null), Noon)).Subject;
        from.Store.Append(Read(null).ToEntry(EntryId.New(Noon), key, Noon.AddDays(2)));
        from.Store.Append(new LightRead(new Measured("level", "2400 lx", 2400, "lx", "meter")).ToEntry(EntryId.New(Noon), key, Noon.AddDays(1)));
        from.Store.Append(new LightLogged(Noon, new DoseSpan(0.5, 0.4, 0.6), [new DoseStep(24, 0.5)]) { File = "a.csv", Readings = 24 }.ToEntry(EntryId.New(Noon), key, Noon.AddDays(1)));
        string zip = Path.Combine(from.Folder, "out.zip");
        from.Store.Export(zip, "test");
        using (ZipArchive archive = ZipFile.OpenRead(zip))
        using (var reader = new StreamReader(archive.GetEntry("tables/exposures.csv")!.Open()))
            Assert.Contains("E-01,window,2026-11-14T12:00:00+00:00,2026-11-16T12:00:00+00:00,26-001,1,26-001,47,36,12,49,34,12", reader.ReadToEnd(), StringComparison.Ordinal);
        to.Store.Import(zip);
        Assert.Equal(from.Store.All(), to.Store.All());
        ExposureState there = to.Store.Exposure(key)!;
        Assert.Equal((1, 1, 1), (there.Readings.Count, there.Levels.Count, there.Logs.Count));
        Assert.Equal(key, to.Store.List("window").Single().Subject);
        Assert.Empty(to.Store.Check());
    }

    private static Entry Kept(AppendResult result) => Assert.IsType<AppendResult.Kept>(result).Entry;

    private static ExposureBegun Begun(DateTimeOffset? ready) =>
        new("window", new ExposureLight(LightWay.Window) { LatitudeDegrees = 52, Facing = "equator" }, [new ExposedSample("26-001", 2) { Of = "26-001" }, new ExposedSample("BW3", 1)]) { ReadyAt = ready };

    private static ExposureRead Read(DateTimeOffset? next) => new([new StripRead("26-001", 1, new LabText(49, 34, 12)) { Covered = new LabText(47, 36, 12) }]) { ReadyAt = next };
}
