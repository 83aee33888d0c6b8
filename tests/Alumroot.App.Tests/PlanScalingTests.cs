using Alumroot.App.Requests;
using CsCheck;

namespace Alumroot.App.Tests;

/// <summary>The same plan in another size. A bath of the same strengths has the same pH at the same share of the alkali: that is the outside check.</summary>
public sealed class PlanScalingTests
{
    private static PlanRequest Madder(string extra = "") => PlanRequest.FromAddress("/lakes/plan?salt=potash-alum&salt-amount=50%20g&alkali=soda-ash&dyestuff=madder&dry=100%20g&water=3%20L&temp=60%20C&to-ph=6.5" + extra)!;

    [Fact]
    public void Every_amount_is_multiplied_and_nothing_else()
    {
        PlanRequest half = PlanScaling.Times(Madder("&vessel=15%20L"), 0.5);
        Assert.Equal(("50 g", "25 g", "1500 mL"), (half[PlanFields.Dry], half[PlanFields.SaltAmount], half[PlanFields.Water]));
        Assert.Equal(("60 C", "6.5", "madder"), (half[PlanFields.Temperature], half[PlanFields.ToPh], half[PlanFields.Dyestuff]));
        Assert.Null(half[PlanFields.Vessel]);
    }

    [Theory]
    [InlineData("17 g", "34 g")]
    [InlineData("200 mL", "400 mL")]
    [InlineData("a spoon", "a spoon")]
    public void An_amount_of_alkali_may_be_a_weight_or_a_volume_and_stays_when_it_cannot_be_read(string typed, string doubled) =>
        Assert.Equal(doubled, PlanScaling.Times(Madder().With(PlanFields.AlkaliAmount, typed), 2)[PlanFields.AlkaliAmount]);

    [Fact]
    public void Amounts_keep_four_figures() => Gen.Double[PlanScaling.Least, PlanScaling.Most].Sample(factor =>
    {
        string grams = PlanScaling.Times(Madder(), factor)[PlanFields.SaltAmount]!;
        Assert.EndsWith(" g", grams, StringComparison.Ordinal);
        double read = double.Parse(grams[..^2], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(read / (50 * factor), 0.9995, 1.0005);
    });

    [Fact]
    public void A_plan_of_three_times_the_size_takes_three_times_the_alkali()
    {
        double one = PlanMaker.Answer(Madder()).Plan!.Alkali.Value, three = PlanMaker.Answer(PlanScaling.Times(Madder(), 3)).Plan!.Alkali.Value;
        Assert.InRange(three / one, 2.97, 3.03);
    }
}
