using Alumroot.Numerics;

namespace Alumroot.Colour.Photograph;

/// <summary>How a plane looks to a camera: straight lines stay straight, and nothing else need stay.</summary>
/// <remarks>Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 4.1 (from memory), with the last entry held at 1.</remarks>
internal sealed class Homography
{
    private const int Unknowns = 8;
    private readonly double[] _h;

    private Homography(double[] h) => _h = h;

    /// <summary>From the square between 0 and 1 to a quad.</summary>
    internal static Homography? FromUnitSquare(Quad q) => Fit([new(0, 0), new(1, 0), new(1, 1), new(0, 1)], q.Corners);

    /// <summary>The map that fits pairs of points best; null when they do not settle one.</summary>
    internal static Homography? Fit(IReadOnlyList<PixelPoint> from, IReadOnlyList<PixelPoint> to)
    {
        // Both sides are brought to order 1 about their middle, or the sums lose half their digits.
        (PixelPoint fm, double fs) = Frame(from);
        (PixelPoint tm, double ts) = Frame(to);
        if (fs == 0 || ts == 0) return null;
        var normal = new double[Unknowns * Unknowns];
        var right = new double[Unknowns];
        Span<double> row = stackalloc double[Unknowns];
        for (int i = 0; i < from.Count; i++)
        {
            double x = (from[i].X - fm.X) / fs, y = (from[i].Y - fm.Y) / fs, u = (to[i].X - tm.X) / ts, v = (to[i].Y - tm.Y) / ts;
            ((ReadOnlySpan<double>)[x, y, 1, 0, 0, 0, -u * x, -u * y]).CopyTo(row);
            Add(row, u, normal, right);
            ((ReadOnlySpan<double>)[0, 0, 0, x, y, 1, -v * x, -v * y]).CopyTo(row);
            Add(row, v, normal, right);
        }
        if (!DenseCholesky.Factor(normal, Unknowns)) return null;
        DenseCholesky.SolveLower(normal, right, Unknowns);
        DenseCholesky.SolveUpper(normal, right, Unknowns);
        if (!Array.TrueForAll(right, double.IsFinite)) return null;
        return new Homography([.. right, fm.X, fm.Y, fs, tm.X, tm.Y, ts]);
    }

    /// <summary>Where a point of the plane is seen.</summary>
    internal PixelPoint At(double planeX, double planeY)
    {
        double[] h = _h;
        double x = (planeX - h[8]) / h[10], y = (planeY - h[9]) / h[10], w = h[6] * x + h[7] * y + 1;
        return new(h[11] + h[13] * (h[0] * x + h[1] * y + h[2]) / w, h[12] + h[13] * (h[3] * x + h[4] * y + h[5]) / w);
    }

    /// <summary>A rectangle of the plane as it is seen.</summary>
    internal Quad Rectangle(double left, double top, double right, double bottom) => new(At(left, top), At(right, top), At(right, bottom), At(left, bottom));

    private static (PixelPoint Middle, double Size) Frame(IReadOnlyList<PixelPoint> points)
    {
        double x = points.Average(p => p.X), y = points.Average(p => p.Y);
        var middle = new PixelPoint(x, y);
        return (middle, points.Average(p => p.DistanceTo(middle)));
    }

    private static void Add(ReadOnlySpan<double> row, double value, double[] normal, double[] right)
    {
        for (int i = 0; i < Unknowns; i++)
        {
            right[i] += row[i] * value;
            for (int j = 0; j < Unknowns; j++) normal[i * Unknowns + j] += row[i] * row[j];
        }
    }
}
