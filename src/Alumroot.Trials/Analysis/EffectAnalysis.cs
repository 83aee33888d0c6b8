using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Trials.Analysis;

/// <summary>Effects of the factors on a response by least squares. Pure.</summary>
/// <remarks>Formulas, sources and limits: docs/models/trials.md.</remarks>
public static class EffectAnalysis
{
    private const double Sure90 = 0.95;

    // With fewer left over the scatter is hardly known by them; the effects themselves need at least so many (Lenth 1989 uses seven and more).
    private const int EnoughFree = 3, LeastEffects = 6;

    // An alias smaller than this part of a column moves an effect less than its span.
    private const double AliasShare = 0.1;

    /// <summary>Analyses one response.</summary>
    /// <param name="data">What was set.</param>
    /// <param name="response">What came of it.</param>
    /// <param name="products">Whether the effect of one factor may hang on the setting of another.</param>
    /// <exception cref="ArgumentException">Fewer than two jars have the response.</exception>
    public static ResponseFound Of(TrialData data, Response response, bool products = true)
    {
        ArgumentNullException.ThrowIfNull(data);
        ArgumentNullException.ThrowIfNull(response);
        int[] rows = [.. Enumerable.Range(0, data.Count).Where(i => double.IsFinite(response.Values[i]))];
        if (rows.Length < 2) throw new ArgumentException("fewer than two jars have the response", nameof(response));
        double centre = response.IsAngle ? Angles.Mean(rows.Select(i => response.Values[i])) : 0;
        double[] y = [.. rows.Select(i => response.IsAngle ? Angles.Turned(response.Values[i] - centre) : response.Values[i])];
        EffectColumns columns = EffectColumns.Of(data, rows, products);
        var fit = new OrderedLeastSquares([.. columns.All.Select(c => c.Values)]);

        int free = rows.Length - fit.Kept.Count;
        (double pureSum, int pureFree) = Pure(data, rows, y);
        double restSum = Squares(fit.Rest(y));
        (double? scatter, ScatterFrom from, double freedom) = Scatter(fit, columns, y, restSum, free, pureSum, pureFree);
        bool lacks = from == ScatterFrom.Replicates && free > pureFree && pureSum > 0 && Distributions.FisherTail((restSum - pureSum) / (free - pureFree) / (pureSum / pureFree), free - pureFree, pureFree) < 0.05;
        double t = scatter is null ? double.NaN : Distributions.StudentQuantile(Sure90, freedom);
        double[] b = fit.Solve(y);

        var effects = new List<Effect>();
        foreach (EffectTerm term in columns.Terms)
        {
            double[] weights = new double[fit.Kept.Count];
            bool held = false;
            foreach ((int column, double weight) in term.Weights)
            {
                int at = IndexOf(fit.Kept, column);
                if (at < 0) held = true;
                else weights[at] = weight;
            }
            if (held) continue;
            double change = Dot(weights, b), half = scatter is { } one ? t * one * Math.Sqrt(fit.VarianceOf(weights)) : double.PositiveInfinity;
            effects.Add(new Effect(term.Factors, term.Setting, new Estimate(change, change - half, change + half), Math.Abs(change) > half ? Verdict.Sure : Verdict.CannotTell, SameAs(term, columns, fit)) { Ends = term.Ends, IsBend = term.IsBend });
        }
        double[] mean = new double[fit.Kept.Count];
        mean[0] = 1;
        double meanHalf = scatter is { } sd ? t * sd * Math.Sqrt(fit.VarianceOf(mean)) : double.PositiveInfinity;
        double middle = response.IsAngle ? Angles.Positive(b[0] + centre) : b[0];
        return new ResponseFound(response.Name, new Estimate(middle, middle - meanHalf, middle + meanHalf), effects, scatter, from, freedom, rows.Length, columns.LeftOut) { LacksFit = lacks };
    }

    private static (double?, ScatterFrom, double) Scatter(OrderedLeastSquares fit, EffectColumns columns, double[] y, double restSum, int free, double pureSum, int pureFree)
    {
        if (pureFree >= 3) return (Math.Sqrt(pureSum / pureFree), ScatterFrom.Replicates, pureFree);
        if (free >= EnoughFree) return (Math.Sqrt(restSum / free), ScatterFrom.Rest, free);
        // Little or nothing is left over: the effects themselves tell, if there are enough of them and all are known equally well.
        double[] b = fit.Solve(y), all = [.. b.Skip(1 + columns.BlockColumns).Select(Math.Abs)], variances = [.. Enumerable.Range(1 + columns.BlockColumns, all.Length).Select(i => fit.VarianceOf(Unit(b.Length, i)))];
        if (all.Length >= LeastEffects && variances.Max() < 1.01 * variances.Min())
        {
            double first = 1.5 * Median(all), pseudo = 1.5 * Median([.. all.Where(a => a < 2.5 * first)]);
            if (pseudo > 0) return (pseudo / Math.Sqrt(variances[0]), ScatterFrom.SmallEffects, all.Length / 3.0);
        }
        return free >= 1 ? (Math.Sqrt(restSum / free), ScatterFrom.Rest, free) : (null, ScatterFrom.Nowhere, 0);
    }

    private static double[] Unit(int length, int at)
    {
        double[] e = new double[length];
        e[at] = 1;
        return e;
    }

    /// <summary>Scatter between jars of the same block with the same settings.</summary>
    private static (double Sum, int Free) Pure(TrialData data, int[] rows, double[] y)
    {
        double sum = 0;
        int free = 0;
        foreach (IGrouping<string, int> alike in Enumerable.Range(0, rows.Length).GroupBy(i => string.Join('\u001f', data.Factors.Select(f => f.IsMeasured ? f.Numbers![rows[i]].ToString("R", System.Globalization.CultureInfo.InvariantCulture) : f.Names[rows[i]])) + '\u001f' + data.Blocks?[rows[i]], StringComparer.Ordinal))
        {
            double mean = alike.Average(i => y[i]);
            sum += alike.Sum(i => (y[i] - mean) * (y[i] - mean));
            free += alike.Count() - 1;
        }
        return (sum, free);
    }

    private static string[] SameAs(EffectTerm term, EffectColumns columns, OrderedLeastSquares fit)
    {
        var names = new List<string>();
        foreach ((int held, double[] parts) in fit.Held)
        {
            bool mixed = term.Weights.Any(w => IndexOf(fit.Kept, w.Column) is >= 0 and var at && at < parts.Length && Math.Abs(parts[at]) > AliasShare);
            if (mixed) names.Add(columns.All[held].Name);
        }
        return [.. names.Distinct(StringComparer.Ordinal)];
    }

    private static int IndexOf(IReadOnlyList<int> kept, int column)
    {
        for (int i = 0; i < kept.Count; i++) if (kept[i] == column) return i;
        return -1;
    }

    private static double Median(double[] values) => values.Length == 0 ? 0 : values.Order().ToArray() is var sorted && sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : 0.5 * (sorted[sorted.Length / 2 - 1] + sorted[sorted.Length / 2]);

    private static double Squares(double[] values) => values.Sum(v => v * v);

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();
}
