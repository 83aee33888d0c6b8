using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Integrity;
using SkiaSharp;

namespace Alumroot.App.Tests.Verbs;

/// <summary>The record on the command line: what is said, how it ends, and that what was said to be kept is there.</summary>
public sealed class RecordVerbTests : IDisposable
{
    private const string Address = "/lakes/plan?salt=potash-alum&salt-amount=50%20g&alkali=soda-ash&dyestuff=madder&dry=100%20g&water=3%20L&temp=60%20C&to-ph=6.5";

    private readonly string _folder = Path.Combine(Path.GetTempPath(), "alumroot-" + Guid.NewGuid().ToString("N"));

    private string Dir => $" --studio \"{Path.Combine(_folder, "studio")}\"";

    public RecordVerbTests() => Directory.CreateDirectory(_folder);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task A_batch_goes_from_plan_to_entries_lists_and_checks()
    {
        await Says($"record plan \"{Address}\"", @"^Kept \d\d-001 \d\d:\d\d:\d\d planned: ");
        string batch = await OnlyBatch();
        await Says("record lot salt \"potash alum\" \"500 g\" --cost \"12,50 EUR\"", @"^Kept lot-1 \d\d:\d\d:\d\d came: potash alum, salt, 500 g$");
        await Says($"record {batch} salt \"50 g\" --use lot-1", @"50 g of lot-1$");
        await Says($"record {batch} added \"3.0 g\" --strip 5.5 --note \"froth rose\" --entry press-0001", @"^Kept \d\d-001 \d\d:\d\d:\d\d alkali: 3.0 g, pH 5.5 \(strip\); froth rose$");
        await Says($"record {batch} added \"3.0 g\" --strip 5.5 --note \"froth rose\" --entry press-0001", "^Kept before ");
        await Says($"record {batch} added \"3.1 g\" --corrects press-0001 --entry press-0002", "^Kept ");
        Command show = await Run($"show {batch} --json");
        JsonElement[] entries = [.. JsonDocument.Parse(show.Data).RootElement.GetProperty("entries").EnumerateArray()];
        Assert.Equal(["stands", "stands", "superseded", "stands"], entries.Select(e => e.GetProperty("standing").GetString()));
        Assert.Equal(0.003, entries[2].GetProperty("payload").GetProperty("values")[0].GetProperty("si_value").GetDouble());
        await Says("show lot-1", "Left +450 g");
        await Says("list froth", $"{batch} .* thrown-down");
        await Says("list --csv", "^subject,title,stage,");
        Command waiting = await Run("list --waiting");
        Assert.Equal((ExitCode.CannotBeMet, true), (waiting.Code, waiting.Messages.Contains("Nothing waits for a time", StringComparison.Ordinal)));
        await Says($"show {batch} --csv --utc", @"^at,entry,document,said,standing\r?\n\d{4}-\d\d-\d\dT[\d:.]+\+00:00,");
        Assert.Equal(3, entries[2].GetProperty("values").GetProperty("amount_g").GetDouble());
        Assert.Equal(450, JsonDocument.Parse((await Run("show lot-1 --json")).Data).RootElement.GetProperty("left_g").GetDouble(), 9);
        await Says("check", "5 entries and 0 photographs are whole");
        await Says("backup", "Copied 5 entries and 0 photographs");
    }

    [Fact]
    public async Task Steps_of_instruments_several_lots_and_several_photographs_are_kept()
    {
        await Says($"record plan \"{Address}\"", "^Kept");
        string batch = await OnlyBatch();
        await Says("record lot salt \"potash alum\" \"30 g\"", "^Kept lot-1");
        await Says("record lot salt \"potash alum\" \"500 g\"", "^Kept lot-2");
        await Says($"record {batch} salt \"50 g\" --scale 0.1g --meter 3.42 --ph-step 0.01 --use \"lot-1 30 g\" --use \"lot-2 20 g\"", @"50 g \(scale\), pH 3.42 \(meter\), 30 g of lot-1, 20 g of lot-2$");
        string one = Picture("one.png", 1), two = Picture("two.png", 2);
        await Says($"record {batch} note --photo \"{one}\" --photo \"{two}\"", @"\[2 photo\]$");
        JsonElement[] entries = [.. JsonDocument.Parse((await Run($"show {batch} --json")).Data).RootElement.GetProperty("entries").EnumerateArray()];
        Assert.Equal([0.0001, 0.01], entries[1].GetProperty("payload").GetProperty("values").EnumerateArray().Select(v => v.GetProperty("resolution_si").GetDouble()));
        Assert.Equal(20, entries[1].GetProperty("values").GetProperty("of_lot_2_g").GetDouble());
        Assert.Equal(2, entries[2].GetProperty("payload").GetProperty("photos").GetArrayLength());
        await Says("show lot-2", "Left +480 g");
    }

    [Fact]
    public async Task Quiet_holds_remarks_back_unless_it_did_not_go()
    {
        await Says("record lot salt \"potash alum\" \"5 g\"", "^Kept lot-1");
        await Says($"record plan \"{Address}\"", "^Kept");
        string batch = await OnlyBatch();
        Command spoken = await Run($"record {batch} salt \"6 g\" --use lot-1"), quiet = await Run($"record {batch} salt \"6 g\" --use lot-1 --quiet"), wrong = await Run($"record {batch} salt \"6 C\" --quiet");
        Assert.Contains("More of lot-1 was used than came", spoken.Messages, StringComparison.Ordinal);
        Assert.Equal((ExitCode.Done, ""), (quiet.Code, quiet.Messages));
        Assert.StartsWith("Kept", quiet.Data, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputWrong, wrong.Code);
        Assert.Contains("a weight is needed", wrong.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_studio_goes_out_and_comes_into_another()
    {
        await Says("record lot alkali \"soda ash\" \"1 kg\"", "^Kept lot-1");
        string zip = Path.Combine(_folder, "out.zip");
        await Says($"export \"{zip}\"", "Exported 1 entries and 0 photographs");
        Assert.Equal(ExitCode.InputWrong, (await Run($"export \"{zip}\"")).Code);
        string other = Path.Combine(_folder, "other");
        Command first = await Command.Of($"import \"{zip}\" --studio \"{other}\"");
        Command second = await Command.Of($"import \"{zip}\" --studio \"{other}\"");
        Assert.Equal("Added 1 entries and 0 photographs; 0 entries were there.", first.Data.Trim());
        Assert.Equal("Added 0 entries and 0 photographs; 1 entries were there.", second.Data.Trim());
        File.WriteAllText(zip, "x");
        Command refused = await Command.Of($"import \"{zip}\" --studio \"{other}\"");
        Assert.Equal(ExitCode.InputWrong, refused.Code);
        Assert.Contains("is not a zip, or it is damaged. Fetch it again. Nothing was changed.", refused.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("record lot salt alum \"1,500 g\"", ExitCode.InputWrong, "Amount: 1,500 g can mean 1.5 g or 1500 g. Which is it?")]
    [InlineData("record lot sald alum \"15 g\"", ExitCode.InputWrong, "'sald' is not a kind of lot. It is one of dyestuff, salt, alkali, binder, support.")]
    [InlineData("record lot salt alum \"0 g\"", ExitCode.InputWrong, "a lot of nothing cannot come")]
    [InlineData("record lot salt alum \"15 C\"", ExitCode.InputWrong, "a weight is needed")]
    [InlineData("record 26-14 added 3g", ExitCode.InputWrong, "'26-14' is not the number of a batch or lot.")]
    [InlineData("record 26-014 adds 3g", ExitCode.InputWrong, "'26-014 adds 3g' is not understood.")]
    [InlineData("record 26-014 added 3g --strip 55", ExitCode.InputWrong, "pH: 55")]
    [InlineData("record 26-014 added 3g --entry no", ExitCode.InputWrong, "'--entry no' cannot be the number of an entry.")]
    [InlineData("record lot-1 added 3g", ExitCode.InputWrong, "lot-1 is a lot, and steps belong to batches.")]
    [InlineData("record 26-014 wash --use lot-1", ExitCode.InputWrong, "needs the amount that was taken")]
    [InlineData("record 26-014 salt 50g --use lot-1 --use lot-2", ExitCode.InputWrong, "each needs its own amount")]
    [InlineData("record 26-014 salt 50g --use \"lot-1 20 g\" --use \"lot-1 30 g\"", ExitCode.InputWrong, "names lot-1 a second time")]
    [InlineData("record 26-014 salt 50g --use \"lot-1 20 C\"", ExitCode.InputWrong, "a weight is needed")]
    [InlineData("record 26-014 salt --scale 0.1g", ExitCode.InputWrong, "'--scale 0.1g' belongs to an amount that was weighed")]
    [InlineData("record 26-014 salt 50g --ph-step 0.5", ExitCode.InputWrong, "'--ph-step 0.5' belongs to a pH that was read")]
    [InlineData("record 26-014 salt 50g --strip 4 --ph-step -1", ExitCode.InputWrong, "Step of the pH: ")]
    [InlineData("record 26-014 note", ExitCode.InputWrong, "A note needs its words.")]
    [InlineData("record plan /lakes", ExitCode.InputWrong, "is not the address of a plan")]
    [InlineData("record new", ExitCode.InputWrong, "Add --from FILE")]
    [InlineData("record 26-014 added 3g", ExitCode.CannotBeMet, "There is no 26-014 in this studio.")]
    [InlineData("show 26-014", ExitCode.CannotBeMet, "There is no studio in")]
    [InlineData("show xyz", ExitCode.InputWrong, "'xyz' is not a number of the record.")]
    public async Task What_cannot_be_recorded_is_told_with_its_reason(string line, int code, string sentence)
    {
        Command said = await Run(line);
        Assert.Equal(code, said.Code);
        Assert.Contains(sentence, said.Messages, StringComparison.Ordinal);
        Assert.Empty(said.Data);
    }

    [Fact]
    public async Task A_held_a_damaged_and_an_unwritable_studio_end_with_3()
    {
        await Says("record lot salt alum \"5 g\"", "^Kept");
        string studio = Path.Combine(_folder, "studio");
        using (StudioStore.Open(studio, StudioAccess.Write, TimeProvider.System))
        {
            Command held = await Run("record lot salt alum \"5 g\"");
            Assert.Equal((ExitCode.RecordTrouble, ""), (held.Code, held.Data));
            Assert.Contains("Another program has the studio", held.Messages, StringComparison.Ordinal);
            await Says("list", "lot-1");
        }
        await Says("check", "whole");
        foreach (string file in Directory.GetFiles(studio, "studio.db*")) File.WriteAllText(file, new string('z', 9000));
        Command damaged = await Run("list");
        Assert.Equal(ExitCode.RecordTrouble, damaged.Code);
        Assert.Contains("is damaged", damaged.Messages, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_folder, "file"), "");
        Command unwritable = await Command.Of($"record lot salt alum \"5 g\" --studio \"{Path.Combine(_folder, "file", "studio")}\"");
        Assert.Equal(ExitCode.RecordTrouble, unwritable.Code);
        Assert.Contains("cannot be written, so nothing was added", unwritable.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_finding_has_words()
    {
        foreach (string key in FindingKeys.All)
            Assert.DoesNotContain(key, StudioWords.Of(new StudioFinding(key, FindingLevel.Look, "W", "D")), StringComparison.Ordinal);
    }

    private string Picture(string name, int side)
    {
        string file = Path.Combine(_folder, name);
        using var bitmap = new SKBitmap(side, side);
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(file, data.ToArray());
        return file;
    }

    private async Task<string> OnlyBatch()
    {
        using JsonDocument list = JsonDocument.Parse((await Run("list --json")).Data);
        return list.RootElement[0].GetProperty("subject").GetString()!;
    }

    private Task<Command> Run(string line) => Command.Of(line + Dir);

    private async Task Says(string line, string pattern)
    {
        Command said = await Run(line);
        Assert.True(said.Code == ExitCode.Done, $"{line} ended with {said.Code}: {said.Messages}");
        Assert.Matches("(?m)" + pattern, said.Data.ReplaceLineEndings("\n").TrimEnd());
    }
}
