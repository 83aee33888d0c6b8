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

    /// <summary>Share of the standard normal distribution that lies below a value.</summary>
    /// <param name="value">In standard deviations.</param>
    public static double NormalFraction(double value) => Normal.CDF(0, 1, value);

    /// <summary>Quantile of Student's t distribution.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    /// <param name="freedom">Degrees of freedom, above 0.</param>
    public static double StudentQuantile(double probability, double freedom) => StudentT.InvCDF(0, 1, freedom, probability);

    /// <summary>The chance that a ratio of two variances is as large or larger (Fisher's F).</summary>
    /// <param name="ratio">The ratio.</param>
    /// <param name="above">Degrees of freedom of the upper one.</param>
    /// <param name="below">Degrees of freedom of the lower one.</param>
    public static double FisherTail(double ratio, double above, double below) => 1 - FisherSnedecor.CDF(above, below, Math.Max(ratio, 0));

    /// <summary>Quantile of weighted values: each stands for the middle of its share of the weight, straight between.</summary>
    /// <param name="sorted">Values in rising order; at least one.</param>
    /// <param name="weights">Weight of each value, in the same order, summing to 1.</param>
    /// <param name="probability">Between 0 and 1.</param>
    public static double WeightedQuantile(ReadOnlySpan<double> sorted, ReadOnlySpan<double> weights, double probability)
    {
        double before = 0, lastPlace = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            double place = before + 0.5 * weights[i];
            if (place >= probability)
            {
                if (i == 0 || place <= lastPlace) return sorted[i];
                return sorted[i - 1] + (probability - lastPlace) / (place - lastPlace) * (sorted[i] - sorted[i - 1]);
            }
            before += weights[i];
            lastPlace = place;
        }
        return sorted[^1];
    }

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
