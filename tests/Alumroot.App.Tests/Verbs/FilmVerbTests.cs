using System.Globalization;
using System.Text;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Film;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests.Verbs;

public sealed class FilmVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-film-");

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task All_cases_agree_with_40_digit_arithmetic()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Colour", "film_cases.csv");
        Command run = await Command.Of(["film", "--cases", file]);
        Assert.Equal(ExitCode.Done, run.Code);
        Dictionary<(string, string), double> got = Table.Parse("out", run.Data).Rows.ToDictionary(r => (r["id"], r["name"]), r => r.Number("value"));
        int compared = 0;
        foreach (TableRow row in Table.Parse("cases", File.ReadAllText(file)).Rows)
            foreach (string[] pair in row["expected"].Split(';').Select(p => p.Split('=')))
            {
                double expected = double.Parse(pair[1], CultureInfo.InvariantCulture), relative = row["kind"] == "film_limit" ? 1e-7 : 1e-9;
                Assert.Equal(expected, got[(row["id"], pair[0].Trim())], relative * Math.Max(1e-9, Math.Abs(expected)));
                compared++;
            }
        Assert.Equal(102, compared);
    }

    [Theory]
    [InlineData("ks_from_rinf", "Rinf=1.2", "runs from 0 to 1")]
    [InlineData("ks_from_rinf", "Rinf=0", "runs from 0 to 1")]
    [InlineData("drawdown_inversion", "Rblack=0.4;Rwhite=0.3;Rg_black=0;Rg_white=0.8", "may be exchanged")]
    [InlineData("drawdown_inversion", "Rblack=0.3;Rwhite=0.4;Rg_black=0.8;Rg_white=0.8", "not darker")]
    [InlineData("thickness_for_contrast_0.98", "K=1;S=0;Rg_black=0;Rg_white=0.8", "no thickness")]
    [InlineData("thickness_for_contrast_2", "K=1;S=1;Rg_black=0;Rg_white=0.8", "is none of")]
    [InlineData("mix_two_constant", "K1=1;S1=1", "\"c1\" is missing")]
    [InlineData("weaving", "x=1", "is none of")]
    public async Task A_wrong_case_is_named_and_the_others_are_answered(string kind, string inputs, string said)
    {
        Command run = await Command.Of(["film", "--cases", Write("cases.csv", $"id,kind,inputs\nbad,{kind},{inputs}\ngood,rinf_from_ks,KS=0.5\n")]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
        Assert.Equal(0.381966011250105, Table.Parse("out", run.Data).Rows.Single().Number("value"), 1e-12);
    }

    [Fact]
    public async Task A_drawdown_gives_K_and_S_and_predicts_another_film()
    {
        // film_cases.csv, K23: KX = 1.6528, SX = 1.2136, contrast ratio 0.979522539033103; here in a thickness of 0.1.
        string file = Write("drawdown.csv", Rows(0.22122150633998, 0.05, 0.225846264403829, 0.8, 0.1));
        Command run = await Command.Of(["film", file, "--thickness", "0.05", "--over", "0.5", "--reading", "0"]);
        Assert.Equal(ExitCode.Done, run.Code);
        TableRow row = Table.Parse("out", run.Data).Rows[0];
        Assert.Equal(16.528, row.Number("k"), 1e-6);
        Assert.Equal(12.136, row.Number("s"), 1e-6);
        Assert.Equal(0.979522539, row.Number("contrast_ratio"), 1e-8);
        // The same at every wavelength, so Y has the same ratio.
        Assert.Equal(0.979522539, row.Number("contrast_ratio_y"), 1e-8);
        Assert.Equal(FilmOptics.Over(new Layer(0.8264, 0.6068), 0.5), row.Number("r_predicted"), 1e-8);
        Assert.True(row.Number("hiding_thickness") > 0.1);
    }

    [Fact]
    public async Task Json_has_spans_and_says_what_is_not_known()
    {
        string file = Write("drawdown.csv", Rows(0.5, 0.05, 0.5005, 0.8, null));
        Command run = await Command.Of(["film", file, "--json", "--k1", "0.04", "--k2", "0.6"]);
        JsonElement sample = JsonDocument.Parse(run.Data).RootElement.GetProperty("samples")[0], band = sample.GetProperty("bands")[0];
        Assert.Equal(JsonValueKind.Null, band.GetProperty("s").ValueKind);
        JsonElement ratio = band.GetProperty("k_over_s");
        Assert.True(ratio.GetProperty("low").GetDouble() < ratio.GetProperty("value").GetDouble());
        Assert.Equal(JsonValueKind.Null, sample.GetProperty("thickness").ValueKind);
        Assert.Contains("only K/S is known", run.Messages, StringComparison.Ordinal);
        Assert.Contains("K and S are for the whole film", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_predicted_film_has_a_colour_with_its_distance_and_hiding_has_a_span()
    {
        // film_cases.csv, K22: KX = 0.5319, SX = 0.4358.
        string file = Write("drawdown.csv", Rows(0.205790465395531, 0.05, 0.350938956335345, 0.8, 1));
        Command run = await Command.Of(["film", file, "--json", "--thickness", "2", "--over", "0.8"]);
        JsonElement sample = JsonDocument.Parse(run.Data).RootElement.GetProperty("samples")[0], predicted = sample.GetProperty("predicted"), hiding = sample.GetProperty("hiding_thickness");
        // Grey all over: L* of the film's reflectance, by hand with CIELAB.
        double reflectance = FilmOptics.Over(new Layer(1.0638, 0.8716), 0.8);
        Assert.Equal(116 * Math.Cbrt(reflectance) - 16, predicted.GetProperty("lab")[0].GetDouble(), 1e-3);
        Assert.InRange(predicted.GetProperty("interval_de00").GetDouble(), 0.01, 1);
        double thickness = FilmOptics.ThicknessFor(new Layer(0.5319, 0.4358), 0.05, 0.8, 0.98)!.Value;
        Assert.Equal(thickness, hiding.GetProperty("value").GetDouble(), 1e-6 * thickness);
        Assert.InRange(thickness, hiding.GetProperty("low").GetDouble(), hiding.GetProperty("high").GetDouble());
        Assert.True(hiding.GetProperty("high").GetDouble() > hiding.GetProperty("low").GetDouble());
    }

    [Theory]
    [InlineData("--thickness 1", "go together")]
    [InlineData("--thickness 0 --over 0.5", "more than nothing")]
    [InlineData("--thickness 1 --over 50", "from 0 to 1")]
    [InlineData("--k1 1", "shares of light")]
    [InlineData("--reading -1", "such as 0.002")]
    [InlineData("--cases x.csv", "either a file of drawdowns")]
    public async Task Options_that_make_no_sense_are_named(string options, string said)
    {
        Command run = await Command.Of(["film", Write("drawdown.csv", Rows(0.2, 0.05, 0.3, 0.8, 1)), .. options.Split(' ')]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\u0089PNG\r\n\u001a\n\0\0\0\rIHDR, 1", "bytes that are no text")]
    [InlineData("# a note, with a comma\nsample;wavelength_nm;r_over_black;r_black;r_over_white;r_white\nm;450;0,06;0,02;0,09;0,80\n", "parted by semicolons")]
    public async Task A_file_that_is_no_table_with_commas_is_named_as_what_it_is(string text, string said)
    {
        Command run = await Command.Of(["film", Write("drawdown.csv", text)]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_in_which_nothing_is_known_cannot_be_met()
    {
        Command run = await Command.Of(["film", Write("drawdown.csv", Rows(0.4, 0.05, 0.3, 0.8, 1))]);
        Assert.Equal(ExitCode.CannotBeMet, run.Code);
        Assert.Contains("may be exchanged", run.Messages, StringComparison.Ordinal);
        Command columns = await Command.Of(["film", Write("other.csv", "sample,wavelength_nm\nx,400\n")]);
        Assert.Equal(ExitCode.InputWrong, columns.Code);
        Assert.Contains("r_over_black", columns.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["film", "nothing.csv"])).Code);
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["film"])).Code);
    }

    [Fact]
    public void Every_trouble_of_a_drawdown_has_its_words() =>
        Golden.Same("film_troubles.txt", string.Join("\n", Enum.GetValues<DrawdownTrouble>().Select(FilmWords.Of)) + "\n");

    private static string Rows(double overBlack, double black, double overWhite, double white, double? thickness)
    {
        var text = new StringBuilder("sample,wavelength_nm,r_over_black,r_black,r_over_white,r_white").Append(thickness is null ? "" : ",thickness").Append('\n');
        for (int nm = 400; nm <= 700; nm += 20)
            text.Append(CultureInfo.InvariantCulture, $"madder,{nm},{overBlack},{black},{overWhite},{white}").Append(thickness is { } x ? "," + x.ToString(CultureInfo.InvariantCulture) : "").Append('\n');
        return text.ToString();
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
