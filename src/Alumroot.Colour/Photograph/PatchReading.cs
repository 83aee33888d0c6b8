using System.Buffers;
using Alumroot.Numerics;

namespace Alumroot.Colour.Photograph;

/// <summary>What a camera saw of one even area.</summary>
/// <param name="Mean">Mean light of the pixels that belong to it.</param>
/// <param name="Scatter">Standard deviation of those pixels.</param>
/// <param name="PixelCount">How many they are.</param>
/// <param name="LeftOutShare">Share of pixels that were left out as dust, glare or edge.</param>
/// <param name="ClippedShare">Share of pixels with a channel at one end of its scale.</param>
/// <param name="ClippedLow">True when it is the low end that clips.</param>
/// <param name="CutShare">Share of pixels that the low end cuts off, for each channel.</param>
/// <param name="Middle">Where the area is.</param>
internal readonly record struct PatchReading(LinearRgb Mean, LinearRgb Scatter, int PixelCount, double LeftOutShare, double ClippedShare, bool ClippedLow, LinearRgb CutShare, PixelPoint Middle)
{
    // A channel this near its end says only "at least" or "at most".
    private const byte TooBright = 253, TooDark = 2;

    // One pixel in thirty at the end moves a mean by less than the noise does.
    private const double MostClipped = 0.03;

    // Pixels farther out than this many robust deviations are something else: dust, a hair, a gleam, a border.
    private const double OutlierDeviations = 3.5, RobustToNormal = 1.4826, LeastDeviation = 1.5;

    // Fewer pixels than the first share tell no more than the mean does; with more than the second a channel is wholly cut off, and how far below nothing it would lie is not told by its own pixels.
    private const double LeastCut = 0.02, WhollyCut = 0.98;
    private const int LeastPixels = 12, MostPixels = 40_000;

    /// <summary>True when too many pixels stand at an end of the scale for the mean to be trusted.</summary>
    internal bool IsClipped => ClippedShare > MostClipped;

    /// <summary>True when it can serve to learn the correction: a channel that is cut off below nothing is told with a doubt of its own, one that is cut off above is not told.</summary>
    internal bool CanTeach => !IsClipped || ClippedLow;

    /// <summary>True when a channel is wholly cut off below nothing.</summary>
    internal bool IsCut => IsWhollyCut(Math.Max(CutShare.R, Math.Max(CutShare.G, CutShare.B)));

    /// <summary>Whether so much of a channel is cut off that its pixels do not tell how far below nothing it would lie.</summary>
    internal static bool IsWhollyCut(double cutShare) => cutShare > WhollyCut;

    /// <summary>Reads the inner part of an area; null when it lies outside the picture or is too small.</summary>
    /// <param name="raster">The picture.</param>
    /// <param name="area">The whole area.</param>
    /// <param name="innerShare">How much of each side counts.</param>
    internal static PatchReading? Of(Raster raster, Quad area, double innerShare)
    {
        Quad inner = area.Scaled(innerShare);
        int left = (int)Math.Ceiling(inner.Corners.Min(c => c.X)), right = (int)Math.Floor(inner.Corners.Max(c => c.X));
        int top = (int)Math.Ceiling(inner.Corners.Min(c => c.Y)), bottom = (int)Math.Floor(inner.Corners.Max(c => c.Y));
        if (left < 0 || top < 0 || right >= raster.Width || bottom >= raster.Height || right < left || bottom < top) return null;
        double box = (double)(right - left + 1) * (bottom - top + 1);
        int step = Math.Max(1, (int)Math.Sqrt(box / MostPixels));
        byte[] kept = ArrayPool<byte>.Shared.Rent(3 * (int)Math.Min(box, (box / step / step) + 4 * (right - left + bottom - top + 4)));
        try
        {
            int n = 0;
            for (int y = top; y <= bottom; y += step)
                for (int x = left; x <= right; x += step)
                    if (inner.Holds(x, y) && 3 * n + 3 <= kept.Length)
                        raster.Bytes(x, y).CopyTo(kept.AsSpan(3 * n++));
            return n < LeastPixels ? null : Summed(raster, kept.AsSpan(0, 3 * n), n, area.Middle);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(kept);
        }
    }

    private static PatchReading? Summed(Raster raster, ReadOnlySpan<byte> bytes, int n, PixelPoint middle)
    {
        Span<int> counts = stackalloc int[256], away = stackalloc int[256];
        Span<double> low = stackalloc double[3], high = stackalloc double[3];
        for (int c = 0; c < 3; c++)
        {
            counts.Clear();
            for (int i = c; i < bytes.Length; i += 3) counts[bytes[i]]++;
            int median = Quantile(counts, n / 2);
            away.Clear();
            for (int v = 0; v < 256; v++) away[Math.Abs(v - median)] += counts[v];
            double reach = OutlierDeviations * Math.Max(LeastDeviation, RobustToNormal * Quantile(away, n / 2));
            (low[c], high[c]) = (median - reach, median + reach);
        }
        LinearRgb sum = default, squares = default;
        int kept = 0, bright = 0, dark = 0;
        for (int i = 0; i < bytes.Length; i += 3)
        {
            if (Out(bytes[i], low[0], high[0]) || Out(bytes[i + 1], low[1], high[1]) || Out(bytes[i + 2], low[2], high[2])) continue;
            if (Math.Max(bytes[i], Math.Max(bytes[i + 1], bytes[i + 2])) > TooBright) bright++;
            else if (Math.Min(bytes[i], Math.Min(bytes[i + 1], bytes[i + 2])) < TooDark) dark++;
            double r = raster.Linear(bytes[i]), g = raster.Linear(bytes[i + 1]), b = raster.Linear(bytes[i + 2]);
            sum += new LinearRgb(r, g, b);
            squares += new LinearRgb(r * r, g * g, b * b);
            kept++;
        }
        if (kept < LeastPixels) return null;
        LinearRgb mean = sum * (1.0 / kept), square = squares * (1.0 / kept);
        var scatter = new LinearRgb(Spread(square.R, mean.R), Spread(square.G, mean.G), Spread(square.B, mean.B));
        var cut = new LinearRgb(Cut(bytes, 0), Cut(bytes, 1), Cut(bytes, 2));
        if (dark > bright) mean = new(Uncut(mean.R, cut.R), Uncut(mean.G, cut.G), Uncut(mean.B, cut.B));
        return new PatchReading(mean, scatter, kept, 1 - (double)kept / n, (double)(bright + dark) / kept, dark > bright, cut, middle);

        static double Spread(double square, double mean) => Math.Sqrt(Math.Max(0, square - mean * mean));
    }

    private static double Cut(ReadOnlySpan<byte> bytes, int channel)
    {
        int cut = 0, n = 0;
        for (int i = channel; i < bytes.Length; i += 3, n++)
            if (bytes[i] < TooDark) cut++;
        return (double)cut / n;
    }

    /// <summary>The mean that a channel would have if the camera had not cut off what lies below nothing: of the normal noise that is cut at nothing in this share of pixels and has this mean then.</summary>
    private static double Uncut(double mean, double cutShare)
    {
        if (cutShare is < LeastCut or > WhollyCut) return mean;
        double a = -Distributions.NormalQuantile(cutShare), density = Math.Exp(-a * a / 2) / Math.Sqrt(2 * Math.PI);
        return mean * a / (density + a * (1 - cutShare));
    }

    private static bool Out(byte value, double low, double high) => value < low || value > high;

    private static int Quantile(ReadOnlySpan<int> counts, int rank)
    {
        int seen = 0;
        for (int v = 0; v < counts.Length; v++)
        {
            seen += counts[v];
            if (seen > rank) return v;
        }
        return counts.Length - 1;
    }
}
