using Alumroot.Colour.Interchange;
using Alumroot.Colour.Photograph;
using Alumroot.Studio.Photos;
using BenchmarkDotNet.Attributes;
using SkiaSharp;

namespace Alumroot.Benchmarks;

/// <summary>The example photograph of the guide, made as large as a telephone's of 12 megapixels, from the file to nine colours.</summary>
[MemoryDiagnoser, MinColumn]
public class PhotoBenchmarks
{
    private const int Width = 4000, Height = 3000, Times = 5;

    private string _file = "";
    private IReadOnlyList<Colour.Colorimetry.Lab> _truths = [];
    private Raster _picture = null!;

    /// <summary>Writes the large picture.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        string examples = Examples();
        _truths = [.. ((Import.Done)ColourFile.Read(File.ReadAllBytes(Path.Combine(examples, "target.cgats.txt")))).Document.Samples.Select(s => s.Lab!.Value)];
        using SKBitmap small = SKBitmap.Decode(Path.Combine(examples, "photo.jpg"));
        using SKBitmap large = small.Resize(new SKImageInfo(Width, Height), new SKSamplingOptions(SKFilterMode.Linear));
        using SKData data = large.Encode(SKEncodedImageFormat.Jpeg, 90);
        _file = Path.Combine(Path.GetTempPath(), $"alumroot-{Environment.ProcessId}.jpg");
        File.WriteAllBytes(_file, data.ToArray());
        _picture = Decode();
    }

    /// <summary>Takes it away.</summary>
    [GlobalCleanup]
    public void Clean() => File.Delete(_file);

    /// <summary>The file to pixels.</summary>
    [Benchmark]
    public Raster Decode()
    {
        PhotoPixels.TryRead(_file, out PhotoPixels? pixels);
        return new Raster(pixels!.WidthPixels, pixels.HeightPixels, pixels.Rgb, PixelColours.Srgb);
    }

    /// <summary>Pixels to the target.</summary>
    [Benchmark]
    public FoundTarget? Find() => TargetFinder.Find(_picture, _truths, null);

    /// <summary>File, target, light, correction and nine swatches.</summary>
    [Benchmark]
    public PhotoAnswer? Whole()
    {
        Raster picture = Decode();
        FoundTarget target = TargetFinder.Find(picture, _truths, null)!;
        PhotoSwatch[] swatches = [.. Enumerable.Range(0, 9).Select(i =>
        {
            double x = Times * (546 + 75 * (i % 3)), y = Times * (152 + 85 * (i / 3)), side = Times * 48;
            return new PhotoSwatch($"S{i}", new Quad(new(x, y), new(x + side, y), new(x + side, y + side), new(x, y + side)));
        })];
        return PhotoMeasurement.Measure(new PhotoAsk(picture, _truths, target.Corners, target.Grid, swatches)).Answer;
    }

    private static string Examples()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !Directory.Exists(Path.Combine(folder.FullName, "docs", "guide", "examples"))) folder = folder.Parent;
        return Path.Combine(folder!.FullName, "docs", "guide", "examples");
    }
}
