using Alumroot.Numerics;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>How readings stray together: each by itself, and all with the slow wave by which the model leaves the truth.</summary>
/// <remarks>
/// The wave is a Gaussian process with exponential correlation along the addition. Without it ten readings close together would count as ten witnesses of a
/// model that is off there by the same amount.
/// </remarks>
internal sealed class ReadingWave
{
    private readonly double[] _lower, _toNow;
    private readonly int _n;

    internal ReadingWave(IReadOnlyList<BenchReading> readings, double now)
    {
        _n = readings.Count;
        _lower = new double[_n * _n];
        _toNow = new double[_n];
        for (int i = 0; i < _n; i++)
        {
            BenchReading a = readings[i];
            for (int j = 0; j <= i; j++)
            {
                double wave = a.IsPh && readings[j].IsPh ? Variance * ReadingNoise.WaveCorrelation(a.Place - readings[j].Place) : 0;
                _lower[i * _n + j] = wave + (i == j ? a.Sd * a.Sd : 0);
            }
            _toNow[i] = a.IsPh ? Variance * ReadingNoise.WaveCorrelation(a.Place - now) : 0;
        }
        if (!DenseCholesky.Factor(_lower, _n)) throw new InvalidOperationException("The covariance of the readings is not positive definite.");
        double[] row = [.. _toNow];
        DenseCholesky.SolveLower(_lower, row, _n);
        SdNow = Math.Sqrt(Math.Max(Variance - row.Sum(v => v * v), 0));
    }

    private static double Variance => ReadingNoise.ModelWaveSd * ReadingNoise.ModelWaveSd;

    /// <summary>What the readings leave open of the wave where the bath stands now, in pH.</summary>
    internal double SdNow { get; }

    /// <summary>Makes distances independent of each other, each with a standard deviation of one.</summary>
    internal void Whiten(Span<double> distances) => DenseCholesky.SolveLower(_lower, distances, _n);

    /// <summary>What the readings say of the wave where the bath stands now, from their distances to the computed path.</summary>
    internal double Now(ReadOnlySpan<double> distances)
    {
        Span<double> w = stackalloc double[_n];
        distances.CopyTo(w);
        DenseCholesky.SolveLower(_lower, w, _n);
        DenseCholesky.SolveUpper(_lower, w, _n);
        double sum = 0;
        for (int i = 0; i < _n; i++) sum += w[i] * _toNow[i];
        return sum;
    }
}
