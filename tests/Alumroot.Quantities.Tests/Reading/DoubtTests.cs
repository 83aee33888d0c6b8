using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Tests.Reading;

/// <summary>What has two meanings is asked, or taken and shown back where only one of them is usual in the field. Nothing is guessed silently.</summary>
public class DoubtTests
{
    [Fact]
    public void A_weight_of_1_500_g_has_two_readings()
    {
        var two = Assert.IsType<Parsed<Mass>.TwoReadings>(QuantityReader.ReadMass("1,500 g", FieldRules.ReagentMass));
        Assert.Equal((1.5, 1500, Doubt.Separator), (two.First.Value.Grams, two.Second.Value.Grams, two.Doubt));
        Assert.Equal(("1.5 g", "1500 g"), (two.First.Rewritten, two.Second.Rewritten));
    }

    [Fact]
    public void Water_of_1_500_mL_is_taken_and_shown_back()
    {
        var understood = Assert.IsType<Parsed<Volume>.Understood>(QuantityReader.ReadVolume("1,500 mL", FieldRules.Water));
        Assert.Equal(1500, understood.Value.Millilitres);
        Assert.Equal(new Restatement(Doubt.Separator, 1500, "mL"), understood.Restated);
    }

    [Fact]
    public void A_strip_of_7_000_is_seven() =>
        Assert.Equal(7, QuantityReader.ReadPh("7,000", FieldRules.Ph).ValueOrNull!.Value.Value);

    [Theory]
    [InlineData("2 qt", new[] { "2 US qt", "2 imperial qt" })]
    [InlineData("2 pints", new[] { "2 US pt", "2 imperial pt" })]
    [InlineData("20 fl. oz.", new[] { "20 US fl oz", "20 imperial fl oz" })]
    [InlineData("2 cups", new[] { "2 US cup", "2 imperial cup", "2 metric cup" })]
    public void A_kitchen_word_without_its_kitchen_is_asked(string typed, string[] rewritten)
    {
        var two = Assert.IsType<Parsed<Volume>.TwoReadings>(QuantityReader.ReadVolume(typed, FieldRules.Water));
        Assert.Equal(Doubt.Kitchen, two.Doubt);
        Assert.Equal(rewritten, two.Readings.Select(r => r.Rewritten));
        foreach (Reading<Volume> reading in two.Readings)
            Assert.Equal(reading.Value, QuantityReader.ReadVolume(reading.Rewritten, FieldRules.Water).ValueOrNull);
    }

    [Fact]
    public void A_metric_kitchen_has_no_pint_so_it_is_asked_all_the_same() =>
        Assert.IsType<Parsed<Volume>.TwoReadings>(QuantityReader.ReadVolume("2 pints", FieldRules.Water with { Kitchen = KitchenMeasures.Metric }));

    [Fact]
    public void A_quart_and_a_cup_are_of_one_kitchen()
    {
        var two = Assert.IsType<Parsed<Volume>.TwoReadings>(QuantityReader.ReadVolume("1 qt 1 cup", FieldRules.Water));
        Assert.Equal([1182.9411825, 1420.653125], two.Readings.Select(r => Math.Round(r.Value.Millilitres, 7)));
    }

    [Fact]
    public void The_range_of_the_field_does_not_choose_the_kitchen()
    {
        FieldRule<Volume> edge = FieldRules.Water with { SensibleHigh = Volume.FromMillilitres(2000) };
        Assert.IsType<Parsed<Volume>.TwoReadings>(QuantityReader.ReadVolume("2 qt", edge)); // 1893 mL lies inside, 2273 mL outside
    }

    [Fact]
    public void A_spoon_of_water_is_taken_as_metric_and_shown_back()
    {
        var understood = Assert.IsType<Parsed<Volume>.Understood>(QuantityReader.ReadVolume("4 tbsp", FieldRules.Water));
        Assert.Equal((60, new Restatement(Doubt.Kitchen, 4, "metric tbsp")), (understood.Value.Millilitres, understood.Restated));
    }

    [Fact]
    public void Gr_is_gram_or_grain()
    {
        var two = Assert.IsType<Parsed<Mass>.TwoReadings>(QuantityReader.ReadMass("50 gr", FieldRules.ReagentMass));
        Assert.Equal((Doubt.UnitWord, 50, 3.2399455), (two.Doubt, two.First.Value.Grams, Math.Round(two.Second.Value.Grams, 7)));
    }

    [Theory]
    [InlineData("60", "°C", 60)]
    [InlineData("60°", "°C", 60)]
    public void A_temperature_without_a_unit_is_Celsius_and_shown_back(string typed, string symbol, double celsius)
    {
        var understood = Assert.IsType<Parsed<Temperature>.Understood>(QuantityReader.ReadTemperature(typed, FieldRules.BathTemperature));
        Assert.Equal((celsius, new Restatement(Doubt.UnitMissing, celsius, symbol)), (understood.Value.Celsius, understood.Restated));
    }

    [Fact]
    public void Hardness_without_a_unit_is_German_degrees_and_bare_ppm_is_calcium_carbonate()
    {
        var degrees = Assert.IsType<Parsed<Hardness>.Understood>(QuantityReader.ReadHardness("14", FieldRules.WaterHardness));
        Assert.Equal(new Restatement(Doubt.UnitMissing, 14, "°dH"), degrees.Restated);
        var ppm = Assert.IsType<Parsed<Hardness>.Understood>(QuantityReader.ReadHardness("250 ppm", FieldRules.WaterHardness));
        Assert.Equal(new Restatement(Doubt.UnitWord, 250, "ppm CaCO3"), ppm.Restated);
    }

    [Theory]
    [InlineData("98", 98, "%")]
    [InlineData("0.98", 98, "")]
    [InlineData("1", 100, "")]
    public void A_purity_without_its_sign_is_whichever_is_usual(string typed, double percent, string symbol)
    {
        var understood = Assert.IsType<Parsed<Fraction>.Understood>(QuantityReader.ReadFraction(typed, FieldRules.Purity));
        Assert.Equal(percent, understood.Value.Percent, 9);
        Assert.Equal((Doubt.PercentOrRatio, symbol), (understood.Restated!.Doubt, understood.Restated.UnitSymbol));
    }

    [Fact]
    public void A_share_of_0_5_is_asked_where_both_are_usual()
    {
        FieldRule<Fraction> any = FieldRules.Purity with { SensibleLow = Fraction.FromPercent(0) };
        var two = Assert.IsType<Parsed<Fraction>.TwoReadings>(QuantityReader.ReadFraction("0.5", any));
        Assert.Equal((Doubt.PercentOrRatio, 0.5, 50), (two.Doubt, two.First.Value.Percent, two.Second.Value.Percent));
    }

    [Fact]
    public void A_cup_of_powder_is_taken_with_a_wide_span()
    {
        FieldRule<Mass> rule = FieldRules.ReagentMass with { Powder = new PowderDensity(0.6, 1.0), Kitchen = KitchenMeasures.Metric };
        var understood = Assert.IsType<Parsed<Mass>.Understood>(QuantityReader.ReadMass("1 cup", rule));
        Assert.Equal(200, understood.Value.Grams, 9); // 250 mL of 0.8 g/mL
        Assert.Equal(120, understood.Bounds!.Low.Grams, 9); // 250 x 0.6 x 0.8
        Assert.Equal(312.5, understood.Bounds.High.Grams, 9); // 250 x 1.0 x 1.25
        Assert.Equal(new Restatement(Doubt.PowderByVolume, 1, "metric cup"), understood.Restated);
    }

    [Fact]
    public void A_powder_as_heavy_as_a_stone_or_a_span_upside_down_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new PowderDensity(1, 30));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PowderDensity(1.0, 0.6));
    }
}
