using System.Buffers.Binary;

namespace Alumroot.Studio.Photos;

/// <summary>What the bytes of a file say of themselves before any of its pixels are asked for.</summary>
internal static class PhotoHead
{
    /// <summary>So many bytes are enough to know the kind.</summary>
    public const int Length = 12;

    private static ReadOnlySpan<byte> JpegStart => [0xFF, 0xD8, 0xFF];

    private static ReadOnlySpan<byte> PngStart => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The kind by the first bytes: SOI and the next marker, the PNG signature, RIFF with WEBP. Null for anything else.</summary>
    public static PhotoKind? KindOf(ReadOnlySpan<byte> start) =>
        start.StartsWith(JpegStart) ? PhotoKind.Jpeg
        : start.StartsWith(PngStart) ? PhotoKind.Png
        : start.Length >= Length && start.StartsWith("RIFF"u8) && start[8..].StartsWith("WEBP"u8) ? PhotoKind.WebP
        : null;

    /// <summary>Whether a PNG tells of frames (chunk acTL, PNG third edition 11.3.5.1, before the first IDAT), which the decoder passes over in silence.</summary>
    /// <param name="png">The file from its beginning.</param>
    public static bool HasFrames(Stream png)
    {
        Span<byte> head = stackalloc byte[8];
        png.Position = PngStart.Length;
        while (png.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length)
        {
            if (head[4..].SequenceEqual("acTL"u8)) return true;
            if (head[4..].SequenceEqual("IDAT"u8)) return false;
            png.Seek(BinaryPrimitives.ReadUInt32BigEndian(head) + 4L, SeekOrigin.Current);
        }
        return false;
    }
}
