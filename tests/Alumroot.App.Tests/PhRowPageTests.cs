using System.Globalization;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Tests.Verbs;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests;

/// <summary>A row of jars planned on the page, on paper and by the verb: the same figures everywhere, and a figure that follows from handbook constants.</summary>
public sealed class PhRowPageTests
{
    private const string Row = "row=yes&dyestuff=weld&dry=10+g&water=500+mL&jar=50+mL&acid=citric-acid&alkali=soda-ash&hardness=14+dH";
    private static readonly string[] Verb = ["ladder", "--plan", "--dyestuff", "weld", "--dry", "10 g", "--water", "500 mL", "--jar", "50 mL", "--acid", "citric-acid", "--alkali", "soda-ash", "--hardness", "14 dH"];

    [Fact]
    public async Task Page_sheet_and_verb_say_the_same()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync($"/trials/ladder?{Row}");
        Command json = await Command.Of([.. Verb, "--json"]);
        Assert.Equal(ExitCode.Done, json.Code);
        JsonElement jars = JsonDocument.Parse(json.Data).RootElement.GetProperty("jars");
        Assert.Equal(9, jars.GetArrayLength());
        string card = PdfReading.Text(await studio.BytesAsync($"/pdf/ladder-card?{Row}&paper=a4"));
        foreach (JsonElement jar in jars.EnumerateArray())
        {
            double dose = jar.GetProperty("dose_ml").GetProperty("value").GetDouble();
            string shown = dose.ToString(dose < 1 ? "0.00" : "0.0", CultureInfo.InvariantCulture);
            Assert.Contains($"{jar.GetProperty("aim_ph").GetDouble():0.0} {jar.GetProperty("of").GetString()} {shown} ", page.Text, StringComparison.Ordinal);
            Assert.Contains(shown, card, StringComparison.Ordinal);
        }
        Assert.Equal("acid", jars[0].GetProperty("dose").GetString());
        Assert.Equal("alkali", jars[8].GetProperty("dose").GetString());
        Assert.Contains("acid into water", page.Text, StringComparison.Ordinal);
        Assert.Contains("acid into water", (await Command.Of(Verb)).Data, StringComparison.Ordinal);
        // The table is what the verb reads afterwards, once the blanks for what strip and target told are filled in.
        string[] lines = (await Command.Of([.. Verb, "--csv"])).Data.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        Assert.Equal(10, lines.Length);
        string file = Path.Combine(studio.Folder, "row.csv");
        await File.WriteAllLinesAsync(file, lines.Select((line, i) => i == 0 ? line : line.Replace(",,,,", string.Create(CultureInfo.InvariantCulture, $",{2 + i},{80 - 2 * i},{10 + 4 * i},{60 - 5 * i}"), StringComparison.Ordinal)), TestContext.Current.CancellationToken);
        Assert.StartsWith("9 jars", (await Command.Of(["ladder", file])).Data, StringComparison.Ordinal);
    }

    // Plain soft water to pH 3 with vinegar of 5 %: c = [H] + [H]² / Ka with pKa 4.756 (CRC Handbook, from memory), 0.058 mol in a litre, 70 mL of vinegar; in the 55 to 60 mL of a jar about 4 mL.
    [Fact]
    public async Task Soft_water_and_vinegar_follow_the_handbook()
    {
        JsonElement jar = JsonDocument.Parse((await Command.Of(["ladder", "--plan", "--hardness", "0 dH", "--acid", "vinegar", "--from", "3", "--to", "4", "--json"])).Data).RootElement;
        double filled = jar.GetProperty("filled_ml").GetDouble(), dose = jar.GetProperty("jars")[0].GetProperty("dose_ml").GetProperty("value").GetDouble();
        // Sold vinegar of 5 % holds 4.5 to 6 g, the middle draw a little over 5, and ions help it by some percent.
        Assert.Equal(0.0704 * filled, dose, 0.15 * dose);
    }

    [Theory]
    [InlineData("dyestuff=maddr", "is not in the handbook")]
    [InlineData("jar=5000+L", "Liquor in each jar")]
    [InlineData("jar=-3+mL", "Liquor in each jar")]
    [InlineData("acid=lemon", "'lemon' is not known here")]
    [InlineData("alkali=caustic-soda", "not used for a row")]
    [InlineData("from=9&to=5", "must be above the first")]
    [InlineData("liquor-ph=sour", "sour")]
    public async Task What_is_wrong_is_said(string query, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains(said, (await studio.GetAsync($"/trials/ladder?row=yes&{query}")).Text, StringComparison.Ordinal);
        Assert.Contains("There is nothing to print here", (await studio.GetAsync($"/print/ladder-card?{query}")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_verb_needs_a_file_or_a_plan_and_a_comma_is_a_decimal_sign()
    {
        Command none = await Command.Of(["ladder"]);
        Assert.Equal(ExitCode.InputWrong, none.Code);
        Assert.Contains("--plan", none.Messages, StringComparison.Ordinal);
        Command wrong = await Command.Of(["ladder", "--plan", "--acid", "lemon"]);
        Assert.Equal(ExitCode.InputWrong, wrong.Code);
        string half = (await Command.Of(["ladder", "--plan", "--from", "3,5", "--to", "5,5", "--csv"])).Data;
        Assert.Equal([3.5, 4.5, 5.5], Table.Parse("row", half).Rows.Select(r => r.Number("aim_ph")));
    }
}
