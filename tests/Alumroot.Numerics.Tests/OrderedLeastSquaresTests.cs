using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Alumroot.Numerics.Tests;

/// <summary>Least squares in order of importance against Math.NET Numerics, an independent library.</summary>
public class OrderedLeastSquaresTests
{
    private static readonly Gen<(double[][] Columns, double[] Right)> Systems = Gen.Select(Gen.Int[1, 5], Gen.Int[6, 12]).SelectMany((p, n) =>
        Gen.Select(Gen.Double[-1, 1].Array[n].Array[p], Gen.Double[-1, 1].Array[n]));

    [Fact]
    public void Solutions_rests_and_variances_are_those_of_the_library() => Systems.Sample(system =>
    {
        Matrix<double> x = Matrix<double>.Build.DenseOfColumnArrays(system.Columns), normal = x.TransposeThisAndMultiply(x);
        if (normal.ConditionNumber() > 1e8) return;
        var fit = new OrderedLeastSquares(system.Columns);
        Vector<double> b = x.QR().Solve(Vector<double>.Build.DenseOfArray(system.Right));
        Assert.Equal(b, fit.Solve(system.Right), Near);
        Assert.Equal(Vector<double>.Build.DenseOfArray(system.Right) - x * b, fit.Rest(system.Right), Near);
        double[] weights = [.. Enumerable.Range(0, system.Columns.Length).Select(i => 1.0 + i)];
        Vector<double> c = Vector<double>.Build.DenseOfArray(weights);
        Assert.Equal(1, fit.VarianceOf(weights) / c.DotProduct(normal.Inverse() * c), 6);
    });

    [Fact]
    public void A_column_that_earlier_ones_hold_is_left_out_and_told_as_their_sum()
    {
        double[] one = [1, 1, 1, 1], up = [1, 2, 3, 4], both = [5, 7, 9, 11];
        var fit = new OrderedLeastSquares([one, up, both]);
        Assert.Equal([0, 1], fit.Kept);
        Assert.Equal([3.0, 2.0], fit.Held[2], Near);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-6 * (1 + Math.Abs(a));
}
