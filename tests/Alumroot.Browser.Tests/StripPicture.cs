using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.Browser.Tests;

/// <summary>A drawn photograph: the target of the guide at the left, strips as two halves each at the right, on a plain grey. The true colours are known, so what is read can be held against them.</summary>
internal static class StripPicture
{
    private const int Width = 900, Height = 620, Patch = 44, Gap = 6, Half = 70;
    private const double GroundL = 62, FrameL = 12;

    /// <summary>Draws the picture as PNG (ISO/IEC 15948), sRGB.</summary>
    /// <param name="target">24 colours, four rows of six; empty for none.</param>
    /// <param name="strips">Each strip's covered and exposed colour.</param>
    public static byte[] Png(IReadOnlyList<Lab> target, IReadOnlyList<(Lab Covered, Lab Exposed)> strips)
    {
        var pixels = new byte[Width * Height * 3];
        Fill(pixels, 0, 0, Width, Height, new Lab(GroundL, 0, 0));
        if (target.Count > 0) Fill(pixels, 50, 60, 6 * (Patch + Gap) + Gap, 4 * (Patch + Gap) + Gap, new Lab(FrameL, 0, 0));
        for (int i = 0; i < target.Count; i++) Fill(pixels, 50 + Gap + i % 6 * (Patch + Gap), 60 + Gap + i / 6 * (Patch + Gap), Patch, Patch, target[i]);
        for (int i = 0; i < strips.Count; i++)
        {
            int x = 430 + i % 2 * 230, y = 60 + i / 2 * 110;
            Fill(pixels, x, y, Half, Half, strips[i].Covered);
            Fill(pixels, x + Half + 14, y, Half, Half, strips[i].Exposed);
        }
        return Encoded(pixels);
    }

    private static void Fill(byte[] pixels, int left, int top, int width, int height, Lab lab)
    {
        string hex = Srgb.From(lab.ToXyz(ColourNames.White), ColourNames.White).Hex;
        byte[] colour = Convert.FromHexString(hex[1..]);
        // A little grain, as every camera has; drawn from the place so that the picture is always the same.
        for (int y = top; y < top + height; y++)
            for (int x = left; x < left + width; x++)
                for (int c = 0; c < 3; c++)
                    pixels[3 * (y * Width + x) + c] = (byte)Math.Clamp(colour[c] + (((x * 73 + y * 151 + c * 37) ^ (x * y)) % 3 - 1), 0, 255);
    }

    private static byte[] Encoded(byte[] pixels)
    {
        using var rows = new MemoryStream();
        using (var deflate = new ZLibStream(rows, CompressionLevel.Fastest, leaveOpen: true))
            for (int y = 0; y < Height; y++)
            {
                deflate.WriteByte(0);
                deflate.Write(pixels, 3 * y * Width, 3 * Width);
            }
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, Width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), Height);
        (head[8], head[9]) = (8, 2);
        using var png = new MemoryStream();
        png.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        Chunk(png, "IHDR", head);
        Chunk(png, "IDAT", rows.ToArray());
        Chunk(png, "IEND", []);
        return png.ToArray();
    }

    private static void Chunk(MemoryStream png, string name, byte[] data)
    {
        byte[] content = [.. Encoding.ASCII.GetBytes(name), .. data];
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        png.Write(number);
        png.Write(content);
        BinaryPrimitives.WriteUInt32BigEndian(number, Sum(content));
        png.Write(number);
    }

    // The checksum of PNG, annex D.
    private static uint Sum(byte[] content)
    {
        uint crc = uint.MaxValue;
        foreach (byte b in content)
        {
            crc ^= b;
            for (int k = 0; k < 8; k++) crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }
        return ~crc;
    }
}
