using System.Text.Json;
using System.Text.Json.Nodes;
using Alumroot.App.Output;
using Alumroot.Colour.Colorimetry;
using CsCheck;

namespace Alumroot.App.Tests.Verbs;

/// <summary>The example photograph of the guide was drawn by the simulator of the colour room's tests, seed 17; so its truth is known.</summary>
public sealed class MeasureVerbTests : IDisposable
{
    private static readonly Lab[] Truths = [new(60.6258, -1.8628, 13.0704), new(46.9101, 24.2033, 14.1174), new(82.4754, 1.0154, 76.7881)];
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-measure-");
    private readonly JsonObject _request;

    public MeasureVerbTests()
    {
        foreach (string file in (string[])["photo.jpg", "photo.json", "target.cgats.txt"]) File.Copy(Path.Combine(AppContext.BaseDirectory, "Photo", file), Path.Combine(_folder.FullName, file));
        _request = JsonNode.Parse(File.ReadAllText(Path.Combine(_folder.FullName, "photo.json")))!.AsObject();
    }

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task A_photograph_tells_its_colours_within_what_it_says()
    {
        Command run = await Run(_request, "--json");
        Assert.Equal(ExitCode.Done, run.Code);
        JsonElement root = JsonDocument.Parse(run.Data).RootElement;
        JsonElement[] swatches = [.. root.GetProperty("swatches").EnumerateArray()];
        Assert.Equal(["A1", "A2", "A3"], swatches.Select(s => s.GetProperty("id").GetString()));
        for (int i = 0; i < 3; i++)
        {
            double[] lab = [.. swatches[i].GetProperty("lab_d50").EnumerateArray().Select(v => v.GetDouble())];
            Assert.True(Ciede2000.Of(Truths[i], new Lab(lab[0], lab[1], lab[2])).DeltaE <= swatches[i].GetProperty("interval_de00").GetDouble());
            Assert.False(swatches[i].GetProperty("clipped").GetBoolean());
            Assert.StartsWith("#", swatches[i].GetProperty("srgb_hex").GetString(), StringComparison.Ordinal);
            Assert.NotEmpty(swatches[i].GetProperty("name").GetString()!);
        }
        Assert.InRange(root.GetProperty("target_de00_loo_mean").GetDouble(), 0.1, 3);
        Assert.True(root.GetProperty("target_de00_loo_max").GetDouble() >= root.GetProperty("target_de00_loo_mean").GetDouble());
        Assert.InRange(root.GetProperty("light_uneven_percent").GetDouble(), 1, 60);
        Assert.Equal(4, root.GetProperty("target_corners_px").GetArrayLength());
        Assert.NotEmpty(root.GetProperty("correction").GetString()!);
    }

    [Fact]
    public async Task The_table_and_the_text_tell_the_same()
    {
        Command text = await Run(_request), csv = await Run(_request, "--csv");
        Assert.Contains("within", text.Data, StringComparison.Ordinal);
        Assert.Contains("Each patch of the target told from the others", text.Data, StringComparison.Ordinal);
        Assert.StartsWith("id,l,a,b,interval_de00,name,srgb_hex,in_gamut,clipped", csv.Data, StringComparison.Ordinal);
        Assert.Equal(4, csv.Data.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task With_a_card_alone_the_colours_are_bounded_widely_and_it_is_said_why()
    {
        _request.Remove("target");
        Command run = await Run(_request, "--json");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("nothing of how this camera sees colours", run.Messages, StringComparison.Ordinal);
        JsonElement root = JsonDocument.Parse(run.Data).RootElement;
        Assert.Equal(JsonValueKind.Null, root.GetProperty("target_de00_loo_mean").ValueKind);
        int i = 0;
        foreach (JsonElement s in root.GetProperty("swatches").EnumerateArray())
        {
            double[] lab = [.. s.GetProperty("lab_d50").EnumerateArray().Select(v => v.GetDouble())];
            Assert.True(Ciede2000.Of(Truths[i++], new Lab(lab[0], lab[1], lab[2])).DeltaE <= s.GetProperty("interval_de00").GetDouble());
        }
    }

    [Fact]
    public async Task Without_card_or_target_nothing_is_bounded()
    {
        _request.Remove("target");
        _request.Remove("card_px");
        Command run = await Run(_request, "--json");
        Assert.Contains("Only differences between things in this one picture mean anything", run.Messages, StringComparison.Ordinal);
        Assert.All(JsonDocument.Parse(run.Data).RootElement.GetProperty("swatches").EnumerateArray(), s => Assert.Equal(JsonValueKind.Null, s.GetProperty("interval_de00").ValueKind));
        run = await Run(_request);
        Assert.Contains("not bounded", run.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("Nine times in ten", run.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("photo", "\"nothing-here.jpg\"", "could not be read")]
    [InlineData("photo", "\"photo.json\"", "not a JPEG, PNG or WebP picture")]
    [InlineData("photo", "12", "path of a file")]
    [InlineData("photo", null, "has no 'photo'")]
    [InlineData("target", "\"find\"", "target is an object")]
    [InlineData("target", "{}", "has no 'reference'")]
    [InlineData("target", """{"reference":"photo.json"}""", "photo.json")]
    [InlineData("target", """{"reference":"target.cgats.txt","corners_px":"seek"}""", "\"find\"")]
    [InlineData("target", """{"reference":"target.cgats.txt","corners_px":[[0,0],[9,0]]}""", "four corners")]
    [InlineData("target", """{"reference":"target.cgats.txt","corners_px":[[0,0],[9,9],[9,0],[0,9]]}""", "cross over")]
    [InlineData("target", """{"reference":"target.cgats.txt","corners_px":[[0,0],[9000,0],[9000,9000],[0,9000]]}""", "do not lie in the picture")]
    [InlineData("target", """{"reference":"target.cgats.txt","layout":{"columns":6,"rows":4,"margin":0.2,"patch":0.2,"gap":0.1}}""", "does not fill the target")]
    [InlineData("target", """{"reference":"target.cgats.txt","layout":{"columns":5,"rows":4,"margin":0.05,"patch":0.16,"gap":0.025}}""", "holds 24 colours")]
    [InlineData("target", """{"reference":"target.cgats.txt","corner_px":"find"}""", "The nearest is 'corners_px'")]
    [InlineData("swatches", "[]", "nothing to measure")]
    [InlineData("swatches", "{}", "is a list")]
    [InlineData("swatches", """[{"id":"A","corners_px":[[1,1],[5,1],[5,5],["1,5",5]]}]""", "not a number")]
    [InlineData("swatches", """[{"id":"A","corners_px":[[1,1],[30,1],[30,30],[1,30]]},{"id":"A","corners_px":[[1,1],[30,1],[30,30],[1,30]]}]""", "stands twice")]
    [InlineData("card_reflectance", "88", "above 0 and at most 1")]
    public async Task A_wrong_request_is_told_in_one_sentence(string field, string? value, string said)
    {
        _request[field] = value is null ? null : JsonNode.Parse(value);
        Command run = await Run(_request);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Empty(run.Data);
        Assert.Contains(said, run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain(NotSaid, w => run.Messages.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task What_cannot_be_met_ends_with_1()
    {
        _request["swatches"] = JsonNode.Parse("""[{"id":"far","corners_px":[[790,590],[900,590],[900,700],[790,700]]}]""");
        Command outside = await Run(_request);
        Assert.Equal(ExitCode.CannotBeMet, outside.Code);
        Assert.Contains("far: lies outside the picture", outside.Messages, StringComparison.Ordinal);
        string reference = Path.Combine(_folder.FullName, "target.cgats.txt");
        string[] lines = await File.ReadAllLinesAsync(reference, TestContext.Current.CancellationToken);
        int first = Array.IndexOf(lines, "BEGIN_DATA") + 1;
        Array.Reverse(lines, first, 12);
        await File.WriteAllLinesAsync(reference, lines, TestContext.Current.CancellationToken);
        Command other = await Run(_request);
        Assert.Equal(ExitCode.CannotBeMet, other.Code);
        Assert.Contains("No target with these colours", other.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_for_a_request_ends_in_a_sentence() => Gen.Select(Gen.Int[0, 460], Gen.Char[" \"{}[],:0aZ\n-"], Gen.Int[0, 3]).Sample(
        t =>
        {
            string text = File.ReadAllText(Path.Combine(_folder.FullName, "photo.json")).Replace("photo.jpg", "none.jpg", StringComparison.Ordinal);
            int at = t.Item1 % text.Length;
            string changed = t.Item3 switch { 0 => text[..at], 1 => text.Insert(at, t.Item2.ToString()), 2 => text.Remove(at, 1), _ => text[..at] + t.Item2 + text[(at + 1)..] };
            string path = Path.Combine(_folder.FullName, "any.json");
            File.WriteAllText(path, changed);
            Command run = Command.Of(["measure", path]).GetAwaiter().GetResult();
            Assert.Equal(ExitCode.InputWrong, run.Code);
            Assert.NotEmpty(run.Messages);
        },
        iter: 150, threads: 1);

    private Task<Command> Run(JsonObject request, params string[] options)
    {
        string path = Path.Combine(_folder.FullName, "request.json");
        File.WriteAllText(path, request.ToJsonString());
        return Command.Of(["measure", path, .. options]);
    }
}
