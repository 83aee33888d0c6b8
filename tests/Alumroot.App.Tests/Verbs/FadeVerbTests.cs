using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Quantities.Tables;
using CsCheck;

namespace Alumroot.App.Tests.Verbs;

public sealed class FadeVerbTests : IDisposable
{
    private const string Head = "series,replicate,dose_mlxh,de\n";
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-fade-");

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task Json_has_the_names_of_the_contract()
    {
        Command run = await Command.Of(["fade", Write(Strips("weld", 2.1) + Strips("BW3", 1.5) + Strips("BW4", 3.5)), "--json"]);
        Assert.Equal(ExitCode.Done, run.Code);
        JsonElement series = JsonDocument.Parse(run.Data).RootElement.GetProperty("series").EnumerateArray().Single();
        Assert.Equal("weld", series.GetProperty("series").GetString());
        Assert.NotEmpty(series.GetProperty("model").GetString()!);
        Assert.NotEmpty(series.GetProperty("why").GetString()!);
        Assert.True(series.TryGetProperty("category", out _));
        JsonElement[] criteria = [.. series.GetProperty("criteria").EnumerateArray()];
        Assert.Equal([1.7, 3.4], criteria.Select(c => c.GetProperty("de").GetDouble()));
        // By hand: ln(2.1/1.5) / ln(3.5/1.5) of the way from reference 3 to 4.
        Assert.Equal(3 + Math.Log(1.4) / Math.Log(3.5 / 1.5), criteria[0].GetProperty("class").GetProperty("value").GetDouble(), 0.03);
        Assert.Equal(2.1, criteria[0].GetProperty("dose_mlxh").GetProperty("value").GetDouble(), 0.05);
        Assert.Equal(JsonValueKind.Null, criteria[0].GetProperty("bound").ValueKind);
        JsonElement above = JsonDocument.Parse((await Command.Of(["fade", Write(Strips("weld", 12) + Strips("BW3", 1.5) + Strips("BW4", 3.5)), "--json"])).Data).RootElement.GetProperty("series")[0].GetProperty("criteria")[0];
        Assert.Equal("above", above.GetProperty("bound").GetString());
        Assert.Equal(JsonValueKind.Null, above.GetProperty("class").ValueKind);
    }

    [Fact]
    public async Task Text_and_table_say_the_same_and_what_is_missing()
    {
        string alone = Write(Strips("weld", 2.1));
        Command text = await Command.Of(["fade", alone]);
        Assert.Contains("no class", text.Messages, StringComparison.Ordinal);
        Assert.Contains("years", text.Data, StringComparison.Ordinal);
        Assert.Contains("Just noticeable", text.Data, StringComparison.Ordinal);
        Command csv = await Command.Of(["fade", alone, "--csv"]);
        Assert.Equal(2, Table.Parse("out", csv.Data).Rows.Count);
    }

    [Theory]
    [InlineData("series,dose_mlxh\nA,1\n", "column de")]
    [InlineData(Head + "A,1,-1,0\n", "between 0 and")]
    [InlineData(Head + "A,1,1,\"1,5\"\n", "1,5")]
    [InlineData(Head + "A,1,one,0\n", "one")]
    [InlineData(Head + ",1,1,0\n", "series")]
    [InlineData(Head + "A,1,1,900\n", "de")]
    public async Task A_wrong_row_is_named(string table, string said)
    {
        Command run = await Command.Of(["fade", Write(table)]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain(NotSaid, w => run.Messages.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(Head, "no rows")]
    [InlineData(Head + "BW3,1,1,0.8\n", "references only")]
    [InlineData(Head + "A,1,1,0.8\n", "enough readings")]
    public async Task What_cannot_be_met_ends_with_1(string table, string said)
    {
        Command run = await Command.Of(["fade", Write(table)]);
        Assert.Equal(ExitCode.CannotBeMet, run.Code);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_ends_in_an_answer_or_a_sentence() => Gen.Select(Gen.Int[0, 400], Gen.Char["\",\n0aE-.;é"], Gen.Int[0, 2]).Sample(
        t =>
        {
            string text = Head + Strips("weld", 2.1), changed = t.Item3 switch { 0 => text[..(t.Item1 % text.Length)], 1 => text.Insert(t.Item1 % text.Length, t.Item2.ToString()), _ => text.Remove(t.Item1 % text.Length, 1) };
            Command run = Command.Of(["fade", WriteRaw(changed)]).GetAwaiter().GetResult();
            Assert.InRange(run.Code, ExitCode.Done, ExitCode.InputWrong);
            Assert.True(run.Code == ExitCode.Done ? run.Data.Length > 0 : run.Messages.Length > 0);
        },
        iter: 60, threads: 1);

    private static string Strips(string name, double dose)
    {
        double k = -Math.Log(1 - 1.7 / 25) / dose;
        return string.Concat(from strip in new[] { 1, 2 } from d in new[] { 0, 0.3, 0.7, 1.2, 2, 3, 5, 8 } select FormattableString.Invariant($"{name},{strip},{d},{25 * (1 - Math.Exp(-k * d)):0.0000}\n"));
    }

    private string Write(string rows) => WriteRaw(rows.StartsWith("series", StringComparison.Ordinal) ? rows : Head + rows);

    private string WriteRaw(string text)
    {
        string path = Path.Combine(_folder.FullName, "strips.csv");
        File.WriteAllText(path, text);
        return path;
    }
}
