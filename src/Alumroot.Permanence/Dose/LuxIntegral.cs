using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Permanence.Dose;

/// <summary>The dose from readings at uneven times: straight lines between them, with a span for what the light did meanwhile, for gaps and for the meter.</summary>
/// <remarks>
/// Between two readings the light is taken to wander (a Brownian bridge): over a step of h hours the sum then has the variance s² h³/12. The wandering s² is read off the log itself:
/// each reading but the ends is held against the straight line between its neighbours, a and b hours away, and (miss)² (a + b)/(a b) has s² as its mean. Derived by hand; tests simulate it.
/// </remarks>
public static class LuxIntegral
{
    /// <summary>Half width of nine in ten of what a meter shows, as a share: scale, angle and colour of the light together. Judgement.</summary>
    public const double MeterShare = 0.15;

    /// <summary>One reading stands for the whole time within this factor. Judgement.</summary>
    public const double SingleFactor = 2;

    // A step this much longer than the usual one, and longer than an hour and a half, is a gap. Judgement.
    private const double GapSteps = 5, LeastGapHours = 1.5;

    // What was not seen may have been so much less or more than what the rest of the log says. Judgement.
    private const double GapFactor = 2;

    private const double Million = 1e6, SlotHours = 0.5, DayHours = 24;
    private const int MostDays = 60;

    /// <summary>The dose between the first and the last reading of a log.</summary>
    /// <param name="readings">By rising time; two or more.</param>
    /// <exception cref="ArgumentException">Fewer than two, or out of order.</exception>
    public static LightDose OfLog(IReadOnlyList<LuxReading> readings)
    {
        MustRise(readings, 2);
        double[] steps = [.. Steps(readings)];
        double limit = Math.Max(LeastGapHours, GapSteps * Distributions.SortedQuantile([.. steps.Order()], 0.5));
        double sum = 0, variance = 0, filled = 0, most = readings.Max(r => r.Lux), covered = 0;
        double wander = Wander(readings, limit);
        var gaps = new List<LightGap>();
        for (int i = 0; i < steps.Length; i++)
        {
            if (steps[i] > limit)
            {
                gaps.Add(new LightGap(readings[i].Hours, readings[i + 1].Hours));
                continue;
            }
            sum += Trapezoid(readings[i], readings[i + 1]);
            covered += steps[i];
            variance += Bridge(wander, steps[i]);
        }
        double mean = covered > 0 ? sum / covered : readings.Average(r => r.Lux), bright = 0;
        foreach (LightGap gap in gaps)
        {
            filled += Filled(readings, gap, limit, mean);
            bright += most * gap.LengthHours;
        }
        double total = sum + filled, half = Distributions.NormalHalfWidth90 * Math.Sqrt(variance), meter = MeterShare * total;
        double below = Root(half, meter, filled - filled / GapFactor), above = Root(half, meter, Math.Min(GapFactor * filled, bright) - filled);
        return new LightDose(new Estimate(total, Math.Max(0, total - below), total + Math.Max(0, above)).Times(1 / Million), DoseWay.Readings) { Gaps = gaps, FilledShare = total > 0 ? filled / total : 0 };
    }

    /// <summary>The dose from readings by hand while the light is on.</summary>
    /// <param name="readings">By rising time; one or more. Before the first and after the last the nearest holds.</param>
    /// <param name="fromHours">When the exposure began.</param>
    /// <param name="toHours">Up to when the dose is asked.</param>
    /// <param name="litHoursADay">Hours of such light in a day, 0 to 24.</param>
    public static LightDose ByHand(IReadOnlyList<LuxReading> readings, double fromHours, double toHours, double litHoursADay)
    {
        MustRise(readings, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(toHours, fromHours);
        ArgumentOutOfRangeException.ThrowIfNegative(litHoursADay);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(litHoursADay, DayHours);
        double lit = litHoursADay / DayHours / Million;
        if (readings.Count == 1)
        {
            double whole = readings[0].Lux * (toHours - fromHours) * lit, factor = Math.Exp(Root(Math.Log(SingleFactor), MeterShare));
            return new LightDose(new Estimate(whole, whole / factor, whole * factor), DoseWay.Level);
        }
        LuxReading[] path = [new(fromHours, At(readings, fromHours)), .. readings.Where(r => r.Hours > fromHours && r.Hours < toHours), new(toHours, At(readings, toHours))];
        double wander = readings.Count > 2 ? Wander(readings, double.PositiveInfinity) : TwoReadings(readings), sum = 0, variance = 0;
        for (int i = 0; i + 1 < path.Length; i++)
        {
            double step = path[i + 1].Hours - path[i].Hours;
            sum += Trapezoid(path[i], path[i + 1]);
            bool open = path[i].Hours < readings[0].Hours || path[i + 1].Hours > readings[^1].Hours;
            variance += open ? 4 * Bridge(wander, step) : Bridge(wander, step);
        }
        double dose = sum * lit, half = Root(Distributions.NormalHalfWidth90 * Math.Sqrt(variance) * lit, MeterShare * dose);
        return new LightDose(new Estimate(dose, Math.Max(dose / 5, dose - half), dose + half), DoseWay.Readings);
    }

    // With an open end a walk has h³/3, four times the bridge.
    private static double Bridge(double wander, double step) => wander * step * step * step / 12;

    private static double TwoReadings(IReadOnlyList<LuxReading> r) => Math.Pow(r[1].Lux - r[0].Lux, 2) / Math.Max(1e-9, r[1].Hours - r[0].Hours);

    private static double Wander(IReadOnlyList<LuxReading> r, double limit)
    {
        double sum = 0;
        int n = 0;
        for (int i = 1; i + 1 < r.Count; i++)
        {
            double a = r[i].Hours - r[i - 1].Hours, b = r[i + 1].Hours - r[i].Hours;
            if (a > limit || b > limit) continue;
            double miss = r[i].Lux - (r[i - 1].Lux * b + r[i + 1].Lux * a) / (a + b);
            sum += miss * miss * (a + b) / (a * b);
            n++;
        }
        return n > 0 ? sum / n : 0;
    }

    /// <summary>A gap by what the other days show at the same time of day; by the mean of the log where none does.</summary>
    private static double Filled(IReadOnlyList<LuxReading> readings, LightGap gap, double limit, double mean)
    {
        int slots = Math.Max(1, (int)Math.Ceiling(gap.LengthHours / SlotHours));
        double width = gap.LengthHours / slots, sum = 0;
        for (int s = 0; s < slots; s++)
        {
            double at = gap.FromHours + (s + 0.5) * width, seen = 0;
            int n = 0;
            for (int day = -MostDays; day <= MostDays; day++)
                if (day != 0 && Seen(readings, at + DayHours * day, limit) is { } lux)
                {
                    seen += lux;
                    n++;
                }
            sum += width * (n > 0 ? seen / n : mean);
        }
        return sum;
    }

    private static double? Seen(IReadOnlyList<LuxReading> r, double hours, double limit)
    {
        if (hours < r[0].Hours || hours > r[^1].Hours) return null;
        int i = Before(r, hours);
        return r[i + 1].Hours - r[i].Hours > limit ? null : At(r, hours);
    }

    private static double At(IReadOnlyList<LuxReading> r, double hours)
    {
        if (hours <= r[0].Hours) return r[0].Lux;
        if (hours >= r[^1].Hours) return r[^1].Lux;
        int i = Before(r, hours);
        double share = (hours - r[i].Hours) / (r[i + 1].Hours - r[i].Hours);
        return r[i].Lux + share * (r[i + 1].Lux - r[i].Lux);
    }

    private static int Before(IReadOnlyList<LuxReading> r, double hours)
    {
        int low = 0, high = r.Count - 2;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (r[middle].Hours <= hours) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    private static double Trapezoid(LuxReading a, LuxReading b) => 0.5 * (a.Lux + b.Lux) * (b.Hours - a.Hours);

    private static IEnumerable<double> Steps(IReadOnlyList<LuxReading> r) => Enumerable.Range(0, r.Count - 1).Select(i => r[i + 1].Hours - r[i].Hours);

    private static double Root(params ReadOnlySpan<double> parts)
    {
        double sum = 0;
        foreach (double p in parts) sum += p * p;
        return Math.Sqrt(sum);
    }

    private static void MustRise(IReadOnlyList<LuxReading> readings, int least)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count < least) throw new ArgumentException($"{least} readings are the least.", nameof(readings));
        for (int i = 0; i + 1 < readings.Count; i++)
            if (!(readings[i + 1].Hours > readings[i].Hours)) throw new ArgumentException("Readings come by rising time.", nameof(readings));
    }
}
