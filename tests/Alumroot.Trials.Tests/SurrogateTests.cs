using Alumroot.Numerics;
using Alumroot.Trials.Learning;
using MathNet.Numerics.LinearAlgebra;

namespace Alumroot.Trials.Tests;

/// <summary>The surrogate against a slow reference that writes the same formulas down with a general library's matrices.</summary>
public sealed class SurrogateTests
{
    private static readonly Recipe[] Rows = [.. Enumerable.Range(0, 14).Select(i => new Recipe([i / 13.0, i * 5 % 14 / 13.0], [i % 3]))];

    private static readonly double[] Values = [.. Rows.Select(r => 20 + 5 * Math.Sin(4 * r.Measured[0]) + 3 * r.Measured[1] + 2 * r.Named[0])];

    private static readonly double[] Known = [.. Rows.Select((_, i) => i % 2 == 0 ? 0.04 : 0.25)];

    [Fact]
    public void Foretelling_agrees_with_the_slow_reference()
    {
        Surrogate fast = Surrogate.Of(Rows, Values, Known);
        double mean = Values.Average(), sd = Math.Sqrt(Values.Average(v => (v - mean) * (v - mean)));
        Vector<double> y = Vector<double>.Build.DenseOfEnumerable(Values.Select(v => (v - mean) / sd));
        Matrix<double> k = Gram(fast.Hyper, sd);
        foreach (Recipe place in new[] { Rows[3], new Recipe([0.37, 0.9], [2]), new Recipe([1, 0], [0]) })
        {
            Vector<double> c = Vector<double>.Build.DenseOfEnumerable(Rows.Select(r => Slow(fast.Hyper, place, r)));
            double slowMean = mean + sd * c.DotProduct(k.Inverse() * y), slowSd = sd * Math.Sqrt(Math.Exp(fast.Hyper[0]) - c.DotProduct(k.Inverse() * c));
            (double m, double s) = fast.At(place);
            Assert.Equal(slowMean, m, 7);
            Assert.Equal(slowSd, s / fast.Widening, 6);
        }
    }

    [Fact]
    public void Leaving_out_by_formula_is_leaving_out_indeed()
    {
        Surrogate fast = Surrogate.Of(Rows, Values, Known);
        double mean = Values.Average(), sd = Math.Sqrt(Values.Average(v => (v - mean) * (v - mean)));
        Matrix<double> k = Gram(fast.Hyper, sd);
        for (int at = 0; at < Rows.Length; at++)
        {
            int[] others = [.. Enumerable.Range(0, Rows.Length).Where(i => i != at)];
            Matrix<double> rest = Matrix<double>.Build.Dense(others.Length, others.Length, (i, j) => k[others[i], others[j]]);
            Vector<double> c = Vector<double>.Build.Dense(others.Length, i => k[at, others[i]]), y = Vector<double>.Build.Dense(others.Length, i => (Values[others[i]] - mean) / sd);
            Assert.Equal(mean + sd * c.DotProduct(rest.Solve(y)), fast.LeftOut()[at].Mean, 6);
            Assert.Equal(sd * Math.Sqrt(k[at, at] - c.DotProduct(rest.Solve(c))), fast.LeftOut()[at].Sd / fast.Widening, 6);
        }
    }

    [Fact]
    public void Slopes_of_the_likelihood_are_those_of_differences()
    {
        Surrogate surrogate = Surrogate.Of(Rows, Values, Known);
        double[] at = [0.3, -0.2, 0.4, 0.1, -2], slopes = new double[5], none = new double[5];
        surrogate.Cost(at, slopes);
        for (int h = 0; h < 5; h++)
        {
            double[] up = [.. at], down = [.. at];
            up[h] += 1e-5;
            down[h] -= 1e-5;
            Assert.Equal((surrogate.Cost(up, none) - surrogate.Cost(down, none)) / 2e-5, slopes[h], 4);
        }
    }

    [Fact]
    public void Spans_of_readings_that_were_not_used_hold_nine_times_in_ten()
    {
        int held = 0, all = 0;
        for (ulong seed = 1; seed <= 25; seed++)
        {
            var random = new SeededRandom(seed * 13);
            Recipe[] rows = [.. Enumerable.Range(0, 30).Select(_ => new Recipe([random.NextFraction(), random.NextFraction()], [random.NextBelow(2)]))];
            double[] bends = [.. Enumerable.Range(0, 4).Select(_ => random.NextNormal())];
            double Truth(Recipe r) => 40 + 8 * bends[0] * Math.Sin(3 * r.Measured[0] + bends[1]) + 6 * bends[2] * r.Measured[1] * r.Measured[1] + 3 * bends[3] * r.Named[0];
            Surrogate surrogate = Surrogate.Of(rows, [.. rows.Select(r => Truth(r) + random.NextNormal())], new double[30]);
            for (int i = 0; i < 20; i++, all++)
            {
                var fresh = new Recipe([random.NextFraction(), random.NextFraction()], [random.NextBelow(2)]);
                (double mean, double sd) = surrogate.At(fresh);
                if (Math.Abs(Truth(fresh) + random.NextNormal() - mean) <= Distributions.NormalHalfWidth90 * Math.Sqrt(sd * sd + surrogate.NoiseSd * surrogate.NoiseSd)) held++;
            }
        }
        Assert.InRange(held / (double)all, 0.85, 0.95);
    }

    private static Matrix<double> Gram(IReadOnlyList<double> hyper, double sd) =>
        Matrix<double>.Build.Dense(Rows.Length, Rows.Length, (i, j) => Slow(hyper, Rows[i], Rows[j]) + (i == j ? Math.Exp(hyper[^1]) + Known[i] / sd / sd + 1e-8 : 0));

    private static double Slow(IReadOnlyList<double> hyper, Recipe a, Recipe b)
    {
        double r = Math.Sqrt(Enumerable.Range(0, 2).Sum(d => Math.Pow((a.Measured[d] - b.Measured[d]) / Math.Exp(hyper[1 + d]), 2)));
        double matern = (1 + Math.Sqrt(5) * r + 5 * r * r / 3) * Math.Exp(-Math.Sqrt(5) * r);
        return Math.Exp(hyper[0]) * matern * Math.Exp(a.Named[0] == b.Named[0] ? 0 : -Math.Exp(hyper[3]));
    }
}
