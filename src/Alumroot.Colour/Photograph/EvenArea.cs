using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>An area of one colour in a picture that was made smaller.</summary>
/// <param name="Middle">Its centroid, in pixels of the smaller picture.</param>
/// <param name="PixelCount">How many pixels it has.</param>
/// <param name="WidthPixels">Its width, from the spread of its pixels.</param>
/// <param name="HeightPixels">Its height, likewise.</param>
internal readonly record struct EvenArea(PixelPoint Middle, int PixelCount, double WidthPixels, double HeightPixels)
{
    // An even parallelogram has 12 times the root of the determinant of its spread; a disc 4 pi times; anything ragged less of itself.
    private const double ParallelogramFactor = 12, LeastFilling = 0.78, MostFilling = 1.2;
    private const int LeastPixels = 16;
    private const double MostShare = 0.03;

    /// <summary>Areas that could be patches of a target.</summary>
    /// <param name="picture">The smaller picture.</param>
    /// <param name="step">Pixels that differ by more than this from a neighbour are an edge, in signals of lightness.</param>
    /// <param name="mostElongation">The largest ratio of the spreads along and across.</param>
    internal static List<EvenArea> Of(SmallPicture picture, float step, double mostElongation = 7)
    {
        int w = picture.Width, h = picture.Height;
        var label = new int[w * h];
        var stack = new Stack<int>();
        var found = new List<EvenArea>();
        for (int start = 0; start < label.Length; start++)
        {
            if (label[start] != 0) continue;
            label[start] = 1;
            if (!picture.IsFlat(start, step)) continue;
            stack.Push(start);
            int count = 0;
            double sx = 0, sy = 0, sxx = 0, sxy = 0, syy = 0;
            while (stack.TryPop(out int at))
            {
                int x = at % w, y = at / w;
                count++;
                sx += x;
                sy += y;
                sxx += (double)x * x;
                sxy += (double)x * y;
                syy += (double)y * y;
                if (x > 0) Visit(at, at - 1);
                if (x < w - 1) Visit(at, at + 1);
                if (y > 0) Visit(at, at - w);
                if (y < h - 1) Visit(at, at + w);
            }
            if (count < LeastPixels || count > MostShare * label.Length) continue;
            double mx = sx / count, my = sy / count, a = sxx / count - mx * mx + 1 / 12.0, b = sxy / count - mx * my, c = syy / count - my * my + 1 / 12.0, det = a * c - b * b, trace = a + c;
            double filling = count / (ParallelogramFactor * Math.Sqrt(det)), half = Math.Sqrt(Math.Max(0, trace * trace / 4 - det));
            if (filling is > LeastFilling and < MostFilling && trace / 2 + half < mostElongation * (trace / 2 - half)) found.Add(new(new(mx, my), count, Math.Sqrt(12 * a), Math.Sqrt(12 * c)));
        }
        return found;

        void Visit(int from, int to)
        {
            if (label[to] != 0 || !picture.IsFlat(to, step) || picture.Difference(from, to) > step) return;
            label[to] = 1;
            stack.Push(to);
        }
    }
}

/// <summary>A picture made smaller, as the signals that lightness counts by: near nothing a cube root would make edges of a camera's noise.</summary>
internal sealed class SmallPicture
{
    private const int LongestSide = 720;
    private readonly float[] _values;

    private SmallPicture(int width, int height, double scale, float[] values) => (Width, Height, Scale, _values) = (width, height, scale, values);

    internal int Width { get; }

    internal int Height { get; }

    /// <summary>Pixels of the whole picture for one of these.</summary>
    internal double Scale { get; }

    internal static SmallPicture Of(Raster raster)
    {
        int step = Math.Max(1, (int)Math.Ceiling(Math.Max(raster.Width, raster.Height) / (double)LongestSide));
        int w = raster.Width / step, h = raster.Height / step;
        var values = new float[3 * w * h];
        for (int y = 0; y < h; y++)
            for (int x = 0; x < w; x++)
            {
                double r = 0, g = 0, b = 0;
                for (int j = 0; j < step; j++)
                {
                    ReadOnlySpan<byte> row = raster.Row(y * step + j).Slice(3 * x * step, 3 * step);
                    for (int i = 0; i < row.Length; i += 3)
                    {
                        r += raster.Linear(row[i]);
                        g += raster.Linear(row[i + 1]);
                        b += raster.Linear(row[i + 2]);
                    }
                }
                double n = step * step;
                int at = 3 * (y * w + x);
                (values[at], values[at + 1], values[at + 2]) = ((float)Lab.Compressed(r / n), (float)Lab.Compressed(g / n), (float)Lab.Compressed(b / n));
            }
        return new(w, h, step, values);
    }

    internal float Difference(int a, int b) =>
        MathF.Max(MathF.Abs(_values[3 * a] - _values[3 * b]), MathF.Max(MathF.Abs(_values[3 * a + 1] - _values[3 * b + 1]), MathF.Abs(_values[3 * a + 2] - _values[3 * b + 2])));

    /// <summary>True when a pixel differs little from the two on each side of it.</summary>
    internal bool IsFlat(int at, float step)
    {
        int x = at % Width, y = at / Width;
        if (x == 0 || y == 0 || x == Width - 1 || y == Height - 1) return false;
        return Difference(at - 1, at + 1) < step && Difference(at - Width, at + Width) < step && Difference(at - Width - 1, at + Width + 1) < step && Difference(at - Width + 1, at + Width - 1) < step;
    }

    /// <summary>Mean light around a place of the whole picture; null outside.</summary>
    internal LinearRgb? Around(PixelPoint place, double reach)
    {
        int cx = (int)Math.Round(place.X), cy = (int)Math.Round(place.Y), k = Math.Max(1, (int)reach);
        if (!(cx - k >= 0 && cy - k >= 0 && cx + k < Width && cy + k < Height)) return null;
        double r = 0, g = 0, b = 0;
        for (int y = cy - k; y <= cy + k; y++)
            for (int x = cx - k; x <= cx + k; x++)
            {
                int at = 3 * (y * Width + x);
                r += Lab.Expanded(_values[at]);
                g += Lab.Expanded(_values[at + 1]);
                b += Lab.Expanded(_values[at + 2]);
            }
        double n = (2 * k + 1) * (2 * k + 1);
        return new(r / n, g / n, b / n);
    }
}
