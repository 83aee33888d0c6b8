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

    // By hand: 100 g of soda ash (105.988 g/mol) give 0.9435 mol, 22.70 L at 20 °C (24.055 L/mol), 1135 ppm in 20 m3; over an hour in a room aired once in half an hour (1 - e^-2) / 2 of it, 491 ppm.
    [Fact]
    public void The_gas_of_soda_in_acid_is_that_of_its_moles()
    {
        GasAnswer answer = Gas("soda", "100 g", "20", "ajar")!;
        Assert.Equal(22.70, answer.AllAtOnce.VapourLitres, 0.01);
        Assert.Equal(1135, answer.AllAtOnce.Ppm, 0.5);
        Assert.Equal(490.7, answer.Aired.Value, 0.5);
        Assert.True(answer.Aired.Low < answer.Aired.Value && answer.Aired.Value < answer.Aired.High && answer.Aired.High < answer.AllAtOnce.Ppm);
        // 474.39 g of potash alum set 1.5 mol free.
        Assert.Equal(1.5 * 24.055, Gas("alum", "474,39 g", "20", "shut")!.AllAtOnce.VapourLitres, 0.01);
    }

    [Fact]
    public void Ammonia_in_a_small_room_is_told_to_be_dangerous_and_wrong_fields_are_named()
    {
        GasAnswer answer = Gas("ammonia", "200 mL", "20", "shut")!;
        Assert.True(answer.AllAtOnce.Ppm > answer.Gas.ImmediateDangerPpm);
        var asked = new GasRequest(name => name switch { GasRequest.Source => "ammonia", GasRequest.Strength => "90", GasRequest.Room => "-3", _ => null });
        Assert.Null(asked.Answer);
        Assert.NotNull(asked.Trouble(GasRequest.Strength));
        Assert.NotNull(asked.Trouble(GasRequest.Room));
        Assert.NotNull(new GasRequest(name => name == GasRequest.Source ? "volcano" : null).Trouble(GasRequest.Source));
        Assert.Empty(new GasRequest(_ => null).Troubles);
    }

    [Fact]
    public async Task The_page_tells_the_gas_with_its_limits()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync("/handbook/air?gas=ammonia&gas-amount=200&gas-room=20");
        Assert.Contains("all at once would be beyond it. Work out of doors", page.Text, StringComparison.Ordinal);
        Assert.Contains("Workplace limit of a day", page.Text, StringComparison.Ordinal);
        Assert.Contains("no source of gas known here", (await studio.GetAsync("/handbook/air?gas=volcano")).Text, StringComparison.Ordinal);
    }

    private static GasAnswer? Gas(string source, string amount, string room, string airing) =>
        new GasRequest(name => name switch { GasRequest.Source => source, GasRequest.Amount => amount, GasRequest.Room => room, GasRequest.AiringField => airing, _ => null }).Answer;

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
