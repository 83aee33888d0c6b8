using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Exchange;

/// <summary>What an export holds.</summary>
/// <param name="File">The zip.</param>
/// <param name="EntryCount">Entries in it.</param>
/// <param name="PhotoCount">Photographs in it.</param>
/// <param name="PhotosMissing">Hashes that entries name and the folder does not have.</param>
public sealed record ExportReport(string File, long EntryCount, int PhotoCount, IReadOnlyList<string> PhotosMissing);

/// <summary>Writes a studio to one zip. The file has its name only when it is whole.</summary>
internal static class Exporter
{
    public static ExportReport Write(StudioStore studio, string file, string programVersion, DateTimeOffset now) => Outside.Do(() =>
    {
        if (File.Exists(file)) throw new IOException($"'{file}' is there already");
        string part = $"{file}.{Guid.NewGuid():N}.part";
        try
        {
            ExportReport report;
            using (var stream = new FileStream(part, FileMode.CreateNew, FileAccess.ReadWrite))
            {
                using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true)) report = Write(studio, zip, file, programVersion, now);
                stream.Flush(flushToDisk: true);
            }
            File.Move(part, file, overwrite: false);
            return report;
        }
        finally
        {
            File.Delete(part);
        }
    });

    private static ExportReport Write(StudioStore studio, ZipArchive zip, string file, string programVersion, DateTimeOffset now)
    {
        var entries = new List<Entry>();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Lines(zip, ExportNames.Entries, studio.All().Select(e =>
        {
            entries.Add(e);
            string line = EntryLine.Write(e) + "\n";
            hash.AppendData(Encoding.UTF8.GetBytes(line));
            return line;
        }), now);

        // The tables come from the very entries that were written, whatever has been added since.
        IGrouping<SubjectKey, Entry>[] subjects = [.. entries.GroupBy(e => e.Subject).OrderBy(g => g.Key)];
        Lines(zip, "tables/batches.csv", Tables.Batches(subjects.Select(g => SubjectLine.Of(g.Key, [.. g]))), now);
        Lines(zip, "tables/readings.csv", Tables.Readings(subjects.Where(g => g.Key.Class == SubjectClass.Batch).SelectMany(g => Standings.Of(g))), now);
        Lines(zip, "tables/lots.csv", Tables.Lots(subjects.Where(g => g.Key.Class == SubjectClass.Lot).Select(g => LotState.Of(g.Key, entries))), now);
        // Without paints and trials the file is one that an older program takes too.
        PaintState[] paints = [.. subjects.Where(g => g.Key.Class == SubjectClass.Paint).Select(g => PaintState.Of(g.Key, g))];
        if (paints.Length > 0) Lines(zip, "tables/paints.csv", Tables.Paints(paints), now);

        ExposureState[] exposures = [.. subjects.Where(g => g.Key.Class == SubjectClass.Exposure).Select(g => ExposureState.Of(g.Key, g))];
        if (exposures.Length > 0) Lines(zip, "tables/exposures.csv", Tables.Exposures(exposures), now);
        TrialState[] trials = [.. subjects.Where(g => g.Key.Class == SubjectClass.Trial).Select(g => TrialState.Of(g.Key, g))];
        if (trials.Length > 0) Lines(zip, "tables/trials.csv", Tables.Trials(trials), now);

        string[] named = [.. entries.SelectMany(e => e.Payload.PhotoHashes()).Distinct().Order(StringComparer.Ordinal)];
        string[] there = [.. named.Where(studio.Photos.Has)];
        foreach (string photo in there)
        {
            using Stream content = studio.Photos.Open(photo);
            using Stream target = Create(zip, ExportNames.Photo(photo), now, CompressionLevel.NoCompression);
            content.CopyTo(target);
        }
        var manifest = new Manifest(
            Manifest.FormatName, Manifest.Newest, programVersion, now.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture), entries.Count,
            Convert.ToHexStringLower(hash.GetHashAndReset()), there.Length);
        Lines(zip, ExportNames.Manifest, [manifest.Write()], now);
        return new ExportReport(file, entries.Count, there.Length, [.. named.Except(there)]);
    }

    private static void Lines(ZipArchive zip, string name, IEnumerable<string> lines, DateTimeOffset now)
    {
        using Stream stream = Create(zip, name, now, CompressionLevel.Optimal);
        foreach (string line in lines) stream.Write(Encoding.UTF8.GetBytes(line));
    }

    private static Stream Create(ZipArchive zip, string name, DateTimeOffset now, CompressionLevel level)
    {
        ZipArchiveEntry entry = zip.CreateEntry(name, level);
        entry.LastWriteTime = now;
        return entry.Open();
    }
}
