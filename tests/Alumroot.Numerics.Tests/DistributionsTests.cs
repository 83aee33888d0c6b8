using CsCheck;

namespace Alumroot.Numerics.Tests;

/// <summary>Quantiles against printed tables.</summary>
public class DistributionsTests
{
    /// <summary>Quantiles of the standard normal distribution (any statistical table, from memory).</summary>
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.05, -1.6448536)]
    [InlineData(0.95, 1.6448536)]
    [InlineData(0.975, 1.9599640)]
    [InlineData(0.8413447, 1)]
    [InlineData(0.999, 3.0902323)]
    public void Normal_quantiles(double probability, double expected) => Assert.Equal(expected, Distributions.NormalQuantile(probability), 6);

    [Fact]
    public void The_half_width_of_nine_in_ten() => Assert.Equal(Distributions.NormalHalfWidth90, Distributions.NormalQuantile(0.95), 12);

    /// <summary>Type 7 of Hyndman and Fan 1996, the default of R: quantile(c(1, 3, 4, 10), c(.05, .25, .5, .9)) gives 1.3, 2.5, 3.5, 8.2 (by hand).</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.05, 1.3)]
    [InlineData(0.25, 2.5)]
    [InlineData(0.5, 3.5)]
    [InlineData(0.9, 8.2)]
    [InlineData(1, 10)]
    public void Sorted_quantiles(double probability, double expected) => Assert.Equal(expected, Distributions.SortedQuantile([1, 3, 4, 10], probability), 12);

    [Fact]
    public void One_value_is_every_quantile() => Assert.Equal(7, Distributions.SortedQuantile([7], 0.3));

    [Fact]
    public void Quantiles_rise_and_stay_inside() =>
        Gen.Select(Gen.Double[-100, 100].Array[1, 40], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((values, p, q) =>
        {
            Array.Sort(values);
            double low = Distributions.SortedQuantile(values, Math.Min(p, q)), high = Distributions.SortedQuantile(values, Math.Max(p, q));
            Assert.True(low <= high + 1e-12 && low >= values[0] && high <= values[^1] + 1e-12);
        }, iter: 2000);

    /// <summary>Shares of the standard normal distribution (any statistical table, from memory).</summary>
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.8413447)]
    [InlineData(-1.6448536, 0.05)]
    [InlineData(3, 0.9986501)]
    public void Normal_shares(double value, double expected) => Assert.Equal(expected, Distributions.NormalFraction(value), 6);

    /// <summary>Upper points of F as in any table of it (from memory).</summary>
    [Theory]
    [InlineData(6.608, 1, 5, 0.05)]
    [InlineData(3.708, 3, 10, 0.05)]
    [InlineData(5.636, 5, 10, 0.01)]
    public void Tails_of_F(double ratio, double above, double below, double expected) => Assert.Equal(expected, Distributions.FisherTail(ratio, above, below), 4);

    /// <summary>By hand: weights 1/2, 1/4, 1/4 put the values 1, 2, 4 at shares 1/4, 5/8, 7/8.</summary>
    [Theory]
    [InlineData(0.1, 1)]
    [InlineData(0.25, 1)]
    [InlineData(0.4375, 1.5)]
    [InlineData(0.75, 3)]
    [InlineData(0.99, 4)]
    public void Weighted_quantiles(double probability, double expected) => Assert.Equal(expected, Distributions.WeightedQuantile([1, 2, 4], [0.5, 0.25, 0.25], probability), 12);
}
