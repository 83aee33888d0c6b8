using Alumroot.Chemistry.Process;
using Alumroot.Numerics;
using Alumroot.Quantities;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Alumroot.Chemistry.Tests.Process;

/// <summary>The drying fit beside a closed form, another library's fit, and cakes that do not follow the law.</summary>
public class DryingReferenceTests(ITestOutputHelper output)
{
    private static readonly Mass Hundredth = Mass.FromGrams(0.01);

    [Fact]
    public void Three_equal_distances_give_the_closed_form_of_an_exponential()
    {
        // Three equidistant points of c + a q^n have c = (m0 m2 - m1^2) / (m0 + m2 - 2 m1) (Aitken's delta-squared, any text on numerics).
        double[] m = [92.4, 61.3, 43.1];
        double closed = (m[0] * m[2] - m[1] * m[1]) / (m[0] + m[2] - 2 * m[1]);
        Drying.StillDrying drying = Assert.IsType<Drying.StillDrying>(DryingFit.Of([new(0, m[0]), new(5, m[1]), new(10, m[2])], Hundredth));
        Assert.Equal(closed, drying.EndGrams.Value, 0.02 * closed);
    }

    [Fact]
    public void Six_scattered_weights_agree_with_the_least_squares_of_a_library()
    {
        double[] hours = [0, 5, 10, 16, 22, 30], grams = [101.9, 71.1, 52.4, 39.3, 32.1, 27.1];
        Vector<double> x = Vector<double>.Build.Dense(hours), y = Vector<double>.Build.Dense(grams), sd = y.Map(g => 0.002 * g + 0.003);
        IObjectiveModel model = ObjectiveFunction.NonlinearModel((p, t) => t.Map(h => p[0] + p[1] * Math.Exp(-h / p[2])), x, y, sd.Map(s => 1 / (s * s)));
        NonlinearMinimizationResult found = new LevenbergMarquardtMinimizer().FindMinimum(model, Vector<double>.Build.Dense([20.0, 80, 8]));
        Drying.StillDrying drying = Assert.IsType<Drying.StillDrying>(DryingFit.Of([.. hours.Zip(grams, (t, g) => new Weighing(t, g))], Hundredth));
        output.WriteLine($"library {found.MinimizingPoint[0]:0.000} g, here {drying.EndGrams}");
        Assert.Equal(found.MinimizingPoint[0], drying.EndGrams.Value, 0.01 * drying.EndGrams.Value);
    }

    [Fact]
    public void A_cake_with_a_first_stage_of_steady_loss_is_still_bracketed_once_that_stage_is_over()
    {
        // Constant-rate stage, then the falling rate from the critical content on (any text on drying): both stages have the same rate where they meet.
        int held = 0, counted = 0;
        for (ulong seed = 1; seed <= 300; seed++)
        {
            var random = new SeededRandom(seed * 101 + 3);
            double end = 10 + 40 * random.NextFraction(), tau = 4 + 10 * random.NextFraction(), critical = end * (1 + 2 * random.NextFraction());
            double rate = critical / tau, steadyHours = tau * (0.5 + random.NextFraction());
            double start = end + critical + rate * steadyHours;
            var weights = new List<Weighing>();
            for (int i = 0; i < 8; i++)
            {
                double t = i * tau * 0.6;
                double true_ = t < steadyHours ? start - rate * t : end + critical * Math.Exp(-(t - steadyHours) / tau);
                weights.Add(new Weighing(t, Math.Round(true_ * (1 + 0.002 * random.NextNormal()), 2)));
            }
            if (DryingFit.Of(weights, Hundredth) is not Drying.StillDrying drying) continue;
            counted++;
            if (drying.EndGrams.Low <= end && end <= drying.EndGrams.High) held++;
        }
        output.WriteLine($"end held {held / (double)counted:0.000} of {counted}");
        Assert.True(counted > 250);
        Assert.InRange(held / (double)counted, 0.85, 0.95);
    }
}
