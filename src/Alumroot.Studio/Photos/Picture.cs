using SkiaSharp;

namespace Alumroot.Studio.Photos;

/// <summary>A photograph that was decoded, no larger than its copies need it.</summary>
internal sealed class Picture : IDisposable
{
    private const int JpegQuality = 85;

    // A JPEG can be decoded at so many eighths of its size, which saves most of the time and memory.
    private const int Eighths = 8;

    private readonly SKImage _image;
    private readonly SKEncodedOrigin _origin;

    private Picture(SKImage image, SKEncodedOrigin origin) => (_image, _origin) = (image, origin);

    private bool IsTurned => _origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;

    /// <summary>Decodes a file to its end.</summary>
    /// <param name="file">A file that begins like a picture.</param>
    /// <param name="kind">The kind it begins like.</param>
    /// <param name="leastSidePixels">The longest side is decoded to no less than this, if it has as much.</param>
    /// <param name="picture">The picture, or null when it is refused.</param>
    /// <returns>Why it is refused, or null.</returns>
    public static PhotoRefusal? TryRead(string file, PhotoKind kind, int leastSidePixels, out Picture? picture)
    {
        picture = null;
        using SKCodec? codec = SKCodec.Create(file);
        if (codec is null || codec.EncodedFormat != FormatOf(kind)) return PhotoRefusal.Broken;
        (int width, int height) = (codec.Info.Width, codec.Info.Height);
        if (width < 1 || height < 1) return PhotoRefusal.Broken;
        if ((long)width * height > PhotoFolder.MostPixels) return PhotoRefusal.TooManyPixels;
        if (IsMoving(codec, file, kind)) return PhotoRefusal.Moving;

        using var bitmap = new SKBitmap();
        using var colours = SKColorSpace.CreateSrgb();
        SKSizeI size = Size(codec, kind, Math.Max(width, height), leastSidePixels);
        var info = new SKImageInfo(size.Width, size.Height, SKImageInfo.PlatformColorType, SKAlphaType.Premul, colours);
        if (!bitmap.TryAllocPixels(info) || codec.GetPixels(info, bitmap.GetPixels()) != SKCodecResult.Success) return PhotoRefusal.Broken;
        bitmap.SetImmutable();
        picture = new Picture(SKImage.FromBitmap(bitmap), codec.EncodedOrigin);
        return null;
    }

    /// <summary>The picture upright and shrunken, as JPEG in sRGB on white, without anything else that the file said of itself.</summary>
    /// <param name="longestSidePixels">Its longest side; a smaller picture stays as small as it is.</param>
    public byte[] Small(int longestSidePixels)
    {
        (float width, float height) = IsTurned ? (_image.Height, _image.Width) : (_image.Width, _image.Height);
        float scale = Math.Min(1, longestSidePixels / Math.Max(width, height));
        var info = new SKImageInfo(Side(width), Side(height), SKImageInfo.PlatformColorType, SKAlphaType.Opaque, _image.ColorSpace);
        using SKSurface surface = SKSurface.Create(info);
        SKCanvas canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        canvas.Scale(info.Width / width, info.Height / height);
        canvas.Concat(Upright(width, height));
        canvas.DrawImage(_image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using SKImage drawn = surface.Snapshot();
        using SKData data = drawn.Encode(SKEncodedImageFormat.Jpeg, JpegQuality);
        return data.ToArray();

        int Side(float pixels) => Math.Max(1, (int)MathF.Round(pixels * scale));
    }

    public void Dispose() => _image.Dispose();

    private static SKEncodedImageFormat FormatOf(PhotoKind kind) => kind switch
    {
        PhotoKind.Jpeg => SKEncodedImageFormat.Jpeg,
        PhotoKind.Png => SKEncodedImageFormat.Png,
        _ => SKEncodedImageFormat.Webp,
    };

    private static bool IsMoving(SKCodec codec, string file, PhotoKind kind)
    {
        if (kind != PhotoKind.Png) return codec.FrameCount > 1;
        using FileStream png = File.OpenRead(file);
        return PhotoHead.HasFrames(png);
    }

    private static SKSizeI Size(SKCodec codec, PhotoKind kind, int longest, int least)
    {
        if (longest <= least) return codec.Info.Size;
        if (kind == PhotoKind.Jpeg) return codec.GetScaledDimensions(MathF.Min(1, MathF.Ceiling(Eighths * (float)least / longest) / Eighths));
        // A WebP is scaled row by row while it is decoded; a PNG is decoded whole.
        return kind == PhotoKind.WebP
            ? new SKSizeI(Math.Max(1, (int)((long)codec.Info.Width * least / longest)), Math.Max(1, (int)((long)codec.Info.Height * least / longest)))
            : codec.Info.Size;
    }

    // Where the first row and the first column of the file are to be seen: Exif 3.0 (CIPA DC-008), 4.6.5.1.6, Orientation.
    private SKMatrix Upright(float width, float height) => _origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, width, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, width, -1, 0, height, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, height, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}
