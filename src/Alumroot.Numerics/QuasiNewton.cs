namespace Alumroot.Numerics;

/// <summary>The least value of a smooth function with known slopes, from one start.</summary>
/// <remarks>BFGS with a backtracking search (Nocedal and Wright 2006, Numerical Optimization, algorithm 6.1; from memory).</remarks>
public static class QuasiNewton
{
    private const double Armijo = 1e-4, LongestStep = 2;

    /// <summary>Value and slopes at a place; the slopes are written into the second argument.</summary>
    /// <param name="place">Where.</param>
    /// <param name="slopes">Receives the slopes.</param>
    public delegate double Function(ReadOnlySpan<double> place, Span<double> slopes);

    /// <summary>Goes downhill until nothing is gained.</summary>
    /// <param name="function">What is to become small; infinite where it has no value.</param>
    /// <param name="start">Where to begin; a place with a finite value.</param>
    /// <param name="mostSteps">At most so many steps.</param>
    /// <param name="enough">A gain below this ends it.</param>
    public static (double[] Place, double Value) Minimise(Function function, ReadOnlySpan<double> start, int mostSteps = 60, double enough = 1e-7)
    {
        ArgumentNullException.ThrowIfNull(function);
        int n = start.Length;
        double[] x = start.ToArray(), g = new double[n], h = new double[n * n], next = new double[n], slopes = new double[n], move = new double[n];
        double f = function(x, g);
        for (int i = 0; i < n; i++) h[i * n + i] = 1;
        for (int step = 0; step < mostSteps; step++)
        {
            double down = 0;
            for (int i = 0; i < n; i++)
            {
                move[i] = 0;
                for (int j = 0; j < n; j++) move[i] -= h[i * n + j] * g[j];
                down += move[i] * g[i];
            }
            if (!(down < 0)) break;
            double longest = Math.Max(1, move.Max(Math.Abs) / LongestStep), length = 1 / longest, value = double.PositiveInfinity;
            for (int halving = 0; halving < 30; halving++, length /= 2)
            {
                for (int i = 0; i < n; i++) next[i] = x[i] + length * move[i];
                value = function(next, slopes);
                if (value <= f + Armijo * length * down) break;
            }
            if (!(value < f)) break;
            double gain = f - value;
            Update(h, n, x, next, g, slopes);
            (x, next) = (next, x);
            (g, slopes) = (slopes, g);
            f = value;
            if (gain < enough) break;
        }
        return (x, f);
    }

    private static void Update(double[] h, int n, double[] x, double[] next, double[] g, double[] slopes)
    {
        double[] s = new double[n], y = new double[n], hy = new double[n];
        double sy = 0, yhy = 0;
        for (int i = 0; i < n; i++)
        {
            (s[i], y[i]) = (next[i] - x[i], slopes[i] - g[i]);
            sy += s[i] * y[i];
        }
        if (sy <= 1e-12) return;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++) hy[i] += h[i * n + j] * y[j];
            yhy += y[i] * hy[i];
        }
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) h[i * n + j] += (1 + yhy / sy) * s[i] * s[j] / sy - (hy[i] * s[j] + s[i] * hy[j]) / sy;
    }
}
