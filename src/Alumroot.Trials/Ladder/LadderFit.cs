using Alumroot.Numerics;

namespace Alumroot.Trials.Ladder;

/// <summary>Fits a given number of steps to all signals at once: the pKa are searched, the colours of the forms follow by least squares.</summary>
/// <remarks>Variable projection (Golub and Pereyra 1973, SIAM J. Numer. Anal. 10; from memory), from every start of a grid.</remarks>
internal sealed class LadderFit
{
    private const double GridStepPh = 0.5, Outside = 1, LeastApart = 0.05, Probe = 1e-4;
    private const int MostSteps = 40;

    private readonly double[] _ph;
    private readonly double[][] _signals;

    private LadderFit(double[] ph, double[][] signals) => (_ph, _signals) = (ph, signals);

    public double[] Pka { get; private set; } = [];

    /// <summary>Signals of the forms.</summary>
    public double[][] Forms { get; private set; } = [];

    public double SumOfSquares { get; private set; } = double.PositiveInfinity;

    /// <summary>The misses, jar by jar, signal by signal.</summary>
    public double[] Misses { get; private set; } = [];

    /// <summary>The best fit with so many steps; null when the jars are too few or no start leads anywhere.</summary>
    public static LadderFit? Of(double[] ph, double[][] signals, int steps)
    {
        if (ph.Length < steps + 2) return null;
        var fit = new LadderFit(ph, signals);
        double low = ph.Min() - Outside, high = ph.Max() + Outside;
        double[] grid = [.. Enumerable.Range(0, (int)((high - low) / GridStepPh) + 1).Select(i => low + i * GridStepPh)];
        foreach (double[] start in Choices(grid, 0, steps).Select(c => (Pka: c, fit.Project(c).Sum)).OrderBy(c => c.Sum).Take(3).Select(c => c.Pka).ToArray()) fit.Refine(start, low, high);
        return double.IsFinite(fit.SumOfSquares) ? fit : null;
    }

    /// <summary>How the misses move with each pKa.</summary>
    public double[][] Slopes() => [.. Enumerable.Range(0, Pka.Length).Select(i => Slope(Pka, Misses, i))];

    /// <summary>The forms for other pKa, and the factor of their columns.</summary>
    public (double[][] Forms, OrderedLeastSquares Columns) FormsFor(double[] pka)
    {
        OrderedLeastSquares columns = Columns(pka);
        return (Solve(columns, pka.Length + 1), columns);
    }

    private void Refine(double[] start, double low, double high)
    {
        double[] pka = [.. start];
        (double sum, double[] misses) = Project(pka);
        double damp = 1e-3;
        for (int step = 0; step < MostSteps && pka.Length > 0; step++)
        {
            double[][] slopes = [.. Enumerable.Range(0, pka.Length).Select(i => Slope(pka, misses, i))];
            int n = pka.Length;
            double[] normal = new double[n * n], move = new double[n];
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j <= i; j++) normal[i * n + j] = Dot(slopes[i], slopes[j]);
                move[i] = -Dot(slopes[i], misses);
            }
            for (int i = 0; i < n; i++) normal[i * n + i] = normal[i * n + i] * (1 + damp) + 1e-14;
            if (!DenseCholesky.Factor(normal, n)) break;
            DenseCholesky.SolveLower(normal, move, n);
            DenseCholesky.SolveUpper(normal, move, n);
            double[] next = [.. pka.Zip(move, (p, m) => Math.Clamp(p + Math.Clamp(m, -1, 1), low, high)).Order()];
            for (int i = 1; i < n; i++) next[i] = Math.Max(next[i], next[i - 1] + LeastApart);
            (double tried, double[] left) = Project(next);
            if (tried < sum)
            {
                double gain = (sum - tried) / Math.Max(sum, 1e-300);
                (pka, sum, misses, damp) = (next, tried, left, damp / 5);
                if (gain < 1e-10) break;
            }
            else if ((damp *= 6) > 1e8) break;
        }
        if (sum < SumOfSquares)
        {
            (Pka, SumOfSquares, Misses) = (pka, sum, misses);
            Forms = Solve(Columns(pka), pka.Length + 1);
        }
    }

    private double[] Slope(double[] pka, double[] misses, int at)
    {
        double[] moved = [.. pka];
        moved[at] += Probe;
        double[] there = Project(moved).Misses;
        return [.. there.Zip(misses, (a, b) => (a - b) / Probe)];
    }

    private (double Sum, double[] Misses) Project(double[] pka)
    {
        OrderedLeastSquares columns = Columns(pka);
        int n = _ph.Length, m = _signals[0].Length;
        double[] misses = new double[n * m], one = new double[n];
        double sum = 0;
        for (int s = 0; s < m; s++)
        {
            for (int i = 0; i < n; i++) one[i] = _signals[i][s];
            double[] rest = columns.Rest(one);
            for (int i = 0; i < n; i++)
            {
                misses[i * m + s] = rest[i];
                sum += rest[i] * rest[i];
            }
        }
        return (sum, misses);
    }

    private OrderedLeastSquares Columns(double[] pka)
    {
        double[][] columns = [.. Enumerable.Range(0, pka.Length + 1).Select(_ => new double[_ph.Length])];
        double[] shares = new double[pka.Length + 1];
        for (int i = 0; i < _ph.Length; i++)
        {
            AcidForms.Shares(_ph[i], pka, shares);
            for (int f = 0; f < shares.Length; f++) columns[f][i] = shares[f];
        }
        return new OrderedLeastSquares(columns);
    }

    private double[][] Solve(OrderedLeastSquares columns, int forms)
    {
        int m = _signals[0].Length;
        double[][] solved = [.. Enumerable.Range(0, forms).Select(_ => new double[m])];
        double[] one = new double[_ph.Length];
        for (int s = 0; s < m; s++)
        {
            for (int i = 0; i < one.Length; i++) one[i] = _signals[i][s];
            double[] b = columns.Solve(one);
            for (int k = 0; k < b.Length; k++) solved[columns.Kept[k]][s] = b[k];
        }
        return solved;
    }

    private static IEnumerable<double[]> Choices(double[] grid, int from, int count)
    {
        if (count == 0) yield return [];
        else
            for (int i = from; i < grid.Length; i++)
                foreach (double[] rest in Choices(grid, i + 1, count - 1)) yield return [grid[i], .. rest];
    }

    private static double Dot(double[] a, double[] b)
    {
        double s = 0;
        for (int i = 0; i < a.Length; i++) s += a[i] * b[i];
        return s;
    }
}
