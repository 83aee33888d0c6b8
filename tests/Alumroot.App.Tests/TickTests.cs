using Alumroot.App.Charts;
using CsCheck;

namespace Alumroot.App.Tests;

/// <summary>The round numbers on an axis. The rule of four to six ticks is our own; the round steps 1, 2, 2.5 and 5 are common practice, no source.</summary>
public sealed class TickTests
{
    [Theory]
    [InlineData(0, 24, new double[] { 0, 5, 10, 15, 20, 25 })]
    [InlineData(0, 5, new double[] { 0, 1, 2, 3, 4, 5 })]
    [InlineData(0, 12.6, new double[] { 0, 5, 10, 15 })]
    [InlineData(0, 0.42, new double[] { 0, 0.1, 0.2, 0.3, 0.4, 0.5 })]
    [InlineData(-3, 4, new double[] { -4, -2, 0, 2, 4 })]
    [InlineData(0, 0, new double[] { 0, 0.2, 0.4, 0.6, 0.8, 1 })]
    public void Known_ranges_get_the_ticks_a_person_would_draw(double low, double high, double[] expected) =>
        Assert.Equal(expected, Ticks.Spanning(low, high));

    [Fact]
    public void Any_range_gets_four_to_six_even_round_ticks_that_span_it() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-6, 1e7]).Sample((low, width) =>
        {
            double high = low + width;
            if (width < 1e-9 * Math.Max(1, Math.Abs(high))) return;
            IReadOnlyList<double> ticks = Ticks.Spanning(low, high);
            double step = Scale.StepOf(ticks);
            Assert.InRange(ticks.Count, 4, 6);
            Assert.True(ticks[0] <= low + 1e-6 * step && ticks[^1] >= high - 1e-6 * step, $"{ticks[0]} .. {ticks[^1]} for {low} .. {high}");
            double lead = step / Math.Pow(10, Math.Floor(Math.Log10(step * 1.0001)));
            Assert.Contains(new[] { 1, 2, 2.5, 5 }, round => Math.Abs(lead - round) < 1e-3);
        });

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(0, double.PositiveInfinity)]
    [InlineData(2, 1)]
    public void A_range_that_is_none_is_refused(double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ticks.Spanning(low, high));

    [Theory]
    [InlineData(5, 5, "5")]
    [InlineData(0.5, 0.25, "0.50")]
    [InlineData(-2, 2, "\u22122")]
    [InlineData(1000, 500, "1000")]
    public void A_tick_is_written_with_the_decimals_its_step_needs(double value, double step, string expected) =>
        Assert.Equal(expected, Ticks.Text(value, step));
}
