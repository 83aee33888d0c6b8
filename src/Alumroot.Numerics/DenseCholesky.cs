namespace Alumroot.Numerics;

/// <summary>Cholesky factorisation of a small symmetric positive definite matrix, in place.</summary>
/// <remarks>Row-major storage. Golub and Van Loan, Matrix Computations, algorithm 4.2.1 (from memory).</remarks>
public static class DenseCholesky
{
    /// <summary>Replaces the lower half by L with a = L L'.</summary>
    /// <param name="a">n x n values, row by row; only the lower half is read.</param>
    /// <param name="n">Order of the matrix.</param>
    /// <returns>False when the matrix is not positive definite.</returns>
    public static bool Factor(Span<double> a, int n)
    {
        for (int j = 0; j < n; j++)
            for (int i = j; i < n; i++)
            {
                double s = a[i * n + j];
                for (int k = 0; k < j; k++) s -= a[i * n + k] * a[j * n + k];
                if (i > j) a[i * n + j] = s / a[j * n + j];
                else if (s > 0) a[j * n + j] = Math.Sqrt(s);
                else return false;
            }
        return true;
    }

    /// <summary>Solves L x = b in place.</summary>
    public static void SolveLower(ReadOnlySpan<double> lower, Span<double> b, int n)
    {
        for (int i = 0; i < n; i++)
        {
            double s = b[i];
            for (int k = 0; k < i; k++) s -= lower[i * n + k] * b[k];
            b[i] = s / lower[i * n + i];
        }
    }

    /// <summary>Solves L' x = b in place.</summary>
    public static void SolveUpper(ReadOnlySpan<double> lower, Span<double> b, int n)
    {
        for (int i = n - 1; i >= 0; i--)
        {
            double s = b[i];
            for (int k = i + 1; k < n; k++) s -= lower[k * n + i] * b[k];
            b[i] = s / lower[i * n + i];
        }
    }

    /// <summary>Writes the inverse of L L'.</summary>
    /// <param name="lower">The factor.</param>
    /// <param name="inverse">Receives n x n values.</param>
    /// <param name="n">Order of the matrix.</param>
    public static void Inverse(ReadOnlySpan<double> lower, Span<double> inverse, int n)
    {
        double[] column = new double[n];
        for (int j = 0; j < n; j++)
        {
            Array.Clear(column);
            column[j] = 1;
            SolveLower(lower, column, n);
            SolveUpper(lower, column, n);
            for (int i = 0; i < n; i++) inverse[i * n + j] = column[i];
        }
    }
}
