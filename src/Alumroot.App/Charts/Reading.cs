namespace Alumroot.App.Charts;

/// <summary>Reads values off lines, for the tables under the charts.</summary>
public static class Reading
{
    /// <summary>Evenly spaced values from the first to the last.</summary>
    public static IReadOnlyList<double> Even(double first, double last, int count) =>
        [.. Enumerable.Range(0, count).Select(i => first + (last - first) * i / (count - 1))];

    /// <summary>The value of a line at a place, straight between neighbouring points; the end values outside.</summary>
    /// <param name="x">Rising.</param>
    /// <param name="y">As many as x, at least one.</param>
    /// <param name="at">The place.</param>
    public static double At(IReadOnlyList<double> x, IReadOnlyList<double> y, double at)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        if (at <= x[0]) return y[0];
        for (int i = 1; i < x.Count; i++)
            if (at <= x[i])
                return x[i] == x[i - 1] ? y[i] : y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
        return y[^1];
    }
}
