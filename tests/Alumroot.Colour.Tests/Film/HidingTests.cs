using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Quantities;

namespace Alumroot.Colour.Tests.Film;

/// <summary>In which thickness a coat hides, from its colours: against the forms of Kubelka 1948 (equations with a, b and coth), written here a second time for grey films.</summary>
public sealed class HidingTests
{
    private const double Black = 0.04, White = 0.82;

    [Theory]
    [InlineData(0.1, 2)]
    [InlineData(0.5, 0.8)]
    [InlineData(0.02, 4)]
    public void A_grey_coat_hides_where_the_formula_says(double ratio, double scattered)
    {
        double want = 1;
        while (Over(ratio, scattered * want, Black) / Over(ratio, scattered * want, White) < ThreeBandHiding.HidingRatio) want += 1e-4;
        ThreeBandHiding hiding = Coat(ratio, scattered);
        Assert.Equal(Over(ratio, scattered, Black) / Over(ratio, scattered, White), hiding.ContrastRatio, 1e-6);
        Assert.Equal(want, hiding.TimesToHide!.Value, 2e-3);
        Estimate span = hiding.TimesToHideSpan(1)!.Value;
        Assert.InRange(span.Value, span.Low, span.High);
        Assert.True(span.Low < want && want < span.High);
        // Twice the doubt, a wider span.
        Assert.True(hiding.TimesToHideSpan(2)!.Value.High > span.High);
    }

    [Fact]
    public void A_coat_that_hides_needs_no_more_and_a_clear_one_never_does()
    {
        Assert.Null(Coat(0.5, 20).TimesToHide);
        Assert.True(Coat(0.5, 20).ContrastRatio > 0.99);
        // Over black no lighter than the card: nothing is scattered.
        Assert.Null(new ThreeBandHiding(new ColourDrawdown(Grey(Black), Grey(Black), Grey(White), Grey(White))).TimesToHide);
    }

    private static ThreeBandHiding Coat(double ratio, double scattered) => new(new ColourDrawdown(Grey(Over(ratio, scattered, Black)), Grey(Black), Grey(Over(ratio, scattered, White)), Grey(White)));

    private static double Over(double ratio, double scattered, double ground)
    {
        double a = 1 + ratio, b = Math.Sqrt(a * a - 1), q = b / Math.Tanh(b * scattered);
        return (1 - ground * (a - q)) / (a - ground + q);
    }

    // L* by the definition of CIE 15.
    private static Lab Grey(double y) => new(116 * Math.Cbrt(y) - 16, 0, 0);
}
