using System.Security.Cryptography;
using Alumroot.Studio.Store;

namespace Alumroot.Studio.Photos;

/// <summary>Photographs, each in a file named for its content: <c>photos/ab/abcdef...</c>. A file is whole and flushed before any row names it, and is never changed.</summary>
public sealed class PhotoFolder
{
    /// <summary>The most bytes a photograph may have.</summary>
    public const long MostBytes = 60L << 20;

    /// <summary>The most pixels a photograph may have; the sensors of phones give 12 to 50 million in ordinary use.</summary>
    public const long MostPixels = 60_000_000;

    /// <summary>The longest side of the copy for lists.</summary>
    public const int ListSidePixels = 320;

    /// <summary>The longest side of the copy for pages.</summary>
    public const int PageSidePixels = 1280;

    private const int HashCharacters = 64;

    // One picture is decoded at a time, whoever asks, so that many at once need no more memory than one.
    private static readonly Lock Decoding = new();

    private readonly string _small;

    internal PhotoFolder(string folder)
    {
        Folder = folder;
        _small = Path.Combine(Path.GetDirectoryName(folder)!, StudioStore.SmallName);
    }

    internal string Folder { get; }

    /// <summary>Keeps a photograph as it came, after it was decoded once to see that it can be, and makes its shrunken copies.</summary>
    /// <param name="content">Its bytes.</param>
    /// <returns>Its hash, or why it is not taken.</returns>
    /// <exception cref="StudioException">It could not be written.</exception>
    public PhotoOutcome Keep(Stream content) => Keep(content, looking: true);

    /// <summary>Keeps what another studio or an earlier version kept, to the byte; its kind and size count, the inside is looked at when a copy of it is asked for.</summary>
    internal PhotoOutcome KeepAgain(Stream content) => Keep(content, looking: false);

    /// <summary>Whether a photograph of this hash is kept.</summary>
    public bool Has(string hash) => IsHash(hash) && File.Exists(PathOf(hash));

    /// <summary>Opens a photograph as it came.</summary>
    /// <exception cref="StudioException">It is not there or cannot be read.</exception>
    public Stream Open(string hash) => IsHash(hash)
        ? Outside.Do(() => File.OpenRead(PathOf(hash)))
        : throw new ArgumentException($"'{hash}' is no hash of a photograph.", nameof(hash));

    /// <summary>The kind of a photograph by its first bytes; null when it is not there.</summary>
    /// <exception cref="StudioException">It cannot be read.</exception>
    public PhotoKind? KindOf(string hash) => !Has(hash) ? null : Outside.Do(() => HeadOf(PathOf(hash)));

    /// <summary>Opens the shrunken copy of a photograph, upright, a JPEG; it is made when it is not there.</summary>
    /// <param name="hash">The photograph.</param>
    /// <param name="longestSidePixels"><see cref="ListSidePixels"/> or <see cref="PageSidePixels"/>.</param>
    /// <returns>Null when there is no such photograph, or when it came with an import and cannot be decoded.</returns>
    /// <exception cref="StudioException">It cannot be read, or the copy not written.</exception>
    public Stream? OpenSmall(string hash, int longestSidePixels)
    {
        if (longestSidePixels is not (ListSidePixels or PageSidePixels)) throw new ArgumentOutOfRangeException(nameof(longestSidePixels));
        return !Has(hash) ? null : Outside.Do(() =>
        {
            string small = SmallPathOf(hash, longestSidePixels);
            if (File.Exists(small)) return File.OpenRead(small);
            if (HeadOf(PathOf(hash)) is not { } kind) return null;
            return Looked(PathOf(hash), kind, p => WriteSmall(p, hash)) is null ? File.OpenRead(small) : null;
        });
    }

    /// <summary>The hashes of all photographs in the folder.</summary>
    public IReadOnlyList<string> All() => !Directory.Exists(Folder) ? [] :
        [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Select(f => Path.GetFileName(f)!).Where(IsHash).Order(StringComparer.Ordinal)];

    /// <summary>Whether a text has the form of a hash. Only such a text ever becomes part of a path.</summary>
    public static bool IsHash(string? text) => text is { Length: HashCharacters } && text.All(c => c is (>= '0' and <= '9') or (>= 'a' and <= 'f'));

    /// <summary>How wide and high a photograph is when it is upright, by its head alone; no pixel is decoded.</summary>
    /// <param name="hash">Which.</param>
    /// <returns>Null when it is not here or its head cannot be read.</returns>
    /// <exception cref="StudioException">It could not be read.</exception>
    public (int WidthPixels, int HeightPixels)? SizeOf(string hash) => !Has(hash) ? null : Outside.Do(() => PhotoPixels.SizeOf(PathOf(hash)));

    /// <summary>Every pixel of a photograph, upright; one picture is decoded at a time.</summary>
    /// <param name="hash">Which; it must be here.</param>
    /// <param name="pixels">What it shows, or null when it is refused.</param>
    /// <returns>Why it is refused, or null.</returns>
    /// <exception cref="StudioException">It could not be read.</exception>
    public PhotoRefusal? TryPixels(string hash, out PhotoPixels? pixels)
    {
        lock (Decoding)
        {
            (PhotoRefusal? refusal, pixels) = Outside.Do(() => (PhotoPixels.TryRead(PathOf(hash), out PhotoPixels? read), read));
            return refusal;
        }
    }

    internal string PathOf(string hash) => Path.Combine(Folder, hash[..2], hash);

    internal string SmallPathOf(string hash, int longestSidePixels) => Path.Combine(_small, hash[..2], $"{hash}-{longestSidePixels}.jpg");

    /// <summary>The hash of a kept file as it is now.</summary>
    internal string HashNow(string hash)
    {
        using Stream stream = Open(hash);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    private PhotoOutcome Keep(Stream content, bool looking)
    {
        ArgumentNullException.ThrowIfNull(content);
        return Outside.Do<PhotoOutcome>(() =>
        {
            string incoming = Path.Combine(Folder, ".incoming");
            Directory.CreateDirectory(incoming);
            string file = Path.Combine(incoming, Guid.NewGuid().ToString("N"));
            try
            {
                if (Copy(content, file, out string hash) is { } why) return new PhotoOutcome.Refused(why);
                if (looking && Looked(file, HeadOf(file)!.Value, p => WriteSmall(p, hash)) is { } refusal) return new PhotoOutcome.Refused(refusal);
                Place(file, hash);
                return new PhotoOutcome.Kept(hash);
            }
            finally
            {
                File.Delete(file);
            }
        });
    }

    // The name is flushed too, in the folder it is in and in those above that may be new.
    private void Place(string file, string hash)
    {
        string kept = PathOf(hash), folder = Path.GetDirectoryName(kept)!;
        Directory.CreateDirectory(folder);
        if (!File.Exists(kept)) File.Move(file, kept, overwrite: true);
        FolderFlush.Of(folder);
        FolderFlush.Of(Folder);
        FolderFlush.Of(Path.GetDirectoryName(Folder)!);
    }

    private static PhotoRefusal? Looked(string file, PhotoKind kind, Action<Picture> use)
    {
        lock (Decoding)
        {
            PhotoRefusal? refusal = Picture.TryRead(file, kind, PageSidePixels, out Picture? picture);
            using (picture)
            {
                if (picture is not null) use(picture);
                return refusal;
            }
        }
    }

    private void WriteSmall(Picture picture, string hash)
    {
        foreach (int side in (int[])[ListSidePixels, PageSidePixels])
        {
            string small = SmallPathOf(hash, side), part = $"{small}.{Guid.NewGuid():N}";
            Directory.CreateDirectory(Path.GetDirectoryName(small)!);
            File.WriteAllBytes(part, picture.Small(side));
            File.Move(part, small, overwrite: true);
        }
    }

    private static PhotoKind? HeadOf(string file)
    {
        using FileStream stream = File.OpenRead(file);
        Span<byte> start = stackalloc byte[PhotoHead.Length];
        return PhotoHead.KindOf(start[..stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false)]);
    }

    private static PhotoRefusal? Copy(Stream content, string file, out string hashed)
    {
        hashed = "";
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using var written = new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        byte[] buffer = new byte[1 << 16];
        long total = 0;
        for (int read; (read = content.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false)) > 0;)
        {
            if (total == 0 && PhotoHead.KindOf(buffer.AsSpan(0, read)) is null) return PhotoRefusal.NotAPicture;
            if ((total += read) > MostBytes) return PhotoRefusal.TooManyBytes;
            hash.AppendData(buffer, 0, read);
            written.Write(buffer, 0, read);
        }
        if (total == 0) return PhotoRefusal.NotAPicture;
        written.Flush(flushToDisk: true);
        hashed = Convert.ToHexStringLower(hash.GetHashAndReset());
        return null;
    }
}
