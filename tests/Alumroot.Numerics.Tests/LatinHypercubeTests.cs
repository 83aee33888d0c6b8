namespace Alumroot.Numerics.Tests;

/// <summary>Points that cover each axis evenly.</summary>
public class LatinHypercubeTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 3)]
    [InlineData(10, 4)]
    [InlineData(64, 12)]
    [InlineData(1000, 5)]
    public void Each_slice_of_each_axis_is_used_once(int points, int axes)
    {
        double[,] x = LatinHypercube.Make(points, axes, 11);
        Assert.Equal((points, axes), (x.GetLength(0), x.GetLength(1)));
        for (int a = 0; a < axes; a++)
        {
            int[] slices = [.. Enumerable.Range(0, points).Select(i => (int)(x[i, a] * points)).Order()];
            Assert.Equal(Enumerable.Range(0, points), slices);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_points() => Assert.Equal(LatinHypercube.Make(30, 4, 9), LatinHypercube.Make(30, 4, 9));

    [Fact]
    public void Another_seed_gives_other_points() => Assert.NotEqual(LatinHypercube.Make(30, 4, 9), LatinHypercube.Make(30, 4, 10));

    [Fact]
    public void Axes_are_little_correlated()
    {
        const int points = 100, axes = 6;
        double[,] x = LatinHypercube.Make(points, axes, 1);
        for (int a = 0; a < axes; a++)
            for (int b = a + 1; b < axes; b++)
            {
                double sum = 0, square = 0;
                for (int i = 0; i < points; i++)
                {
                    sum += (x[i, a] - 0.5) * (x[i, b] - 0.5);
                    square += (x[i, a] - 0.5) * (x[i, a] - 0.5);
                }
                // Fifteen independent pairs would reach about 0.25; the best of the tries stays well below.
                Assert.InRange(sum / square, -0.22, 0.22);
            }
    }
}
