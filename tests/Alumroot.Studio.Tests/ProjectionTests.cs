using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Tests;

/// <summary>What lists and pages show of entries.</summary>
public sealed class ProjectionTests
{
    private static readonly LotBought Alum = new(LotClass.Salt, "potash alum", Measured.Of("amount", "500 g", Mass.FromGrams(500)));

    [Theory]
    [InlineData("", BatchStage.Planned)]
    [InlineData("extract", BatchStage.Extracting)]
    [InlineData("extract salt", BatchStage.Salted)]
    [InlineData("extract alkali", BatchStage.ThrownDown)]
    [InlineData("extract salt alkali", BatchStage.ThrownDown)]
    [InlineData("extract salt alkali settle", BatchStage.ThrownDown)]
    [InlineData("extract salt alkali settle wash", BatchStage.Washing)]
    [InlineData("wash filter", BatchStage.OnTheCloth)]
    [InlineData("wash filter.", BatchStage.Drying)]
    [InlineData("filter dry", BatchStage.Drying)]
    [InlineData("filter dry.", BatchStage.DryCake)]
    [InlineData("dry. grind.", BatchStage.Pigment)]
    [InlineData("dry. grind. sieve", BatchStage.Pigment)]
    [InlineData("dry. wash", BatchStage.Washing)]
    public void The_stage_follows_from_the_latest_step(string steps, BatchStage expected)
    {
        using var studio = new TempStudio();
        studio.Start(1, TempStudio.Plan("weld"));
        int n = 2;
        foreach (string word in steps.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            studio.Keep(new BatchStep(Enum.Parse<StepKind>(word.TrimEnd('.'), ignoreCase: true)) { Ended = word.EndsWith('.') }.ToEntry(TempStudio.Id(n), TempStudio.First, TempStudio.Noon.AddSeconds(n++)));
        Assert.Equal(expected, studio.Store.Batch(TempStudio.First)!.Stage);
        Assert.Equal(expected, Assert.Single(studio.Store.List()).BatchStage);
    }

    [Fact]
    public void A_batch_waits_until_its_time_and_no_longer_when_given_up()
    {
        using var studio = new TempStudio();
        studio.Start(1, TempStudio.Plan("weld"));
        Assert.Empty(studio.Store.Due());
        DateTimeOffset ready = TempStudio.Noon.AddHours(3);
        Entry settle = studio.Keep(new BatchStep(StepKind.Settle) { ReadyAt = ready }.ToEntry(TempStudio.Id(2), TempStudio.First, TempStudio.Noon.AddSeconds(2)));
        Assert.Equal(ready, Assert.Single(studio.Store.Due()).DueAt);
        Entry given = studio.Keep(new BatchGivenUp("mould").ToEntry(TempStudio.Id(3), TempStudio.First, TempStudio.Noon.AddSeconds(3)));
        Assert.Empty(studio.Store.Due());
        studio.Keep(new Withdrawn().ToEntry(TempStudio.Id(4), TempStudio.First, TempStudio.Noon.AddSeconds(4), given.Id));
        Assert.Equal(ready, Assert.Single(studio.Store.Due()).DueAt);
        studio.Keep(new Withdrawn().ToEntry(TempStudio.Id(5), TempStudio.First, TempStudio.Noon.AddSeconds(5), settle.Id));
        Assert.Empty(studio.Store.Due());
    }

    [Fact]
    public void A_correction_stands_where_the_corrected_entry_stood()
    {
        using var studio = new TempStudio();
        studio.Start(1, TempStudio.Plan("weld"));
        foreach (int n in new[] { 2, 3, 4 }) studio.Keep(TempStudio.Step(n, grams: n));
        studio.Keep(TempStudio.Step(5, corrects: TempStudio.Id(3), grams: 3.5));
        Assert.Equal([0.002, 0.0035, 0.004], studio.Store.Batch(TempStudio.First)!.Steps.Select(s => s.Values[0].SiValue));
    }

    [Fact]
    public void A_second_device_that_has_not_seen_the_latest_entry_adds_nothing()
    {
        using var studio = new TempStudio();
        EntryId plan = studio.Start(1, TempStudio.Plan("weld")).Id;
        Entry kept = Assert.IsType<AppendResult.Kept>(studio.Store.Append(TempStudio.Step(2), plan)).Entry;
        Assert.Equal(kept, Assert.IsType<AppendResult.MovedOn>(studio.Store.Append(TempStudio.Step(3), plan)).Latest);
        Assert.IsType<AppendResult.AlreadyThere>(studio.Store.Append(TempStudio.Step(2), plan));
        Assert.IsType<AppendResult.Kept>(studio.Store.Append(TempStudio.Step(3), kept.Id));
        Assert.Equal(3, studio.Store.Count());
    }

    [Fact]
    public void Two_devices_at_once_make_one_entry()
    {
        using var studio = new TempStudio();
        EntryId plan = studio.Start(1, TempStudio.Plan("weld")).Id;
        AppendResult[] results = new AppendResult[8];
        Parallel.For(0, results.Length, i => results[i] = studio.Store.Append(TempStudio.Step(10 + i), plan));
        Assert.Single(results.OfType<AppendResult.Kept>());
        Assert.Equal(results.Length - 1, results.OfType<AppendResult.MovedOn>().Count());
    }

    [Fact]
    public void A_count_of_a_lot_replaces_what_was_reckoned_before_it()
    {
        using var studio = new TempStudio();
        SubjectKey lot = studio.Start(1, Alum).Subject;
        studio.Start(2, TempStudio.Plan("weld"));
        Use(3, 50);
        Assert.Equal(0.45, studio.Store.Lot(lot)!.LeftSi!.Value, 9);
        studio.Keep(new LotCounted(Measured.Of("amount", "400 g", Mass.FromGrams(400))).ToEntry(TempStudio.Id(4), lot, TempStudio.Noon.AddSeconds(4)));
        Assert.Equal(0.4, studio.Store.Lot(lot)!.LeftSi!.Value, 9);
        Use(5, 30);
        LotState state = studio.Store.Lot(lot)!;
        Assert.Equal(0.37, state.LeftSi!.Value, 9);
        Assert.Equal([TempStudio.First, TempStudio.First], state.Taken.Select(t => t.By));

        void Use(int n, double grams)
        {
            Measured amount = Measured.Of("amount", $"{grams} g", Mass.FromGrams(grams));
            studio.Keep(new BatchStep(StepKind.Salt) { Values = [amount], Uses = [new LotUse(lot.ToString(), amount)] }.ToEntry(TempStudio.Id(n), TempStudio.First, TempStudio.Noon.AddSeconds(n)));
        }
    }

    [Fact]
    public void The_studios_own_entries_are_found_and_stand_in_no_list()
    {
        using var studio = new TempStudio();
        studio.Keep(new BowlWeighed("blue", Measured.Of("amount", "212 g", Mass.FromGrams(212))).ToEntry(TempStudio.Id(1), SubjectKey.Studio, TempStudio.Noon));
        studio.Keep(new BowlWeighed("Blue", Measured.Of("amount", "214 g", Mass.FromGrams(214))).ToEntry(TempStudio.Id(2), SubjectKey.Studio, TempStudio.Noon.AddSeconds(1)));
        studio.Keep(new StudioSet { Units = "kitchen", PlanFields = new Dictionary<string, string> { ["scale"] = "1 g" } }.ToEntry(TempStudio.Id(3), SubjectKey.Studio, TempStudio.Noon.AddSeconds(2)));
        Assert.Empty(studio.Store.List());
        StudioState state = studio.Store.State();
        Assert.Equal("214 g", Assert.Single(state.Bowls).Empty.Typed);
        Assert.Equal("1 g", state.Set.PlanFields["scale"]);
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public void Lists_are_narrowed_by_kind_stage_and_words_together()
    {
        using var studio = new TempStudio();
        studio.Start(1, TempStudio.Plan("weld") with { Dyestuff = "Weld", Salt = "Potash alum" });
        studio.Start(2, TempStudio.Plan("madder"));
        studio.Start(3, Alum);
        studio.Keep(TempStudio.Step(4));
        studio.Keep(new Tagged(["pale", "gift"]).ToEntry(TempStudio.Id(5), TempStudio.First, TempStudio.Noon.AddSeconds(5)));
        Assert.Equal(["26-001", "lot-1", "26-002"], studio.Store.List().Select(l => l.Subject.ToString()));
        Assert.Equal(["26-001", "26-002"], studio.Store.List(kind: SubjectClass.Batch).Select(l => l.Subject.ToString()));
        Assert.Equal(["26-002"], studio.Store.List(kind: SubjectClass.Batch, stages: ["planned"]).Select(l => l.Subject.ToString()));
        SubjectLine weld = Assert.Single(studio.Store.List("gift", kind: SubjectClass.Batch, stages: ["thrown-down", "washing"]));
        Assert.Equal(("Weld", "Potash alum", "pale gift"), (weld.Dyestuff, weld.Salt, weld.Tags));
        Assert.Equal(["entry-000005", "entry-000004"], studio.Store.Latest(2).Select(e => e.Id.Text));
        Assert.Equal(["entry-000003"], studio.Store.Latest(1, TempStudio.Id(4)).Select(e => e.Id.Text));
    }

    /// <summary>A file of form 1, as the first version wrote it: without what lists show beyond the title.</summary>
    [Fact]
    public void A_record_of_the_first_form_gets_its_lists_worked_out_anew()
    {
        using var studio = new TempStudio();
        studio.Start(1, TempStudio.Plan("weld") with { Dyestuff = "Weld" });
        studio.Keep(new BatchStep(StepKind.Settle) { ReadyAt = TempStudio.Noon.AddHours(1) }.ToEntry(TempStudio.Id(2), TempStudio.First, TempStudio.Noon.AddSeconds(2)));
        studio.Close();
        using (var connection = new SqliteConnection($"Data Source={studio.File};Pooling=false"))
        {
            connection.Open();
            connection.Run("DROP INDEX subject_due; DROP INDEX subject_stage; DROP INDEX subject_class; DROP INDEX subject_search_row; DROP INDEX subject_number; DROP INDEX entry_swatch; DROP INDEX subject_paint; DROP INDEX subject_exposure");
            connection.Run("DROP TABLE subject_text; CREATE VIRTUAL TABLE entry_text USING fts5 (words, subject UNINDEXED)");
            foreach (string column in new[] { "projection", "dyestuff", "salt", "pigment_kg", "due_unix_ms", "due_zone_minutes", "tags", "search_row" }) connection.Run($"ALTER TABLE subject DROP COLUMN {column}");
            connection.Run("UPDATE subject SET stage = 'settle'; PRAGMA user_version = 1");
        }
        SubjectLine line = Assert.Single(studio.Store.List());
        Assert.Equal(("Weld", "thrown-down", TempStudio.Noon.AddHours(1)), (line.Dyestuff, line.Stage, line.DueAt));
        Assert.Equal(TempStudio.First, Assert.Single(studio.Store.List("weld", stages: ["thrown-down"])).Subject);
        Assert.Empty(studio.Store.Check());
        Assert.Single(Directory.GetFiles(Path.Combine(studio.Folder, StudioStore.BackupsName)));
    }
}
