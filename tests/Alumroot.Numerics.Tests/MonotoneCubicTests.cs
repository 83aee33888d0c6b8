using CsCheck;
using MathNet.Numerics.Interpolation;

namespace Alumroot.Numerics.Tests;

/// <summary>The monotone curve: laws, and closeness to a curve that is known.</summary>
public class MonotoneCubicTests
{
    [Fact]
    public void It_goes_through_its_points_and_rises_where_they_rise() =>
        Gen.Select(Gen.Double[0.01, 2].Array[2, 12], Gen.Double[0, 3].Array[12]).Sample((gaps, rises) =>
        {
            double[] x = new double[gaps.Length], y = new double[gaps.Length];
            for (int i = 1; i < x.Length; i++) (x[i], y[i]) = (x[i - 1] + gaps[i], y[i - 1] + rises[i]);
            var curve = new MonotoneCubic(x, y);
            for (int i = 0; i < x.Length; i++) Assert.Equal(y[i], curve.ValueAt(x[i]), 1e-9);
            double before = curve.ValueAt(-1);
            for (int i = 0; i <= 200; i++)
            {
                double now = curve.ValueAt(x[^1] * i / 200);
                Assert.True(now >= before - 1e-9);
                before = now;
            }
        }, iter: 500);

    /// <summary>The same points through the monotone interpolation of Math.NET Numerics (PCHIP, same family of slopes): both lie as near to the true curve.</summary>
    [Fact]
    public void It_is_as_near_to_a_smooth_curve_as_Math_NET_s()
    {
        double[] x = [.. Enumerable.Range(0, 25).Select(i => i * 0.25)], y = [.. x.Select(v => Math.Tanh(v - 3))];
        var ours = new MonotoneCubic(x, y);
        CubicSpline theirs = CubicSpline.InterpolatePchipSorted(x, y);
        double worst = 0, worstOfTheirs = 0;
        for (double v = 0.3; v < 5.8; v += 0.01)
        {
            worst = Math.Max(worst, Math.Abs(ours.ValueAt(v) - Math.Tanh(v - 3)));
            worstOfTheirs = Math.Max(worstOfTheirs, Math.Abs(theirs.Interpolate(v) - Math.Tanh(v - 3)));
        }
        Assert.InRange(worst, 0, 1.2 * worstOfTheirs + 1e-6);
    }

    [Fact]
    public void It_is_level_beyond_its_ends() => Assert.Equal([2.0, 5.0], new[] { new MonotoneCubic([0, 1], [2, 5]).ValueAt(-3), new MonotoneCubic([0, 1], [2, 5]).ValueAt(9) });
}
