using Alumroot.Studio.Photos;
using SkiaSharp;

namespace Alumroot.Studio.Tests;

/// <summary>Every pixel of a photograph, as the file means it.</summary>
public sealed class PhotoPixelsTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-pixels-");

    public void Dispose() => _folder.Delete(true);

    // Exif 3.0 (CIPA DC-008), 4.6.5.1.6: which corner of the scene the first pixel of the file is, and which way the rows run; as the order of the four quarters once upright.
    [Theory]
    [InlineData(1, "0123")]
    [InlineData(2, "1032")]
    [InlineData(3, "3210")]
    [InlineData(4, "2301")]
    [InlineData(5, "0213")]
    [InlineData(6, "2031")]
    [InlineData(7, "3120")]
    [InlineData(8, "1302")]
    public void A_picture_stands_upright(byte orientation, string quarters)
    {
        PhotoPixels pixels = Read(Pictures.Turned(Pictures.Quarters(48, 32, SKEncodedImageFormat.Jpeg), orientation));
        Assert.Equal(orientation < 5 ? (48, 32) : (32, 48), (pixels.WidthPixels, pixels.HeightPixels));
        for (int i = 0; i < 4; i++)
        {
            int x = (1 + 2 * (i % 2)) * pixels.WidthPixels / 4, y = (1 + 2 * (i / 2)) * pixels.HeightPixels / 4;
            SKColor expected = Pictures.Colours[quarters[i] - '0'];
            ReadOnlySpan<byte> seen = pixels.Rgb.AsSpan(3 * (y * pixels.WidthPixels + x), 3);
            Assert.InRange(Math.Abs(seen[0] - expected.Red) + Math.Abs(seen[1] - expected.Green) + Math.Abs(seen[2] - expected.Blue), 0, 12);
        }
    }

    // The same rule for the size that is told from the head alone.
    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    [InlineData(8)]
    public void The_size_is_told_without_a_pixel(byte orientation)
    {
        string file = Path.Combine(_folder.FullName, "sized");
        File.WriteAllBytes(file, Pictures.Turned(Pictures.Quarters(48, 32, SKEncodedImageFormat.Jpeg), orientation));
        Assert.Equal(orientation < 5 ? (48, 32) : (32, 48), PhotoPixels.SizeOf(file));
        File.WriteAllText(file, "no picture");
        Assert.Null(PhotoPixels.SizeOf(file));
    }

    [Fact]
    public void A_profile_keeps_its_own_lights_and_curve()
    {
        // Display P3 has the curve of sRGB and wider lights: full red has X = 0.515, Y = 0.241 against D50 (ICC registry, from memory).
        using var space = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        using var bitmap = new SKBitmap(new SKImageInfo(8, 8, SKColorType.Rgba8888, SKAlphaType.Opaque, space));
        bitmap.Erase(new SKColor(250, 10, 60));
        byte[] stored = bitmap.GetPixelSpan()[..3].ToArray();
        using SKImage image = SKImage.FromBitmap(bitmap);
        using SKData png = image.Encode(SKEncodedImageFormat.Png, 100);
        PhotoPixels pixels = Read(png.ToArray());
        Assert.Equal(stored, pixels.Rgb[..3]);
        Assert.Equal(0.515, pixels.ToXyzD50[0], 0.002);
        Assert.Equal(0.241, pixels.ToXyzD50[3], 0.002);
        // IEC 61966-2-1: half of the scale is 0.214 of the light.
        Assert.Equal(0.2140, pixels.LinearOfByte[127] + 0.5 * (pixels.LinearOfByte[128] - pixels.LinearOfByte[127]), 0.0005);
    }

    [Fact]
    public void Without_a_profile_the_numbers_are_sRGB()
    {
        PhotoPixels pixels = Read(Pictures.Quarters(16, 16, SKEncodedImageFormat.Jpeg));
        // The first row of the matrix against D50 as ICC profiles of sRGB carry it (IEC 61966-2-1 with Bradford).
        Assert.Equal(0.4361, pixels.ToXyzD50[0], 0.0005);
        Assert.Equal(0.3851, pixels.ToXyzD50[1], 0.0005);
        Assert.Equal(0.1431, pixels.ToXyzD50[2], 0.0005);
        Assert.Equal(1, pixels.LinearOfByte[255], 1e-5);
        Assert.Equal(0, pixels.LinearOfByte[0], 1e-6);
    }

    [Fact]
    public void What_is_no_picture_is_refused()
    {
        Assert.Equal(PhotoRefusal.NotAPicture, PhotoPixels.TryRead(Write("a.jpg", "not a picture"u8.ToArray()), out _));
        Assert.Equal(PhotoRefusal.NotAPicture, PhotoPixels.TryRead(Write("b.jpg", []), out _));
        byte[] jpeg = Pictures.Quarters(400, 300, SKEncodedImageFormat.Jpeg);
        Assert.Equal(PhotoRefusal.Broken, PhotoPixels.TryRead(Write("c.jpg", jpeg[..(jpeg.Length / 3)]), out _));
        Assert.Equal(PhotoRefusal.TooManyPixels, PhotoPixels.TryRead(Write("d.png", Pictures.ClaimingPng(20_000, 20_000)), out _));
        Assert.Equal(PhotoRefusal.TooManyPixels, PhotoPixels.TryRead(Write("e.jpg", Pictures.ClaimingJpeg(jpeg, 60_000, 60_000)), out _));
    }

    [Fact]
    public void Any_broken_picture_ends_in_a_refusal_or_in_pixels() => CsCheck.Check.Sample(
        CsCheck.Gen.Select(CsCheck.Gen.Int[0, 2], CsCheck.Gen.Int[0, 4000], CsCheck.Gen.Byte, CsCheck.Gen.Int[0, 6000]),
        t =>
        {
            byte[] bytes = Pictures.Quarters(60, 40, t.Item1 switch { 0 => SKEncodedImageFormat.Jpeg, 1 => SKEncodedImageFormat.Png, _ => SKEncodedImageFormat.Webp });
            bytes[t.Item2 % bytes.Length] ^= t.Item3;
            PhotoRefusal? refusal = PhotoPixels.TryRead(Write("any", bytes[..Math.Min(bytes.Length, Math.Max(1, t.Item4))]), out PhotoPixels? pixels);
            Assert.Equal(refusal is null, pixels is not null);
        },
        iter: 150, threads: 1);

    private PhotoPixels Read(byte[] bytes)
    {
        Assert.Null(PhotoPixels.TryRead(Write("picture", bytes), out PhotoPixels? pixels));
        return pixels!;
    }

    private string Write(string name, byte[] bytes)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
