using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Tests;

public sealed class StoreTests
{
    [Fact]
    public async Task Two_who_write_at_once_lose_nothing()
    {
        using var studio = new TempStudio();
        StudioStore store = studio.Store;
        // Each append opens a connection of its own; both want the file at the same time.
        await Task.WhenAll(Enumerable.Range(0, 4).Select(who => Task.Run(() =>
        {
            for (int i = 0; i < 60; i++) Assert.IsType<AppendResult.Kept>(store.Append(TempStudio.Step((who * 1000) + i, SubjectKey.Batch(26, 1 + (who % 2)))));
        })));
        Assert.Equal(240, store.Count());
        Assert.Empty(store.Check());
    }

    [Fact]
    public async Task New_batches_started_at_once_get_different_numbers()
    {
        using var studio = new TempStudio();
        StudioStore store = studio.Store;
        AppendResult[] results = await Task.WhenAll(Enumerable.Range(0, 20).Select(n => Task.Run(() => store.AppendNew(SubjectClass.Batch, TempStudio.Id(n), TempStudio.Plan("weld"), TempStudio.Noon))));
        Assert.Equal(20, results.Select(r => Assert.IsType<AppendResult.Kept>(r).Entry.Subject).Distinct().Count());
    }

    [Fact]
    public void What_was_kept_is_there_after_closing()
    {
        using var studio = new TempStudio();
        Entry entry = studio.Keep(TempStudio.Step(1, note: "froth"));
        studio.Close();
        Assert.Equal(entry, Assert.Single(studio.Store.All()));
    }

    [Fact]
    public void Ten_thousand_entries_go_in_and_are_listed()
    {
        using var studio = new TempStudio();
        Entry[] entries = [.. Enumerable.Range(0, 10_000).Select(n => TempStudio.Step(n, SubjectKey.Batch(26, 1 + (n / 10)), n % 100 == 0 ? "cloudy" : null))];
        studio.Store.Merge(entries);
        Assert.Equal(1000, studio.Store.List().Count);
        Assert.Equal("26-1000", studio.Store.List(most: 1)[0].Subject.ToString());
        Assert.Equal(100, studio.Store.List("cloudy").Count);
        Assert.Empty(studio.Store.Check());
    }

    [Theory]
    [InlineData("färb", "26-001")]
    [InlineData("farber", "26-001")]
    [InlineData("FÄRBERWAU", "26-001")]
    [InlineData("potash", "26-001 26-002")]
    [InlineData("potash 26-002", "26-002")]
    [InlineData("alum froth", "26-002")]
    [InlineData("garance", "")]
    [InlineData("\"*(", "")]
    [InlineData("NOT OR \"", "")]
    public void Search_finds_beginnings_and_does_not_mind_accents(string words, string expected)
    {
        using var studio = new TempStudio();
        studio.Start(1, TempStudio.Plan("Färberwau, erster Sud"));
        studio.Start(2, TempStudio.Plan("Krapp"));
        studio.Keep(TempStudio.Step(3, SubjectKey.Batch(26, 2), "much froth"));
        Assert.Equal(expected, string.Join(' ', studio.Store.List(words).Select(l => l.Subject.ToString()).Order(StringComparer.Ordinal)));
    }

    /// <summary>A search cut off after so many gives the same as the whole list, filtered and cut off here.</summary>
    [Fact]
    public void A_search_that_is_cut_off_gives_the_latest()
    {
        using var studio = new TempStudio();
        var chance = new Random(5);
        for (int n = 1; n <= 60; n++) studio.Start(n, TempStudio.Plan(chance.Next(2) == 0 ? "weld" : "madder"));
        // Touched again in another order, some of them in the same second.
        for (int n = 61; n <= 160; n++)
            studio.Keep(TempStudio.Added(3, chance.Next(3) == 0 ? "cloudy" : "clear").ToEntry(TempStudio.Id(n), SubjectKey.Batch(26, chance.Next(1, 61)), TempStudio.Noon.AddSeconds(chance.Next(30))));
        foreach (string words in new[] { "weld", "cloudy", "mad clou", "alkali" })
            foreach (string? stage in new[] { null, "planned", "thrown-down" })
            {
                SubjectLine[] all = [.. studio.Store.List().Where(l => stage is null || l.Stage == stage)
                    .Where(l => words.Split(' ').All(w => Texts(studio, l.Subject).Any(t => t.StartsWith(w, StringComparison.Ordinal))))];
                Assert.Equal(all.Take(7), studio.Store.List(words, 7, stages: stage is null ? null : [stage]));
                Assert.Equal(all, studio.Store.List(words, stages: stage is null ? null : [stage]));
            }
        Assert.Empty(studio.Store.Check());

        static IEnumerable<string> Texts(TempStudio studio, SubjectKey subject) =>
            studio.Store.EntriesOf(subject).SelectMany(e => e.Payload.Texts()).SelectMany(t => t.Split(' ', '/', '?', '=', '&', '-'));
    }

    [Fact]
    public void Numbers_go_on_after_the_highest_of_the_year_or_of_the_lots()
    {
        using var studio = new TempStudio();
        studio.Keep(TempStudio.Plan("weld").ToEntry(TempStudio.Id(1), SubjectKey.Batch(26, 1007), TempStudio.Noon));
        studio.Keep(TempStudio.Plan("weld").ToEntry(TempStudio.Id(2), SubjectKey.Batch(26, 998), TempStudio.Noon));
        studio.Keep(TempStudio.Plan("weld").ToEntry(TempStudio.Id(3), SubjectKey.Batch(25, 5000), TempStudio.Noon));
        studio.Keep(new Noted().ToEntry(TempStudio.Id(4), SubjectKey.Lot(12), TempStudio.Noon));
        Assert.Equal("26-1008", studio.Start(5, TempStudio.Plan("madder")).Subject.ToString());
        Assert.Equal("lot-13", studio.Start(6, new LotBought(LotClass.Salt, "alum", Measured.Of("amount", "1 g", Alumroot.Quantities.Mass.FromGrams(1)))).Subject.ToString());
    }

    [Fact]
    public void A_second_program_is_told_and_one_that_only_looks_is_let_in()
    {
        using var studio = new TempStudio();
        studio.Keep(TempStudio.Step(1));
        StudioException locked = Assert.Throws<StudioException>(() => StudioStore.Open(studio.Folder, StudioAccess.Write, TimeProvider.System, TimeSpan.Zero));
        Assert.Equal(TroubleKind.Locked, locked.Failure.Kind);
        using StudioStore looking = StudioStore.Open(studio.Folder, StudioAccess.Read, TimeProvider.System);
        Assert.Equal(1, looking.Count());
        studio.Keep(TempStudio.Step(2));
        Assert.Equal(2, looking.Count());
        Assert.Throws<InvalidOperationException>(() => looking.Append(TempStudio.Step(3)));
    }

    [Fact]
    public void A_folder_without_a_studio_is_told_and_nothing_is_made_by_looking()
    {
        using var studio = new TempStudio();
        Assert.Equal(TroubleKind.Missing, Assert.Throws<StudioException>(() => StudioStore.Open(studio.Folder, StudioAccess.Read, TimeProvider.System)).Failure.Kind);
        Assert.False(Directory.Exists(studio.Folder));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_told()
    {
        using var studio = new TempStudio();
        Directory.CreateDirectory(studio.Folder);
        string file = Path.Combine(studio.Folder, "a-file");
        File.WriteAllText(file, "");
        Assert.Equal(TroubleKind.Unwritable, Assert.Throws<StudioException>(() => StudioStore.Open(Path.Combine(file, "studio"), StudioAccess.Write, TimeProvider.System)).Failure.Kind);
    }

    [Fact]
    public void A_file_that_turned_read_only_refuses_and_loses_nothing()
    {
        using var studio = new TempStudio();
        Entry kept = studio.Keep(TempStudio.Step(1));
        studio.Close();
        // A directory where the photographs' way in should be: no rights of an administrator get past it.
        Directory.CreateDirectory(Path.Combine(studio.Folder, StudioStore.PhotosName));
        File.WriteAllText(Path.Combine(studio.Folder, StudioStore.PhotosName, ".incoming"), "");
        Assert.Equal(TroubleKind.Unwritable, Assert.Throws<StudioException>(() => studio.Store.Photos.Keep(TempStudio.Picture(1))).Failure.Kind);
        Assert.Equal(kept, Assert.Single(studio.Store.All()));
    }

    [Fact]
    public void A_full_disk_refuses_and_loses_nothing()
    {
        using var studio = new TempStudio();
        var kept = new List<Entry>();
        using (StudioStore small = StudioStore.Open(studio.Folder, StudioAccess.Write, TimeProvider.System, null, Migrator.KnownSteps, mostPages: 60))
        {
            StudioException full = Assert.Throws<StudioException>(() =>
            {
                for (int n = 0; n < 1000; n++) kept.Add(Assert.IsType<AppendResult.Kept>(small.Append(TempStudio.Step(n, note: new string('x', 2000)))).Entry);
            });
            Assert.Equal(TroubleKind.Full, full.Failure.Kind);
        }
        Assert.NotEmpty(kept);
        Assert.Equal(kept, studio.Store.All());
        Assert.Empty(studio.Store.Check());
        studio.Keep(TempStudio.Step(5000));
    }

    [Fact]
    public void Another_file_under_that_name_is_damaged_and_left_as_it_is()
    {
        using var studio = new TempStudio();
        Directory.CreateDirectory(studio.Folder);
        File.WriteAllText(studio.File, new string('z', 5000));
        Assert.Equal(TroubleKind.Damaged, Assert.Throws<StudioException>(() => studio.Store).Failure.Kind);
        Assert.Equal(new string('z', 5000), File.ReadAllText(studio.File));
        // The lock was let go.
        File.Delete(studio.File);
        studio.Keep(TempStudio.Step(1));
    }

    [Fact]
    public void A_newer_form_is_told_and_an_older_one_is_copied_before_it_changes()
    {
        using var studio = new TempStudio();
        Entry entry = studio.Keep(TempStudio.Step(1));
        studio.Close();
        string[] steps = [.. Migrator.KnownSteps, "CREATE TABLE later (id TEXT) STRICT;"];
        using (StudioStore.Open(studio.Folder, StudioAccess.Write, TimeProvider.System, null, steps))
        {
            string copy = Assert.Single(Directory.GetFiles(Path.Combine(studio.Folder, StudioStore.BackupsName)));
            using SqliteConnection before = Database.OpenToRead(copy);
            Assert.Equal(1, before.Number("SELECT count(*) FROM entry"));
            Assert.Equal(0, before.Number("SELECT count(*) FROM sqlite_schema WHERE name = 'later'"));
        }
        Assert.Equal(TroubleKind.Newer, Assert.Throws<StudioException>(() => studio.Store).Failure.Kind);
        using StudioStore newer = StudioStore.Open(studio.Folder, StudioAccess.Read, TimeProvider.System, null, steps);
        Assert.Equal(entry, Assert.Single(newer.All()));
    }

    [Fact]
    public void The_database_itself_refuses_to_change_or_remove_an_entry()
    {
        using var studio = new TempStudio();
        studio.Keep(TempStudio.Step(1));
        using SqliteConnection connection = new Database(studio.File).Open();
        Assert.Throws<SqliteException>(() => connection.Run("UPDATE entry SET subject = '26-002'"));
        Assert.Throws<SqliteException>(() => connection.Run("DELETE FROM entry"));
        Assert.Equal(2, connection.Number("PRAGMA synchronous"));
        Assert.Equal(["wal"], connection.Texts("PRAGMA journal_mode"));
    }

    [Fact]
    public void An_entry_names_only_photographs_that_are_there()
    {
        using var studio = new TempStudio();
        string hash = studio.KeepPicture(1);
        Assert.Equal(hash, studio.KeepPicture(1));
        Assert.Single(studio.Store.Photos.All());
        studio.Keep((TempStudio.Added(1) with { Photos = [hash] }).ToEntry(TempStudio.Id(1), TempStudio.First, TempStudio.Noon));
        Entry lost = (TempStudio.Added(1) with { Photos = [new string('0', 64)] }).ToEntry(TempStudio.Id(2), TempStudio.First, TempStudio.Noon);
        Assert.IsType<AppendResult.PhotoMissing>(studio.Store.Append(lost));
        Entry path = (TempStudio.Added(1) with { Photos = ["../../studio.db"] }).ToEntry(TempStudio.Id(3), TempStudio.First, TempStudio.Noon);
        Assert.IsType<AppendResult.PhotoMissing>(studio.Store.Append(path));
    }
}
