using Alumroot.App.Requests;
using Alumroot.App.Words;

namespace Alumroot.App.Tests;

/// <summary>The air of a room as the page tells it.</summary>
public sealed class AirPageTests
{
    [Fact]
    public void A_litre_of_acetone_in_a_basin_in_a_shut_closet_is_forbidden_and_a_jar_of_spirit_is_not()
    {
        Assert.StartsWith("Do not do this", AirWords.Verdict(Asked("acetone", "1 L", "6", "30", "shut")!), StringComparison.Ordinal);
        Assert.StartsWith("Below a tenth", AirWords.Verdict(Asked("ethanol", "100 mL", "40", "6", "ajar")!), StringComparison.Ordinal);
        Assert.StartsWith("Not for hours", AirWords.Verdict(Asked("limonene", "500 mL", "20", "30", "shut")!), StringComparison.Ordinal);
    }

    [Fact]
    public void More_airing_never_makes_it_worse_and_the_span_holds_the_value()
    {
        AirAnswer shut = Asked("isopropanol", "500 mL", "20", "20", "shut")!;
        AirAnswer aired = Asked("isopropanol", "500 mL", "20", "20", "draught")!;
        Assert.True(aired.StandingPpm.High <= shut.StandingPpm.High);
        Assert.True(aired.NearPpm.Value < shut.NearPpm.Value);
        Assert.All(new[] { shut.StandingPpm, shut.NearPpm, aired.StandingPpm, aired.NearPpm }, e => Assert.True(e.Low <= e.Value && e.Value <= e.High));
        Assert.True(shut.StandingPpm.High <= shut.Spilt.Ppm);
    }

    [Fact]
    public void The_spill_that_reaches_a_tenth_of_what_burns_does()
    {
        AirAnswer answer = Asked("ethanol", "100 mL", "20", "10", "shut")!;
        // 20 m3 at a tenth of 3.3 % is 66 L of vapour, at 0.412 L a millilitre: 160 mL (molar volume 24.055 L at 20 °C, density 0.789).
        Assert.Equal(160.2, answer.MillilitresToTenthOfExplosive, 0.5);
    }

    [Fact]
    public void Methanol_is_not_offered_and_a_wrong_field_is_named()
    {
        Assert.DoesNotContain(AirRequest.Offered, v => v.Key == "methanol");
        var asked = new AirRequest(name => name switch { AirRequest.Solvent => "methanol", AirRequest.Room => "-3", AirRequest.Amount => "lots", _ => null });
        Assert.Null(asked.Answer);
        Assert.Contains("below nothing", asked.Trouble(AirRequest.Room), StringComparison.Ordinal);
        Assert.NotNull(asked.Trouble(AirRequest.Amount));
        Assert.NotNull(asked.Trouble(AirRequest.Solvent));
    }

    private static AirAnswer? Asked(string solvent, string amount, string room, string opening, string airing) =>
        new AirRequest(name => name switch
        {
            AirRequest.Solvent => solvent,
            AirRequest.Amount => amount,
            AirRequest.Room => room,
            AirRequest.Opening => opening,
            AirRequest.AiringField => airing,
            _ => null,
        }).Answer;
}
