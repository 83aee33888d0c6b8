using System.Buffers.Binary;
using SkiaSharp;

namespace Alumroot.Studio.Tests;

/// <summary>Pictures made for the tests.</summary>
internal static class Pictures
{
    /// <summary>The colours of the quarters: top left, top right, bottom left, bottom right.</summary>
    public static readonly SKColor[] Colours = [new(200, 40, 40), new(40, 160, 60), new(50, 70, 200), new(220, 200, 60)];

    /// <summary>Four quarters of one colour each.</summary>
    public static byte[] Quarters(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        using (var paint = new SKPaint())
            for (int i = 0; i < 4; i++)
            {
                paint.Color = Colours[i];
                canvas.DrawRect(i % 2 * width / 2f, i / 2 * height / 2f, width / 2f, height / 2f, paint);
            }
        using SKData data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    /// <summary>The same JPEG with an Exif segment that tells an orientation, written by hand from Exif 3.0 (CIPA DC-008), 4.6.2 and 4.7.</summary>
    public static byte[] Turned(byte[] jpeg, byte orientation)
    {
        byte[] tiff = [.. "MM"u8, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
        byte[] body = [.. "Exif\0\0"u8, .. tiff];
        return [.. jpeg[..2], 0xFF, 0xE1, 0, (byte)(body.Length + 2), .. body, .. jpeg[2..]];
    }

    /// <summary>A chunk of a PNG: length, name, content, CRC-32 (ISO/IEC 15948, 5.3).</summary>
    public static byte[] Chunk(string name, byte[] content)
    {
        byte[] chunk = [0, 0, 0, 0, .. name.Select(c => (byte)c), .. content, 0, 0, 0, 0];
        BinaryPrimitives.WriteInt32BigEndian(chunk, content.Length);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(chunk.Length - 4), Crc32(chunk.AsSpan(4, chunk.Length - 8)));
        return chunk;
    }

    /// <summary>A PNG whose head claims a size that its body does not have.</summary>
    public static byte[] ClaimingPng(int width, int height)
    {
        byte[] head = [0, 0, 0, 0, 0, 0, 0, 0, 8, 6, 0, 0, 0];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        return [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A, .. Chunk("IHDR", head), .. Chunk("IDAT", [0x78, 0x9C, 3, 0, 0, 0, 0, 1]), .. Chunk("IEND", [])];
    }

    /// <summary>A JPEG with another size written into its frame head (ITU T.81, B.2.2).</summary>
    public static byte[] ClaimingJpeg(byte[] jpeg, ushort width, ushort height)
    {
        byte[] other = [.. jpeg];
        int frame = Enumerable.Range(0, other.Length - 1).First(i => other[i] == 0xFF && other[i + 1] is 0xC0 or 0xC2);
        BinaryPrimitives.WriteUInt16BigEndian(other.AsSpan(frame + 5), height);
        BinaryPrimitives.WriteUInt16BigEndian(other.AsSpan(frame + 7), width);
        return other;
    }

    // ISO/IEC 15948, annex D.
    private static uint Crc32(ReadOnlySpan<byte> bytes)
    {
        uint crc = uint.MaxValue;
        foreach (byte b in bytes)
        {
            crc ^= b;
            for (int bit = 0; bit < 8; bit++) crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }
        return ~crc;
    }
}
