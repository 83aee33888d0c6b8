using Alumroot.Numerics;

namespace Alumroot.Permanence.Fading;

/// <summary>Fits a form to the readings of a series: least squares with the scatter within and between strips, large misses counting less.</summary>
/// <remarks>Levenberg and Marquardt (Marquardt 1963, from memory); generalised least squares with the covariance of each strip; Huber's weights (1964, from memory) against stray readings.</remarks>
internal sealed class CurveFitter
{
    private const int MostSteps = 60, Rounds = 3;
    private const double HuberReach = 2.0, LeastPoint = 0.02, RidgeOfLogs = 6;

    // What strips usually do, before these strips are seen; a reading's own strength against a handful of strips. Judgement, see docs/models/fading.md.
    private const double UsualRate = 0.08, UsualShare = 0.6;
    internal static readonly double[] Rates = [0, 0.03, 0.06, 0.1, 0.15, 0.22, 0.32];
    private static readonly double[] Shares = [0, 0.35, 0.7, 1.2, 2], Parts = [0.45, 0.6, 0.75, 0.9, 1.05, 1.25];

    private readonly double[][] _doses, _changes;
    private readonly SharedScatter? _shared;
    private readonly int _count;
    private readonly double _mostDose, _mostChange;

    /// <summary>Makes ready to fit a series.</summary>
    /// <param name="series">The series.</param>
    /// <param name="shared">What all series that were exposed and read together share; null when it is not known yet.</param>
    internal CurveFitter(FadingSeries series, SharedScatter? shared)
    {
        _shared = shared;
        FadingPoint[][] strips = [.. series.Strips.Select(s => s.Points.Where(p => p.DoseMegaluxHours > 0).ToArray()).Where(p => p.Length > 0)];
        _doses = [.. strips.Select(s => s.Select(p => p.DoseMegaluxHours).ToArray())];
        _changes = [.. strips.Select(s => s.Select(p => p.DeltaE).ToArray())];
        _count = strips.Sum(s => s.Length);
        _mostDose = series.MostDoseMegaluxHours;
        _mostChange = _changes.SelectMany(c => c).DefaultIfEmpty(0).Max();
    }

    internal int Count => _count;

    /// <summary>The best fit of one form; null when none settles.</summary>
    /// <param name="kind">The form.</param>
    /// <param name="lifted">Whether the lift near nothing is fitted too.</param>
    internal CurveFit? Fit(FadingFormKind kind, bool lifted)
    {
        int n = FadingForm.Count(kind) + (lifted ? 1 : 0);
        if (_count < n + 1) return null;
        var scatter = new StripScatter(1, 0, 0);
        double[]? best = null;
        double least = double.PositiveInfinity;
        foreach (double[] start in FadingForm.Starts(kind, _mostDose, _mostChange))
        {
            double[] p = lifted ? [.. start, Math.Log(0.3)] : start;
            double cost = Improve(kind, lifted, p, start, scatter, null);
            if (cost < least) (least, best) = (cost, p);
        }
        if (best is null || !double.IsFinite(least)) return null;
        double likelihood = 0;
        double[] anchor = [.. best];
        for (int round = 0; round < Rounds; round++)
        {
            (scatter, likelihood) = Scatter(kind, lifted, best);
            double[][] weights = Huber(kind, lifted, best, scatter.Point);
            Improve(kind, lifted, best, anchor, scatter, weights);
        }
        (scatter, likelihood) = Scatter(kind, lifted, best);
        if (Covariance(kind, lifted, best, scatter) is not { } covariance) return null;
        return new CurveFit(kind, best[..FadingForm.Count(kind)], lifted ? Math.Exp(best[^1]) : _shared?.Lift ?? 0, likelihood, n, covariance, scatter);
    }

    /// <summary>How well each rate of <see cref="Rates"/> suits a fit, as log likelihoods with the other scatters at their best.</summary>
    internal double[] RateProfile(CurveFit fit)
    {
        bool lifted = fit.Parameters > fit.Logs.Length;
        double[] p = lifted ? [.. fit.Logs, Math.Log(fit.Lift)] : fit.Logs;
        StripSums[] sums = [.. Enumerable.Range(0, _doses.Length).Select(s => Sums(fit.Kind, lifted, p, s))];
        double whole = Math.Max(LeastPoint, Math.Sqrt(sums.Sum(s => s.MissMiss) / Math.Max(1, _count - p.Length)));
        return [.. Rates.Select(rate => Shares.SelectMany(_ => Parts, (share, part) => Score(sums, new StripScatter(Math.Max(LeastPoint, part * whole), share * Math.Max(LeastPoint, part * whole), rate), p.Length).Score).Max())];
    }

    private double Mean(FadingFormKind kind, bool lifted, ReadOnlySpan<double> p, double dose)
    {
        double f = FadingForm.Value(kind, lifted ? p[..^1] : p, dose);
        double lift = lifted ? Math.Exp(Math.Clamp(p[^1], -20, 5)) : _shared?.Lift ?? 0;
        return lift == 0 ? f : Math.Sqrt(f * f + lift * lift);
    }

    /// <summary>Improves the parameters in place and gives the sum that was made small. Logarithms are held loosely to where they began, so that a flat direction does not run away.</summary>
    private double Improve(FadingFormKind kind, bool lifted, double[] p, double[] anchor, StripScatter scatter, double[][]? weights)
    {
        int n = p.Length;
        var normal = new double[n * n];
        var gradient = new double[n];
        var factored = new double[n * n];
        var step = new double[n];
        var trial = new double[n];
        double damping = 1e-2, cost = Assemble(kind, lifted, p, anchor, scatter, weights, normal, gradient);
        for (int i = 0; i < MostSteps && double.IsFinite(cost); i++)
        {
            normal.CopyTo(factored, 0);
            for (int k = 0; k < n; k++)
            {
                factored[k * n + k] += damping * (normal[k * n + k] + 1e-9);
                step[k] = -gradient[k];
            }
            if (!DenseCholesky.Factor(factored, n)) return double.PositiveInfinity;
            DenseCholesky.SolveLower(factored, step, n);
            DenseCholesky.SolveUpper(factored, step, n);
            for (int k = 0; k < n; k++) trial[k] = p[k] + Math.Clamp(step[k], -1.5, 1.5);
            double next = Cost(kind, lifted, trial, anchor, scatter, weights);
            if (next < cost)
            {
                bool settled = cost - next < 1e-9 * (1 + cost);
                trial.CopyTo(p, 0);
                damping = Math.Max(damping / 5, 1e-9);
                cost = Assemble(kind, lifted, p, anchor, scatter, weights, normal, gradient);
                if (settled) break;
            }
            else
            {
                damping *= 6;
                if (damping > 1e9) break;
            }
        }
        return cost;
    }

    private double Cost(FadingFormKind kind, bool lifted, double[] p, double[] anchor, StripScatter scatter, double[][]? weights)
    {
        double sum = 0;
        for (int s = 0; s < _doses.Length; s++)
        {
            int m = _doses[s].Length;
            var e = new double[m];
            for (int i = 0; i < m; i++) e[i] = (_changes[s][i] - Mean(kind, lifted, p, _doses[s][i])) * (weights?[s][i] ?? 1);
            double[] factor = StripFactor(kind, lifted, anchor, s, scatter);
            DenseCholesky.SolveLower(factor, e, m);
            foreach (double v in e) sum += v * v;
        }
        return sum + Ridge(p, anchor);
    }

    private static double Ridge(double[] p, double[] anchor)
    {
        double sum = 0;
        for (int k = 0; k < anchor.Length && k < p.Length; k++) sum += (p[k] - anchor[k]) * (p[k] - anchor[k]);
        return sum / (RidgeOfLogs * RidgeOfLogs);
    }

    private double Assemble(FadingFormKind kind, bool lifted, double[] p, double[] anchor, StripScatter scatter, double[][]? weights, double[] normal, double[] gradient)
    {
        int n = p.Length;
        Array.Clear(normal);
        Array.Clear(gradient);
        double sum = 0;
        var moved = (double[])p.Clone();
        for (int s = 0; s < _doses.Length; s++)
        {
            int m = _doses[s].Length;
            double[] factor = StripFactor(kind, lifted, anchor, s, scatter), e = new double[m];
            for (int i = 0; i < m; i++) e[i] = (_changes[s][i] - Mean(kind, lifted, p, _doses[s][i])) * (weights?[s][i] ?? 1);
            DenseCholesky.SolveLower(factor, e, m);
            var slopes = new double[n][];
            for (int k = 0; k < n; k++)
            {
                const double Step = 1e-5;
                slopes[k] = new double[m];
                moved[k] = p[k] + Step;
                for (int i = 0; i < m; i++) slopes[k][i] = Mean(kind, lifted, moved, _doses[s][i]);
                moved[k] = p[k] - Step;
                for (int i = 0; i < m; i++) slopes[k][i] = (slopes[k][i] - Mean(kind, lifted, moved, _doses[s][i])) / (2 * Step) * (weights?[s][i] ?? 1);
                moved[k] = p[k];
                DenseCholesky.SolveLower(factor, slopes[k], m);
            }
            for (int i = 0; i < m; i++)
            {
                sum += e[i] * e[i];
                for (int k = 0; k < n; k++)
                {
                    gradient[k] -= slopes[k][i] * e[i];
                    for (int j = 0; j <= k; j++) normal[k * n + j] += slopes[k][i] * slopes[j][i];
                }
            }
        }
        for (int k = 0; k < n; k++)
        {
            for (int j = k + 1; j < n; j++) normal[k * n + j] = normal[j * n + k];
            if (k >= anchor.Length) continue;
            normal[k * n + k] += 1 / (RidgeOfLogs * RidgeOfLogs);
            gradient[k] += (p[k] - anchor[k]) / (RidgeOfLogs * RidgeOfLogs);
        }
        return sum + Ridge(p, anchor);
    }

    /// <summary>Cholesky factor of the covariance of a strip's readings about the curve.</summary>
    private double[] StripFactor(FadingFormKind kind, bool lifted, double[] p, int strip, StripScatter scatter)
    {
        int m = _doses[strip].Length;
        var v = new double[m * m];
        var lean = new double[m];
        if (scatter.Rate > 0)
            for (int i = 0; i < m; i++) lean[i] = scatter.Rate * Lean(kind, lifted, p, _doses[strip][i]);
        for (int i = 0; i < m; i++)
        {
            for (int j = 0; j < m; j++) v[i * m + j] = scatter.Strip * scatter.Strip + lean[i] * lean[j];
            v[i * m + i] += scatter.Point * scatter.Point;
        }
        return DenseCholesky.Factor(v, m) ? v : throw new InvalidOperationException("A covariance with a positive diagonal has a factor.");
    }

    /// <summary>The scatter that suits the misses best, with a mild leaning to what is usual; and the likelihood of the readings with it.</summary>
    private (StripScatter Scatter, double LogLikelihood) Scatter(FadingFormKind kind, bool lifted, double[] p)
    {
        StripSums[] sums = [.. Enumerable.Range(0, _doses.Length).Select(s => Sums(kind, lifted, p, s))];
        double whole = Math.Max(LeastPoint, Math.Sqrt(sums.Sum(s => s.MissMiss) / Math.Max(1, _count - p.Length)));
        double best = double.NegativeInfinity, likelihood = double.NegativeInfinity;
        var found = new StripScatter(1, 0, 0);
        foreach (double rate in _shared is { } known ? [known.Rate] : Rates)
            foreach (double share in Shares)
                foreach (double part in Parts)
                {
                    double point = Math.Max(LeastPoint, part * whole);
                    var scatter = new StripScatter(point, share * point, rate);
                    (double score, double l) = Score(sums, scatter, p.Length);
                    if (_shared is null) score -= 0.5 * (rate / UsualRate) * (rate / UsualRate);
                    if (score > best) (best, likelihood, found) = (score, l, scatter);
                }
        return (found, likelihood);
    }

    /// <summary>The likelihood, and with it a half normal leaning of the strip's share; the count of parameters is given back to the scatter of a point.</summary>
    private static (double Score, double LogLikelihood) Score(StripSums[] sums, StripScatter scatter, int parameters)
    {
        double l = 0, share = scatter.Strip / scatter.Point;
        foreach (StripSums s in sums) l += s.LogLikelihood(scatter);
        return (l - 0.5 * (share / UsualShare) * (share / UsualShare) + parameters * Math.Log(scatter.Point), l);
    }

    private StripSums Sums(FadingFormKind kind, bool lifted, double[] p, int strip)
    {
        double missMiss = 0, miss = 0, missLean = 0, lean = 0, leanLean = 0;
        for (int i = 0; i < _doses[strip].Length; i++)
        {
            double dose = _doses[strip][i], e = _changes[strip][i] - Mean(kind, lifted, p, dose), g = Lean(kind, lifted, p, dose);
            missMiss += e * e;
            miss += e;
            missLean += e * g;
            lean += g;
            leanLean += g * g;
        }
        return new StripSums(_doses[strip].Length, missMiss, miss, missLean, lean, leanLean);
    }

    /// <summary>How much the difference grows when the logarithm of the dose does.</summary>
    private double Lean(FadingFormKind kind, bool lifted, ReadOnlySpan<double> p, double dose) => (Mean(kind, lifted, p, dose * 1.01) - Mean(kind, lifted, p, dose / 1.01)) / (2 * Math.Log(1.01));

    /// <summary>What a strip's misses and its leanings add up to, from which the likelihood for any scatter follows without a matrix (Woodbury, for two shared directions).</summary>
    private readonly record struct StripSums(int Count, double MissMiss, double Miss, double MissLean, double Lean, double LeanLean)
    {
        internal double LogLikelihood(StripScatter scatter)
        {
            double v = scatter.Point * scatter.Point, a = scatter.Strip * scatter.Strip / v, b = scatter.Rate * scatter.Rate / v;
            // I + U'U with U = [root a 1, root b lean]: two by two.
            double m11 = 1 + a * Count, m22 = 1 + b * LeanLean, m12 = Math.Sqrt(a * b) * Lean, det = m11 * m22 - m12 * m12;
            double u1 = Math.Sqrt(a) * Miss, u2 = Math.Sqrt(b) * MissLean;
            double square = (MissMiss - (m22 * u1 * u1 - 2 * m12 * u1 * u2 + m11 * u2 * u2) / det) / v;
            return -0.5 * square - 0.5 * Math.Log(det) - Count * Math.Log(scatter.Point);
        }
    }

    private double[][] Huber(FadingFormKind kind, bool lifted, double[] p, double point)
    {
        var weights = new double[_doses.Length][];
        for (int s = 0; s < _doses.Length; s++)
        {
            // What the whole strip shares is not a stray reading.
            double[] misses = [.. _doses[s].Select((d, i) => _changes[s][i] - Mean(kind, lifted, p, d))];
            double middle = Distributions.SortedQuantile([.. misses.Order()], 0.5);
            weights[s] = [.. misses.Select(m => Math.Abs(m - middle) / point is var u && u > 2 * HuberReach ? Math.Sqrt(2 * HuberReach / u) : 1.0)];
        }
        return weights;
    }

    private double[]? Covariance(FadingFormKind kind, bool lifted, double[] p, StripScatter scatter)
    {
        int n = p.Length;
        var normal = new double[n * n];
        Assemble(kind, lifted, p, p, scatter, null, normal, new double[n]);
        if (!DenseCholesky.Factor(normal, n)) return null;
        var inverse = new double[n * n];
        DenseCholesky.Inverse(normal, inverse, n);
        return inverse;
    }
}
