using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Alumroot.Numerics.Tests;

/// <summary>The small solver against Math.NET Numerics, an independent library.</summary>
public class DenseLuTests
{
    private static readonly Gen<(int N, double[] A, double[] B)> Systems = Gen.Int[1, 20].SelectMany(n =>
        Gen.Select(Gen.Double[-10, 10].Array[n * n], Gen.Double[-10, 10].Array[n], (a, b) => (n, a, b)));

    [Fact]
    public void A_random_system_is_solved_like_Math_NET_does() =>
        Systems.Sample(s =>
        {
            (int n, double[] a, double[] b) = s;
            Matrix<double> matrix = Matrix<double>.Build.Dense(n, n, (i, j) => a[i * n + j]);
            double condition = matrix.ConditionNumber();
            if (!(condition < 1e10)) return;
            Vector<double> expected = matrix.Solve(Vector<double>.Build.Dense(b));
            double[] lu = [.. a], x = [.. b];
            int[] pivots = new int[n];
            Assert.True(DenseLu.Factor(lu, pivots, n));
            DenseLu.Solve(lu, pivots, x, n);
            for (int i = 0; i < n; i++) Assert.True(Math.Abs(x[i] - expected[i]) <= 1e-14 * condition * (1 + expected.InfinityNorm()), $"x[{i}] = {x[i]} against {expected[i]}, condition {condition:g3}");
        }, iter: 2000);

    [Fact]
    public void One_factorisation_serves_many_right_hand_sides() =>
        Systems.Sample(s =>
        {
            (int n, double[] a, double[] b) = s;
            for (int i = 0; i < n; i++) a[i * n + i] += 200;     // dominant diagonal: well conditioned
            double[] lu = [.. a];
            int[] pivots = new int[n];
            Assert.True(DenseLu.Factor(lu, pivots, n));
            foreach (double factor in (double[])[1, -3, 1e6])
            {
                double[] x = [.. b.Select(v => v * factor)];
                DenseLu.Solve(lu, pivots, x, n);
                for (int i = 0; i < n; i++)
                {
                    double back = Enumerable.Range(0, n).Sum(j => a[i * n + j] * x[j]);
                    Assert.True(Math.Abs(back - b[i] * factor) <= 1e-11 * Math.Abs(factor) * 10, $"row {i}: {back} against {b[i] * factor}");
                }
            }
        }, iter: 500);

    [Theory]
    [InlineData(new double[] { 0 })]
    [InlineData(new double[] { 0, 0, 0, 0 })]
    [InlineData(new double[] { 1, 2, 2, 4 })]
    [InlineData(new double[] { 1, 2, 3, 2, 4, 6, 0, 1, 5 })]
    [InlineData(new double[] { double.NaN, 1, 1, 1 })]
    public void A_singular_matrix_is_refused(double[] a)
    {
        int n = (int)Math.Sqrt(a.Length);
        Assert.False(DenseLu.Factor(a, new int[n], n));
    }

    [Fact]
    public void A_zero_on_the_diagonal_is_pivoted_away()
    {
        double[] a = [0, 2, 1, 0], x = [4, 3];
        int[] pivots = new int[2];
        Assert.True(DenseLu.Factor(a, pivots, 2));
        DenseLu.Solve(a, pivots, x, 2);
        Assert.Equal([3, 2], x);
    }

    [Fact]
    public void Nothing_is_allocated()
    {
        double[] a = new double[400], b = new double[20];
        int[] pivots = new int[20];
        Solve();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++) Solve();
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Solve()
        {
            for (int i = 0; i < 20; i++)
                for (int j = 0; j < 20; j++) a[i * 20 + j] = i == j ? 3 : 1.0 / (1 + i + j);
            DenseLu.Factor(a, pivots, 20);
            DenseLu.Solve(a, pivots, b, 20);
        }
    }
}
