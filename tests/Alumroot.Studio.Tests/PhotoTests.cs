using System.Diagnostics;
using System.Security.Cryptography;
using Alumroot.Studio.Photos;
using CsCheck;
using SkiaSharp;

namespace Alumroot.Studio.Tests;

/// <summary>Photographs from a phone: what is taken, what is not, how the copies look, and what hostile bytes do.</summary>
public sealed class PhotoTests : IDisposable
{
    private readonly TempStudio _studio = new();

    private PhotoFolder Photos { get; }

    public PhotoTests() => Photos = _studio.Store.Photos;

    public void Dispose() => _studio.Dispose();

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, PhotoKind.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png, PhotoKind.Png)]
    [InlineData(SKEncodedImageFormat.Webp, PhotoKind.WebP)]
    public void A_picture_is_kept_to_the_byte_with_two_copies(SKEncodedImageFormat format, PhotoKind kind)
    {
        byte[] picture = Pictures.Quarters(2000, 1500, format);
        string hash = Kept(picture);
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(picture)), hash);
        Assert.Equal(kind, Photos.KindOf(hash));
        Assert.Equal(picture, Bytes(Photos.Open(hash)));
        AssertQuarters(Small(hash, PhotoFolder.ListSidePixels), 320, 240, [0, 1, 2, 3]);
        AssertQuarters(Small(hash, PhotoFolder.PageSidePixels), 1280, 960, [0, 1, 2, 3]);
        // The copies are no part of the record: gone, they come again.
        Directory.Delete(Path.Combine(_studio.Folder, StudioStore.SmallName), recursive: true);
        AssertQuarters(Small(hash, PhotoFolder.ListSidePixels), 320, 240, [0, 1, 2, 3]);
        Assert.Equal([hash], Photos.All());
    }

    /// <summary>Exif 3.0 (CIPA DC-008), 4.6.5.1.6: where the 0th row and the 0th column of the file are to be seen.</summary>
    [Theory]
    [InlineData(1, "top", "left")]
    [InlineData(2, "top", "right")]
    [InlineData(3, "bottom", "right")]
    [InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top")]
    [InlineData(6, "right", "top")]
    [InlineData(7, "right", "bottom")]
    [InlineData(8, "left", "bottom")]
    public void A_copy_stands_upright_whatever_way_the_phone_was_held(byte orientation, string row, string column)
    {
        string hash = Kept(Pictures.Turned(Pictures.Quarters(800, 600, SKEncodedImageFormat.Jpeg), orientation));
        int[] seen = new int[4];
        for (int quarter = 0; quarter < 4; quarter++)
        {
            string rowSide = quarter / 2 == 0 ? row : Opposite(row), columnSide = quarter % 2 == 0 ? column : Opposite(column);
            string[] sides = [rowSide, columnSide];
            seen[(sides.Contains("bottom") ? 2 : 0) + (sides.Contains("right") ? 1 : 0)] = quarter;
        }
        bool turned = row is "left" or "right";
        AssertQuarters(Small(hash, PhotoFolder.ListSidePixels), turned ? 240 : 320, turned ? 320 : 240, seen);
    }

    [Fact]
    public void A_small_picture_is_not_made_larger() =>
        AssertQuarters(Small(Kept(Pictures.Quarters(64, 48, SKEncodedImageFormat.Png)), PhotoFolder.PageSidePixels), 64, 48, [0, 1, 2, 3]);

    [Fact]
    public void What_is_no_still_picture_of_a_sensible_size_is_refused_with_the_reason()
    {
        byte[] jpeg = Pictures.Quarters(64, 48, SKEncodedImageFormat.Jpeg), png = Pictures.Quarters(64, 48, SKEncodedImageFormat.Png), webp = Pictures.Quarters(64, 48, SKEncodedImageFormat.Webp);
        Assert.Equal(PhotoRefusal.NotAPicture, Refused([]));
        Assert.Equal(PhotoRefusal.NotAPicture, Refused("<svg/>"u8.ToArray()));
        Assert.Equal(PhotoRefusal.NotAPicture, Refused("GIF89a"u8.ToArray()));
        Assert.Equal(PhotoRefusal.Broken, Refused(jpeg[..20]));
        Assert.All((byte[][])[jpeg, png, webp], picture => Assert.Equal(PhotoRefusal.Broken, Refused(picture[..(picture.Length * 3 / 4)])));
        Assert.Equal(PhotoRefusal.TooManyPixels, Refused(Pictures.ClaimingPng(50_000, 50_000)));
        Assert.Equal(PhotoRefusal.TooManyPixels, Refused(Pictures.ClaimingJpeg(jpeg, 50_000, 50_000)));
        Assert.Equal(PhotoRefusal.TooManyBytes, Refused([.. jpeg, .. new byte[PhotoFolder.MostBytes]]));
        // Animation control chunk of PNG, third edition (W3C), 11.3.5.1: two frames, for ever.
        Assert.Equal(PhotoRefusal.Moving, Refused([.. png[..33], .. Pictures.Chunk("acTL", [0, 0, 0, 2, 0, 0, 0, 0]), .. png[33..]]));
        Assert.Empty(Photos.All());
        Assert.DoesNotContain(Directory.EnumerateFiles(_studio.Folder, "*", SearchOption.AllDirectories), f => f.Contains("incoming", StringComparison.Ordinal) || f.Contains("small", StringComparison.Ordinal));
    }

    [Fact]
    public void A_photograph_of_48_megapixels_is_taken_within_seconds()
    {
        byte[] picture = Pictures.Quarters(8000, 6000, SKEncodedImageFormat.Jpeg);
        var watch = Stopwatch.StartNew();
        string hash = Kept(picture);
        // Half a second on a quiet machine; the bound only tells a decode gone wild from a slow neighbour.
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        TestContext.Current.TestOutputHelper?.WriteLine($"48 megapixels: {watch.ElapsedMilliseconds} ms");
        AssertQuarters(Small(hash, PhotoFolder.PageSidePixels), 1280, 960, [0, 1, 2, 3]);
    }

    /// <summary>Bytes changed, cut out and doubled in the three kinds: every answer is one of the known ones, and memory stays bounded.</summary>
    [Fact]
    public void Damaged_pictures_are_taken_or_refused_and_never_end_the_program()
    {
        byte[][] seeds = [.. new[] { SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp }.Select(f => Pictures.Quarters(48, 36, f))];
        Gen<byte[]> damaged = Gen.Select(Gen.Int[0, seeds.Length - 1], Gen.Select(Gen.Int[0, 1 << 20], Gen.Byte).Array[1, 12], Gen.Int[0, 1 << 20], Gen.Int[0, 40], (seed, changes, cut, cutLength) =>
        {
            byte[] bytes = [.. seeds[seed]];
            foreach ((int at, byte value) in changes) bytes[at % bytes.Length] = value;
            int from = cut % bytes.Length;
            return cutLength > 20 ? [.. bytes[..from], .. bytes[Math.Min(bytes.Length, from + cutLength)..]] : bytes;
        });
        (int kept, int refused) = (0, 0);
        damaged.Sample(bytes =>
        {
            PhotoOutcome outcome = Photos.Keep(new MemoryStream(bytes));
            if (outcome is not PhotoOutcome.Kept taken)
            {
                Interlocked.Increment(ref refused);
                return;
            }
            Interlocked.Increment(ref kept);
            using Stream small = Photos.OpenSmall(taken.Hash, PhotoFolder.ListSidePixels)!;
            using SKBitmap copy = SKBitmap.Decode(small);
            Assert.InRange(Math.Max(copy.Width, copy.Height), 1, PhotoFolder.ListSidePixels);
        }, iter: 600, threads: 2);
        Assert.True(kept > 20 && refused > 20, $"{kept} taken, {refused} refused");
        // One picture at a time, 60 megapixels at 4 bytes and the decoder's own room; the runtime and the other tests have the rest.
        Assert.InRange(Process.GetCurrentProcess().PeakWorkingSet64, 0, 1500L << 20);
    }

    [Fact]
    public void Bytes_that_an_import_brings_are_looked_at_before_they_are_shown()
    {
        string bomb = Assert.IsType<PhotoOutcome.Kept>(Photos.KeepAgain(new MemoryStream(Pictures.ClaimingPng(50_000, 50_000)))).Hash;
        Assert.Null(Photos.OpenSmall(bomb, PhotoFolder.ListSidePixels));
        Assert.Null(Photos.OpenSmall("../../etc/passwd", PhotoFolder.ListSidePixels));
        Assert.Null(Photos.OpenSmall(new string('0', 64), PhotoFolder.ListSidePixels));
    }

    private string Kept(byte[] picture) => Assert.IsType<PhotoOutcome.Kept>(Photos.Keep(new MemoryStream(picture))).Hash;

    private PhotoRefusal Refused(byte[] picture) => Assert.IsType<PhotoOutcome.Refused>(Photos.Keep(new MemoryStream(picture))).Why;

    private SKBitmap Small(string hash, int side)
    {
        using Stream small = Photos.OpenSmall(hash, side)!;
        return SKBitmap.Decode(small);
    }

    private static byte[] Bytes(Stream stream)
    {
        using (stream)
        using (var copy = new MemoryStream())
        {
            stream.CopyTo(copy);
            return copy.ToArray();
        }
    }

    private static string Opposite(string side) => side switch { "top" => "bottom", "bottom" => "top", "left" => "right", _ => "left" };

    private static void AssertQuarters(SKBitmap copy, int width, int height, int[] quarters)
    {
        using (copy)
        {
            Assert.Equal((width, height), (copy.Width, copy.Height));
            for (int i = 0; i < 4; i++)
            {
                SKColor seen = copy.GetPixel(width * (1 + (2 * (i % 2))) / 4, height * (1 + (2 * (i / 2))) / 4), meant = Pictures.Colours[quarters[i]];
                Assert.True(Math.Abs(seen.Red - meant.Red) + Math.Abs(seen.Green - meant.Green) + Math.Abs(seen.Blue - meant.Blue) < 30, $"Quarter {i}: {seen}, not {meant}");
            }
        }
    }
}
