using System.Globalization;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Integrity;

/// <summary>A copy that was made and verified.</summary>
/// <param name="File">The copy of the record.</param>
/// <param name="EntryCount">Entries in it.</param>
/// <param name="PhotoCount">Photographs that it names, all of them beside it.</param>
/// <param name="PhotosCopied">Those that were not there from an earlier copy.</param>
/// <param name="Findings">What does not agree in the copy; empty when all is well.</param>
public sealed record BackupReport(string File, long EntryCount, int PhotoCount, int PhotosCopied, IReadOnlyList<StudioFinding> Findings);

/// <summary>Copies the record while it is in use.</summary>
internal sealed class BackupMaker(Database database, PhotoFolder photos, TimeProvider clock)
{
    public BackupReport Make(string target) => Outside.Do(() =>
    {
        Directory.CreateDirectory(target);
        string stamp = clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        string file = Free(target, $"studio-{stamp}");
        using (SqliteConnection connection = database.Open()) connection.Run("VACUUM INTO $file", ("$file", file));
        Flush(file);

        var findings = new List<StudioFinding>();
        var copies = new PhotoFolder(Path.Combine(target, StudioStore.PhotosName));
        (long entries, IReadOnlyList<string> named) = Verify(file, findings);
        int copied = 0;
        foreach (string hash in named)
        {
            if (!photos.Has(hash))
            {
                findings.Add(new StudioFinding(FindingKeys.PhotoMissing, FindingLevel.Loss, hash));
                continue;
            }
            if (!copies.Has(hash))
            {
                using Stream content = photos.Open(hash);
                if (copies.KeepAgain(content) != new PhotoOutcome.Kept(hash)) findings.Add(new StudioFinding(FindingKeys.PhotoChanged, FindingLevel.Loss, hash));
                copied++;
            }
            else if (copies.HashNow(hash) != hash) findings.Add(new StudioFinding(FindingKeys.PhotoChanged, FindingLevel.Loss, hash));
        }
        return new BackupReport(file, entries, named.Count, copied, findings);
    });

    private static (long Entries, IReadOnlyList<string> Photos) Verify(string file, List<StudioFinding> findings)
    {
        using SqliteConnection copy = Database.OpenToRead(file);
        findings.AddRange(copy.Texts("PRAGMA integrity_check").Where(l => l != "ok").Select(l => new StudioFinding(FindingKeys.DatabaseDamaged, FindingLevel.Loss, file, l)));
        string chain = Chain.Start;
        foreach (string checksum in copy.Texts("SELECT checksum_sha256 FROM entry ORDER BY sequence")) chain = Chain.Next(chain, checksum);
        if (copy.Texts("SELECT chain_sha256 FROM entry ORDER BY sequence DESC LIMIT 1") is [var last] && last != chain)
            findings.Add(new StudioFinding(FindingKeys.ChainBroken, FindingLevel.Loss, file));
        return (copy.Number("SELECT count(*) FROM entry"), copy.Texts("SELECT DISTINCT photo_sha256 FROM entry_photo ORDER BY 1"));
    }

    private static void Flush(string file)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.ReadWrite, FileShare.Read);
        stream.Flush(flushToDisk: true);
    }

    private static string Free(string folder, string name)
    {
        string file = Path.Combine(folder, name + ".db");
        for (int next = 2; File.Exists(file); next++) file = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{name}-{next}.db"));
        return file;
    }
}
