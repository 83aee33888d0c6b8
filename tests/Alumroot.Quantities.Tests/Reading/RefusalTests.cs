using Alumroot.Quantities.Reading;
using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Tests.Reading;

/// <summary>One example, at least, for every reason why a text cannot be used, with the data from which the message is made.</summary>
public class RefusalTests
{
    private static Parsed<Mass>.NotUnderstood Mass(string? typed) =>
        Assert.IsType<Parsed<Mass>.NotUnderstood>(QuantityReader.ReadMass(typed, FieldRules.ReagentMass));

    [Theory]
    [InlineData("", UnreadReason.Empty)]
    [InlineData("lots", UnreadReason.NoNumber)]
    [InlineData("g", UnreadReason.NoNumber)]
    [InlineData("1.2.3 g", UnreadReason.NumberUnreadable)]
    [InlineData("1 23 g", UnreadReason.NumberUnreadable)]
    [InlineData("5 0 g", UnreadReason.NumberUnreadable)]
    [InlineData("20-30 g", UnreadReason.SpanTyped)]
    [InlineData("20 g to 30 g", UnreadReason.SpanTyped)]
    [InlineData("20 g - 30 g", UnreadReason.SpanTyped)]
    [InlineData("20 g ± 1", UnreadReason.SpanTyped)]
    [InlineData("3 oz 1 lb", UnreadReason.PartsDoNotAdd)]
    [InlineData("100", UnreadReason.MissingUnit)]
    [InlineData("1 lb 3", UnreadReason.MissingUnit)]
    [InlineData("5o g", UnreadReason.UnknownUnit)]
    [InlineData("50 mL", UnreadReason.WrongKindOfUnit)]
    [InlineData("2 cups", UnreadReason.WrongKindOfUnit)]
    [InlineData("50 °C", UnreadReason.WrongKindOfUnit)]
    [InlineData("-5 g", UnreadReason.Negative)]
    [InlineData("\u22125 g", UnreadReason.Negative)]
    [InlineData("0 g", UnreadReason.Zero)]
    [InlineData("-0 g", UnreadReason.Zero)]
    [InlineData("0.1 mg", UnreadReason.TooSmall)]
    [InlineData("1e9 kg", UnreadReason.TooLarge)]
    [InlineData("99999999999999999999 kg", UnreadReason.TooLarge)]
    public void Every_reason_has_an_example(string? typed, UnreadReason reason) => Assert.Equal(reason, Mass(typed).Reason);

    [Fact]
    public void Nothing_at_all_is_an_answer_where_the_field_allows_it()
    {
        FieldRule<Mass> counted = FieldRules.ReagentMass with { ZeroAllowed = true };
        Assert.Equal(0, Assert.IsType<Parsed<Mass>.Understood>(QuantityReader.ReadMass("0 g", counted)).Value.Grams);
        Assert.Equal(UnreadReason.TooSmall, Assert.IsType<Parsed<Mass>.NotUnderstood>(QuantityReader.ReadMass("0.1 mg", counted)).Reason);
    }

    [Fact]
    public void All_reasons_have_an_example_here()
    {
        UnreadReason[] shown =
        [
            .. new[] { "", "lots", "1.2.3 g", "20-30 g", "3 oz 1 lb", "100", "5o g", "50 mL", "-5 g", "0 g", "0.1 mg", "1e9 kg", new string('5', 200) }.Select(t => Mass(t).Reason),
            Assert.IsType<Parsed<Temperature>.NotUnderstood>(QuantityReader.ReadTemperature("140", FieldRules.BathTemperature)).Reason,
        ];
        Assert.Equal(Enum.GetValues<UnreadReason>().Order(), shown.Distinct().Order());
    }

    [Fact]
    public void A_weight_without_its_unit_offers_grams_and_ounces() =>
        Assert.Equal(["100 g", "100 oz"], Mass("100").Offers.Select(o => o.Rewritten));

    [Fact]
    public void A_doubtful_number_without_its_unit_offers_each_meaning() =>
        Assert.Equal(["1.5 g", "1500 g", "1.5 oz"], Mass("1,500").Offers.Select(o => o.Rewritten));

    [Fact]
    public void Water_without_its_unit_offers_what_is_usual()
    {
        var two = Assert.IsType<Parsed<Volume>.NotUnderstood>(QuantityReader.ReadVolume("2", FieldRules.Water));
        Assert.Equal((UnreadReason.MissingUnit, "2 L"), (two.Reason, Assert.Single(two.Offers).Rewritten));
    }

    [Theory]
    [InlineData("50 grms", "grms", "g")]
    [InlineData("50 gg", "gg", "g")]
    [InlineData("50 onces", "onces", "oz")]
    [InlineData("50 punds", "punds", "lb")]
    [InlineData("50 kilogarms", "kilogarms", "kg")]
    public void An_unknown_unit_is_named_with_the_nearest(string typed, string part, string nearest)
    {
        Parsed<Mass>.NotUnderstood said = Mass(typed);
        Assert.Equal((UnreadReason.UnknownUnit, part, nearest), (said.Reason, said.Part, said.NearestUnits[0]));
    }

    [Theory]
    [InlineData("100 g dry", "100 g")]
    [InlineData("100 g of madder root, chopped small", "100 g")]
    [InlineData("5o g", "50 g")]
    public void A_unit_with_more_words_is_offered_alone(string typed, string offer) =>
        Assert.Equal(offer, Mass(typed).Offers[0].Rewritten);

    [Theory]
    [InlineData("5 #")]
    [InlineData("1 lb 3")]
    public void Nothing_is_offered_where_nothing_is_near(string typed) => Assert.Empty(Mass(typed).Offers);

    [Fact]
    public void A_pH_below_the_scale_is_too_small() =>
        Assert.Equal(UnreadReason.TooSmall, Assert.IsType<Parsed<Ph>.NotUnderstood>(QuantityReader.ReadPh("-1", FieldRules.Ph)).Reason);

    [Fact]
    public void A_unit_like_no_other_gets_no_suggestion() => Assert.Empty(Mass("50 furlongs").NearestUnits);

    [Theory]
    [InlineData("50 mL", QuantityKind.Volume)]
    [InlineData("2 UK pints", QuantityKind.Volume)]
    [InlineData("50 °C", QuantityKind.Temperature)]
    [InlineData("50 µS/cm", QuantityKind.Conductivity)]
    public void A_unit_of_something_else_says_of_what(string typed, QuantityKind kind) => Assert.Equal(kind, Mass(typed).GivenKind);

    [Fact]
    public void Above_boiling_offers_Fahrenheit()
    {
        var said = Assert.IsType<Parsed<Temperature>.NotUnderstood>(QuantityReader.ReadTemperature("140", FieldRules.BathTemperature));
        Reading<Temperature> offer = Assert.Single(said.Offers);
        Assert.Equal((UnreadReason.AboveBoiling, "140 °F"), (said.Reason, offer.Rewritten));
        Assert.Equal(60, offer.Value.Celsius, 9);
        Assert.Equal(100, said.Limit!.Value.Celsius);
    }

    [Fact]
    public void Far_above_boiling_offers_nothing() =>
        Assert.Empty(Assert.IsType<Parsed<Temperature>.NotUnderstood>(QuantityReader.ReadTemperature("400 °F", FieldRules.BathTemperature)).Offers);

    [Fact]
    public void A_freezing_bath_is_too_cold() =>
        Assert.Equal(UnreadReason.TooSmall, Assert.IsType<Parsed<Temperature>.NotUnderstood>(QuantityReader.ReadTemperature("-5", FieldRules.BathTemperature)).Reason);

    [Fact]
    public void A_hardness_of_250_without_a_unit_offers_ppm()
    {
        var said = Assert.IsType<Parsed<Hardness>.NotUnderstood>(QuantityReader.ReadHardness("250", FieldRules.WaterHardness));
        Assert.Equal((UnreadReason.TooLarge, "250 ppm CaCO3"), (said.Reason, Assert.Single(said.Offers).Rewritten));
    }

    [Fact]
    public void Limits_are_named()
    {
        Assert.Equal(1_000_000, Mass("1e9 kg").Limit!.Value.Grams);
        Assert.Equal(0.001, Mass("0.1 mg").Limit!.Value.Grams);
    }

    [Fact]
    public void A_long_text_is_cut() => Assert.Equal(QuantityReader.LongestText, Mass(new string('5', 1_000_000)).Typed.Length);
}
