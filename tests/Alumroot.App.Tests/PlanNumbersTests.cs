using Alumroot.App.Words;
using Alumroot.Quantities;

namespace Alumroot.App.Tests;

/// <summary>How numbers of a plan are cut for the page.</summary>
public sealed class PlanNumbersTests
{
    [Theory]
    [InlineData("19.7 g (18.4 to 21.6)", "19.7", "g", "18.4 to 21.6")]
    [InlineData("50.0 g", "50.0", "g", null)]
    [InlineData("6.5 (6.2 to 6.9)", "6.5", null, "6.2 to 6.9")]
    [InlineData("< 0.1 g", "< 0.1", "g", null)]
    [InlineData("1 lb 3.2 oz", "1", "lb 3.2 oz", null)]
    public void Figure_unit_and_span_are_taken_apart(string text, string value, string? unit, string? span) =>
        Assert.Equal(new Shown(value, unit, span), Shown.From(text));

    [Theory]
    [InlineData("3.00 L", "3 L")]
    [InlineData("28.0 mL", "28 mL")]
    [InlineData("4.50 L (3.50 to 4.80)", "4.5 L (3.5 to 4.8)")]
    [InlineData("100 g", "100 g")]
    [InlineData("10.05 g", "10.05 g")]
    [InlineData("0.100 g", "0.1 g")]
    public void Noughts_that_only_fill_are_left_out(string text, string bare) => Assert.Equal(bare, PlanNumbers.Bare(text));

    [Theory]
    [InlineData(133.1, 140)]
    [InlineData(200, 200)]
    [InlineData(7.2, 8)]
    [InlineData(1210, 1300)]
    [InlineData(0, 0)]
    public void Water_to_dissolve_in_is_rounded_up(double millilitres, double enough) => Assert.Equal(enough, PlanNumbers.Enough(millilitres), 9);

    [Theory]
    [InlineData(1.2, 1.5)]
    [InlineData(14.7, 15)]
    [InlineData(15, 15)]
    [InlineData(146, 150)]
    public void A_vessel_is_rounded_up_to_one_that_is_sold(double litres, double sold) => Assert.Equal(sold, PlanNumbers.VesselLitres(litres), 9);

    // The ends of a span go outward, the figures are no more than the span deserves.
    [Theory]
    [InlineData(4124, 1893, 6811, "4100", "1800 to 6900")]
    [InlineData(15.6, 11.4, 20.3, "16", "11 to 21")]
    [InlineData(0.557, 0.55689, 0.55711, "0.557", "0.556 to 0.558")]
    [InlineData(10.2, 0.4, 80, "10", "0 to 80")]
    public void A_span_is_rounded_outward_to_the_figures_it_deserves(double value, double low, double high, string shown, string span) =>
        Assert.Equal((shown, span), (PlanNumbers.For(Plans.Madder).Number(new Estimate(value, low, high), "").Value, PlanNumbers.For(Plans.Madder).Number(new Estimate(value, low, high), "").Span));

    [Theory]
    [InlineData("100 g dry root at 60 °C", "100\u00A0g dry root at 60\u00A0°C")]
    [InlineData("3 L water", "3\u00A0L water")]
    public void A_number_stays_with_its_unit(string text, string held) => Assert.Equal(held, PlanNumbers.Held(text));
}
