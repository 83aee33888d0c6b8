namespace Alumroot.Numerics;

/// <summary>A smooth curve through points that rises only where the points rise.</summary>
/// <remarks>Cubic pieces with the slopes of Fritsch and Butland 1984 (SIAM J. Sci. Stat. Comput. 5:300, the three-point formula with uneven spacing; from memory); one-sided at the ends. Level beyond the ends.</remarks>
public sealed class MonotoneCubic
{
    private readonly double[] _x, _y, _slope;

    /// <summary>Lays the curve.</summary>
    /// <param name="x">Places, strictly rising; at least one.</param>
    /// <param name="y">Value at each.</param>
    public MonotoneCubic(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        _x = [.. x];
        _y = [.. y];
        int n = _x.Length;
        _slope = new double[n];
        if (n < 2) return;
        for (int i = 1; i < n - 1; i++)
        {
            double h0 = _x[i] - _x[i - 1], h1 = _x[i + 1] - _x[i], d0 = (_y[i] - _y[i - 1]) / h0, d1 = (_y[i + 1] - _y[i]) / h1;
            if (d0 * d1 <= 0) continue;
            double w0 = 2 * h1 + h0, w1 = h1 + 2 * h0;
            _slope[i] = (w0 + w1) / (w0 / d0 + w1 / d1);
        }
        _slope[0] = (_y[1] - _y[0]) / (_x[1] - _x[0]);
        _slope[n - 1] = (_y[n - 1] - _y[n - 2]) / (_x[n - 1] - _x[n - 2]);
    }

    /// <summary>Value at a place.</summary>
    /// <param name="place">On the axis of the points.</param>
    public double ValueAt(double place)
    {
        int n = _x.Length;
        if (place <= _x[0] || n == 1) return _y[0];
        if (place >= _x[n - 1]) return _y[n - 1];
        int low = 0, high = n - 1;
        while (high - low > 1)
        {
            int mid = (low + high) >> 1;
            if (_x[mid] <= place) low = mid;
            else high = mid;
        }
        double h = _x[high] - _x[low], t = (place - _x[low]) / h, u = 1 - t;
        return u * u * (1 + 2 * t) * _y[low] + t * t * (3 - 2 * t) * _y[high] + h * t * u * (u * _slope[low] - t * _slope[high]);
    }
}
