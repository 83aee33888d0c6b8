using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>How long a step will take, from how long it took in earlier batches.</summary>
/// <remarks>
/// Times are log-normal with mean and spread unknown; the next one follows Student's t in the logarithm (gelman2013, section 3.3). A weak prior says that one and the same step differs from batch to batch by a factor of about 1.5; our judgement, no source.
/// </remarks>
public static class OwnTimes
{
    private const double PriorWeight = 3;
    private static readonly double PriorLnSd = Math.Log(1.5);

    /// <summary>Hours that the next one will take; null while none has been kept.</summary>
    /// <param name="hours">Hours of the earlier ones; those that are not above zero do not count.</param>
    public static Estimate? NextHours(IReadOnlyList<double> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        double[] logs = [.. hours.Where(h => h > 0 && double.IsFinite(h)).Select(h => Math.Log(h))];
        if (logs.Length == 0) return null;
        double mean = logs.Average(), squares = logs.Sum(l => (l - mean) * (l - mean));
        double freedom = PriorWeight + logs.Length - 1;
        double scale = Math.Sqrt((PriorWeight * PriorLnSd * PriorLnSd + squares) / freedom * (1 + 1.0 / logs.Length));
        double half = Distributions.StudentQuantile(0.95, freedom) * scale;
        return new Estimate(Math.Exp(mean), Math.Exp(mean - half), Math.Exp(mean + half));
    }
}
