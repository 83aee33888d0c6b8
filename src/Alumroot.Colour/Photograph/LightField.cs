using Alumroot.Numerics;

namespace Alumroot.Colour.Photograph;

/// <summary>How bright the light falls on each place of a picture: a smooth surface through the bare surround, or the same everywhere when there is none.</summary>
/// <remarks>The logarithm of each channel is quadratic in place, with a fourth-order ring for the fall towards the corners of a lens; fitted by reweighted least squares (Tukey's biweight, Beaton and Tukey 1974, from memory).</remarks>
internal sealed class LightField
{
    private const int Terms = 7, Rounds = 14;
    private const double BiweightReach = 4.685, RobustToNormal = 1.4826;

    // The surround is trusted when this share of what is bare lies on the surface, this closely (natural logarithm).
    private const double LeastShare = 0.3, MostScatter = 0.04, LeastScatter = 0.002;
    private const int LeastCells = 60;
    private const double FirstReach = 0.5;

    private readonly double[][] _channels;
    private readonly double _centreX, _centreY, _scale;

    private LightField(double[][] channels, double centreX, double centreY, double scale, double scatter) => (_channels, _centreX, _centreY, _scale, Scatter) = (channels, centreX, centreY, scale, scatter);

    /// <summary>Scatter of the surround about the surface, as a share; null when light is taken as even.</summary>
    internal double? Scatter { get; }

    /// <summary>The same light everywhere.</summary>
    internal static LightField Even { get; } = new([new double[Terms], new double[Terms], new double[Terms]], 0, 0, 1, 0) { IsEven = true };

    /// <summary>True when no surround was there to tell of the light.</summary>
    internal bool IsEven { get; private init; }

    /// <summary>The light at a place, as the surround there would show it.</summary>
    internal LinearRgb At(PixelPoint p)
    {
        if (IsEven) return new(1, 1, 1);
        Span<double> t = stackalloc double[Terms];
        Fill(t, p.X, p.Y);
        return new(Value(_channels[0], t), Value(_channels[1], t), Value(_channels[2], t));
    }

    /// <summary>Looks for an even surround among cells of a picture; <see cref="Even"/> when there is none that can be trusted.</summary>
    internal static LightField From(IReadOnlyList<SurroundCell> cells, int width, int height)
    {
        if (cells.Count < LeastCells) return Even;
        double scale = Math.Max(width, height) / 2.0;
        var empty = new LightField([new double[Terms], new double[Terms], new double[Terms]], width / 2.0, height / 2.0, scale, 0);
        (double redness, double blueness) = CommonHue(cells);
        var weights = new double[cells.Count];
        for (int i = 0; i < cells.Count; i++)
        {
            (double r, double b) = Hue(cells[i]);
            weights[i] = Math.Abs(r - redness) < 0.12 && Math.Abs(b - blueness) < 0.12 ? 1 : 0;
        }
        double median = MedianOf(cells, weights);
        for (int i = 0; i < cells.Count; i++)
            if (Math.Abs(Math.Log(cells[i].Light.G) - median) > FirstReach) weights[i] = 0;
        double[][] fit = [];
        double scatter = FirstReach / BiweightReach;
        for (int round = 0; round < Rounds; round++)
        {
            if (empty.Solve(cells, weights) is not { } solved) return Even;
            fit = solved;
            double[] off = empty.Residuals(cells, fit);
            double[] inside = [.. off.Where((_, i) => weights[i] > 0).Order()];
            scatter = Math.Max(LeastScatter, Math.Min(scatter * 0.7 + 0.3 * LeastScatter, RobustToNormal * Distributions.SortedQuantile(inside, 0.5)));
            if (round > Rounds / 2) scatter = Math.Max(LeastScatter, RobustToNormal * Distributions.SortedQuantile(inside, 0.5));
            for (int i = 0; i < cells.Count; i++)
            {
                double u = off[i] / (BiweightReach * scatter);
                weights[i] = u < 1 ? (1 - u * u) * (1 - u * u) : 0;
            }
        }
        double share = weights.Count(w => w > 0) / (double)cells.Count;
        return share < LeastShare || scatter > MostScatter ? Even : new LightField(fit, width / 2.0, height / 2.0, scale, scatter);
    }

    /// <summary>By how much the light differs between the brightest and the darkest of some places, in percent of the brightest.</summary>
    internal double UnevenPercent(IEnumerable<PixelPoint> places)
    {
        if (IsEven) return 0;
        double[] light = [.. places.Select(p => At(p).G)];
        return light.Length == 0 ? 0 : 100 * (1 - light.Min() / light.Max());
    }

    private static double Value(double[] c, ReadOnlySpan<double> t)
    {
        double sum = 0;
        for (int i = 0; i < Terms; i++) sum += c[i] * t[i];
        return Math.Exp(sum);
    }

    private void Fill(Span<double> t, double px, double py)
    {
        double x = (px - _centreX) / _scale, y = (py - _centreY) / _scale, r2 = x * x + y * y;
        (t[0], t[1], t[2], t[3], t[4], t[5], t[6]) = (1, x, y, x * x, x * y, y * y, r2 * r2);
    }

    private double[][]? Solve(IReadOnlyList<SurroundCell> cells, double[] weights)
    {
        var normal = new double[Terms * Terms];
        var sides = new double[3][];
        for (int c = 0; c < 3; c++) sides[c] = new double[Terms];
        Span<double> t = stackalloc double[Terms];
        for (int k = 0; k < cells.Count; k++)
        {
            if (weights[k] == 0) continue;
            Fill(t, cells[k].Place.X, cells[k].Place.Y);
            LinearRgb light = cells[k].Light;
            double r = Math.Log(light.R), g = Math.Log(light.G), b = Math.Log(light.B);
            for (int i = 0; i < Terms; i++)
            {
                double w = weights[k] * t[i];
                sides[0][i] += w * r;
                sides[1][i] += w * g;
                sides[2][i] += w * b;
                for (int j = 0; j <= i; j++) normal[i * Terms + j] += w * t[j];
            }
        }
        for (int i = 0; i < Terms; i++)
        {
            normal[i * Terms + i] += 1e-6;
            for (int j = i + 1; j < Terms; j++) normal[i * Terms + j] = normal[j * Terms + i];
        }
        if (!DenseCholesky.Factor(normal, Terms)) return null;
        foreach (double[] side in sides)
        {
            DenseCholesky.SolveLower(normal, side, Terms);
            DenseCholesky.SolveUpper(normal, side, Terms);
        }
        return sides;
    }

    /// <summary>The largest distance of the three channels from the surface, for each cell.</summary>
    private double[] Residuals(IReadOnlyList<SurroundCell> cells, double[][] fit)
    {
        var off = new double[cells.Count];
        Span<double> t = stackalloc double[Terms];
        for (int k = 0; k < off.Length; k++)
        {
            Fill(t, cells[k].Place.X, cells[k].Place.Y);
            LinearRgb light = cells[k].Light;
            off[k] = Math.Max(Off(light.R, fit[0], t), Math.Max(Off(light.G, fit[1], t), Off(light.B, fit[2], t)));
        }
        return off;

        static double Off(double light, double[] c, ReadOnlySpan<double> t) => Math.Abs(Math.Log(light / Value(c, t)));
    }

    private static (double Red, double Blue) Hue(SurroundCell cell) => (Math.Log(cell.Light.R / cell.Light.G), Math.Log(cell.Light.B / cell.Light.G));

    /// <summary>The hue that most cells share: the fullest of the squares of a grid, moved to the mean of its neighbourhood.</summary>
    private static (double Red, double Blue) CommonHue(IReadOnlyList<SurroundCell> cells)
    {
        const double Side = 0.08;
        var fullest = cells.GroupBy(c => ((int)Math.Floor(Hue(c).Red / Side), (int)Math.Floor(Hue(c).Blue / Side))).MaxBy(g => g.Count())!;
        double red = fullest.Average(c => Hue(c).Red), blue = fullest.Average(c => Hue(c).Blue);
        SurroundCell[] near = [.. cells.Where(c => Math.Abs(Hue(c).Red - red) < Side && Math.Abs(Hue(c).Blue - blue) < Side)];
        return near.Length == 0 ? (red, blue) : (near.Average(c => Hue(c).Red), near.Average(c => Hue(c).Blue));
    }

    private static double MedianOf(IReadOnlyList<SurroundCell> cells, double[] weights)
    {
        double[] logs = [.. cells.Where((_, i) => weights[i] > 0).Select(c => Math.Log(c.Light.G)).Order()];
        return logs.Length == 0 ? 0 : Distributions.SortedQuantile(logs, 0.5);
    }
}
