using Alumroot.App.Charts;

namespace Alumroot.App.Tests;

/// <summary>Places on a drawing. The expectations are worked out by hand from the definitions.</summary>
public sealed class ChartGeometryTests
{
    private static readonly Scale Plot = new(ChartSize.Wide, [0, 5, 10], [0, 2, 4]);

    [Fact]
    public void The_ends_of_the_axes_are_the_edges_of_the_plot()
    {
        Assert.Equal(Plot.Left, Plot.X(0), 9);
        Assert.Equal(Plot.Right, Plot.X(10), 9);
        Assert.Equal(Plot.Bottom, Plot.Y(0), 9);
        Assert.Equal(Plot.Top, Plot.Y(4), 9);
        Assert.Equal((Plot.Left + Plot.Right) / 2, Plot.X(5), 9);
    }

    [Fact]
    public void Values_outside_are_held_at_the_edge()
    {
        Assert.Equal(Plot.Right, Plot.X(99), 9);
        Assert.Equal(Plot.Bottom, Plot.Y(-1), 9);
    }

    [Fact]
    public void The_upper_end_can_lie_above_the_last_tick()
    {
        var scale = new Scale(ChartSize.Narrow, [0, 1], [2, 4, 6, 8, 10], yTop: 11);
        Assert.Equal(scale.Top, scale.Y(11), 9);
        Assert.True(scale.Y(10) > scale.Top);
    }

    [Fact]
    public void A_line_and_a_band_become_path_text_with_points()
    {
        Assert.Matches(@"^M[\d.]+ [\d.]+L[\d.]+ [\d.]+$", Plot.Line([0, 10], [0, 4]));
        Assert.Matches(@"^M[\d.]+ [\d.]+(L[\d.]+ [\d.]+){3}Z$", Plot.Area(new ChartBand([0, 10], [0, 1], [1, 2])));
    }

    [Theory]
    [InlineData(-1, 10)]
    [InlineData(0, 10)]
    [InlineData(1, 15)]
    [InlineData(2, 20)]
    [InlineData(9, 40)]
    public void Reading_off_a_line_goes_straight_between_points(double at, double expected) =>
        Assert.Equal(expected, Reading.At([0, 2, 4], [10, 20, 40], at), 9);

    [Fact]
    public void Words_at_the_line_ends_keep_apart_and_inside()
    {
        IReadOnlyList<EndWord> words = EndWord.Placed([("lower", 300), ("upper", 298)], 20, 40, 310);
        Assert.Equal(["upper", "lower"], words.Select(w => w.Text));
        Assert.True(words[1].Y - words[0].Y >= 20);
        Assert.All(words, word => Assert.InRange(word.Y, 40, 310));
    }
}
