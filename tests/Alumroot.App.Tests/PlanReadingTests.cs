using Alumroot.App.Requests;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Tests;

/// <summary>The same plan, however its amounts are written. Factors: NIST Handbook 44, appendix C (1 oz = 28.349523125 g, 1 US cup = 236.5882365 mL); F = 1.8 C + 32 exactly.</summary>
public sealed class PlanReadingTests
{
    /// <summary>Every field that takes an amount, with a unit that fits it.</summary>
    public static TheoryData<string, string> Amounts { get; } = new()
    {
        { PlanFields.Dry, " oz" }, { PlanFields.Fresh, " kg" }, { PlanFields.Water, " L" }, { PlanFields.SaltAmount, " oz" }, { PlanFields.SecondSaltAmount, " g" }, { PlanFields.AlkaliAmount, " oz" },
        { PlanFields.Vessel, " gal US" }, { PlanFields.Hardness, " mmol/L" }, { PlanFields.WashTo, " mS/cm" }, { PlanFields.BakedBefore, " kg" }, { PlanFields.Scale, " g" }, { PlanFields.Strips, "" },
    };

    [Theory]
    [MemberData(nameof(Amounts))]
    public void Comma_point_and_fraction_are_the_same(string field, string unit)
    {
        string[] same = [.. new[] { "1,5", "1.5", "1½", "1 1/2" }.Select(number => Told(With(field, number + unit)))];
        Assert.NotEqual("", same[0]);
        Assert.All(same, told => Assert.Equal(same[0], told));
        Assert.NotEqual(same[0], Told(With(field, "1.4" + unit)));
    }

    [Theory]
    [InlineData(PlanFields.Temperature, "60 C", "140 F")]
    [InlineData(PlanFields.Dry, "100 g", "3.527396195 oz")]
    [InlineData(PlanFields.SaltAmount, "50 g", "1.7636980975 oz")]
    [InlineData(PlanFields.Water, "2.8390588 L", "12 US cups")]
    [InlineData(PlanFields.Hardness, "14 dH", "2.49656722 mmol/L")]
    public void Units_may_be_swapped(string field, string metric, string other)
    {
        LakePlan a = Plan(With(field, metric)), b = Plan(With(field, other));
        Assert.Equal(a.Alkali.Value, b.Alkali.Value, 4);
        Assert.Equal(a.EndPh.Value, b.EndPh.Value, 4);
        Assert.Equal(a.GasLitres.Value, b.GasLitres.Value, 4);
    }

    [Theory]
    [InlineData(PlanFields.SaltAmount, "1,500 g", "1.5 g", "1500 g")]
    [InlineData(PlanFields.Dry, "1.500 g", "1.5 g", "1500 g")]
    [InlineData(PlanFields.Temperature, "140", "140 °F")]
    public void A_doubtful_text_is_asked_about_and_each_offer_ends_the_doubt(string field, string typed, params string[] offers)
    {
        PlanAnswer answer = PlanMaker.Answer(With(field, typed));
        Assert.Null(answer.Plan);
        Assert.Equal(offers, answer.Fields[field].Offers);
        Assert.All(offers, offer => Assert.NotNull(PlanMaker.Answer(With(field, offer)).Plan));
    }

    [Fact]
    public void Cups_are_asked_about_once()
    {
        Assert.True(PlanMaker.Answer(With(PlanFields.Water, "12 cups")).Fields[PlanFields.Water].Offers.Count >= 2);
        Assert.NotNull(PlanMaker.Answer(With(PlanFields.Water, "12 cups").With(PlanFields.Kitchen, "us")).Plan);
    }

    [Theory]
    [InlineData(PlanFields.Salt, "alum", "potash-alum")]
    [InlineData(PlanFields.Alkali, "soda", "soda-crystals")]
    public void A_name_of_several_packets_is_asked_about(string field, string typed, string one)
    {
        PlanAnswer answer = PlanMaker.Answer(With(field, typed));
        Assert.Contains(one, answer.Fields[field].Offers);
        Assert.All(answer.Fields[field].Offers, offer => Assert.NotNull(PlanMaker.Answer(With(field, offer)).Plan));
    }

    // Slaked lime: 0.165 g in 100 g of water at 20 C (Data/solubility.csv, table 04-26); 9 litres for a few grams of it would be no plan.
    [Theory]
    [InlineData("slaked-lime")]
    [InlineData("chalk")]
    [InlineData("magnesia")]
    public void What_hardly_dissolves_is_stirred_in_as_a_milk(string alkali)
    {
        LakePlan plan = Plan(Plans.MadderRequest.With(PlanFields.Alkali, alkali).With(PlanFields.ToPh, null).With(PlanFields.Aim, "down"));
        Assert.InRange(plan.AlkaliWaterMillilitres / plan.Alkali.Value, 8, 12);
        Assert.Contains("milk", Words.AlkaliHandling.Sentence(plan.Input.Alkali, "100 mL"), StringComparison.Ordinal);
    }

    // Solid into cold water, never water onto the solid: the usual rule of every laboratory manual; common practice, no source.
    [Fact]
    public void Caustic_goes_into_cold_water_and_its_danger_is_said_first()
    {
        PlanAnswer answer = PlanMaker.Answer(Plans.MadderRequest.With(PlanFields.Alkali, "caustic-soda"));
        Assert.Contains("cold water, never water onto it", Words.AlkaliHandling.Sentence(answer.Plan!.Input.Alkali, "100 mL"), StringComparison.Ordinal);
        Assert.Contains("caustic", answer.Cautions.Where(c => c.Level == Parts.CautionWord.Mind).Take(3).Select(c => c.Key));
    }

    private static PlanRequest With(string field, string typed)
    {
        PlanRequest request = Plans.MadderRequest.With(field, typed);
        return field switch
        {
            PlanFields.Fresh => request.With(PlanFields.Dry, null),
            PlanFields.SecondSaltAmount => request.With(PlanFields.SecondSalt, "calcium-chloride"),
            PlanFields.BakedBefore => request.With(PlanFields.Alkali, "home-baked-soda").With(PlanFields.BakedAfter, "950 g"),
            _ => request,
        };
    }

    private static LakePlan Plan(PlanRequest request) => PlanMaker.Answer(request).Plan ?? throw new InvalidOperationException(request.Address);

    // The whole input, in its own words.
    private static string Told(PlanRequest request)
    {
        LakePlanInput? i = PlanMaker.Answer(request).Input;
        return i is null ? "" : FormattableString.Invariant(
            $"{i.DryDyestuff} {i.Water} {i.Hardness} {string.Join('+', i.Salts.Select(s => $"{s.Substance.Key} {s.Amount}"))} {i.Alkali.BaseMolPerUnit:R} {i.Temperature} {i.Aim} {i.Vessel} {i.ScaleStep} {i.StripStepPh} {i.WashTo}");
    }
}
