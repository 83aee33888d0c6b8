using System.Globalization;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities.Tables;
using CsCheck;

namespace Alumroot.App.Tests.Verbs;

public sealed class LadderVerbTests : IDisposable
{
    // Laccaic colour turns at 5.96 (Ketmaro, Muangsiri and Werawatganone, J. Health Research 24); the colours of its forms are invented.
    private const double Laccaic = 5.96;
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];
    private static readonly double[] Ladder = [3, 4, 5, 5.5, 6, 6.5, 7, 8, 9];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-ladder-");

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task Lab_of_jars_gives_the_published_step_and_a_colour_between()
    {
        Command run = await Command.Of(["ladder", Write(Jars()), "--ph", "5.96", "--aim-lab", "62 38 40", "--json"]);
        Assert.Equal(ExitCode.Done, run.Code);
        JsonElement series = JsonDocument.Parse(run.Data).RootElement.GetProperty("series")[0];
        JsonElement pka = Assert.Single(series.GetProperty("pka").EnumerateArray());
        Assert.Equal(Laccaic, pka.GetProperty("value").GetDouble(), 0.1);
        Assert.InRange(Laccaic, pka.GetProperty("low").GetDouble(), pka.GetProperty("high").GetDouble());
        JsonElement colour = series.GetProperty("colours")[0];
        double[] lab = [.. colour.GetProperty("colour").GetProperty("lab_d50").EnumerateArray().Select(v => v.GetDouble())];
        Assert.True(Ciede2000.Of(new Lab(lab[0], lab[1], lab[2]), Colour(Laccaic)).DeltaE < 1.5);
        Assert.InRange(series.GetProperty("aim").GetProperty("ph").GetDouble(), 3, 9);
    }

    [Fact]
    public async Task Spectra_are_read_by_the_names_of_their_columns_and_series_stay_apart()
    {
        string head = "series,ph,400,450,A500,550nm,600\n";
        string rows = string.Concat(new[] { "fresh", "aged" }.SelectMany(s => Ladder.Select(ph =>
        {
            double turned = 1 / (1 + Math.Pow(10, (s == "fresh" ? 6 : 7) - ph));
            return string.Create(CultureInfo.InvariantCulture, $"{s},{ph},{1 - 0.5 * turned},{0.8 - 0.2 * turned},{0.4 + 0.1 * turned},{0.1 + 0.6 * turned},{0.05 + 0.3 * turned}\n");
        })));
        JsonElement root = JsonDocument.Parse((await Command.Of(["ladder", Write(head + rows), "--json"])).Data).RootElement;
        Assert.Equal(["fresh", "aged"], root.GetProperty("series").EnumerateArray().Select(s => s.GetProperty("series").GetString()));
        Assert.Equal([6.0, 7.0], root.GetProperty("series").EnumerateArray().Select(s => Math.Round(s.GetProperty("pka")[0].GetProperty("value").GetDouble(), 3)));
        Command text = await Command.Of(["ladder", Write(head + rows)]);
        Assert.Contains("On the lake it", text.Data, StringComparison.Ordinal);
        Assert.True(Table.Parse("out", (await Command.Of(["ladder", Write(head + rows), "--csv"])).Data).Rows.Count >= 24);
    }

    [Theory]
    [InlineData("ph,L,a\n3,50,1\n", "b", "is missing")]
    [InlineData("ph,L,a,b\n15,50,1,1\n", "line 2", "between 0 and 14")]
    [InlineData("ph,L,a,b\n3,150,1,1\n", "line 2", "between 0 and 100")]
    [InlineData("ph,400,500,600\n3,9,1,1\n", "line 2", "is an absorbance")]
    public async Task What_is_wrong_is_said_with_its_line(string text, string where, string sentence)
    {
        Command run = await Command.Of(["ladder", Write(text)]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(where, run.Messages, StringComparison.Ordinal);
        Assert.Contains(sentence, run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain(NotSaid, w => run.Messages.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("--ph", "x", "is no pH")]
    [InlineData("--ph-step", "-1", "is no step")]
    [InlineData("--aim-lab", "red", "is no colour")]
    [InlineData("--forms", "9", "is a number of forms")]
    public async Task Options_that_cannot_be_are_told(string option, string value, string sentence)
    {
        Command run = await Command.Of(["ladder", Write(Jars()), option, value]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(sentence, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_few_jars_end_with_1()
    {
        Command run = await Command.Of(["ladder", Write("ph,L,a,b\n3,50,1,1\n5,50,2,1\n7,50,3,1\n")]);
        Assert.Equal(ExitCode.CannotBeMet, run.Code);
        Assert.Contains("has 3 different pH; 5 are the least", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void No_file_whatever_ends_in_anything_but_an_exit_code() => Gen.Byte.Array[1, 12].Sample(
        noise =>
        {
            byte[] bytes = System.Text.Encoding.UTF8.GetBytes(Jars());
            for (int i = 0; i < noise.Length; i++) bytes[noise[i] * 31 % bytes.Length] = noise[^(i + 1)];
            string file = Path.Combine(_folder.FullName, Guid.NewGuid().ToString("N"));
            File.WriteAllBytes(file, bytes);
            Assert.InRange(Command.Of(["ladder", file]).GetAwaiter().GetResult().Code, 0, 2);
        }, iter: 120, threads: 2);

    private static string Jars() => "ph,L,a,b\n" + string.Concat(Ladder.Select(ph =>
    {
        Lab lab = Colour(ph);
        return string.Create(CultureInfo.InvariantCulture, $"{ph},{lab.L:0.0},{lab.A:0.0},{lab.B:0.0}\n");
    }));

    private static Lab Colour(double ph)
    {
        double turned = 1 / (1 + Math.Pow(10, Laccaic - ph));
        double[] acid = [0.05, 0.35, 0.9], alkaline = [0.2, 0.7, 0.45];
        return BandAbsorbance.ToLab([.. acid.Zip(alkaline, (a, b) => a + turned * (b - a))]);
    }

    private string Write(string text)
    {
        string file = Path.Combine(_folder.FullName, Guid.NewGuid().ToString("N") + ".csv");
        File.WriteAllText(file, text);
        return file;
    }
}
