using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Tests.Reading;

/// <summary>Units as people write them. Expected values are literals from NIST Handbook 44 appendix C, NIST SP 811 and the UK Act of 1985 (see PublishedFactorTests).</summary>
public class UnitReadingTests
{
    [Theory]
    [InlineData("100g", 100)]
    [InlineData("100 g", 100)]
    [InlineData("100 grams", 100)]
    [InlineData("0,1 kg", 100)]
    [InlineData("10 dkg", 100)]
    [InlineData("500 mg", 0.5)]
    [InlineData("3.5oz", 99.2233309375)]
    [InlineData("1.8 oz", 51.029141625)]
    [InlineData("2 LBS.", 907.18474)]
    [InlineData("1 lb 3 oz", 538.640939375)]
    [InlineData("1lb3oz", 538.640939375)]
    [InlineData("1 lb, 3 oz", 538.640939375)]
    [InlineData("1 lb and 3½ oz", 552.8157009375)]
    [InlineData("1 kg 200 g", 1200)]
    public void Masses(string typed, double grams)
    {
        var understood = Assert.IsType<Parsed<Mass>.Understood>(QuantityReader.ReadMass(typed, FieldRules.ReagentMass));
        Assert.Equal(grams, understood.Value.Grams, 9);
        Assert.Null(understood.Restated);
    }

    [Theory]
    [InlineData("2L", 2000)]
    [InlineData("2 l", 2000)]
    [InlineData("2 litres", 2000)]
    [InlineData("500 ML", 500)]
    [InlineData("500 cm3", 500)]
    [InlineData("500 cm³", 500)]
    [InlineData("50 cl", 500)]
    [InlineData("5 dl", 500)]
    [InlineData("2 L 300 mL", 2300)]
    [InlineData("2 US qt", 1892.705892)]
    [InlineData("2 U.S. quarts", 1892.705892)]
    [InlineData("2 qt US", 1892.705892)]
    [InlineData("2 imperial pints", 1136.5225)]
    [InlineData("2 UK pt", 1136.5225)]
    [InlineData("2 metric cups", 500)]
    [InlineData("1 US gal 1 US cup", 4022.0000205)]
    [InlineData("1 US pt 2 fl oz", 532.323532125)]
    public void Volumes(string typed, double millilitres)
    {
        var understood = Assert.IsType<Parsed<Volume>.Understood>(QuantityReader.ReadVolume(typed, FieldRules.Water));
        Assert.Equal(millilitres, understood.Value.Millilitres, 9);
        Assert.Null(understood.Restated);
    }

    [Theory]
    [InlineData("60C", 60)]
    [InlineData("60 °C", 60)]
    [InlineData("60 ºC", 60)]
    [InlineData("60 ℃", 60)]
    [InlineData("60 degrees C", 60)]
    [InlineData("140F", 60)]
    [InlineData("140 °F", 60)]
    [InlineData("140 deg Fahrenheit", 60)]
    [InlineData("333.15 K", 60)]
    public void Temperatures(string typed, double celsius) =>
        Assert.Equal(celsius, Assert.IsType<Parsed<Temperature>.Understood>(QuantityReader.ReadTemperature(typed, FieldRules.BathTemperature)).Value.Celsius, 9);

    [Theory]
    [InlineData("140F")]
    [InlineData("60")]
    [InlineData("333.15 K")]
    public void A_round_temperature_stays_round(string typed) =>
        Assert.Equal(60, QuantityReader.ReadTemperature(typed, FieldRules.BathTemperature).ValueOrNull!.Value.Celsius);

    [Theory]
    [InlineData("14dH", 14)]
    [InlineData("14 °dH", 14)]
    [InlineData("14 °d", 14)]
    [InlineData("2,5 mmol/L", 14.019246)]
    [InlineData("25 °fH", 14.007)]
    [InlineData("25 °f", 14.007)]
    [InlineData("250 ppm CaCO3", 14.007)]
    [InlineData("250 mg/L CaCO₃", 14.007)]
    [InlineData("14.6 gpg", 14.003)]
    [InlineData("17.5 °e", 13.976)]
    [InlineData("100 mg/L Ca", 13.992)]
    public void Hardness_of_water(string typed, double germanDegrees) => // conversions by hand from 10 mg CaO, 10 mg CaCO3 and one grain per gallon
        Assert.Equal(germanDegrees, Assert.IsType<Parsed<Hardness>.Understood>(QuantityReader.ReadHardness(typed, FieldRules.WaterHardness)).Value.GermanDegrees, 0.001);

    [Theory]
    [InlineData("200uS", 200)]
    [InlineData("200 µS/cm", 200)]
    [InlineData("200 μS/cm", 200)]
    [InlineData("0.2 mS/cm", 200)]
    [InlineData("0.02 S/m", 200)]
    [InlineData("20 mS/m", 200)]
    public void Conductivities(string typed, double microsiemens) =>
        Assert.Equal(microsiemens, Assert.IsType<Parsed<Conductivity>.Understood>(QuantityReader.ReadConductivity(typed, FieldRules.Conductivity)).Value.MicrosiemensPerCentimetre, 9);

    [Theory]
    [InlineData("98%", 98)]
    [InlineData("98 %", 98)]
    [InlineData("98 percent", 98)]
    [InlineData("980 ‰", 98)]
    [InlineData("99,5 per cent", 99.5)]
    public void Fractions(string typed, double percent) =>
        Assert.Equal(percent, Assert.IsType<Parsed<Fraction>.Understood>(QuantityReader.ReadFraction(typed, FieldRules.Purity)).Value.Percent, 9);

    [Theory]
    [InlineData("6.5")]
    [InlineData("6,5")]
    [InlineData("pH 6.5")]
    [InlineData("ph=6,5")]
    [InlineData("6½ pH")]
    public void Phs(string typed)
    {
        var understood = Assert.IsType<Parsed<Ph>.Understood>(QuantityReader.ReadPh(typed, FieldRules.Ph));
        Assert.Equal((6.5, typed), (understood.Value.Value, understood.Typed));
    }

    [Theory]
    [InlineData("0.5 mol/L", 0.5)]
    [InlineData("0,5M", 0.5)]
    [InlineData("500 mmol/L", 0.5)]
    [InlineData("0.5 N", 0.5)]
    public void Lyes(string typed, double molesPerLitre) =>
        Assert.Equal(molesPerLitre, Assert.IsType<Parsed<AlkalinityOfLye>.Understood>(QuantityReader.ReadAlkalinity(typed, FieldRules.LyeAlkalinity)).Value.MolesPerLitre, 12);

    [Theory]
    [InlineData(KitchenMeasures.Us, 473.176473)]
    [InlineData(KitchenMeasures.Imperial, 568.26125)]
    [InlineData(KitchenMeasures.Metric, 500)]
    public void The_studio_s_kitchen_settles_two_cups(KitchenMeasures kitchen, double millilitres) =>
        Assert.Equal(millilitres, QuantityReader.ReadVolume("2 cups", FieldRules.Water with { Kitchen = kitchen }).ValueOrNull!.Value.Millilitres, 9);
}
