using Alumroot.App.Output;

namespace Alumroot.App.Tests.Verbs;

/// <summary>How <c>alumroot plan</c> answers what it can plan, what it cannot, and what it does not understand.</summary>
public sealed class PlanVerbTests
{
    private const string Bath = "plan --salt potash-alum --salt-amount 20g --water 1L --alkali soda-ash";

    [Theory]
    [InlineData("--dry 100 --dyestuff madder", "100 of what? A weight needs its unit. Did you mean 100 g")]
    [InlineData("--dry 1L --dyestuff madder", "'1L' is a volume, and a weight is needed")]
    [InlineData("--dry -5g --dyestuff madder", "'-5g' is below nothing")]
    [InlineData("--dry 0g --dyestuff madder", "nothing at all is not enough")]
    [InlineData("--dry 1,500g --dyestuff madder", "1,500g can mean 1.5 g or 1500 g")]
    [InlineData("--dry 3-4g --dyestuff madder", "is a span, and one value is needed")]
    [InlineData("--dry 5g --dyestuff maddr", "'maddr' is not in the handbook. Did you mean madder")]
    [InlineData("--salt potash-allum", "'potash-allum' is not known. Did you mean potash-alum")]
    [InlineData("--salt alum", "'alum' can mean Potash alum (potash-alum) or Ammonium alum (ammonium-alum)")]
    [InlineData("--alkali soda", "'soda' can mean Soda ash (soda-ash)")]
    [InlineData("--alkali potash-alum", "Potash alum is not an alkali")]
    [InlineData("--alkali home-baked@99%loss", "could not be read as the loss in baking")]
    [InlineData("--alkali wood-ash-lye", "how strong is the lye?")]
    [InlineData("--temp 140", "140 is above boiling in °C. Did you mean 140 °F?")]
    [InlineData("--to-ph 99", "Final pH: 99 is more than is sensible here")]
    [InlineData("--order sideways", "'sideways' is neither salt-first nor alkali-first")]
    [InlineData("--second-salt iron-sulfate", "Amount of the second salt: say how much")]
    [InlineData("--colour red", "'plan' has no option '--colour'")]
    public async Task What_is_not_understood_is_exit_2_and_names_the_field(string words, string expected)
    {
        Command run = await Command.Of($"{Without(Bath, words)} {words}");
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
        Assert.Empty(run.Data);
    }

    [Theory]
    [InlineData("plan --alkali soda-ash", "Salt: which salt does the packet say?")]
    [InlineData("plan --salt potash-alum --salt-amount 5g", "Alkali: which alkali does the packet say?")]
    [InlineData("plan --salt potash-alum --alkali soda-ash", "Amount of salt: say how much")]
    [InlineData("plan --salt potash-alum --alkali soda-ash --dyestuff madder", "Dry dyestuff: how much Madder?")]
    public async Task What_is_missing_is_asked_for(string line, string expected)
    {
        Command run = await Command.Of(line);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--salt lead-acetate", "lead acetate")]
    [InlineData("--salt potassium-dichromate", "chromates and dichromates")]
    [InlineData("--salt chromium-alum", "chromium alum")]
    [InlineData("--alkali strong-ammonia", "ammonia")]
    [InlineData("--alkali methanol", "methanol")]
    public async Task What_is_refused_is_exit_1_without_amounts(string words, string name)
    {
        foreach (string form in (string[])["", "--json", "--csv"])
        {
            Command run = await Command.Of($"{Without(Bath, words)} {words} {form}");
            Assert.Equal(ExitCode.CannotBeMet, run.Code);
            Assert.Contains($"Will not plan with {name}", run.Messages, StringComparison.Ordinal);
            Assert.Contains("Instead:", run.Messages, StringComparison.Ordinal);
            // A strength in percent may name the substance; a weight or volume may not be there.
            Assert.DoesNotMatch(@"\d\s*(g|mL|L|oz)\b", run.Data + run.Messages);
        }
    }

    [Theory]
    [InlineData("--to-ph 3", "Cannot reach pH 3: the bath starts at")]
    [InlineData("--to-ph 13.5", "Cannot reach pH 13.5: with far more of this alkali than is sensible")]
    public async Task An_aim_out_of_reach_is_exit_1_and_says_how_far_it_goes(string words, string expected)
    {
        Command run = await Command.Of($"{Bath} {words} --json");
        Assert.Equal(ExitCode.CannotBeMet, run.Code);
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
        Assert.Contains("\"reachable_ph\"", run.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("alkali_g", run.Data, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Comma_point_and_other_units_mean_the_same_plan()
    {
        Command point = await Command.Of("plan --salt potash-alum --salt-amount 1.5kg --water 75L --alkali soda-ash --temp 60C --csv");
        Command comma = await Command.Of("plan --salt potash-alum --salt-amount 1,5kg --water 75000mL --alkali soda-ash --temp 140F --csv");
        Assert.Equal(ExitCode.Done, point.Code);
        Assert.Equal(point.Data, comma.Data);
    }

    [Fact]
    public async Task Quiet_tells_only_what_to_do()
    {
        Command run = await Command.Of($"{Bath} --quiet");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("\nDo\n", run.Data, StringComparison.Ordinal);
        foreach (string layer in (string[])["Expect", "Assumed", "Mind"]) Assert.DoesNotContain(layer, run.Data, StringComparison.Ordinal);
    }

    /// <summary>20 g are 0.71 oz (28.349523125 g to the ounce, NIST Handbook 44, appendix C).</summary>
    [Fact]
    public async Task A_kitchen_sees_ounces_and_no_gram_or_litre_to_measure_out()
    {
        Command run = await Command.Of($"{Bath} --units kitchen --kitchen us --quiet");
        Assert.Contains("0.71 oz in", run.Data, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d (g|mL|L)\b", run.Data);
    }

    [Fact]
    public async Task The_table_rises_and_has_a_point_for_the_decimal_sign()
    {
        string[] lines = (await Command.Of($"{Bath} --csv")).Data.TrimEnd().Split('\n');
        string[] header = lines[0].Trim().Split(',');
        Assert.Equal(["alkali_g", "salt_share", "ph", "ph_low", "ph_high"], header[..5]);
        double[] alkali = [.. lines[1..].Select(l => double.Parse(l.Split(',')[0], System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(41, alkali.Length);
        Assert.Equal(alkali.Order(), alkali);
        Assert.All(lines[1..], l => Assert.Equal(header.Length, l.Split(',').Length));
    }

    [Fact]
    public async Task The_text_is_no_wider_than_80_and_has_no_colour_codes()
    {
        Command run = await Command.Of($"{Bath} --dyestuff madder --dry 40g");
        Assert.All(run.Data.Split('\n'), line => Assert.True(line.TrimEnd().Length <= Columns.Width, line));
        Assert.DoesNotContain('\u001b', run.Data);
    }

    /// <summary>Kept so that a person sees every change of a plan's words or figures.</summary>
    [Fact]
    public async Task The_text_of_one_plan_is_the_one_on_record()
    {
        Command run = await Command.Of("plan --dyestuff madder --dry 100g --water 3L --hardness 14dH --salt potash-alum --salt-amount 50g --alkali soda-ash --temp 60C --to-ph 6.5");
        Assert.Equal(ExitCode.Done, run.Code);
        Golden.Same("plan-madder.txt", run.Data);
    }

    private static string Without(string line, string words)
    {
        string option = words.Split(' ')[0];
        string[] parts = line.Split(' ');
        int at = Array.IndexOf(parts, option);
        return at < 0 ? line : string.Join(' ', parts.Where((_, i) => i != at && i != at + 1));
    }
}
