using Alumroot.Colour.Colorimetry;
using CsCheck;

namespace Alumroot.Colour.Tests;

/// <summary>The grey scale of ISO 105-A05, from memory: on greys its difference is that of CIELAB, and the grades 4, 3, 2 and 1 lie at 1.7, 3.4, 6.8 and 13.6, as the steps of ISO 105-A02 do.</summary>
public sealed class GreyScaleTests
{
    [Theory]
    [InlineData(0, 5, "5")]
    [InlineData(1.7, 4, "4")]
    [InlineData(2.5, 3.53, "3-4")]
    [InlineData(3.4, 3, "3")]
    [InlineData(6.8, 2, "2")]
    [InlineData(13.6, 1, "1")]
    [InlineData(40, 1, "1")]
    public void Greys_stand_where_the_chips_of_the_scale_stand(double apart, double grade, string reported)
    {
        var before = new Lab(41, 0, 0);
        var after = new Lab(41 + apart, 0, 0);
        Assert.Equal(grade, GreyScale.Grade(before, after), 0.01);
        Assert.Equal(reported, GreyScale.Reported(before, after));
    }

    // By hand: Lab 50 40 0 to 50 30 0: chroma 40 to 30, mean 35, hue 0: x = (80/30)^2 = 7.11, D = -10 x 35 x 0.000816 / 100 = -0.00286; dCF = -9.9971 / (1 + (0.7)^2) = -6.7095.
    [Fact]
    public void A_loss_of_chroma_counts_less_in_a_strong_colour() => Assert.Equal(6.71, GreyScale.Difference(new Lab(50, 40, 0), new Lab(50, 30, 0)), 0.005);

    [Fact]
    public void No_difference_is_below_nothing_and_grades_fall_as_it_grows() => Gen.Select(Gen.Double[5, 95], Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Double[-20, 20]).Sample((l, a, b, d) =>
    {
        var before = new Lab(l, a, b);
        var after = new Lab(Math.Clamp(l + d, 0, 100), a, b);
        Assert.True(GreyScale.Difference(before, after) >= 0);
        Assert.InRange(GreyScale.Grade(before, after), 1, 5);
        Assert.Equal(Math.Abs(after.L - l), GreyScale.Difference(before, after), 1e-6);
    });
}
