using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Chemistry.Tests.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>Exact changes of pH with each unknown, along a path that loses gas, against differences of whole paths.</summary>
public class DerivativeTests
{
    [Theory]
    [InlineData("potash-alum", "soda-ash", 20)]
    [InlineData("potash-alum", "soda-ash", 60)]
    [InlineData("iron-sulfate", "potash", 25)]
    public void Tangents_are_the_slopes_of_the_path(string salt, string alkali, double celsius)
    {
        LakePlanInput input = Baths.Of(salt, 50, alkali, 2, celsius, Baths.ToPh(6.5), 100, 0.12, 14) with { LiquorPh = Ph.FromValue(5.2) };
        double whole = Baths.Plan(input).StoichiometricAlkali;
        BenchEvent[] events = [.. Enumerable.Range(0, 6).SelectMany(_ => new BenchEvent[] { new BenchEvent.AlkaliAdded(0.16 * whole), new BenchEvent.PhRead(Ph.FromValue(5), 0.1, PhInstrument.Meter) })];
        int compared = 0;
        foreach (BenchCase c in BenchCase.Of(new BenchHypothesis.AsRecorded(), 1, input, events))
        {
            double[] z = [.. Enumerable.Range(0, Axis.Count).Select(i => 0.3 * Math.Cos(1 + i))];
            var exact = new List<double[]>();
            var path = new BenchTangents(c, z);
            Assert.True(path.FollowLog(_ => exact.Add([.. path.PhByAxis])));
            for (int a = 0; a < Axis.Chemical; a++)
            {
                double[] above = Phs(c, z, a, 1e-4), below = Phs(c, z, a, -1e-4);
                for (int s = 1; s < above.Length; s++)
                {
                    double slope = (above[s] - below[s]) / 2e-4;
                    Assert.Equal(slope, exact[s][a], 1e-4 + 1e-3 * Math.Abs(slope));
                    if (Math.Abs(slope) > 1e-3) compared++;
                }
            }
        }
        Assert.True(compared > 40, $"only {compared} slopes were large enough to compare");
    }

    private static double[] Phs(BenchCase c, double[] z, int axis, double by)
    {
        double[] moved = [.. z];
        moved[axis] += by;
        var path = new BenchPath(c, moved);
        var phs = new List<double>();
        Assert.True(path.FollowLog(_ => phs.Add(path.State.Ph)));
        return [.. phs];
    }
}
