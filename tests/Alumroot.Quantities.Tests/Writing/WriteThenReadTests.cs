using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;
using Alumroot.Quantities.Writing;
using CsCheck;

namespace Alumroot.Quantities.Tests.Writing;

/// <summary>What the program writes it reads again, in every style, within the rounding of three digits.</summary>
public class WriteThenReadTests
{
    private static readonly Gen<TextStyle> Styles = Gen.Select(Gen.Enum<UnitsShown>(), Gen.Enum<DecimalSign>(), Gen.Enum<KitchenMeasures>()).Select((u, d, k) => new TextStyle(u, d, k));
    private static readonly Gen<double> Sizes = Gen.Double[-1, 5.9].Select(p => Math.Pow(10, p));

    [Fact]
    public void Masses() => Gen.Select(Sizes, Styles).Sample((grams, style) =>
    {
        string text = QuantityText.Of(Mass.FromGrams(grams), style);
        var read = Assert.IsType<Parsed<Mass>.Understood>(QuantityReader.ReadMass(text, FieldRules.ReagentMass));
        Assert.Null(read.Restated);
        Assert.Equal(grams, read.Value.Grams, grams * 0.0051);
    });

    [Fact]
    public void Volumes() => Gen.Select(Gen.Double[0.5, 6.9].Select(p => Math.Pow(10, p)), Styles).Sample((millilitres, style) =>
    {
        string text = QuantityText.Of(Volume.FromMillilitres(millilitres), style);
        var read = Assert.IsType<Parsed<Volume>.Understood>(QuantityReader.ReadVolume(text, FieldRules.Water));
        Assert.Null(read.Restated);
        Assert.Equal(millilitres, read.Value.Millilitres, millilitres * 0.0051);
    });

    [Fact]
    public void Temperatures() => Gen.Select(Gen.Double[0.5, 99.5], Styles).Sample((celsius, style) =>
        Assert.Equal(celsius, QuantityReader.ReadTemperature(QuantityText.Of(Temperature.FromCelsius(celsius), style), FieldRules.BathTemperature).ValueOrNull!.Value.Celsius, 0.51));

    [Fact]
    public void Hardness_conductivity_fraction_and_ph() => Gen.Select(Gen.Double[0.1, 60], Gen.Double[6, 90_000], Gen.Double[20, 100], Gen.Double[2, 12], Styles).Sample((degrees, microsiemens, percent, ph, style) =>
    {
        Assert.Equal(degrees, QuantityReader.ReadHardness(QuantityText.Of(Hardness.FromGermanDegrees(degrees), style), FieldRules.WaterHardness).ValueOrNull!.Value.GermanDegrees, 0.51);
        Assert.Equal(microsiemens, QuantityReader.ReadConductivity(QuantityText.Of(Conductivity.FromMicrosiemensPerCentimetre(microsiemens), style), FieldRules.Conductivity).ValueOrNull!.Value.MicrosiemensPerCentimetre, microsiemens * 0.0051);
        Assert.Equal(percent, QuantityReader.ReadFraction(QuantityText.Of(Fraction.FromPercent(percent), style), FieldRules.Purity).ValueOrNull!.Value.Percent, 0.051);
        Assert.Equal(ph, QuantityReader.ReadPh(QuantityText.Of(Ph.FromValue(ph), style), FieldRules.Ph).ValueOrNull!.Value.Value, 0.051);
    });
}
