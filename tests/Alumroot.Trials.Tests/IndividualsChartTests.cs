using Alumroot.Numerics;
using Alumroot.Trials.Repeats;

namespace Alumroot.Trials.Tests;

/// <summary>Limits of values in order, against the handbook's worked example and against chance.</summary>
public sealed class IndividualsChartTests
{
    // NIST/SEMATECH e-Handbook 6.3.2.2, example of ten flow rates; the data and the printed results (mean 50.81, mean range 1.8778, limits 55.8041 and 45.8159) from memory.
    // That they belong together was checked by hand: the values add up to 508.1, the ranges to 16.9.
    [Fact]
    public void The_handbooks_example_comes_out_as_printed()
    {
        ControlFound found = IndividualsChart.Of([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1])!;
        Assert.Equal(50.81, found.Mean, 1e-9);
        Assert.Equal(1.8778, found.MeanMovingRange, 5e-5);
        Assert.Equal(55.8041, found.Upper, 1e-4);
        Assert.Equal(45.8159, found.Lower, 1e-4);
        Assert.All(found.Points, p => Assert.Equal(ControlSign.Within, p.Sign));
        Assert.Equal([null, 2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5], found.Points.Select(p => p.MovingRange is { } r ? Math.Round(r, 9) : (double?)null));
        Assert.True(found.IsProvisional);
    }

    // Three standard deviations of a normal spread hold 99.73 % (tables of the normal distribution): with the spread known from many values, 27 of 10,000 lie outside.
    [Fact]
    public void Of_many_values_by_chance_hardly_any_lies_outside()
    {
        var random = new SeededRandom(7);
        ControlFound found = IndividualsChart.Of([.. Enumerable.Range(0, 10_000).Select(_ => 5 + 2 * random.NextNormal())])!;
        Assert.Equal(2 * 2 / Math.Sqrt(Math.PI), found.MeanMovingRange, 0.05);
        Assert.InRange(found.Points.Count(p => p.Sign is ControlSign.Above or ControlSign.Below), 10, 45);
    }

    [Fact]
    public void What_moved_is_seen()
    {
        double[] calm = [10, 10.2, 9.9, 10.1, 10, 9.8, 10.1, 10];
        Assert.Equal(ControlSign.Above, IndividualsChart.Of([.. calm, 13])!.Points[^1].Sign);
        Assert.Equal(ControlSign.Below, IndividualsChart.Of([.. calm, 7])!.Points[^1].Sign);
        // Eight in a row on the same side of the mean, the eighth is told (6.3.2).
        double[] shifted = [.. Enumerable.Repeat(0, 8).Select((_, i) => i % 2 * 0.5), .. Enumerable.Repeat(0, 8).Select((_, i) => 1 + i % 2 * 0.5)];
        ControlFound found = IndividualsChart.Of(shifted)!;
        Assert.Equal(ControlSign.RunAbove, found.Points[15].Sign);
        Assert.Equal(ControlSign.Within, found.Points[14].Sign);
        Assert.Equal(ControlSign.RunBelow, found.Points[7].Sign);
    }

    [Fact]
    public void Too_few_have_no_limits_and_a_difference_none_below_nothing()
    {
        Assert.Null(IndividualsChart.Of([1, 2, 3]));
        Assert.Equal(0, IndividualsChart.Of([0.5, 2, 0.4, 1.9], neverBelowNothing: true)!.Lower);
        Assert.True(IndividualsChart.Of([0.5, 2, 0.4, 1.9])!.Lower < 0);
        // Values that are all alike have no width, and none of them lies outside.
        Assert.All(IndividualsChart.Of([0.1, 0.1, 0.1, 0.1, 0.1, 0.1])!.Points, p => Assert.Equal(ControlSign.Within, p.Sign));
    }
}
