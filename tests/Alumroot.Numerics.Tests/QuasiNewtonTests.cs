namespace Alumroot.Numerics.Tests;

/// <summary>The search downhill on functions with known least values.</summary>
public class QuasiNewtonTests
{
    // Rosenbrock 1960, The Computer Journal 3: least value 0 at (1, 1).
    [Theory]
    [InlineData(-1.2, 1)]
    [InlineData(2, -3)]
    [InlineData(0, 0)]
    public void Rosenbrocks_valley_is_walked_to_its_end(double x, double y)
    {
        (double[] place, double value) = QuasiNewton.Minimise(
            (p, slopes) =>
            {
                double a = 1 - p[0], b = p[1] - p[0] * p[0];
                slopes[0] = -2 * a - 400 * p[0] * b;
                slopes[1] = 200 * b;
                return a * a + 100 * b * b;
            }, [x, y], mostSteps: 300, enough: 1e-14);
        Assert.True(value < 1e-8, $"{value}");
        Assert.Equal(1, place[0], 3);
        Assert.Equal(1, place[1], 3);
    }

    [Fact]
    public void Where_there_is_no_value_it_does_not_go()
    {
        // ln has no value below nothing; x - ln x is least at 1.
        (double[] place, _) = QuasiNewton.Minimise(
            (p, slopes) =>
            {
                if (p[0] <= 0) return double.PositiveInfinity;
                slopes[0] = 1 - 1 / p[0];
                return p[0] - Math.Log(p[0]);
            }, [6.0]);
        Assert.Equal(1, place[0], 3);
    }
}
