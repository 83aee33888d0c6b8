using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Trials.Ladder;

/// <summary>One liquor at several pH: how many forms the dye has, at which pH one turns into the next, what colour each has. Pure and reproducible.</summary>
/// <remarks>Formulas, sources and limits: docs/models/ladder.md.</remarks>
public static class LadderAnalysis
{
    /// <summary>The least number of jars.</summary>
    public const int LeastJars = 5;

    /// <summary>More forms than this are not told apart by a row of jars.</summary>
    public const int MostForms = 4;

    // A form more must lower the miss of left-out jars by this part, or it is not believed.
    private const double WorthIt = 0.15;

    // No reading is better than this part of its signal, so misses below it are alike.
    private const double Finest = 1e-3;

    private const int Draws = 200;
    private const double Sure90 = 0.95, FreedomPerBand = 3;

    /// <summary>Fits the ladder.</summary>
    /// <param name="ph">The pH of each jar.</param>
    /// <param name="signals">Of each jar as many signals that add up by shares, such as absorbances.</param>
    /// <param name="readingSdPh">How far the strip or meter may be off for the whole row, one standard deviation.</param>
    /// <param name="forms">How many forms; null to let the jars decide.</param>
    /// <returns>Null when there are too few jars.</returns>
    public static LadderFound? Fit(IReadOnlyList<double> ph, IReadOnlyList<double[]> signals, double readingSdPh, int? forms = null)
    {
        ArgumentNullException.ThrowIfNull(ph);
        ArgumentNullException.ThrowIfNull(signals);
        if (ph.Distinct().Count() < LeastJars) return null;
        int[] order = [.. Enumerable.Range(0, ph.Count).OrderBy(i => ph[i])];
        double[] p = [.. order.Select(i => ph[i])];
        double[][] y = [.. order.Select(i => signals[i])];
        int most = Math.Clamp((p.Distinct().Count() - 1) / 2, 1, MostForms);
        var tried = new List<LadderTrial>();
        LadderFit? best = null;
        double finest = Finest * Math.Sqrt(y.SelectMany(s => s).Average(s => s * s));
        foreach (int count in forms is { } given ? [given] : Enumerable.Range(1, most))
        {
            if (LadderFit.Of(p, y, count - 1) is not { } fit) break;
            var trial = new LadderTrial(count, LeftOut(p, y, count - 1), Math.Sqrt(fit.SumOfSquares / p.Length / y[0].Length));
            if (best is null || Math.Max(trial.LeftOutRms, finest) < (1 - WorthIt) * tried.Min(t => Math.Max(t.LeftOutRms, finest))) best = fit;
            tried.Add(trial);
        }
        return best is null ? null : Found(best, p, y, tried, readingSdPh);
    }

    /// <summary>How far jars lie from a fit of the others; the first and last pH are not asked for, since nothing stands beyond them.</summary>
    private static double LeftOut(double[] ph, double[][] y, int steps)
    {
        double sum = 0;
        int count = 0;
        for (int at = 0; at < ph.Length; at++)
        {
            if (ph[at] == ph[0] || ph[at] == ph[^1]) continue;
            int[] others = [.. Enumerable.Range(0, ph.Length).Where(i => i != at)];
            if (LadderFit.Of([.. others.Select(i => ph[i])], [.. others.Select(i => y[i])], steps) is not { } fit) return double.PositiveInfinity;
            double[] shares = new double[steps + 1];
            AcidForms.Shares(ph[at], fit.Pka, shares);
            for (int s = 0; s < y[at].Length; s++)
            {
                double miss = y[at][s];
                for (int f = 0; f < shares.Length; f++) miss -= shares[f] * fit.Forms[f][s];
                sum += miss * miss;
                count++;
            }
        }
        return count == 0 ? double.PositiveInfinity : Math.Sqrt(sum / count);
    }

    private static LadderFound Found(LadderFit fit, double[] ph, double[][] y, IReadOnlyList<LadderTrial> tried, double readingSdPh)
    {
        int n = ph.Length, m = y[0].Length, k = fit.Pka.Length;
        // Neighbouring wavelengths err together, so at most three signals count as free ones.
        double bands = Math.Min(m, FreedomPerBand), freedom = Math.Max(1, n * bands - k - (k + 1) * bands), variance = fit.SumOfSquares / m * bands / freedom;
        double[] lower = Covariance(fit, k, variance, m / bands);
        double t = Distributions.StudentQuantile(Sure90, freedom);
        LadderStep[] steps =
        [
            .. fit.Pka.Select((p, i) =>
            {
                double own = 0;
                for (int j = 0; j <= i; j++) own += lower[i * k + j] * lower[i * k + j];
                double half = Math.Sqrt(t * t * own + Math.Pow(Distributions.NormalHalfWidth90 * readingSdPh, 2));
                return new LadderStep(new Estimate(p, p - half, p + half), ph.Any(x => x < p) && ph.Any(x => x > p));
            }),
        ];
        return new LadderFound(steps, fit.Forms, tried, Math.Sqrt(fit.SumOfSquares / n / m), (ph[0], ph[^1]), Worlds(fit, lower, variance, freedom, m, readingSdPh));
    }

    /// <summary>The lower factor of the covariance of the pKa, by the slopes.</summary>
    private static double[] Covariance(LadderFit fit, int k, double variance, double alike)
    {
        if (k == 0) return [];
        double[][] slopes = fit.Slopes();
        double[] normal = new double[k * k], covariance = new double[k * k];
        for (int i = 0; i < k; i++)
            for (int j = 0; j <= i; j++) normal[i * k + j] = slopes[i].Zip(slopes[j], (a, b) => a * b).Sum() / alike + (i == j ? 1e-12 : 0);
        if (!DenseCholesky.Factor(normal, k)) return covariance;
        DenseCholesky.Inverse(normal, covariance, k);
        for (int i = 0; i < k * k; i++) covariance[i] = variance * covariance[i] + (i % (k + 1) == 0 ? 1e-10 : 0);
        return DenseCholesky.Factor(covariance, k) ? covariance : new double[k * k];
    }

    // Worlds that explain the jars about equally well: other pKa, the forms that follow from them, and the scatter of the forms.
    private static (double[] Pka, double[][] Forms)[] Worlds(LadderFit fit, double[] lower, double variance, double freedom, int m, double readingSdPh)
    {
        var random = new SeededRandom(20261127);
        int k = fit.Pka.Length;
        double spread = Distributions.StudentQuantile(Sure90, freedom) / Distributions.NormalHalfWidth90, sd = spread * Math.Sqrt(variance);
        return
        [
            .. Enumerable.Range(0, Draws).Select(_ =>
            {
                double[] z = [.. Enumerable.Range(0, k).Select(_ => spread * random.NextNormal())], pka = new double[k];
                double shift = readingSdPh * random.NextNormal();
                for (int i = 0; i < k; i++)
                {
                    pka[i] = fit.Pka[i];
                    for (int j = 0; j <= i; j++) pka[i] += lower[i * k + j] * z[j];
                }
                Array.Sort(pka);
                (double[][] forms, OrderedLeastSquares columns) = fit.FormsFor(pka);
                double[] one = new double[columns.Kept.Count];
                for (int f = 0; f < one.Length; f++)
                {
                    Array.Clear(one);
                    one[f] = 1;
                    double own = sd * Math.Sqrt(columns.VarianceOf(one));
                    for (int s = 0; s < m; s++) forms[columns.Kept[f]][s] += own * random.NextNormal();
                }
                // A strip that is off shifts every step alike; the colours stay with their jars.
                for (int i = 0; i < k; i++) pka[i] += shift;
                return (pka, forms);
            }),
        ];
    }
}
