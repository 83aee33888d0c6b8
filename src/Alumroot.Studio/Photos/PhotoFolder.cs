using System.Security.Cryptography;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Photos;

/// <summary>Photographs, each in a file named for its content: <c>photos/ab/abcdef...</c>. A file is whole and flushed before any row names it, and is never changed.</summary>
public sealed class PhotoFolder
{
    /// <summary>The most bytes a photograph may have.</summary>
    public const long MostBytes = 60L << 20;

    private const int HashCharacters = 64;

    internal PhotoFolder(string folder) => Folder = folder;

    internal string Folder { get; }

    /// <summary>Keeps a photograph.</summary>
    /// <param name="content">Its bytes.</param>
    /// <returns>Its hash, by which entries name it; null when it is neither JPEG, PNG nor WebP, or larger than <see cref="MostBytes"/>.</returns>
    /// <exception cref="StudioException">It could not be written.</exception>
    public string? Keep(Stream content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return Outside.Do(() =>
        {
            string incoming = Path.Combine(Folder, ".incoming");
            Directory.CreateDirectory(incoming);
            string file = Path.Combine(incoming, Guid.NewGuid().ToString("N"));
            try
            {
                if (Copy(content, file) is not { } hash) return null;
                string kept = PathOf(hash);
                Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
                if (!File.Exists(kept)) File.Move(file, kept, overwrite: true);
                return hash;
            }
            finally
            {
                File.Delete(file);
            }
        });
    }

    /// <summary>Whether a photograph of this hash is kept.</summary>
    public bool Has(string hash) => IsHash(hash) && File.Exists(PathOf(hash));

    /// <summary>Opens a photograph.</summary>
    /// <exception cref="StudioException">It is not there or cannot be read.</exception>
    public Stream Open(string hash) => IsHash(hash)
        ? Outside.Do(() => File.OpenRead(PathOf(hash)))
        : throw new ArgumentException($"'{hash}' is no hash of a photograph.", nameof(hash));

    /// <summary>The hashes of all photographs in the folder.</summary>
    public IReadOnlyList<string> All() => !Directory.Exists(Folder) ? [] :
        [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Select(f => Path.GetFileName(f)!).Where(IsHash).Order(StringComparer.Ordinal)];

    /// <summary>Whether a text has the form of a hash. Only such a text ever becomes part of a path.</summary>
    public static bool IsHash(string? text) => text is { Length: HashCharacters } && text.All(c => c is (>= '0' and <= '9') or (>= 'a' and <= 'f'));

    internal string PathOf(string hash) => Path.Combine(Folder, hash[..2], hash);

    /// <summary>The hash of a kept file as it is now.</summary>
    internal string HashNow(string hash)
    {
        using Stream stream = Open(hash);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    private static string? Copy(Stream content, string file)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using var written = new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        byte[] buffer = new byte[1 << 16];
        long total = 0;
        for (int read; (read = content.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false)) > 0;)
        {
            if (total == 0 && !IsPicture(buffer.AsSpan(0, read))) return null;
            if ((total += read) > MostBytes) return null;
            hash.AppendData(buffer, 0, read);
            written.Write(buffer, 0, read);
        }
        if (total == 0) return null;
        written.Flush(flushToDisk: true);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // First bytes: JPEG by ITU T.81 (SOI), PNG by ISO/IEC 15948, WebP by its RIFF container.
    private static bool IsPicture(ReadOnlySpan<byte> start) =>
        start.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ||
        start.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]) ||
        (start.Length >= 12 && start.StartsWith("RIFF"u8) && start[8..].StartsWith("WEBP"u8));
}
