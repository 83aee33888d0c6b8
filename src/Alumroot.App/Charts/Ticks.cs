namespace Alumroot.App.Charts;

/// <summary>Round numbers for an axis.</summary>
public static class Ticks
{
    private static readonly double[] RoundSteps = [1, 2, 2.5, 5, 10];

    /// <summary>Four to six round numbers that span a range, evenly spaced, the outer ones at or beyond its ends.</summary>
    /// <param name="low">The least value to show.</param>
    /// <param name="high">The greatest value to show; a range without width is widened.</param>
    /// <returns>Numbers in rising order, a step of 1, 2, 2.5 or 5 times a power of ten apart.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite, or they are in the wrong order.</exception>
    public static IReadOnlyList<double> Spanning(double low, double high)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || high < low)
            throw new ArgumentOutOfRangeException(nameof(high), high, $"an axis from {low} to {high} cannot be drawn");
        if (high - low < 1e-12 * Math.Max(1, Math.Abs(high))) high = low == 0 ? 1 : low + Math.Abs(low);

        double power = Math.Pow(10, Math.Floor(Math.Log10((high - low) / 5)));
        (double step, double start, int count) = Enumerable.Range(0, 2)
            .SelectMany(decade => RoundSteps, (decade, round) => round * power * Math.Pow(10, decade))
            .Select(candidate => (Step: candidate, Start: Math.Floor(low / candidate + 1e-9), End: Math.Ceiling(high / candidate - 1e-9)))
            .Select(fit => (fit.Step, fit.Start, Count: (int)(fit.End - fit.Start) + 1))
            .First(fit => fit.Count is >= 2 and <= 6);
        return [.. Enumerable.Range(0, count).Select(i => Clean((start + i) * step, step))];
    }

    /// <summary>A tick as text: no more decimals than the step needs, a real minus sign.</summary>
    /// <param name="value">The tick.</param>
    /// <param name="step">The distance between ticks.</param>
    public static string Text(double value, double step)
    {
        int decimals = 0;
        for (double scaled = Math.Abs(step); decimals < 6 && Math.Abs(scaled - Math.Round(scaled)) > 1e-6 * scaled; scaled *= 10) decimals++;
        return value.ToString("F" + decimals, System.Globalization.CultureInfo.InvariantCulture).Replace('-', '\u2212');
    }

    private static double Clean(double value, double step)
    {
        double grain = step / 1000;
        double rounded = Math.Round(value / grain) * grain;
        return Math.Abs(rounded) < grain ? 0 : Math.Round(rounded, 12);
    }
}
