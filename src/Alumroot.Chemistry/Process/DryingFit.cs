using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>One weight of a drying cake.</summary>
/// <param name="Hours">When, in hours from any start.</param>
/// <param name="Grams">What it weighed, without the dish.</param>
public readonly record struct Weighing(double Hours, double Grams);

/// <summary>What the weights of a drying cake say. Closed: nobody adds another kind.</summary>
public abstract record Drying
{
    private Drying() { }

    /// <summary>Too few weights to see a curve.</summary>
    /// <param name="Weights">How many there are that count.</param>
    /// <param name="WaitHours">How long to wait before the next, counted from the last.</param>
    public sealed record NotKnown(int Weights, double WaitHours) : Drying;

    /// <summary>The last weight is more than the one before by more than chance: damp air, or another dish.</summary>
    /// <param name="GainGrams">By how much.</param>
    public sealed record Gained(double GainGrams) : Drying;

    /// <summary>The last two weights are the same, and far enough apart in time.</summary>
    /// <param name="Grams">The dry weight.</param>
    public sealed record Constant(Estimate Grams) : Drying;

    /// <summary>The last two weights are the same but were taken too soon after each other to tell.</summary>
    /// <param name="WaitHours">How long to wait before the next.</param>
    public sealed record TooSoon(double WaitHours) : Drying;

    /// <summary>It is drying on.</summary>
    /// <param name="EndGrams">What it will weigh when dry.</param>
    /// <param name="ToGoHours">Until no more is to be lost than half a percent of the end mass, or two steps of the scale.</param>
    public sealed record StillDrying(Estimate EndGrams, Estimate ToGoHours) : Drying;
}

/// <summary>Fits the falling end of a drying curve to successive weights: m(t) = m_end + a exp(−t/τ), the thin-layer law (Lewis 1921, from memory).</summary>
/// <remarks>
/// The time constant runs over a grid; for each the two masses follow by least squares with their normal spread, and all are weighed by how well they explain
/// the weights. Formulas, limits and tests: docs/models/drying.md.
/// </remarks>
public static class DryingFit
{
    /// <summary>Two weights count as the same within this part of themselves, or two steps of the scale; common practice, no source.</summary>
    public const double SameRatio = 0.005;

    /// <summary>Two weights must lie this far apart to say that the cake is dry; common practice, no source.</summary>
    public const double LeastGapHours = 1;

    // A cake takes up and gives off so much of its mass with the damp of the air; our judgement, no source.
    private const double HandlingRatio = 0.002;
    private const int MostWeights = 6, TimeConstants = 60, Nodes = 15, MostPasses = 5, EnoughHeavy = 20;
    private const double ShortestHours = 0.2, LongestHours = 600;

    // Chi-square for 1, 2 and 3 degrees of freedom, 99 % (tables, from memory): four, five and six weights that follow the law rarely stray further.
    private static readonly double[] MostChiSquare = [6.63, 9.21, 11.34];

    /// <summary>What the weights say.</summary>
    /// <param name="weighings">In the order of time.</param>
    /// <param name="scaleStep">The smallest step of the scale.</param>
    public static Drying Of(IReadOnlyList<Weighing> weighings, Mass scaleStep)
    {
        ArgumentNullException.ThrowIfNull(weighings);
        if (weighings.Count < 2) return new Drying.NotKnown(weighings.Count, weighings.Count == 0 ? 0 : LeastGapHours);
        Weighing before = weighings[^2], now = weighings[^1];
        double same = Math.Max(2 * scaleStep.Grams, SameRatio * now.Grams);
        if (now.Grams - before.Grams > same) return new Drying.Gained(now.Grams - before.Grams);
        if (before.Grams - now.Grams <= same)
        {
            double half = Distributions.NormalHalfWidth90 * Sd(now, scaleStep);
            return now.Hours - before.Hours >= LeastGapHours
                ? new Drying.Constant(new Estimate(now.Grams, now.Grams - half, now.Grams + half))
                : new Drying.TooSoon(LeastGapHours - (now.Hours - before.Hours));
        }
        Weighing[] last = [.. weighings.Skip(weighings.Count - MostWeights)];
        // Three weights at equal distances show the curve best: wait as long again as between the last two.
        return Fitted(last, scaleStep) is { } fitted
            ? fitted
            : new Drying.NotKnown(last.Length, Math.Max(LeastGapHours, now.Hours - before.Hours));
    }

    private static double Sd(Weighing w, Mass step) => Math.Sqrt(step.Grams * step.Grams / 12 + HandlingRatio * HandlingRatio * w.Grams * w.Grams);

    private static Drying.StillDrying? Fitted(Weighing[] weighings, Mass step)
    {
        var ends = new List<(double Value, double Weight)>();
        var hours = new List<(double Value, double Weight)>();
        List<Fit> fits = OfThoseThatFollow(weighings, step);
        if (fits.Count == 0) return null;
        double top = fits.Max(f => f.LnWeight);
        foreach (Fit f in fits)
        {
            double weight = Math.Exp(f.LnWeight - top) / Nodes;
            if (weight < 1e-9) continue;
            for (int k = 0; k < Nodes; k++)
            {
                double off = f.EndSd * Distributions.NormalQuantile((k + 0.5) / Nodes);
                double end = f.End + off, left = f.Left + f.LeftPerEnd * off;
                // A cake cannot weigh less than nothing when dry, nor gain by drying.
                if (end <= 0 || left < 0) continue;
                double dry = Math.Max(2 * step.Grams, SameRatio * end);
                ends.Add((end, weight));
                hours.Add((left <= dry ? 0 : f.TimeConstantHours * Math.Log(left / dry), weight));
            }
        }
        return ends.Count == 0 ? null : new Drying.StillDrying(Spread(ends), Spread(hours));
    }

    // A wet surface loses the same each hour and does not follow the law: the oldest weights are left out until the rest does, or three are left.
    private static List<Fit> OfThoseThatFollow(Weighing[] weighings, Mass step)
    {
        for (int count = weighings.Length; count >= 3; count--)
        {
            List<Fit> fits = Along(weighings[^count..], step);
            if (fits.Count > 0 && (count == 3 || fits.Min(f => f.ChiSquare) <= MostChiSquare[count - 4])) return fits;
        }
        return [];
    }

    private readonly record struct Fit(double LnWeight, double ChiSquare, double TimeConstantHours, double End, double EndSd, double Left, double LeftPerEnd);

    // Fits along the time constant: first far and wide, then where the weight is, until many share it.
    private static List<Fit> Along(Weighing[] weighings, Mass step)
    {
        double from = ShortestHours, to = LongestHours;
        var fits = new List<Fit>();
        for (int pass = 0; pass < MostPasses; pass++)
        {
            fits = [.. Enumerable.Range(0, TimeConstants).Select(i => from * Math.Pow(to / from, i / (TimeConstants - 1.0))).Select(tau => Line(weighings, step, tau)).OfType<Fit>()];
            if (fits.Count == 0) break;
            double top = fits.Max(f => f.LnWeight), width = Math.Pow(to / from, 1 / (TimeConstants - 1.0));
            Fit[] heavy = [.. fits.Where(f => f.LnWeight > top - 10)];
            if (heavy.Length > EnoughHeavy) break;
            (from, to) = (heavy[0].TimeConstantHours / width, heavy[^1].TimeConstantHours * width);
        }
        return fits;
    }

    // Weighted least squares of the end mass and of what is still to be lost at the last weight, for one time constant.
    private static Fit? Line(Weighing[] weighings, Mass step, double tau)
    {
        double s11 = 0, s12 = 0, s22 = 0, y1 = 0, y2 = 0, yy = 0, last = weighings[^1].Hours;
        foreach (Weighing w in weighings)
        {
            double sd = Sd(w, step), q = 1 / (sd * sd), e = Math.Exp(Math.Min((last - w.Hours) / tau, 50));
            s11 += q;
            s12 += q * e;
            s22 += q * e * e;
            y1 += q * w.Grams;
            y2 += q * w.Grams * e;
            yy += q * w.Grams * w.Grams;
        }
        double determinant = s11 * s22 - s12 * s12;
        if (!(determinant > 1e-9 * s11 * s22)) return null;
        double end = (s22 * y1 - s12 * y2) / determinant, left = (s11 * y2 - s12 * y1) / determinant;
        double chiSquare = Math.Max(yy - end * y1 - left * y2, 0);
        // With nothing assumed of the two masses the integral over them leaves the square root of the determinant.
        return new Fit(-0.5 * chiSquare - 0.5 * Math.Log(determinant), chiSquare, tau, end, Math.Sqrt(s22 / determinant), left, -s12 / s22);
    }

    private static Estimate Spread(List<(double Value, double Weight)> nodes)
    {
        (double Value, double Weight)[] sorted = [.. nodes.OrderBy(n => n.Value)];
        double sum = sorted.Sum(n => n.Weight);
        double[] values = [.. sorted.Select(n => n.Value)], weights = [.. sorted.Select(n => n.Weight / sum)];
        return new Estimate(At(0.5), At(0.05), At(0.95));

        double At(double q) => Distributions.WeightedQuantile(values, weights, q);
    }
}
