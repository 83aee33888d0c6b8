using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Tests.Types;

/// <summary>Literals of published tables, never the formula repeated.</summary>
public class PublishedFactorTests
{
    // NIST Handbook 44, appendix C, section 4: exact values of the avoirdupois and US liquid units.
    [Theory]
    [InlineData(QuantityKind.Mass, "oz", 28.349523125)]
    [InlineData(QuantityKind.Mass, "lb", 453.59237)]
    [InlineData(QuantityKind.Mass, "grain", 0.06479891)]
    [InlineData(QuantityKind.Volume, "US fl oz", 29.5735295625)]
    [InlineData(QuantityKind.Volume, "US cup", 236.5882365)]
    [InlineData(QuantityKind.Volume, "US pt", 473.176473)]
    [InlineData(QuantityKind.Volume, "US qt", 946.352946)]
    [InlineData(QuantityKind.Volume, "US gal", 3785.411784)]
    // Weights and Measures Act 1985 (UK), schedule 1 part IV: gallon 4.54609 cubic decimetres, pint an eighth, fluid ounce a 20th of a pint.
    [InlineData(QuantityKind.Volume, "imperial gal", 4546.09)]
    [InlineData(QuantityKind.Volume, "imperial qt", 1136.5225)]
    [InlineData(QuantityKind.Volume, "imperial pt", 568.26125)]
    [InlineData(QuantityKind.Volume, "imperial fl oz", 28.4130625)]
    public void Exact_factors_are_those_of_the_law(QuantityKind kind, string symbol, double published) =>
        Assert.Equal(published, UnitTable.Get(kind, symbol).ToBase);

    // NIST SP 430 (household weights and measures): three teaspoons make a tablespoon, two tablespoons a fluid ounce, eight fluid ounces a cup.
    [Fact]
    public void Kitchen_units_nest()
    {
        double Ml(string symbol) => UnitTable.Get(QuantityKind.Volume, symbol).ToBase;
        Assert.Equal(Ml("US tbsp"), 3 * Ml("US tsp"), 12);
        Assert.Equal(Ml("US fl oz"), 2 * Ml("US tbsp"), 12);
        Assert.Equal(Ml("US cup"), 8 * Ml("US fl oz"), 10);
        Assert.Equal(Ml("US gal"), 16 * Ml("US cup"), 9);
        Assert.Equal(Ml("imperial pt"), 20 * Ml("imperial fl oz"), 10);
    }

    // NIST SP 811, B.8 and NIST's fixed points: water freezes at 32 F, boils at 212 F, and -40 is -40; 60 C is 140 F.
    [Theory]
    [InlineData(0, 32)]
    [InlineData(100, 212)]
    [InlineData(-40, -40)]
    [InlineData(60, 140)]
    public void Fahrenheit_and_Celsius_agree_at_known_points(double celsius, double fahrenheit)
    {
        Assert.Equal(fahrenheit, Temperature.FromCelsius(celsius).Fahrenheit, 10);
        Assert.Equal(celsius, Temperature.FromFahrenheit(fahrenheit).Celsius, 10);
        Assert.Equal(celsius + 273.15, Temperature.FromCelsius(celsius).Kelvin, 10);
    }

    // Conversion table printed by water works and test kits (1 °dH = 0.1783 mmol/L = 1.783 °fH = 17.85 ppm; 1 gpg = 17.12 ppm; 1 °e = 14.25 ppm): from memory, three to four figures.
    [Theory]
    [InlineData("°dH", 17.85, 0.01)]
    [InlineData("°fH", 10.00, 0.005)]
    [InlineData("gpg", 17.12, 0.01)]
    [InlineData("°e", 14.25, 0.01)]
    [InlineData("mmol/L", 100.09, 0.01)]
    [InlineData("mg/L Ca", 2.497, 0.001)]
    public void Hardness_units_match_the_printed_table_in_ppm(string symbol, double ppm, double within)
    {
        Unit unit = UnitTable.Get(QuantityKind.Hardness, symbol);
        Assert.Equal(ppm, Hardness.FromMillimolesPerLitre(unit.InBase(1)).MilligramsCalciumCarbonatePerLitre, within);
    }

    [Fact]
    public void A_standard_atmosphere_is_101_325_kilopascals() => // NIST SP 811, B.8, exact
        Assert.Equal(101.325, Pressure.FromAtmospheres(1).Kilopascals);

    // FAO glossary figure: 50 mg/L CaCO3 is 2.805 German degrees (rounded molar masses, so three figures).
    [Fact]
    public void Fifty_ppm_is_2_8_German_degrees() =>
        Assert.Equal(2.80, Hardness.FromMilligramsCalciumCarbonatePerLitre(50).GermanDegrees, 0.01);
}
