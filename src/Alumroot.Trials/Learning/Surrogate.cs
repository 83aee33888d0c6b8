using Alumroot.Numerics;

namespace Alumroot.Trials.Learning;

/// <summary>What is believed of one response between the recipes that were tried: a Gaussian process.</summary>
/// <remarks>
/// Kernel: variance times Matérn 5/2 over the measured factors, each with a length of its own, times exp(-theta) for each named factor that differs; a noise of its own beside the known
/// variance of each reading (Rasmussen and Williams 2006, Gaussian Processes for Machine Learning, chapters 4 and 5; from memory). The hyperparameters have wide priors, so that five
/// batches suffice; docs/models/trials.md.
/// </remarks>
internal sealed class Surrogate
{
    private const double Sqrt5 = 2.23606797749979, Jitter = 1e-8;

    // Priors of ln: variance, lengths and thetas, noise (our choice).
    private static readonly (double Middle, double Sd) VariancePrior = (0, 0.8), LengthPrior = (-0.4, 0.9), NamedPrior = (-0.2, 1.0), NoisePrior = (-3, 1.4);

    private readonly Recipe[] _rows;
    private readonly double[] _known, _scaled, _hyper;
    private readonly double[] _lower, _alpha;
    private readonly double _mean, _sd;
    private readonly int _measured, _named;

    private Surrogate(Recipe[] rows, double[] y, double[] knownVariance, double[] hyper, double mean, double sd)
    {
        (_rows, _known, _hyper, _mean, _sd) = (rows, knownVariance, hyper, mean, sd);
        (_measured, _named) = (rows[0].Measured.Length, rows[0].Named.Length);
        _scaled = y;
        _lower = Covariance(hyper);
        DenseCholesky.Factor(_lower, rows.Length);
        _alpha = [.. y];
        DenseCholesky.SolveLower(_lower, _alpha, rows.Length);
        DenseCholesky.SolveUpper(_lower, _alpha, rows.Length);
    }

    /// <summary>ln of variance, lengths, thetas, noise, for values scaled to a standard deviation of 1.</summary>
    public IReadOnlyList<double> Hyper => _hyper;

    /// <summary>The standard deviation of one more reading of the same recipe, beside its known part.</summary>
    public double NoiseSd => Widening * _sd * Math.Sqrt(Math.Exp(_hyper[^1]));

    /// <summary>How much wider the spans are made because the hyperparameters are themselves only estimated: a part for each of them among the rows.</summary>
    public double Widening => Math.Sqrt(1 + _hyper.Length / (double)_rows.Length);

    /// <summary>Learns from rows.</summary>
    /// <param name="rows">Two or more.</param>
    /// <param name="values">What was measured.</param>
    /// <param name="variances">The known variance of each reading; zeros when none is known.</param>
    /// <param name="learnFrom">Rows from which the hyperparameters are learned; null for all.</param>
    public static Surrogate Of(Recipe[] rows, double[] values, double[] variances, int[]? learnFrom = null)
    {
        double mean = values.Average(), sd = Math.Sqrt(values.Average(v => (v - mean) * (v - mean)));
        if (!(sd > 0)) sd = 1;
        double[] y = [.. values.Select(v => (v - mean) / sd)], known = [.. variances.Select(v => v / sd / sd)];
        double[] start = Start(rows[0]);
        Surrogate few = learnFrom is null ? new Surrogate(rows, y, known, start, mean, sd)
            : new Surrogate([.. learnFrom.Select(i => rows[i])], [.. learnFrom.Select(i => y[i])], [.. learnFrom.Select(i => known[i])], start, mean, sd);
        double[]? best = null;
        double least = double.PositiveInfinity;
        foreach (double shift in new[] { 0.0, -1.0 })
        {
            double[] from = [.. start];
            for (int i = 1; i <= rows[0].Measured.Length; i++) from[i] += shift;
            (double[] place, double value) = QuasiNewton.Minimise(few.Cost, from);
            if (value < least) (best, least) = (place, value);
        }
        return new Surrogate(rows, y, known, best ?? start, mean, sd);
    }

    /// <summary>Mean and standard deviation of the response itself, without the noise of reading it.</summary>
    public (double Mean, double Sd) At(Recipe recipe)
    {
        int n = _rows.Length;
        double[] k = new double[n];
        double mean = 0;
        for (int i = 0; i < n; i++) mean += _alpha[i] * (k[i] = Kernel(_hyper, recipe, _rows[i]));
        DenseCholesky.SolveLower(_lower, k, n);
        double variance = Math.Exp(_hyper[0]);
        for (int i = 0; i < n; i++) variance -= k[i] * k[i];
        return (_mean + _sd * mean, Widening * _sd * Math.Sqrt(Math.Max(variance, 0)));
    }

    /// <summary>Each row foretold from all others: mean and standard deviation of its reading.</summary>
    public IReadOnlyList<(double Mean, double Sd)> LeftOut()
    {
        int n = _rows.Length;
        double[] inverse = Inverse(_lower, n);
        return [.. Enumerable.Range(0, n).Select(i => (_mean + _sd * (_scaled[i] - _alpha[i] / inverse[i * n + i]), Widening * _sd / Math.Sqrt(inverse[i * n + i])))];
    }

    /// <summary>Minus ln of likelihood and priors, with its slopes.</summary>
    internal double Cost(ReadOnlySpan<double> hyper, Span<double> slopes)
    {
        int n = _rows.Length, p = hyper.Length;
        foreach (double h in hyper) if (Math.Abs(h) > 12) return double.PositiveInfinity;
        double[] at = hyper.ToArray(), lower = Covariance(at);
        if (!DenseCholesky.Factor(lower, n)) return double.PositiveInfinity;
        double[] alpha = [.. _scaled];
        DenseCholesky.SolveLower(lower, alpha, n);
        double cost = 0.5 * n * Math.Log(2 * Math.PI);
        for (int i = 0; i < n; i++) cost += 0.5 * alpha[i] * alpha[i] + Math.Log(lower[i * n + i]);
        DenseCholesky.SolveUpper(lower, alpha, n);
        double[] inverse = Inverse(lower, n), sums = new double[p], parts = new double[p];
        for (int i = 0; i < n; i++)
            for (int j = 0; j <= i; j++)
            {
                double weight = (i == j ? 0.5 : 1) * (inverse[i * n + j] - alpha[i] * alpha[j]);
                KernelSlopes(at, _rows[i], _rows[j], parts);
                if (i == j) parts[p - 1] = Math.Exp(at[p - 1]);
                for (int h = 0; h < p; h++) sums[h] += weight * parts[h];
                parts[p - 1] = 0;
            }
        for (int h = 0; h < p; h++)
        {
            (double middle, double sd) = Prior(h);
            double z = (at[h] - middle) / sd;
            cost += 0.5 * z * z;
            slopes[h] = sums[h] + z / sd;
        }
        return cost;
    }

    private (double Middle, double Sd) Prior(int h) => h == 0 ? VariancePrior : h <= _measured ? LengthPrior : h <= _measured + _named ? NamedPrior : NoisePrior;

    private static double[] Start(Recipe shape) =>
        [VariancePrior.Middle, .. shape.Measured.Select(_ => LengthPrior.Middle), .. shape.Named.Select(_ => NamedPrior.Middle), NoisePrior.Middle];

    private double[] Covariance(double[] hyper)
    {
        int n = _rows.Length;
        double[] k = new double[n * n];
        double noise = Math.Exp(hyper[^1]);
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < i; j++) k[i * n + j] = Kernel(hyper, _rows[i], _rows[j]);
            k[i * n + i] = Math.Exp(hyper[0]) + noise + _known[i] + Jitter;
        }
        return k;
    }

    private double Kernel(double[] hyper, Recipe a, Recipe b)
    {
        double r2 = 0, named = 0;
        for (int d = 0; d < _measured; d++)
        {
            double x = (a.Measured[d] - b.Measured[d]) * Math.Exp(-hyper[1 + d]);
            r2 += x * x;
        }
        for (int d = 0; d < _named; d++) if (a.Named[d] != b.Named[d]) named += Math.Exp(hyper[1 + _measured + d]);
        double r = Sqrt5 * Math.Sqrt(r2);
        return Math.Exp(hyper[0] - r - named) * (1 + r + r * r / 3);
    }

    private void KernelSlopes(double[] hyper, Recipe a, Recipe b, double[] slopes)
    {
        double r2 = 0, named = 0;
        for (int d = 0; d < _measured; d++)
        {
            double x = (a.Measured[d] - b.Measured[d]) * Math.Exp(-hyper[1 + d]);
            slopes[1 + d] = x * x;
            r2 += x * x;
        }
        for (int d = 0; d < _named; d++)
        {
            double theta = Math.Exp(hyper[1 + _measured + d]);
            bool differs = a.Named[d] != b.Named[d];
            slopes[1 + _measured + d] = differs ? -theta : 0;
            if (differs) named += theta;
        }
        double r = Sqrt5 * Math.Sqrt(r2), front = Math.Exp(hyper[0] - r - named), k = front * (1 + r + r * r / 3);
        slopes[0] = k;
        for (int d = 0; d < _measured; d++) slopes[1 + d] *= front * 5.0 / 3 * (1 + r);
        for (int d = 0; d < _named; d++) slopes[1 + _measured + d] *= k;
    }

    private static double[] Inverse(double[] lower, int n)
    {
        double[] inverse = new double[n * n];
        DenseCholesky.Inverse(lower, inverse, n);
        return inverse;
    }
}
