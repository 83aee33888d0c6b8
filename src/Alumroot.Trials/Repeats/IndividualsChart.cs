namespace Alumroot.Trials.Repeats;

/// <summary>Limits for single values in order, from the mean step between neighbours. Pure.</summary>
/// <remarks>NIST/SEMATECH e-Handbook, 6.3.2.2: mean ± 3 MR/1.128, that is 2.66 MR, and eight in a row on one side, 6.3.2. Limits of it: docs/models/trials.md.</remarks>
public static class IndividualsChart
{
    /// <summary>With fewer values there are no limits.</summary>
    public const int LeastPoints = 4;

    /// <summary>With fewer values the limits are loose (common practice, no source).</summary>
    public const int EnoughPoints = 20;

    // The mean range of two normal values with a standard deviation of one: 2/sqrt(pi), as the handbook rounds it.
    private const double MeanRangeOfTwo = 1.128, Sds = 3;

    private const int LongRun = 8;

    // The mean of values that are all alike may differ from them by its last digit.
    private const double Rounding = 1e-9;

    /// <summary>The limits; null when there are too few values.</summary>
    /// <param name="values">In the order in which they came; all finite.</param>
    /// <param name="neverBelowNothing">Whether a value can never be below nothing, such as a difference or a weight.</param>
    public static ControlFound? Of(IReadOnlyList<double> values, bool neverBelowNothing = false)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < LeastPoints) return null;
        double[] steps = [.. values.Zip(values.Skip(1), (a, b) => Math.Abs(b - a))];
        double mean = values.Average(), step = steps.Average(), reach = Sds * step / MeanRangeOfTwo;
        double lower = neverBelowNothing ? Math.Max(0, mean - reach) : mean - reach, upper = mean + reach;
        double slack = Rounding * Math.Max(1, Math.Abs(mean));
        var points = new List<ControlPoint>();
        int run = 0;
        for (int i = 0; i < values.Count; i++)
        {
            int side = Math.Abs(values[i] - mean) <= slack ? 0 : Math.Sign(values[i] - mean);
            run = side == 0 ? 0 : Math.Sign(run) == side ? run + side : side;
            ControlSign sign = values[i] > upper + slack ? ControlSign.Above : values[i] < lower - slack ? ControlSign.Below : run >= LongRun ? ControlSign.RunAbove : run <= -LongRun ? ControlSign.RunBelow : ControlSign.Within;
            points.Add(new ControlPoint(values[i], i == 0 ? null : steps[i - 1], sign));
        }
        return new ControlFound(mean, step, lower, upper, points);
    }
}
