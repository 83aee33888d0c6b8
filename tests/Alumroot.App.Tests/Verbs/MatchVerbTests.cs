using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests.Verbs;

public sealed class MatchVerbTests : IDisposable
{
    private static readonly double[] Nanometres = [.. Enumerable.Range(0, 16).Select(i => 400 + 20.0 * i)];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-match-");

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task A_mixture_that_was_made_is_found_again()
    {
        // Duncan 1940: K and S add by shares. The aim is the colour of 60, 30 and 10 in a hundred, reckoned here from the formula of the opaque film (Kubelka and Munk 1931).
        Func<double, (double K, double S)>[] pigments = [w => (0.05 + 2 * Bell(w, 520, 45), 0.6), w => (0.03 + 2 * Bell(w, 410, 40), 0.55), w => (0.25 + 2.4 * Bell(w, 640, 55), 0.35), _ => (0.006, 0.9)];
        double[] shares = [0.6, 0.3, 0.1, 0];
        Spectrum made = Spectrum.Regular(400, 20, Nanometres.Select(w =>
        {
            double k = pigments.Zip(shares, (p, s) => s * p(w).K).Sum(), s = pigments.Zip(shares, (p, c) => c * p(w).S).Sum(), r = k / s;
            return 1 + r - Math.Sqrt(r * r + 2 * r);
        }));
        Lab aim = SpectralWeights.For(ViewingCondition.Graphic, made).LabOf(made.ValueSpan);
        string file = Write("pigments.csv", "sample,wavelength_nm,k,s\n" + string.Concat(pigments.SelectMany((p, i) => Nanometres.Select(w => FormattableString.Invariant($"{"ABCD"[i]},{w},{p(w).K:R},{p(w).S:R}\n")))));
        Command run = await Command.Of(["match", file, "--aim", Text(aim.L), Text(aim.A), Text(aim.B), "--json"]);
        Assert.Equal(ExitCode.Done, run.Code);
        JsonElement best = JsonDocument.Parse(run.Data).RootElement.GetProperty("mixtures")[0];
        Assert.InRange(best.GetProperty("de00").GetDouble(), 0, 0.05);
        Dictionary<string, double> found = best.GetProperty("parts").EnumerateArray().ToDictionary(p => p.GetProperty("pigment").GetString()!, p => p.GetProperty("percent").GetProperty("value").GetDouble());
        Assert.Equal(60, found["A"], 1.0);
        Assert.Equal(30, found["B"], 1.0);
        Assert.Equal(10, found["C"], 1.0);
        Command csv = await Command.Of(["match", file, "--aim", Text(aim.L), Text(aim.A), Text(aim.B), "--csv", "--answers", "2"]);
        Assert.Equal(["1", "2"], Table.Parse("out", csv.Data).Rows.Select(r => r["mixture"]).Distinct());
        Command text = await Command.Of(["match", file, "--aim", "#808080"]);
        Assert.Equal(ExitCode.Done, text.Code);
        Assert.Contains("off (", text.Data, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Spans_of_the_pigments_widen_those_of_the_mixture()
    {
        string narrow = await Within(0.02), wide = await Within(0.3);
        Assert.DoesNotContain("no spans", narrow, StringComparison.Ordinal);
        Assert.True(Number(wide) > 4 * Number(narrow), $"{wide}\n{narrow}");
        Command untold = await Command.Of(["match", Write("u.csv", Rows(null)), "--aim", "#8a6f5c"]);
        Assert.Contains("tells no spans", untold.Data, StringComparison.Ordinal);
        // Beside the same mixture, a tenth lies between a fiftieth and three tenths.
        Assert.InRange(Number(untold.Data), Number(narrow), Number(wide));

        async Task<string> Within(double half) => (await Command.Of(["match", Write($"w{half}.csv", Rows(half)), "--aim", "#8a6f5c"])).Data;

        static double Number(string text) => double.Parse(text.Split("nine times in ten within ")[1].Split('\n')[0], System.Globalization.CultureInfo.InvariantCulture);

        static string Rows(double? half)
        {
            (string Name, double Middle)[] pigments = [("red", 520), ("blue", 620), ("white", 0)];
            return (half is null ? "sample,wavelength_nm,k,s\n" : "sample,wavelength_nm,k,k_low,k_high,s,s_low,s_high\n") + string.Concat(pigments.SelectMany(p => Nanometres.Select(w => Row(p.Name, w, 0.02 + (p.Middle > 0 ? 2 * Bell(w, p.Middle, 50) : 0), 0.6, half))));
        }

        static string Row(string name, double w, double k, double s, double? half) => half is { } h
            ? FormattableString.Invariant($"{name},{w},{k},{k * (1 - h)},{k * (1 + h)},{s},{s * (1 - h)},{s * (1 + h)}\n")
            : FormattableString.Invariant($"{name},{w},{k},{s}\n");
    }

    [Theory]
    [InlineData("sample,wavelength_nm,k,k_low,k_high,s\nA,400,1,1.2,1.4,1\n", "between 0 and k", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,k_low,k_high,s\nA,400,1,0.8,0.9,1\n", "k or more", "52 38 21")]
    [InlineData("sample,wavelength_nm,k\nA,400,1\n", "column s", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,-1,1\n", "0 or more", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,1,0\n", "more than 0", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,1,1\nA,400,1,1\n", "twice", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,1,1\nA,500,1,1\nA,620,1,1\nB,400,1,1\n", "other wavelengths", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,500,1,1\nA,520,1,1\nA,540,1,1\n", "runs from 500 to 540", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\n", "no rows", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,\"1,5\",1\n", "1,5", "52 38 21")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,1,1\n", "is no colour", "52 38")]
    [InlineData("sample,wavelength_nm,k,s\nA,400,1,1\n", "is no colour", "red")]
    public async Task What_is_wrong_is_said(string table, string said, string aim)
    {
        Command run = await Command.Of(["match", Write("p.csv", table), "--aim", .. aim.Split(' ')]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
    }

    private static double Bell(double x, double middle, double width) => Math.Exp(-0.5 * (x - middle) * (x - middle) / width / width);

    private static string Text(double x) => FormattableString.Invariant($"{x:0.0000}");

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
