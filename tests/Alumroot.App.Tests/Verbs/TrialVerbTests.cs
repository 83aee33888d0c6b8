using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Quantities.Tables;
using CsCheck;

namespace Alumroot.App.Tests.Verbs;

public sealed class TrialVerbTests : IDisposable
{
    // NIST/SEMATECH e-Handbook 5.6.1, eddy current probe; its effects are held in the engine's own tests.
    private const string Probe = "turns,distance,gauge,yield\n90,0.38,40,1.70\n180,0.38,40,4.57\n90,1.14,40,0.55\n180,1.14,40,3.39\n90,0.38,48,1.51\n180,0.38,48,4.59\n90,1.14,48,0.67\n180,1.14,48,4.29\n";
    private const string Salts = "{\"kind\":\"best\",\"jars\":6,\"interactions\":false,\"factors\":[{\"name\":\"salt\",\"levels\":[\"potash-alum\",\"aluminium-sulfate\"]},{\"name\":\"to-ph\",\"from\":5.5,\"to\":7,\"steps\":3}]";
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-trial-");

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task A_design_with_a_plan_has_amounts_for_every_jar()
    {
        string file = Write("t.json", Salts + ",\"plan\":{\"dyestuff\":\"weld\",\"dry\":\"5 g\",\"water\":\"150 mL\",\"salt-amount\":\"2 g\",\"alkali\":\"soda-ash\",\"vessel\":\"1 L\",\"scale\":\"0.01 g\"}}");
        Command run = await Command.Of(["trial", "design", file, "--csv"]);
        Assert.Equal(ExitCode.Done, run.Code);
        Table table = Table.Parse("out", run.Data);
        Assert.Equal(6, table.Rows.Count);
        foreach (TableRow row in table.Rows)
        {
            Assert.Equal(2, row.Number("salt_g"), 6);
            Assert.InRange(row.Number("alkali_g"), row.Number("alkali_low_g"), row.Number("alkali_high_g"));
        }
        // The jar of the same settings planned by itself takes the same.
        TableRow first = table.Rows[0];
        Command alone = await Command.Of(["plan", "--dyestuff", "weld", "--dry", "5g", "--water", "150mL", "--salt", first["salt"], "--salt-amount", "2g", "--alkali", "soda-ash", "--vessel", "1L", "--scale", "0.01g", "--to-ph", first["to-ph"], "--json"]);
        Assert.Equal(JsonDocument.Parse(alone.Data).RootElement.GetProperty("amounts").GetProperty("alkali_g").GetProperty("value").GetDouble(), first.Number("alkali_g"), 3);
        Command again = await Command.Of(["trial", "design", file, "--csv"]);
        Assert.Equal(run.Data, again.Data);
    }

    [Fact]
    public async Task A_fraction_tells_what_it_mixes_up()
    {
        string file = Write("t.json", "{\"kind\":\"fraction\",\"jars\":8,\"factors\":[" + string.Join(',', Enumerable.Range(0, 5).Select(i => $"{{\"name\":\"f{i}\",\"levels\":[\"a\",\"b\"]}}")) + "]}");
        JsonElement root = JsonDocument.Parse((await Command.Of(["trial", "design", file, "--json"])).Data).RootElement;
        Assert.Equal(3, root.GetProperty("resolution").GetInt32());
        Assert.Equal(2, root.GetProperty("generators").GetArrayLength());
        Assert.Equal(8, root.GetProperty("jars").GetArrayLength());
        Command text = await Command.Of(["trial", "design", file]);
        Assert.Contains("Resolution III", text.Data, StringComparison.Ordinal);
        Assert.Contains("Cannot be told apart", text.Data, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Effects_of_a_published_trial_are_those_of_its_handbook()
    {
        string file = Write("r.csv", Probe);
        JsonElement response = JsonDocument.Parse((await Command.Of(["trial", "analyse", file, "--json"])).Data).RootElement.GetProperty("responses")[0];
        Assert.Equal(2.65875, response.GetProperty("mean").GetProperty("value").GetDouble(), 6);
        Assert.Equal([3.1025, -0.8675], response.GetProperty("effects").EnumerateArray().Take(2).Select(e => Math.Round(e.GetProperty("change").GetProperty("value").GetDouble(), 6)));
        Command text = await Command.Of(["trial", "analyse", file]);
        Assert.Matches("turns 90 to 180 +\\+3.1 .*: sure", text.Data);
        Assert.Equal(6, Table.Parse("out", (await Command.Of(["trial", "analyse", file, "--csv"])).Data).Rows.Count);
    }

    [Fact]
    public async Task The_next_jar_has_settings_reasons_and_spans()
    {
        string file = Write("r.csv", Probe);
        JsonElement root = JsonDocument.Parse((await Command.Of(["trial", "next", file, "--aim", "most=yield", "--json"])).Data).RootElement;
        JsonElement next = root.GetProperty("next");
        Assert.InRange(next.GetProperty("settings").GetProperty("turns").GetDouble(), 90, 180);
        JsonElement expected = next.GetProperty("expected").GetProperty("yield");
        Assert.True(expected.GetProperty("low").GetDouble() < expected.GetProperty("high").GetDouble());
        Assert.StartsWith("because", root.GetProperty("because").GetString(), StringComparison.Ordinal);
        Assert.Equal(180, root.GetProperty("best_so_far").GetProperty("settings").GetProperty("turns").GetDouble());
        Assert.Contains("Do", (await Command.Of(["trial", "next", file, "--aim", "most=yield"])).Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("design", "{", "The file is no JSON: line 1")]
    [InlineData("design", "{}", "\"factors\" is missing")]
    [InlineData("design", "{\"factors\":[],\"speed\":1}", "\"speed\" is not known")]
    [InlineData("design", "{\"factors\":[{\"name\":\"salt\",\"levels\":[\"a\"]}]}", "\"levels\" is a list of two or more")]
    [InlineData("design", "{\"factors\":[{\"name\":\"pH\",\"from\":7,\"to\":5}]}", "the smaller first")]
    [InlineData("design", "{\"kind\":\"spiral\",\"factors\":[{\"name\":\"pH\",\"from\":5,\"to\":7}]}", "'spiral' is not known")]
    [InlineData("design", "{\"jars\":-2,\"factors\":[{\"name\":\"pH\",\"from\":5,\"to\":7}]}", "is not a whole number")]
    [InlineData("design", "{\"forbidden\":[{\"pH\":6,\"salt\":\"b\"}],\"factors\":[{\"name\":\"pH\",\"from\":5,\"to\":7}]}", "is not two settings of factors above")]
    [InlineData("design", "{\"plan\":{\"dye\":\"weld\"},\"factors\":[{\"name\":\"to-ph\",\"from\":5,\"to\":7}]}", "'dye' is no field of a plan")]
    [InlineData("analyse", "salt,L\nalum,x\n", "line 2")]
    [InlineData("analyse", "salt,pH\nalum,7\n", "has no column that was measured")]
    [InlineData("analyse", "L,a,b\n1,2,3\n", "has no column of a factor")]
    [InlineData("plan", "x", "It is 'trial design', 'trial analyse' or 'trial next'")]
    public async Task What_is_wrong_is_said_and_ends_with_2(string what, string text, string sentence)
    {
        Command run = await Command.Of(["trial", what, Write("x.txt", text)]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(sentence, run.Messages, StringComparison.Ordinal);
        Assert.Empty(run.Data);
        Assert.DoesNotContain(NotSaid, w => run.Messages.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("", "needs an aim")]
    [InlineData("lab=1 2", "is no colour")]
    [InlineData("lab=50 20 10", "needs the column L")]
    [InlineData("most=beauty", "beauty was not measured")]
    [InlineData("nearest=yield", "is not understood")]
    public async Task An_aim_that_cannot_be_is_told(string aim, string sentence)
    {
        string file = Write("r.csv", Probe);
        Command run = await Command.Of(aim.Length == 0 ? ["trial", "next", file] : ["trial", "next", file, "--aim", aim]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(sentence, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_designed_ends_with_1()
    {
        Command run = await Command.Of(["trial", "design", Write("t.json", "{\"kind\":\"latin-square\",\"factors\":[{\"name\":\"pH\",\"from\":5,\"to\":7}]}")]);
        Assert.Equal(ExitCode.CannotBeMet, run.Code);
        Assert.Contains("A Latin square has three factors", run.Messages, StringComparison.Ordinal);
        Command few = await Command.Of(["trial", "next", Write("f.csv", "pH,yield\n5,1\n6,2\n"), "--aim", "most=yield"]);
        Assert.Equal(ExitCode.CannotBeMet, few.Code);
        Assert.Contains("4 jars", few.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void No_file_whatever_ends_in_anything_but_an_exit_code() => Gen.Select(Gen.Int[0, 2], Gen.Byte.Array[0, 300], Gen.Int[0, 200], (what, noise, at) => (what, noise, at)).Sample(
        x =>
        {
            byte[] bytes = System.Text.Encoding.UTF8.GetBytes(x.what == 0 ? Salts + "}" : Probe);
            for (int i = 0; i < Math.Min(8, x.noise.Length); i++) bytes[(x.at * 7 + i * 13) % bytes.Length] = x.noise[i];
            string file = Path.Combine(_folder.FullName, Guid.NewGuid().ToString("N"));
            File.WriteAllBytes(file, bytes);
            string[] words = x.what switch { 0 => ["trial", "design", file], 1 => ["trial", "analyse", file], _ => ["trial", "next", file, "--aim", "most=yield"] };
            Assert.InRange(Command.Of(words).GetAwaiter().GetResult().Code, 0, 2);
        }, iter: 120, threads: 2);

    private string Write(string name, string text)
    {
        string file = Path.Combine(_folder.FullName, name);
        File.WriteAllText(file, text);
        return file;
    }
}
