using Alumroot.Studio.Documents;
using Alumroot.Studio.Integrity;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Tests;

/// <summary>Whatever is done to the files behind the program's back is found and named.</summary>
public sealed class IntegrityTests
{
    private const string NoGuards = "DROP TRIGGER entry_is_never_changed; DROP TRIGGER entry_is_never_removed; PRAGMA foreign_keys = OFF; ";

    [Theory]
    [InlineData("UPDATE entry SET payload_json = replace(payload_json, '3 g', '4 g') WHERE sequence = 2", FindingKeys.EntryChanged)]
    [InlineData("UPDATE entry SET payload_json = '{' WHERE sequence = 2", FindingKeys.EntryUnreadable)]
    [InlineData("UPDATE entry SET at_unix_ms = 9223372036854775807 WHERE sequence = 2", FindingKeys.EntryUnreadable)]
    [InlineData("DELETE FROM entry WHERE sequence = 2", FindingKeys.ChainBroken)]
    [InlineData("UPDATE entry SET chain_sha256 = '' WHERE sequence = 2", FindingKeys.ChainBroken)]
    [InlineData("UPDATE subject SET stage = 'dry'", FindingKeys.ListDiffers)]
    [InlineData("DELETE FROM subject", FindingKeys.ListDiffers)]
    [InlineData("UPDATE subject_text SET words = 'other' WHERE rowid = (SELECT search_row FROM subject LIMIT 1)", FindingKeys.SearchDiffers)]
    [InlineData("DELETE FROM subject_text WHERE rowid = (SELECT search_row FROM subject LIMIT 1)", FindingKeys.SearchDiffers)]
    public void A_change_in_the_file_is_found(string sql, string key)
    {
        using var studio = new TempStudio();
        for (int n = 1; n <= 3; n++) studio.Keep(TempStudio.Step(n));
        Assert.Empty(studio.Store.Check());
        using (SqliteConnection connection = new Database(studio.File).Open()) connection.Run(NoGuards + sql);
        Assert.Contains(studio.Store.Check(), f => f.Key == key);
    }

    [Fact]
    public void Damaged_pages_are_found()
    {
        using var studio = new TempStudio();
        studio.Store.Merge([.. Enumerable.Range(0, 500).Select(n => TempStudio.Step(n))]);
        studio.Close();
        using (FileStream file = new(studio.File, FileMode.Open, FileAccess.ReadWrite))
        {
            file.Position = file.Length / 2;
            file.Write(Enumerable.Repeat((byte)0xA5, 3000).ToArray());
        }
        try
        {
            Assert.Contains(studio.Store.Check(), f => f.Level == FindingLevel.Loss);
        }
        catch (StudioException e)
        {
            Assert.Equal(TroubleKind.Damaged, e.Failure.Kind);
        }
    }

    [Fact]
    public void A_photograph_that_is_gone_changed_or_unnamed_is_found()
    {
        using var studio = new TempStudio();
        string[] hashes = [.. Enumerable.Range(0, 3).Select(n => studio.KeepPicture(n))];
        studio.Keep(new Noted { Photos = hashes[..2] }.ToEntry(TempStudio.Id(1), TempStudio.First, TempStudio.Noon));
        File.Delete(studio.Store.Photos.PathOf(hashes[0]));
        File.WriteAllText(studio.Store.Photos.PathOf(hashes[1]), "other");
        Assert.Equal(
            [(FindingKeys.PhotoMissing, hashes[0]), (FindingKeys.PhotoChanged, hashes[1]), (FindingKeys.PhotoUnnamed, hashes[2])],
            studio.Store.Check().Select(f => (f.Key, f.Where)).OrderBy(f => Array.IndexOf(hashes, f.Where)));
    }

    [Fact]
    public async Task A_copy_made_while_others_write_is_whole_and_opens()
    {
        using var studio = new TempStudio();
        StudioStore store = studio.Store;
        string photo = studio.KeepPicture(1);
        studio.Keep(new Noted { Photos = [photo] }.ToEntry(TempStudio.Id(9999), TempStudio.First, TempStudio.Noon));
        Task writing = Task.Run(() =>
        {
            for (int n = 0; n < 100; n++) store.Append(TempStudio.Step(n));
        }, TestContext.Current.CancellationToken);
        BackupReport first = store.Backup();
        await writing;
        BackupReport second = store.Backup();
        Assert.Empty(first.Findings);
        Assert.Equal((101, 1, 0), (second.EntryCount, second.PhotoCount, second.PhotosCopied));
        Assert.NotEqual(first.File, second.File);

        using var restored = new TempStudio();
        Directory.CreateDirectory(restored.Folder);
        File.Copy(second.File, restored.File);
        string there = restored.Store.Photos.PathOf(photo);
        Directory.CreateDirectory(Path.GetDirectoryName(there)!);
        File.Copy(Path.Combine(studio.Folder, StudioStore.BackupsName, StudioStore.PhotosName, photo[..2], photo), there);
        Assert.Equal(store.All(), restored.Store.All());
        Assert.Empty(restored.Store.Check());
    }
}
