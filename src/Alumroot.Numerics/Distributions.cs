using MathNet.Numerics.Distributions;

namespace Alumroot.Numerics;

/// <summary>Quantiles that the engines need.</summary>
public static class Distributions
{
    /// <summary>Half width of the central 90 % of a standard normal distribution.</summary>
    public const double NormalHalfWidth90 = 1.6448536269514722;

    /// <summary>Quantile of the standard normal distribution.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    public static double NormalQuantile(double probability) => Normal.InvCDF(0, 1, probability);

    /// <summary>Quantile of sorted values by linear interpolation between order statistics (Hyndman and Fan 1996, type 7).</summary>
    /// <param name="sorted">Values in rising order; at least one.</param>
    /// <param name="probability">Between 0 and 1.</param>
    public static double SortedQuantile(ReadOnlySpan<double> sorted, double probability)
    {
        double place = probability * (sorted.Length - 1);
        int i = Math.Clamp((int)place, 0, sorted.Length - 1);
        return i + 1 < sorted.Length ? sorted[i] + (place - i) * (sorted[i + 1] - sorted[i]) : sorted[i];
    }
}
