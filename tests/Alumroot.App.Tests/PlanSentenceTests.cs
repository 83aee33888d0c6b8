using Alumroot.App.Requests;
using Alumroot.App.Words;

namespace Alumroot.App.Tests;

/// <summary>The plan read aloud.</summary>
public sealed class PlanSentenceTests
{
    // The form of the sentence is the interface brief's own: "100 g dry madder root in 3 L tap water (14 dH, assumed), 50 g potash alum, soda ash in water, at 60 C, to pH 6.5."
    [Fact]
    public void A_plan_is_one_sentence() =>
        Assert.Equal("100 g dry madder root in 3 L water (14 °dH, assumed), 50 g potash alum, soda ash in water, at 60 °C, to pH 6.5.", PlanSentence.Text(Plans.Madder));

    [Fact]
    public void What_is_assumed_is_said_with_about() =>
        Assert.Equal("100 g dry madder root in about 3 L water (14 °dH, assumed), about 50 g potash alum, soda ash in water, at about 60 °C, to about pH 6.5.",
            Sentence((PlanFields.Dyestuff, "madder"), (PlanFields.Dry, "100 g"), (PlanFields.Salt, "potash-alum"), (PlanFields.Alkali, "soda-ash")));

    [Fact]
    public void Two_salts_and_a_poured_alkali_that_goes_in_first() =>
        Assert.Equal("1 L water (5 °dH), 20 g blue vitriol (copper sulfate), 5 g Epsom salt, wood-ash lye first, at 20 °C, until all the metal is down.",
            Sentence((PlanFields.Water, "1 L"), (PlanFields.Hardness, "5 dH"), (PlanFields.Salt, "copper-sulfate"), (PlanFields.SaltAmount, "20 g"), (PlanFields.SecondSalt, "epsom-salt"), (PlanFields.SecondSaltAmount, "5 g"),
                (PlanFields.Alkali, "wood-ash-lye"), (PlanFields.AlkaliStrength, "0.8 mol/L"), (PlanFields.Order, "alkali-first"), (PlanFields.Temperature, "20 C"), (PlanFields.Aim, "down")));

    // 1 oz = 28.349523125 g, 1 US quart = 946.352946 mL (NIST Handbook 44, appendix C); 140 F is 60 C.
    [Fact]
    public void In_a_kitchen_it_speaks_of_ounces_quarts_and_fahrenheit() =>
        Assert.Equal("3.5 oz dry weld in 2 US qt water (14 °dH, assumed), 1.8 oz potash alum, soda ash in water, at 140 °F, with 0.6 oz of it.",
            Sentence((PlanFields.Dyestuff, "weld"), (PlanFields.Dry, "3.5 oz"), (PlanFields.Water, "2 US qt"), (PlanFields.Salt, "potash-alum"), (PlanFields.SaltAmount, "1.8 oz"), (PlanFields.Alkali, "soda-ash"),
                (PlanFields.AlkaliAmount, "0.6 oz"), (PlanFields.Temperature, "140 F"), (PlanFields.Units, "kitchen")));

    [Fact]
    public void Every_phrase_leads_to_a_field_and_joining_words_to_none()
    {
        IReadOnlyList<SentencePart> parts = PlanSentence.Of(Plans.Madder);
        Assert.Equal(["dry", "water", "hardness", "salt-amount", "alkali", "temp", "to-ph"], parts.Select(p => p.Field).OfType<string>());
        Assert.Equal("in", Assert.Single(parts, p => p.Field is null).Text);
        Assert.All(parts.Select(p => p.Field).OfType<string>(), field => Assert.Contains(field, PlanFields.All));
    }

    [Fact]
    public void A_request_in_trouble_has_no_sentence() =>
        Assert.Equal("", Sentence((PlanFields.Salt, "potash-alum"), (PlanFields.Alkali, "soda-ash"), (PlanFields.SaltAmount, "5o g")));

    [Theory]
    [InlineData("madder", "madder root")]
    [InlineData("onion-skin", "onion skins")]
    [InlineData("buckthorn-unripe", "Persian berries")]
    [InlineData("bedstraw", "Lady's bedstraw")]
    [InlineData("cochineal", "cochineal")]
    public void A_dyestuff_is_named_as_inside_a_sentence(string key, string noun) =>
        Assert.Equal(noun, PlanSentence.NounOf(Catalogue.CatalogueData.Embedded.FindDyestuff(key)));

    private static string Sentence(params (string, string)[] fields) => PlanSentence.Text(PlanMaker.Answer(Plans.Of(fields)));
}
