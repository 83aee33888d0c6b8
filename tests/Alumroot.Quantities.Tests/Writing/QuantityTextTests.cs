using Alumroot.Quantities.Units;
using Alumroot.Quantities.Writing;

namespace Alumroot.Quantities.Tests.Writing;

/// <summary>How quantities look. Conversions by hand from the exact factors of NIST Handbook 44 appendix C.</summary>
public class QuantityTextTests
{
    private static readonly TextStyle Comma = new(Decimals: DecimalSign.Comma);
    private static readonly TextStyle Imperial = new(UnitsShown.Kitchen, Kitchen: KitchenMeasures.Imperial);

    [Theory]
    [InlineData(0, "0 g")]
    [InlineData(0.12345, "0.123 g")]
    [InlineData(1.2345, "1.23 g")]
    [InlineData(19.74, "19.7 g")]
    [InlineData(99.96, "100 g")]
    [InlineData(1234.5, "1235 g")]
    [InlineData(12345, "12.3 kg")]
    public void Mass_without_a_scale(double grams, string text) => Assert.Equal(text, QuantityText.Of(Mass.FromGrams(grams)));

    [Theory]
    [InlineData(19.74, 0.1, "19.7 g")]
    [InlineData(19.74, 0.01, "19.74 g")]
    [InlineData(19.74, 1, "20 g")]
    [InlineData(19.74, 0.5, "19.5 g")]
    [InlineData(19.76, 0.5, "20.0 g")]
    [InlineData(19.74, 5, "20 g")]
    [InlineData(1234.56, 0.1, "1234.6 g")]
    [InlineData(0.04, 0.1, "< 0.1 g")]
    [InlineData(0.05, 0.1, "0.1 g")]
    [InlineData(0, 0.1, "0.0 g")]
    public void Mass_never_shows_what_the_scale_does_not(double grams, double step, string text) =>
        Assert.Equal(text, QuantityText.Of(Mass.FromGrams(grams), scaleStep: Mass.FromGrams(step)));

    [Theory]
    [InlineData(50, 0, "1.76 oz")]
    [InlineData(50, 0.1, "1.76 oz")]
    [InlineData(50, 1, "1.8 oz")]
    [InlineData(538.640939375, 0, "1 lb 3.0 oz")]
    [InlineData(453, 1, "1 lb 0.0 oz")]
    public void Mass_in_a_kitchen(double grams, double step, string text) =>
        Assert.Equal(text, QuantityText.Of(Mass.FromGrams(grams), TextStyle.KitchenUs, step > 0 ? Mass.FromGrams(step) : null));

    [Fact]
    public void A_span_is_rounded_outward()
    {
        var grams = new Estimate(19.7, 18.44, 21.51);
        Assert.Equal("19.7 g (18.4 to 21.6)", QuantityText.OfMass(grams, scaleStep: Mass.FromGrams(0.1)));
        Assert.Equal("20 g (18 to 22)", QuantityText.OfMass(grams, scaleStep: Mass.FromGrams(1)));
        Assert.Equal("19,7 g (18,4 to 21,6)", QuantityText.OfMass(grams, Comma));
    }

    [Fact]
    public void Ends_that_lie_on_a_step_stay_there() => // 18.4 / 0.1 is 183.99999999999997 in binary
        Assert.Equal("19.7 g (18.4 to 21.6)", QuantityText.OfMass(new Estimate(19.7, 18.4, 21.6), scaleStep: Mass.FromGrams(0.1)));

    [Fact]
    public void An_exact_value_has_no_span() => Assert.Equal("50.0 g", QuantityText.OfMass(Estimate.Exact(50)));

    [Theory]
    [InlineData(750, "750 mL")]
    [InlineData(999.4, "999 mL")]
    [InlineData(999.6, "1.00 L")]
    [InlineData(1250, "1.25 L")]
    [InlineData(12_500, "12.5 L")]
    public void Volume_in_metric(double millilitres, string text) => Assert.Equal(text, QuantityText.Of(Volume.FromMillilitres(millilitres)));

    [Fact]
    public void Volume_in_a_kitchen_names_whose()
    {
        Assert.Equal("6.76 US fl oz", QuantityText.Of(Volume.FromMillilitres(200), TextStyle.KitchenUs));
        Assert.Equal("2.11 US qt", QuantityText.Of(Volume.FromLitres(2), TextStyle.KitchenUs));
        Assert.Equal("7.04 imperial fl oz", QuantityText.Of(Volume.FromMillilitres(200), Imperial));
        Assert.Equal("1.76 imperial qt", QuantityText.Of(Volume.FromLitres(2), Imperial));
        Assert.Equal("2.11 US qt (2.00 to 2.23)", QuantityText.OfVolume(new Estimate(2000, 1900, 2101), TextStyle.KitchenUs));
    }

    [Fact]
    public void The_other_quantities()
    {
        Assert.Equal("60 °C", QuantityText.Of(Temperature.FromCelsius(60.2)));
        Assert.Equal("140 °F", QuantityText.Of(Temperature.FromCelsius(60), TextStyle.KitchenUs));
        Assert.Equal("-5 °C", QuantityText.Of(Temperature.FromCelsius(-5)));
        Assert.Equal("0 °C", QuantityText.Of(Temperature.FromCelsius(-0.2)));
        Assert.Equal("6,5", QuantityText.Of(Ph.FromValue(6.52), Comma));
        Assert.Equal("6.5 (6.0 to 7.0)", QuantityText.OfPh(new Estimate(6.4, 6.2, 6.9), step: 0.5));
        Assert.Equal("14 °dH", QuantityText.Of(Hardness.FromGermanDegrees(14)));
        Assert.Equal("200 µS/cm", QuantityText.Of(Conductivity.FromMicrosiemensPerCentimetre(200)));
        Assert.Equal("12.3 mS/cm", QuantityText.Of(Conductivity.FromMicrosiemensPerCentimetre(12_345)));
        Assert.Equal("98 %", QuantityText.Of(Fraction.FromPercent(98)));
        Assert.Equal("36.9 %", QuantityText.Of(Fraction.FromRatio(0.369)));
        Assert.Equal("100 %", QuantityText.Of(Fraction.Whole));
        Assert.Equal("4.20 L (3.90 to 4.60)", QuantityText.Of(new Estimate(4.2, 3.9, 4.6), "L"));
    }

    [Theory]
    [InlineData(100, 95, 105, Closeness.Close)]
    [InlineData(100, 94, 105, Closeness.Fair)]
    [InlineData(100, 80, 120, Closeness.Fair)]
    [InlineData(100, 79, 120, Closeness.Rough)]
    [InlineData(0, -1, 1, Closeness.Rough)]
    [InlineData(0, 0, 0, Closeness.Close)]
    [InlineData(-100, -105, -95, Closeness.Close)]
    public void One_word_for_the_width(double value, double low, double high, Closeness word) =>
        Assert.Equal(word, new Estimate(value, low, high).Closeness());
}
