namespace Alumroot.Numerics;

/// <summary>Least squares for columns in an order of importance: a column that the earlier ones already hold is left out and told as their sum.</summary>
/// <remarks>Modified Gram-Schmidt with a second pass (Björck 1967, Solving linear least squares problems by Gram-Schmidt orthogonalization, BIT 7; from memory).</remarks>
public sealed class OrderedLeastSquares
{
    // A column whose rest after taking out the earlier ones is shorter than this part of itself adds nothing.
    private const double Dependent = 1e-8;

    private readonly double[][] _q, _r;
    private readonly int _rows;

    /// <summary>Factors the columns.</summary>
    /// <param name="columns">Each of the same length, the most important first.</param>
    public OrderedLeastSquares(IReadOnlyList<double[]> columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        _rows = columns.Count == 0 ? 0 : columns[0].Length;
        var kept = new List<int>();
        var q = new List<double[]>();
        var r = new List<double[]>();
        var held = new Dictionary<int, double[]>();
        for (int j = 0; j < columns.Count; j++)
        {
            if (columns[j].Length != _rows) throw new ArgumentException("all columns must have the same length", nameof(columns));
            double[] rest = [.. columns[j]], parts = new double[q.Count + 1];
            double before = Length(rest);
            for (int pass = 0; pass < 2; pass++)
                for (int k = 0; k < q.Count; k++)
                {
                    double part = Dot(q[k], rest);
                    parts[k] += part;
                    for (int i = 0; i < _rows; i++) rest[i] -= part * q[k][i];
                }
            double left = Length(rest);
            if (left <= Dependent * before || q.Count == _rows)
            {
                held[j] = parts[..^1];
                continue;
            }
            parts[^1] = left;
            for (int i = 0; i < _rows; i++) rest[i] /= left;
            q.Add(rest);
            r.Add(parts);
            kept.Add(j);
        }
        (_q, _r) = ([.. q], [.. r]);
        Kept = kept;
        Held = held.ToDictionary(p => p.Key, p => Back(p.Value));
    }

    /// <summary>Indices of the columns that were kept, ascending.</summary>
    public IReadOnlyList<int> Kept { get; }

    /// <summary>For each column left out: its coefficients on the kept ones, in their order; columns kept later than it count as nothing.</summary>
    public IReadOnlyDictionary<int, double[]> Held { get; }

    /// <summary>Coefficients of the kept columns for a right side.</summary>
    public double[] Solve(ReadOnlySpan<double> right)
    {
        var rest = right.ToArray();
        double[] parts = new double[_q.Length];
        for (int k = 0; k < _q.Length; k++)
        {
            parts[k] = Dot(_q[k], rest);
            for (int i = 0; i < _rows; i++) rest[i] -= parts[k] * _q[k][i];
        }
        return Back(parts);
    }

    /// <summary>What the kept columns leave of a right side.</summary>
    public double[] Rest(ReadOnlySpan<double> right)
    {
        double[] rest = right.ToArray();
        foreach (double[] q in _q)
        {
            double part = Dot(q, rest);
            for (int i = 0; i < _rows; i++) rest[i] -= part * q[i];
        }
        return rest;
    }

    /// <summary>The variance of c'b over that of one observation, for coefficients b of the kept columns.</summary>
    /// <param name="weights">c, one for each kept column.</param>
    public double VarianceOf(ReadOnlySpan<double> weights)
    {
        // |R'^-1 c|²
        double sum = 0;
        double[] z = new double[_q.Length];
        for (int i = 0; i < z.Length; i++)
        {
            double s = weights[i];
            for (int k = 0; k < i; k++) s -= _r[i][k] * z[k];
            z[i] = s / _r[i][i];
            sum += z[i] * z[i];
        }
        return sum;
    }

    // R is kept by columns: _r[j][k] is row k of column j.
    private double[] Back(double[] parts)
    {
        double[] b = new double[_q.Length];
        for (int i = Math.Min(parts.Length, b.Length) - 1; i >= 0; i--)
        {
            double s = parts[i];
            for (int k = i + 1; k < parts.Length; k++) s -= _r[k][i] * b[k];
            b[i] = s / _r[i][i];
        }
        return b;
    }

    private static double Dot(double[] a, double[] b)
    {
        double s = 0;
        for (int i = 0; i < a.Length; i++) s += a[i] * b[i];
        return s;
    }

    private static double Length(double[] a) => Math.Sqrt(Dot(a, a));
}
