using Alumroot.Numerics;

namespace Alumroot.Trials.Design;

/// <summary>Chooses jars so that the effects are known best: the determinant of the information is made as large as exchanges of one jar can make it.</summary>
/// <remarks>Fedorov 1972, Theory of optimal experiments (from memory), from several random starts; a jar may stand more than once.</remarks>
internal sealed class BestSearch(double[][] rows, int jars, ulong seed)
{
    private const int Starts = 12, MostSweeps = 60;

    // Keeps the matrix invertible while the first jars are gathered; far below one jar's weight.
    private const double Ridge = 1e-6, Enough = 1e-9;

    private readonly int _p = rows[0].Length;

    /// <summary>Indices of the chosen rows and ln det of their information; null when no choice can tell all effects apart.</summary>
    public (int[] Chosen, double LogDet)? Run()
    {
        var random = new SeededRandom(seed);
        (int[] Chosen, double LogDet)? best = null;
        for (int start = 0; start < Starts; start++)
        {
            int[] chosen = Improve([.. Enumerable.Range(0, jars).Select(_ => random.NextBelow(rows.Length))]);
            double logDet = LogDet(chosen, 0);
            if (double.IsFinite(logDet) && (best is null || logDet > best.Value.LogDet + Enough)) best = (chosen, logDet);
        }
        return best;
    }

    private int[] Improve(int[] chosen)
    {
        double[] inverse = Inverse(chosen);
        for (int sweep = 0; sweep < MostSweeps; sweep++)
        {
            bool moved = false;
            for (int at = 0; at < chosen.Length; at++)
            {
                double[] old = rows[chosen[at]], v = Times(inverse, old);
                double dOld = Dot(old, v), gain = Enough;
                int better = -1;
                for (int c = 0; c < rows.Length; c++)
                {
                    if (c == chosen[at]) continue;
                    double dNew = Dot(rows[c], Times(inverse, rows[c])), both = Dot(rows[c], v);
                    // Ratio of the determinants after the exchange, less one.
                    double change = dNew - dOld - dNew * dOld + both * both;
                    if (change > gain) (gain, better) = (change, c);
                }
                if (better < 0) continue;
                chosen[at] = better;
                inverse = Inverse(chosen);
                moved = true;
            }
            if (!moved) break;
        }
        return chosen;
    }

    private double[] Information(int[] chosen, double ridge)
    {
        double[] m = new double[_p * _p];
        foreach (int c in chosen)
            for (int i = 0; i < _p; i++)
                for (int j = 0; j <= i; j++) m[i * _p + j] += rows[c][i] * rows[c][j];
        for (int i = 0; i < _p; i++) m[i * _p + i] += ridge;
        return m;
    }

    private double LogDet(int[] chosen, double ridge)
    {
        double[] m = Information(chosen, ridge);
        if (!DenseCholesky.Factor(m, _p)) return double.NegativeInfinity;
        double sum = 0;
        for (int i = 0; i < _p; i++)
        {
            if (m[i * _p + i] < 1e-6) return double.NegativeInfinity;
            sum += 2 * Math.Log(m[i * _p + i]);
        }
        return sum;
    }

    private double[] Inverse(int[] chosen)
    {
        double[] lower = Information(chosen, Ridge), inverse = new double[_p * _p];
        DenseCholesky.Factor(lower, _p);
        DenseCholesky.Inverse(lower, inverse, _p);
        return inverse;
    }

    private double[] Times(double[] matrix, double[] x)
    {
        double[] y = new double[_p];
        for (int i = 0; i < _p; i++) y[i] = Dot(matrix.AsSpan(i * _p, _p), x);
        return y;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double s = 0;
        for (int i = 0; i < a.Length; i++) s += a[i] * b[i];
        return s;
    }
}
