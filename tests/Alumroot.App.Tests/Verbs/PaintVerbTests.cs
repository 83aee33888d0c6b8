using System.Globalization;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests.Verbs;

public sealed class PaintVerbTests
{
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];

    [Fact]
    public async Task All_cases_agree_with_the_arithmetic_made_twice_elsewhere()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Paint", "paint_cases.csv");
        Command run = await Command.Of(["paint", "--cases", file]);
        Assert.Equal(ExitCode.Done, run.Code);
        Dictionary<(string, string), double> got = Table.Parse("out", run.Data).Rows.ToDictionary(r => (r["id"], r["name"]), r => r.Number("value"));
        int compared = 0;
        foreach (TableRow row in Table.Parse("cases", File.ReadAllText(file)).Rows)
            foreach (string[] pair in row["expected"].Split(';').Select(p => p.Split('=')))
            {
                double expected = double.Parse(pair[1], CultureInfo.InvariantCulture);
                Assert.Equal(expected, got[(row["id"], pair[0].Trim())], 1e-6 * Math.Max(1e-9, Math.Abs(expected)));
                compared++;
            }
        Assert.Equal(171, compared);
    }

    [Theory]
    [InlineData("watercolour")]
    [InlineData("gouache")]
    [InlineData("egg-tempera")]
    [InlineData("glair")]
    [InlineData("casein")]
    [InlineData("soft-pastel")]
    [InlineData("oil")]
    [InlineData("alkyd")]
    [InlineData("ink")]
    [InlineData("encaustic")]
    public async Task Every_medium_has_a_recipe_by_mass_and_volume(string medium)
    {
        Command run = await Command.Of(["paint", "--pigment", "weld lake", "--grams", "20", "--oil-absorption", "65", "--density", "2.2", "--medium", medium, "--fill", "jar-30ml", "--cost", "12", "--json"]);
        Assert.Equal(ExitCode.Done, run.Code);
        JsonElement root = JsonDocument.Parse(run.Data).RootElement;
        JsonElement[] parts = [.. root.GetProperty("components").EnumerateArray()];
        Assert.True(parts.Length >= 2);
        Assert.Equal(20, parts[0].GetProperty("g").GetProperty("value").GetDouble(), 6);
        // The volumes add to what is filled.
        Assert.Equal(root.GetProperty("wet_ml").GetProperty("value").GetDouble(), parts.Sum(p => p.GetProperty("ml").GetProperty("value").GetDouble()), 0.01);
        Assert.All(parts, p => Assert.InRange(p.GetProperty("g").GetProperty("value").GetDouble(), p.GetProperty("g").GetProperty("low").GetDouble(), p.GetProperty("g").GetProperty("high").GetDouble()));
        Assert.InRange(root.GetProperty("pvc").GetProperty("value").GetDouble(), 0.01, 0.995);
        Assert.InRange(root.GetProperty("shrinkage_percent").GetDouble(), 0, 95);
        Assert.True(root.GetProperty("filled").GetDouble() > 0);
        Assert.True(root.GetProperty("cost_each").GetDouble() > 0);
        Assert.NotEmpty(root.GetProperty("order_of_work").EnumerateArray());
        Assert.NotEmpty(root.GetProperty("cautions").EnumerateArray());
        string said = run.Data.ToLowerInvariant();
        Assert.DoesNotContain(NotSaid[..4], said.Contains);
    }

    [Fact]
    public async Task A_number_of_pans_asks_for_so_much_pigment()
    {
        Command pans = await Command.Of("paint --medium watercolour --fill half-pan --count 12 --json");
        JsonElement root = JsonDocument.Parse(pans.Data).RootElement;
        double grams = root.GetProperty("pigment_g").GetDouble();
        Command back = await Command.Of(["paint", "--medium", "watercolour", "--fill", "half-pan", "--grams", grams.ToString("R", CultureInfo.InvariantCulture), "--json"]);
        Assert.Equal(12, JsonDocument.Parse(back.Data).RootElement.GetProperty("filled").GetDouble(), 1e-3);
        Assert.True(root.GetProperty("pours_each").GetInt32() > 1);
        Assert.Contains("40 to 110", root.GetProperty("assumptions")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_text_leads_with_amounts_and_ends_with_cautions()
    {
        Command run = await Command.Of("paint --grams 20 --medium oil --fill tube-15ml");
        Assert.Contains("linseed oil", run.Data, StringComparison.Ordinal);
        Assert.Contains("catch fire by themselves", run.Data, StringComparison.Ordinal);
        Assert.Contains("tube-15ml", run.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("paint --pigment \"lead white\" --grams 20 --medium oil", "holds lead")]
    [InlineData("paint --pigment \"chrome yellow\" --grams 20 --medium oil", "chromates")]
    public async Task Poisons_get_no_recipe(string line, string said)
    {
        Command run = await Command.Of(line);
        Assert.Equal(ExitCode.CannotBeMet, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
        Assert.Empty(run.Data);
    }

    [Theory]
    [InlineData("paint --grams 20", "'--medium' is missing")]
    [InlineData("paint --grams 20 --medium oils", "The nearest is 'oil'")]
    [InlineData("paint --medium oil", "either the pigment in hand")]
    [InlineData("paint --grams 20 --count 3 --fill pan --medium oil", "either the pigment in hand")]
    [InlineData("paint --count 3 --medium oil", "needs '--fill'")]
    [InlineData("paint --grams -2 --medium oil", "above nothing")]
    [InlineData("paint --grams 1,500 --medium oil", "can mean 1.500 or 1500")]
    [InlineData("paint --grams twenty --medium oil", "above nothing")]
    [InlineData("paint --grams 20 --density 40 --medium oil", "at most 12")]
    [InlineData("paint --grams 20 --medium oil --fill bucket", "is not known")]
    public async Task What_is_wrong_is_said_in_one_sentence(string line, string said)
    {
        Command run = await Command.Of(line);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain(NotSaid, w => run.Messages.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("cpvc_from_oa", "oa_g_per_100g=65", "\"density_g_per_ml\" is missing")]
    [InlineData("binder_for_lambda", "pigment_g=20;oa_g_per_100g=1;density_g_per_ml=2;lambda=3;binder_density_g_per_ml=1", "no room for binder")]
    [InlineData("wet_cake", "cake_g=20;moisture_fraction=2;target_pigment_fraction=0.4", "0 to 1")]
    [InlineData("stirring", "x=1", "is none of")]
    public async Task A_wrong_case_is_named_and_the_others_are_answered(string kind, string inputs, string said)
    {
        string file = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(file, $"id,kind,inputs\nbad,{kind},{inputs}\ngood,drier,oil_g=100;metal_pct_on_oil=0.03;drier_metal_pct=6;drop_g=0.03\n", TestContext.Current.CancellationToken);
            Command run = await Command.Of(["paint", "--cases", file]);
            Assert.Equal(ExitCode.InputWrong, run.Code);
            Assert.Contains(said, run.Messages, StringComparison.Ordinal);
            Assert.Equal(0.5, Table.Parse("out", run.Data).Rows[0].Number("value"), 1e-9);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
