using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Exchange;

/// <summary>Merges an exported studio: everything is read and verified before anything is written, photographs come before the entries that name them, and the entries come in one transaction.</summary>
internal static class Importer
{
    public static ImportOutcome Read(string file, PhotoFolder photos, JournalWriter writer, DateTimeOffset now, ImportLimits? limits = null)
    {
        limits ??= ImportLimits.Usual;
        FileStream stream;
        try
        {
            stream = File.OpenRead(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new ImportOutcome.Refused(ImportRefusal.CannotRead, file);
        }
        using (stream)
        {
            try
            {
                using var zip = new ZipArchive(stream, ZipArchiveMode.Read);
                return Read(zip, photos, writer, now, limits);
            }
            catch (InvalidDataException e)
            {
                return new ImportOutcome.Refused(ImportRefusal.NotAZip, e.Message);
            }
            catch (TooLargeException e)
            {
                return new ImportOutcome.Refused(ImportRefusal.TooLarge, e.Message);
            }
        }
    }

    private static ImportOutcome Read(ZipArchive zip, PhotoFolder photos, JournalWriter writer, DateTimeOffset now, ImportLimits limits)
    {
        if (zip.Entries.Count > limits.Files) return Refused(ImportRefusal.TooLarge, zip.Entries.Count.ToString(CultureInfo.InvariantCulture));
        if (zip.GetEntry(ExportNames.Manifest) is not { } first || zip.GetEntry(ExportNames.Entries) is not { } lines) return Refused(ImportRefusal.NotAStudio, "");
        if (zip.Entries.FirstOrDefault(e => !ExportNames.IsKnown(e.FullName)) is { } strange) return Refused(ImportRefusal.StrangeName, strange.FullName);
        if (zip.Entries.GroupBy(e => e.FullName, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice) return Refused(ImportRefusal.StrangeName, twice.Key);

        using var manifestText = new StreamReader(Open(first, ImportLimits.ManifestBytes, limits));
        if (Manifest.TryRead(manifestText.ReadToEnd()) is not { Format: Manifest.FormatName } manifest) return Refused(ImportRefusal.NotAStudio, "");
        if (manifest.Schema > Manifest.Newest) return Refused(ImportRefusal.Newer, manifest.Schema.ToString(CultureInfo.InvariantCulture));

        var entries = new Dictionary<EntryId, Entry>();
        if (ReadEntries(lines, limits, manifest, entries) is { } damaged) return damaged;

        int added = 0;
        foreach (ZipArchiveEntry photo in zip.Entries)
        {
            if (ExportNames.HashOf(photo.FullName) is not { } hash || photos.Has(hash)) continue;
            using Stream content = Outside.Do(() => Open(photo, ImportLimits.PhotoBytes, limits));
            // A photograph that does not fit its name stays in the folder under its true name, where the check tells of it; no entry is taken.
            if (Unpacked(photos, content) != new PhotoOutcome.Kept(hash)) return Refused(ImportRefusal.Damaged, photo.FullName);
            added++;
        }
        MergeResult merged = writer.Merge(entries.Values, now);
        string[] missing = [.. merged.Added.SelectMany(e => e.Payload.PhotoHashes()).Distinct().Where(h => !photos.Has(h))];
        return new ImportOutcome.Merged(merged.Added.Count, merged.AlreadyThereCount, [.. merged.Conflicts.Select(e => e.Id)], added, missing);
    }

    private static PhotoOutcome Unpacked(PhotoFolder photos, Stream content)
    {
        try
        {
            return photos.KeepAgain(content);
        }
        catch (StudioException e) when (e.InnerException is TooLargeException inner)
        {
            throw inner;
        }
    }

    private static ImportOutcome.Refused? ReadEntries(ZipArchiveEntry lines, ImportLimits limits, Manifest manifest, Dictionary<EntryId, Entry> entries)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using Stream stream = Open(lines, limits.EntriesBytes, limits);
        int number = 0;
        foreach (byte[] line in Lines(stream))
        {
            number++;
            hash.AppendData(line);
            if (EntryLine.TryRead(Encoding.UTF8.GetString(line)) is not { } entry || !entries.TryAdd(entry.Id, entry))
                return Refused(ImportRefusal.Damaged, string.Create(CultureInfo.InvariantCulture, $"{ExportNames.Entries}, line {number}"));
        }
        return entries.Count == manifest.Entries && Convert.ToHexStringLower(hash.GetHashAndReset()) == manifest.EntriesSha256
            ? null
            : Refused(ImportRefusal.Damaged, ExportNames.Entries);
    }

    // Lines with their ends, each of bounded length.
    private static IEnumerable<byte[]> Lines(Stream stream)
    {
        byte[] buffer = new byte[1 << 16];
        using var line = new MemoryStream();
        for (int read; (read = stream.Read(buffer)) > 0;)
        {
            int from = 0;
            for (int end; (end = Array.IndexOf(buffer, (byte)'\n', from, read - from)) >= 0; from = end + 1)
            {
                line.Write(buffer, from, end + 1 - from);
                yield return line.ToArray();
                line.SetLength(0);
            }
            line.Write(buffer, from, read - from);
            if (line.Length > ImportLimits.LongestLine) throw new TooLargeException(ExportNames.Entries);
        }
        if (line.Length > 0) yield return line.ToArray();
    }

    private static BoundedStream Open(ZipArchiveEntry entry, long mostBytes, ImportLimits limits) =>
        new(entry.Open(), entry.FullName, Math.Min(mostBytes, (1L << 20) + (limits.Ratio * entry.CompressedLength)));

    private static ImportOutcome.Refused Refused(ImportRefusal why, string where) => new(why, where);
}
