using SkiaSharp;

namespace Alumroot.Studio.Photos;

/// <summary>Every pixel of a photograph, upright, with what its numbers stand for.</summary>
/// <param name="WidthPixels">Width.</param>
/// <param name="HeightPixels">Height.</param>
/// <param name="Rgb">Red, green, blue of each pixel, row by row.</param>
/// <param name="LinearOfByte">256 values: the share of full light that each number stands for.</param>
/// <param name="ToXyzD50">Nine numbers, row by row: tristimulus values against D50 of full red, green and blue; white has Y = 1.</param>
public sealed record PhotoPixels(int WidthPixels, int HeightPixels, byte[] Rgb, IReadOnlyList<double> LinearOfByte, IReadOnlyList<double> ToXyzD50)
{
    private const int Levels = 256;

    /// <summary>Decodes a JPEG, PNG or WebP file; the numbers stay those of the file when its profile is a curve and three lights, and are turned into sRGB otherwise.</summary>
    /// <param name="path">The file.</param>
    /// <param name="pixels">What it shows, or null when it is refused.</param>
    /// <returns>Why it is refused, or null.</returns>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static PhotoRefusal? TryRead(string path, out PhotoPixels? pixels)
    {
        pixels = null;
        if (new FileInfo(path).Length > PhotoFolder.MostBytes) return PhotoRefusal.TooManyBytes;
        Span<byte> head = stackalloc byte[PhotoHead.Length];
        using (FileStream file = File.OpenRead(path))
        {
            head = head[..file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false)];
            if (PhotoHead.KindOf(head) is not { } kind) return PhotoRefusal.NotAPicture;
            file.Position = 0;
            if (kind == PhotoKind.Png && PhotoHead.HasFrames(file)) return PhotoRefusal.Moving;
        }
        using SKCodec? codec = SKCodec.Create(path);
        if (codec is null || codec.Info.Width < 1 || codec.Info.Height < 1) return PhotoRefusal.Broken;
        if ((long)codec.Info.Width * codec.Info.Height > PhotoFolder.MostPixels) return PhotoRefusal.TooManyPixels;
        if (codec.FrameCount > 1) return PhotoRefusal.Moving;
        using var srgb = SKColorSpace.CreateSrgb();
        SKColorSpace stated = codec.Info.ColorSpace ?? srgb;
        SKColorSpace kept = stated.GetNumericalTransferFunction(out SKColorSpaceTransferFn curve) ? stated : srgb;
        if (ReferenceEquals(kept, srgb)) srgb.GetNumericalTransferFunction(out curve);
        if (!kept.ToColorSpaceXyz(out SKColorSpaceXyz lights)) return PhotoRefusal.Broken;
        var info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Premul, kept);
        using var bitmap = new SKBitmap();
        if (!bitmap.TryAllocPixels(info) || codec.GetPixels(info, bitmap.GetPixels()) != SKCodecResult.Success) return PhotoRefusal.Broken;
        (int width, int height, byte[] rgb) = Upright(bitmap.GetPixelSpan(), bitmap.RowBytes, info.Width, info.Height, codec.EncodedOrigin);
        double[] linear = [.. Enumerable.Range(0, Levels).Select(i => (double)curve.Transform(i / (Levels - 1f)))];
        pixels = new PhotoPixels(width, height, rgb, linear, [.. lights.Values.Select(v => (double)v)]);
        return null;
    }

    /// <summary>Width and height of a file as it is seen upright, by its head; null when it has none.</summary>
    internal static (int WidthPixels, int HeightPixels)? SizeOf(string path)
    {
        using SKCodec? codec = SKCodec.Create(path);
        return codec is not { Info: { Width: > 0, Height: > 0 } info } ? null : IsTurned(codec.EncodedOrigin) ? (info.Height, info.Width) : (info.Width, info.Height);
    }

    private static bool IsTurned(SKEncodedOrigin origin) => origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;

    // Where the first row and column of the file are to be seen: Exif 3.0 (CIPA DC-008), 4.6.5.1.6, Orientation.
    private static (int Width, int Height, byte[] Rgb) Upright(ReadOnlySpan<byte> rgba, int rowBytes, int width, int height, SKEncodedOrigin origin)
    {
        (int wide, int high) = IsTurned(origin) ? (height, width) : (width, height);
        var rgb = new byte[3 * wide * high];
        (int start, int right, int down) = origin switch
        {
            SKEncodedOrigin.TopRight => (wide - 1, -1, wide),
            SKEncodedOrigin.BottomRight => (wide * high - 1, -1, -wide),
            SKEncodedOrigin.BottomLeft => (wide * (high - 1), 1, -wide),
            SKEncodedOrigin.LeftTop => (0, wide, 1),
            SKEncodedOrigin.RightTop => (wide - 1, wide, -1),
            SKEncodedOrigin.RightBottom => (wide * high - 1, -wide, -1),
            SKEncodedOrigin.LeftBottom => (wide * (high - 1), -wide, 1),
            _ => (0, 1, wide),
        };
        for (int y = 0; y < height; y++)
        {
            ReadOnlySpan<byte> row = rgba.Slice(y * rowBytes, 4 * width);
            int to = 3 * (start + y * down);
            for (int x = 0; x < row.Length; x += 4, to += 3 * right) (rgb[to], rgb[to + 1], rgb[to + 2]) = (row[x], row[x + 1], row[x + 2]);
        }
        return (wide, high, rgb);
    }
}
