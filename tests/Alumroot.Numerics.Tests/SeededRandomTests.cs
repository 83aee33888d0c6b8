namespace Alumroot.Numerics.Tests;

/// <summary>The stream of random numbers: the published values, and that it looks random.</summary>
public class SeededRandomTests
{
    /// <summary>First values of SplitMix64: seed 1234567 as on the Rosetta Code page of that generator, seed 0 as in test vectors of the reference program; both from memory.</summary>
    [Theory]
    [InlineData(1234567UL, new ulong[] { 6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821 })]
    [InlineData(0UL, new ulong[] { 0xE220A8397B1DCDAF, 0x6E789E6AA1B965F4, 0x06C45D188009454F, 0xF88BB8A8724C81EC })]
    public void It_gives_the_published_values(ulong seed, ulong[] expected)
    {
        var random = new SeededRandom(seed);
        Assert.Equal(expected, expected.Select(_ => random.NextBits()));
    }

    [Fact]
    public void Fractions_are_even()
    {
        const int draws = 100_000, bins = 100;
        int[] count = new int[bins];
        var random = new SeededRandom(42);
        for (int i = 0; i < draws; i++)
        {
            double x = random.NextFraction();
            Assert.True(x is > 0 and < 1);
            count[(int)(x * bins)]++;
        }
        double expected = (double)draws / bins;
        double chiSquare = count.Sum(c => (c - expected) * (c - expected) / expected);
        // Chi square with 99 degrees of freedom: 0.1 % points 61 and 149 (tables, from memory).
        Assert.InRange(chiSquare, 61, 149);
    }

    [Fact]
    public void Neighbouring_draws_are_not_tied()
    {
        var random = new SeededRandom(7);
        const int draws = 100_000;
        double last = random.NextFraction() - 0.5, sum = 0;
        for (int i = 0; i < draws; i++)
        {
            double next = random.NextFraction() - 0.5;
            sum += last * next;
            last = next;
        }
        Assert.True(Math.Abs(sum / draws * 12) < 4 / Math.Sqrt(draws));
    }

    [Fact]
    public void Whole_numbers_stay_below_the_limit_and_reach_all()
    {
        var random = new SeededRandom(3);
        int[] count = new int[7];
        for (int i = 0; i < 7000; i++) count[random.NextBelow(7)]++;
        Assert.All(count, c => Assert.InRange(c, 850, 1150));
    }

    [Fact]
    public void Normal_draws_have_mean_0_and_spread_1()
    {
        var random = new SeededRandom(5);
        double[] x = [.. Enumerable.Range(0, 50_000).Select(_ => random.NextNormal())];
        Assert.InRange(x.Average(), -0.02, 0.02);
        Assert.InRange(x.Sum(v => v * v) / x.Length, 0.97, 1.03);
        Assert.InRange(x.Count(v => Math.Abs(v) <= Distributions.NormalHalfWidth90) / (double)x.Length, 0.895, 0.905);
    }
}
