using System.IO.Compression;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Tests;

/// <summary>Trials in the record: their numbers, what stands of each jar, out and in again. Expected states are counted by hand.</summary>
public sealed class TrialTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 14, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("T-05", 5)]
    [InlineData("T-123", 123)]
    public void Numbers_are_read_and_written(string text, int count) => Assert.Equal((text, SubjectClass.Trial, count), (SubjectKey.TryRead(text)!.Value.ToString(), SubjectKey.TryRead(text)!.Value.Class, SubjectKey.TryRead(text)!.Value.Count));

    [Theory]
    [InlineData("T-5")]
    [InlineData("T-00")]
    [InlineData("t-05")]
    [InlineData("T-05/3")]
    public void What_is_no_number_is_not_read(string text) => Assert.Null(SubjectKey.TryRead(text));

    [Fact]
    public void A_later_reading_counts_and_one_taken_back_does_not()
    {
        using var studio = new TempStudio();
        SubjectKey trial = Kept(studio.Store.AppendNew(SubjectClass.Trial, EntryId.New(Noon), Begun(), Noon)).Subject;
        Assert.Equal(SubjectKey.Trial(1), trial);
        Assert.Equal(TrialState.LaidOut, studio.Store.Trial(trial)!.Stage);
        Read(studio, trial, 1, "2.4 g", 0.0024, 1);
        Read(studio, trial, 1, "2.5 g", 0.0025, 2);
        Entry third = Read(studio, trial, 2, "3 g", 0.003, 3);
        TrialState state = studio.Store.Trial(trial)!;
        Assert.Equal(0.0025, state.Jars[0].Results["yield"].Value.SiValue);
        Assert.Equal(TrialState.AllRead, state.Stage);
        studio.Store.Append(new Withdrawn().ToEntry(EntryId.New(Noon), trial, Noon.AddHours(4), third.Id));
        Assert.False(studio.Store.Trial(trial)!.Jars[1].IsRead);
        Assert.Equal(TrialState.Reading, studio.Store.Trial(trial)!.Stage);
        studio.Store.Append(new TrialEnded { Note = "alum suffices" }.ToEntry(EntryId.New(Noon), trial, Noon.AddHours(5)));
        Assert.Equal(TrialState.Ended, studio.Store.List("suffices", kind: SubjectClass.Trial).Single().Stage);
        Assert.Equal(SubjectKey.Trial(2), Kept(studio.Store.AppendNew(SubjectClass.Trial, EntryId.New(Noon), Begun(), Noon)).Subject);
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public void A_jar_is_due_until_it_was_looked_at_and_the_trial_with_its_first_jar()
    {
        using var studio = new TempStudio();
        SubjectKey trial = Kept(studio.Store.AppendNew(SubjectClass.Trial, EntryId.New(Noon), Begun() with { ReadyAt = Noon.AddDays(3) }, Noon)).Subject;
        Assert.Equal(Noon.AddDays(3), Assert.Single(studio.Store.Due()).DueAt);
        studio.Store.Append(new TrialJarRead(1) { ReadyAt = Noon.AddDays(1) }.ToEntry(EntryId.New(Noon), trial, Noon.AddHours(1)));
        Assert.Equal(Noon.AddDays(1), Assert.Single(studio.Store.Due()).DueAt);
        Read(studio, trial, 1, "2 g", 0.002, 2);
        Assert.Equal(Noon.AddDays(3), Assert.Single(studio.Store.Due()).DueAt);
        Read(studio, trial, 2, "2 g", 0.002, 3);
        Assert.Empty(studio.Store.Due());
    }

    [Fact]
    public void A_design_that_does_not_hold_together_is_none()
    {
        TrialBegun wrong = Begun() with { Jars = [new TrialJar(1, 1, [0]), new TrialJar(2, 1, [7])] };
        TrialState state = TrialState.Of(SubjectKey.Trial(1), [wrong.ToEntry(EntryId.New(Noon), SubjectKey.Trial(1), Noon)]);
        Assert.Null(state.Begun);
        Assert.Equal(TrialState.TakenBack, state.Stage);
    }

    [Fact]
    public void Trials_go_out_and_come_in_with_a_table_for_people()
    {
        using var from = new TempStudio();
        using var to = new TempStudio();
        SubjectKey trial = Kept(from.Store.AppendNew(SubjectClass.Trial, EntryId.New(Noon), Begun(), Noon)).Subject;
        Read(from, trial, 1, "2.4 ± 0.1", 0.0024, 1, 0.0001);
        from.Store.Append(new TrialJarRead(1) { Colour = new LabText(52, 38, 21), WithinDeltaE2000 = 1.5 }.ToEntry(EntryId.New(Noon), trial, Noon.AddHours(2)));
        string zip = Path.Combine(from.Folder, "out.zip");
        from.Store.Export(zip, "test");
        using (ZipArchive archive = ZipFile.OpenRead(zip))
        using (var reader = new StreamReader(archive.GetEntry("tables/trials.csv")!.Open()))
        {
            string table = reader.ReadToEnd();
            Assert.Contains("T-01,heat,reading,2026-11-14T12:00:00+00:00,1,1,temp 20 C,yield,2.4 ± 0.1,0.0024,kg,0.0001\r\n", table, StringComparison.Ordinal);
            Assert.Contains("T-01,heat,reading,2026-11-14T12:00:00+00:00,1,1,temp 20 C,lab_a,,38,1,1.5\r\n", table, StringComparison.Ordinal);
            Assert.Contains("T-01,heat,reading,2026-11-14T12:00:00+00:00,2,1,temp 60 C,not read,,,,\r\n", table, StringComparison.Ordinal);
        }
        to.Store.Import(zip);
        Assert.Equal(from.Store.All(), to.Store.All());
        Assert.Equal(38, to.Store.Trial(trial)!.Jars[0].Colour!.Colour!.LabA);
        Assert.Empty(to.Store.Check());
    }

    // The form that other programs read (docs/models/record.md), written down by hand: a change of it needs a new version of the document.
    [Fact]
    public void The_documents_have_the_form_that_is_promised()
    {
        TrialBegun begun = Begun() with { Jars = [new TrialJar(1, 1, [1]) { Amounts = [new TrialAmount("alkali", 0.0008, 0.0007, 0.001, Measured.Kilogram)] }] };
        Assert.Equal("trial-begun/1", begun.Kind.ToString());
        Assert.Equal(
            """{"title":"heat","design_address":"/trials/design?factors=temp","seed":1,"program_version":"test","factors":[{"name":"temp","unit":"C","settings":["20","60"],"measured":true}],"jars":[{"order":1,"block":1,"levels":[1],"amounts":[{"what":"alkali","si_value":0.0008,"si_low":0.0007,"si_high":0.001,"si_unit":"kg"}]}],"results":["yield"],"photos":[]}""",
            Fields(begun));
        var read = new TrialJarRead(3) { Results = [new TrialResult(new Measured("yield", "2.4 ± 0.1", 0.0024, Measured.Kilogram), 0.0001)], Colour = new LabText(52, 38, 21), WithinDeltaE2000 = 1.5, How = "instrument" };
        Assert.Equal("trial-jar-read/1", read.Kind.ToString());
        Assert.Equal(
            """{"jar":3,"results":[{"value":{"name":"yield","typed":"2.4 ± 0.1","si_value":0.0024,"si_unit":"kg"},"within_si":0.0001}],"colour":{"lab_l":52,"lab_a":38,"lab_b":21},"within_delta_e2000":1.5,"how":"instrument","photos":[]}""",
            Fields(read));
        Assert.Equal("trial-ended/1", new TrialEnded().Kind.ToString());

        // The kind stands beside the content and is not part of the promise.
        static string Fields(StudioDocument document)
        {
            JsonNode content = JsonNode.Parse(DocumentText.Write(document).Text)!;
            content.AsObject().Remove("kind");
            return content.ToJsonString(new JsonSerializerOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        }
    }

    // An entry holds 64 KB; the largest trial that the pages keep has 128 jars of 12 factors.
    [Fact]
    public void The_largest_trial_fits_into_an_entry()
    {
        TrialFactor factor = new(new string('f', 30), "C", ["20", "30", "40"], true);
        var amount = new TrialAmount("alkali", 0.000812345678, 0.000712345678, 0.000912345678, Measured.Kilogram);
        var begun = new TrialBegun(new string('t', 80), new string('a', 4000), 1, "1.0.0")
        {
            Factors = [.. Enumerable.Repeat(factor, 12)],
            Jars = [.. Enumerable.Range(1, 128).Select(n => new TrialJar(n, 8, [.. Enumerable.Repeat(11, 12)]) { Amounts = [amount, amount] })],
        };
        Assert.True(DocumentText.Write(begun).Text.Length < Payload.MostBytes);
    }

    private static Entry Read(TempStudio studio, SubjectKey trial, int jar, string typed, double kilograms, int hours, double? within = null) =>
        Kept(studio.Store.Append(new TrialJarRead(jar) { Results = [new TrialResult(new Measured("yield", typed, kilograms, Measured.Kilogram), within)] }.ToEntry(EntryId.New(Noon), trial, Noon.AddHours(hours))));

    private static Entry Kept(AppendResult result) => Assert.IsType<AppendResult.Kept>(result).Entry;

    private static TrialBegun Begun() => new("heat", "/trials/design?factors=temp", 1, "test")
    {
        Factors = [new TrialFactor("temp", "C", ["20", "60"], true)],
        Jars = [new TrialJar(1, 1, [0]), new TrialJar(2, 1, [1])],
        Results = ["yield"],
    };
}
