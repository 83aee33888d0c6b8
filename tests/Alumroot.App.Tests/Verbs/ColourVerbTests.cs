using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests.Verbs;

public sealed class ColourVerbTests : IDisposable
{
    private const string Chips = "name,note,380,R480,SPECTRAL_NM580,nm680,780\n";
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-colour-");

    public void Dispose() => _folder.Delete(true);

    [Fact]
    public async Task Reflectances_agree_with_the_same_sum_made_elsewhere()
    {
        // Data of the colour room: 30 reflectances, Lab by a script from the same tables.
        foreach ((string illuminant, string observer) in new[] { ("D50", "2"), ("D65", "10") })
        {
            Command run = await Command.Of(["colour", Reference("reflectances.csv"), "--illuminant", illuminant, "--observer", observer]);
            Assert.Equal(ExitCode.Done, run.Code);
            Dictionary<string, TableRow> got = Table.Parse("out", run.Data).Rows.ToDictionary(r => r["sample"]);
            TableRow[] expected = [.. Table.Parse("cases", File.ReadAllText(Reference("lab_of_reflectances.csv"))).Rows.Where(r => r["method"] == "own_sum_5nm" && r["illuminant"] == illuminant && r["observer"] == observer + "deg")];
            Assert.Equal(30, expected.Length);
            foreach (TableRow e in expected)
            {
                Assert.Equal(e.Number("L"), got[e["id"]].Number("l"), 0.001);
                Assert.Equal(e.Number("a"), got[e["id"]].Number("a"), 0.001);
                Assert.Equal(e.Number("b"), got[e["id"]].Number("b"), 0.001);
            }
        }
    }

    [Fact]
    public async Task Json_is_one_document_with_the_names_of_the_contract()
    {
        Command run = await Command.Of(["colour", Write("lab.csv", "id,L,a,b\nred,41.3,65.7,33.3\nfar,60,-120,10\n"), "--json"]);
        Assert.Equal(ExitCode.Done, run.Code);
        JsonElement[] samples = [.. JsonDocument.Parse(run.Data).RootElement.GetProperty("samples").EnumerateArray()];
        foreach (string name in "sample,x,y,z,l,a,b,c,h,srgb_hex,in_gamut,name".Split(','))
            Assert.True(samples[0].TryGetProperty(name, out _), name);
        // Kelly 1958: the middle of "vivid red" is 5R 4/15, which is this Lab.
        Assert.Equal("vivid red", samples[0].GetProperty("name").GetString());
        Assert.Equal(41.3, samples[0].GetProperty("l").GetDouble(), 1e-6);
        Assert.False(samples[1].GetProperty("in_gamut").GetBoolean());
        Assert.Contains("taken as seen in D50", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_difference_is_told_in_numbers_and_words()
    {
        // Sharma, Wu and Dalal 2005, pair 25: 1.2644.
        string file = Write("lab.csv", "id,L,a,b\none,60.2574,-34.0099,36.2677\ntwo,60.4626,-34.1751,39.4387\n");
        Command run = await Command.Of(["colour", file, "--difference", "one", "two"]);
        TableRow row = Table.Parse("out", run.Data).Rows.Single();
        Assert.Equal(1.2644, row.Number("de00"), 0.00005);
        // Chroma grows from 49.7 to 52.2, the hue angle falls from 133.2 to 130.9 degrees: towards yellow.
        Assert.Equal("stronger, yellower", row["words"]);
        Command lost = await Command.Of(["colour", file, "--difference", "one", "tow"]);
        Assert.Equal(ExitCode.CannotBeMet, lost.Code);
        Assert.Contains("the nearest is 'two'", lost.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Percent_is_believed_when_said_and_asked_for_when_not()
    {
        string file = Write("chips.csv", "id," + string.Join(',', Enumerable.Range(0, 21).Select(i => $"{380 + 20 * i}")) + "\nS1" + string.Concat(Enumerable.Repeat(",41.2", 21)) + "\n");
        Command said = await Command.Of(["colour", file, "--percent"]);
        Assert.Equal(41.2, Table.Parse("out", said.Data).Rows.Single().Number("y"), 1e-6);
        Command silent = await Command.Of(["colour", file]);
        Assert.Equal(ExitCode.InputWrong, silent.Code);
        Assert.Empty(silent.Data);
        Assert.Contains("--percent", silent.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain("nearly black", said.Messages, StringComparison.Ordinal);
        Command wrong = await Command.Of(["colour", Write("shares.csv", (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).Replace("41.2", "0.412", StringComparison.Ordinal)), "--percent"]);
        Assert.Equal(ExitCode.Done, wrong.Code);
        Assert.Contains("nearly black", wrong.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_read_ends_with_2_and_says_where()
    {
        Command gap = await Command.Of(["colour", Write("wide.csv", Chips + "S1,x,0.1,0.2,0.3,0.2,0.1\n")]);
        Assert.Equal(ExitCode.InputWrong, gap.Code);
        Assert.Contains("380-480", gap.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["colour", "nothing.csv"])).Code);
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["colour"])).Code);
        string lab = Write("lab.csv", "id,L,a,b\none,60,-34,36\n");
        Assert.Contains("LED-B3", (await Command.Of(["colour", lab, "--illuminant", "D99"])).Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["colour", lab, "--observer", "4"])).Code);
        Command stray = await Command.Of(["colour", lab, "--observr", "2"]);
        Assert.Contains("'--observr'", stray.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lamp_is_a_light_and_not_a_colour()
    {
        string lamp = Reference("files/lamp.spdx");
        Assert.Equal(ExitCode.CannotBeMet, (await Command.Of(["colour", lamp])).Code);
        // The lamp of the file is D50, every 10 nm.
        Command own = await Command.Of(["colour", Reference("reflectances.csv"), "--illuminant", lamp]), tabulated = await Command.Of(["colour", Reference("reflectances.csv")]);
        foreach ((TableRow a, TableRow b) in Table.Parse("a", own.Data).Rows.Zip(Table.Parse("b", tabulated.Data).Rows))
            Assert.True(Ciede2000.Of(Of(a), Of(b)).DeltaE < 0.2);

        static Lab Of(TableRow r) => new(r.Number("l"), r.Number("a"), r.Number("b"));
    }

    [Fact]
    public async Task A_colour_that_cannot_be_and_a_lamp_without_light_are_refused()
    {
        Command far = await Command.Of(["colour", Write("xyz.csv", "id,X,Y,Z\none,1e300,20,20\n"), "--json"]);
        Assert.Equal(ExitCode.InputWrong, far.Code);
        Assert.Contains("cannot be the colour of a surface", far.Messages, StringComparison.Ordinal);
        string dark = Write("dark.csv", "wavelength_nm,lamp\n" + string.Concat(Enumerable.Range(0, 41).Select(i => $"{380 + 10 * i},0\n")));
        Command lamp = await Command.Of(["colour", Write("lab.csv", "id,L,a,b\none,60,-34,36\n"), "--illuminant", dark]);
        Assert.Equal(ExitCode.InputWrong, lamp.Code);
        Assert.Contains("shines", lamp.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fault_of_a_file_has_its_sentence()
    {
        string all = string.Join("\n", Enum.GetValues<FaultKind>().Select(kind => ColourFileWords.Of("chips.txt", new ImportFault(kind, 7) { Sample = "S2", Field = "R400", Found = "3", Expected = "4" }))) + "\n";
        Assert.All(NotSaid, word => Assert.DoesNotContain(word, all, StringComparison.OrdinalIgnoreCase));
        Golden.Same("colour_files.txt", all);
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static string Reference(string file) => Path.Combine(AppContext.BaseDirectory, "Colour", file);
}
