using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Alumroot.Numerics.Tests;

/// <summary>The small Cholesky factorisation against Math.NET Numerics, an independent library.</summary>
public class DenseCholeskyTests
{
    private static readonly Gen<(int N, double[] A)> Roots = Gen.Int[1, 16].SelectMany(n => Gen.Double[-3, 3].Array[n * n].Select(a => (n, a)));

    [Fact]
    public void A_random_matrix_is_factored_and_solved_like_Math_NET_does() => Roots.Sample(s =>
    {
        (int n, double[] root) = s;
        Matrix<double> r = Matrix<double>.Build.Dense(n, n, (i, j) => root[i * n + j]);
        Matrix<double> matrix = r * r.Transpose() + Matrix<double>.Build.DenseIdentity(n);
        double[] lower = matrix.ToRowMajorArray();
        Assert.True(DenseCholesky.Factor(lower, n));
        Matrix<double> expected = matrix.Cholesky().Factor;
        for (int i = 0; i < n; i++)
            for (int j = 0; j <= i; j++) Assert.Equal(expected[i, j], lower[i * n + j], 1e-9);
        Vector<double> b = Vector<double>.Build.Dense(n, i => i - 2.5);
        double[] x = b.ToArray();
        DenseCholesky.SolveLower(lower, x, n);
        DenseCholesky.SolveUpper(lower, x, n);
        Vector<double> solution = matrix.Solve(b);
        for (int i = 0; i < n; i++) Assert.Equal(solution[i], x[i], 1e-9 * (1 + solution.InfinityNorm()));
        double[] inverse = new double[n * n];
        DenseCholesky.Inverse(lower, inverse, n);
        Matrix<double> whole = matrix.Inverse();
        for (int i = 0; i < n * n; i++) Assert.Equal(whole[i / n, i % n], inverse[i], 1e-8);
    }, iter: 500);

    [Fact]
    public void A_matrix_that_is_not_positive_definite_is_refused() =>
        Assert.False(DenseCholesky.Factor([1, 2, 2, 1], 2));
}
