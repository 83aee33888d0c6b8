using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Alumroot.Numerics;

/// <summary>LU factorisation with partial pivoting of a small dense matrix, in place and without allocation.</summary>
/// <remarks>
/// Made for systems of about ten unknowns that are solved tens of thousands of times; general libraries allocate a matrix per call.
/// Row-major storage. Golub and Van Loan, Matrix Computations, algorithm 3.4.1 (outer product form).
/// </remarks>
public static class DenseLu
{
    /// <summary>Factors the matrix in place.</summary>
    /// <param name="a">n x n values, row by row; replaced by L (unit diagonal, below) and U, with one over its diagonal in place of the diagonal.</param>
    /// <param name="pivots">Receives for each column the row that was swapped in; length n or more.</param>
    /// <param name="n">Order of the matrix.</param>
    /// <returns>False when a pivot is zero or not a number: the matrix is singular to working precision.</returns>
    public static bool Factor(Span<double> a, Span<int> pivots, int n)
    {
        for (int k = 0; k < n; k++)
        {
            int p = k;
            double best = Math.Abs(a[k * n + k]);
            for (int i = k + 1; i < n; i++)
            {
                double v = Math.Abs(a[i * n + k]);
                if (v > best) (best, p) = (v, i);
            }
            pivots[k] = p;
            if (!(best > 1e-300)) return false;
            Span<double> rowK = a.Slice(k * n, n);
            if (p != k)
            {
                Span<double> rowP = a.Slice(p * n, n);
                for (int j = 0; j < n; j++) (rowK[j], rowP[j]) = (rowP[j], rowK[j]);
            }
            double inverse = rowK[k] = 1 / rowK[k];     // so that a solve multiplies instead of divides
            for (int i = k + 1; i < n; i++)
            {
                Span<double> rowI = a.Slice(i * n, n);
                double f = rowI[k];
                if (f == 0) continue;
                f *= inverse;
                rowI[k] = f;
                SubtractTimes(rowI[(k + 1)..], f, rowK[(k + 1)..]);
            }
        }
        return true;
    }

    /// <summary>target -= factor x row, four at a time.</summary>
    private static void SubtractTimes(Span<double> target, double factor, ReadOnlySpan<double> row)
    {
        ref double t = ref MemoryMarshal.GetReference(target);
        ref double r = ref MemoryMarshal.GetReference(row);
        int i = 0, n = Math.Min(target.Length, row.Length);
        Vector256<double> f = Vector256.Create(factor);
        for (; i <= n - Vector256<double>.Count; i += Vector256<double>.Count)
            (Vector256.LoadUnsafe(ref t, (nuint)i) - f * Vector256.LoadUnsafe(ref r, (nuint)i)).StoreUnsafe(ref t, (nuint)i);
        for (; i < n; i++) Unsafe.Add(ref t, i) -= factor * Unsafe.Add(ref r, i);
    }

    /// <summary>Solves for one right-hand side, in place.</summary>
    /// <param name="lu">What <see cref="Factor"/> left.</param>
    /// <param name="pivots">The swaps of <see cref="Factor"/>.</param>
    /// <param name="b">Right-hand side; replaced by the solution.</param>
    /// <param name="n">Order of the matrix.</param>
    public static void Solve(ReadOnlySpan<double> lu, ReadOnlySpan<int> pivots, Span<double> b, int n)
    {
        b = b[..n];
        for (int k = 0; k < n; k++)
        {
            int p = pivots[k];
            if (p != k) (b[k], b[p]) = (b[p], b[k]);
        }
        for (int i = 1; i < n; i++)
        {
            ReadOnlySpan<double> row = lu.Slice(i * n, i);
            double s = b[i];
            for (int j = 0; j < row.Length && j < b.Length; j++) s -= row[j] * b[j];
            b[i] = s;
        }
        for (int i = n - 1; i >= 0; i--)
        {
            ReadOnlySpan<double> row = lu.Slice(i * n, n);
            double s = b[i];
            for (int j = i + 1; j < row.Length && j < b.Length; j++) s -= row[j] * b[j];
            b[i] = s * row[i];
        }
    }
}
