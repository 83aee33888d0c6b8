using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>Something odd in the readings of the washings.</summary>
public enum WashOddity
{
    /// <summary>Nothing odd.</summary>
    None,

    /// <summary>The aim lies at or below what the washing water itself reads: no washing reaches it.</summary>
    AimBelowWater,

    /// <summary>The readings hardly fall, though they stand far above the water: the lake was not stirred up or drawn off, or salt comes out of the cake slowly.</summary>
    NotFalling,

    /// <summary>A reading lies below the washing water: another water, or the meter.</summary>
    BelowWater,
}

/// <summary>How far the washing is.</summary>
/// <param name="KeptRatio">Part of the dissolved salt that stays behind at each draining, learned from the readings.</param>
/// <param name="SaltLeftRatio">Part of the dissolved salt of the first reading that is still there.</param>
/// <param name="WashesToGo">Washings until the aim; 0 when it is reached, infinite when it cannot be.</param>
/// <param name="Oddity">What is odd.</param>
public sealed record WashState(Estimate KeptRatio, Estimate SaltLeftRatio, Estimate WashesToGo, WashOddity Oddity);

/// <summary>Learns from the meter how well a lake washes: what stands above the water's own conductivity falls by the same factor at each wash.</summary>
/// <remarks>A log-normal prior and normal updates in the logarithm. Docs: docs/models/washing.md.</remarks>
public static class WashProgress
{
    // Before any reading 0.3, nine in ten between 0.2 and 0.45; common practice, no source (docs/models/washing.md).
    private const double UsualKept = 0.3, LeastKept = 0.2, MostKept = 0.45;

    // One ratio of two readings strays by the meter and by how one drains; our judgement, no source.
    private const double RatioLnSd = 0.15, MeterRatio = 0.03;

    private const double HardlyFalls = 0.8;

    /// <summary>Where the washing stands.</summary>
    /// <param name="readings">Conductivity of the supernatant before the first wash and after each, at 25 °C.</param>
    /// <param name="water">Conductivity of the washing water.</param>
    /// <param name="aim">Conductivity at which washing stops.</param>
    public static WashState Of(IReadOnlyList<Conductivity> readings, Conductivity water, Conductivity aim)
    {
        ArgumentNullException.ThrowIfNull(readings);
        double own = water.MicrosiemensPerCentimetre, until = aim.MicrosiemensPerCentimetre;
        double[] above = [.. readings.Select(r => r.MicrosiemensPerCentimetre - own)];
        double sd0 = Math.Log(MostKept / LeastKept) / (2 * Distributions.NormalHalfWidth90);
        double precision = 1 / (sd0 * sd0), sum = Math.Log(UsualKept) * precision;
        double last = double.NaN;
        for (int i = 1; i < above.Length; i++)
        {
            // Close to the water itself the difference is all meter.
            if (above[i] <= MeterRatio * readings[i].MicrosiemensPerCentimetre || above[i - 1] <= 0) continue;
            last = above[i] / above[i - 1];
            double near = MeterRatio * readings[i].MicrosiemensPerCentimetre / above[i], sd2 = RatioLnSd * RatioLnSd + near * near;
            precision += 1 / sd2;
            sum += Math.Min(Math.Log(last), 0) / sd2;
        }
        double mean = Math.Min(sum / precision, Math.Log(0.98)), sd = 1 / Math.Sqrt(precision);
        Estimate kept = Around(mean, sd);
        bool reached = readings.Count > 0 && readings[^1].MicrosiemensPerCentimetre <= until;
        double now = above.Length > 0 ? above[^1] : double.NaN, leaves = until - own;
        WashOddity oddity = leaves <= 0 && !reached ? WashOddity.AimBelowWater
            : above.Length > 0 && now < -2 * MeterRatio * own ? WashOddity.BelowWater
            : last > HardlyFalls && now > own && !reached ? WashOddity.NotFalling
            : WashOddity.None;
        return new WashState(kept, SaltLeft(above, own), ToGo(), oddity);

        Estimate ToGo()
        {
            if (reached) return Estimate.Exact(0);
            if (above.Length == 0 || leaves <= 0) return Estimate.Exact(double.PositiveInfinity);
            double fall = Math.Log(now / leaves);
            double middle = fall / -mean, spread = Math.Sqrt(sd * sd + RatioLnSd * RatioLnSd / Math.Max(middle, 1)) * Distributions.NormalHalfWidth90;
            return new Estimate(middle, fall / (-mean + spread), -mean > spread ? fall / (-mean - spread) : double.PositiveInfinity);
        }
    }

    private static Estimate SaltLeft(double[] above, double own)
    {
        if (above.Length == 0 || above[0] <= 0) return Estimate.Exact(1);
        double ratio = Math.Max(above[^1], 0) / above[0];
        double meter = MeterRatio * (own + Math.Max(above[^1], 0)) / above[0] * Distributions.NormalHalfWidth90;
        return above.Length == 1 ? Estimate.Exact(1) : new Estimate(ratio, Math.Max(ratio - meter, 0), ratio + meter);
    }

    private static Estimate Around(double mean, double sd) => new(
        Math.Exp(mean), Math.Exp(mean - Distributions.NormalHalfWidth90 * sd), Math.Min(Math.Exp(mean + Distributions.NormalHalfWidth90 * sd), 1));
}
