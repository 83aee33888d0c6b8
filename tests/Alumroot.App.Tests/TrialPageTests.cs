using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>A trial as a browser without script keeps it: laid out, kept, read jar by jar, analysed from what is recorded, printed, ended.</summary>
public sealed class TrialPageTests
{
    private const string Row = "/trials/design?factors=salt%3A%20potash-alum%2C%20aluminium-sulfate%0Ato-ph%3A%205.5%20to%207%0Atemp%3A%2020%20to%2060%20C&kind=full";
    private const string Plan = "&plan=%2Flakes%2Fplan%3Fdyestuff%3Dweld%26dry%3D5%20g%26water%3D150%20mL%26salt-amount%3D2%20g%26alkali%3Dsoda-ash%26vessel%3D1%20L";

    [Fact]
    public async Task A_row_is_kept_with_its_amounts_and_reads_the_same_as_it_was_laid_out()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen laid = await studio.GetAsync(Row + Plan);
        OpenStudio.Seen page = await studio.SendAsync(laid.Forms.Single(f => f.Action == "/trials"), ("title", "weld and heat"), ("results", "yield, de"), ("again", "3 days"));
        Assert.StartsWith("/trials/T-01", page.Address, StringComparison.Ordinal);
        TrialState trial = studio.Store.Trial(SubjectKey.Trial(1))!;
        Assert.Equal(8, trial.Jars.Count);
        Assert.Equal(["yield", "de"], trial.Begun!.Results);
        Assert.All(trial.Jars, j => Assert.Equal(2, j.Jar.Amounts.Count));
        // What stands on the page of the design stands in the record and on the page of the trial.
        foreach (TrialAmount salt in trial.Jars.Select(j => j.Jar.Amounts[0])) Assert.Equal(0.002, salt.SiValue, 1e-9);
        string alkali = Words.KeptTrialWords.Amount(trial.Jars[0].Jar.Amounts[1]).Replace('\u00A0', ' ');
        Assert.Contains(alkali, laid.Text, StringComparison.Ordinal);
        Assert.Contains(alkali, page.Text, StringComparison.Ordinal);
        Assert.Contains("T-01 weld and heat", (await studio.GetAsync("/trials")).Text, StringComparison.Ordinal);
        Assert.Contains("look at the jars and write what you read", (await studio.GetAsync("/")).Text, StringComparison.Ordinal);
        Assert.Contains("T-01", (await studio.GetAsync("/find?q=weld+heat")).Text, StringComparison.Ordinal);
        // The address alone still does what it did.
        Assert.Contains("8 jars, in this order", (await studio.GetAsync(Row)).Text, StringComparison.Ordinal);
    }

    // An additive truth without scatter: 2 g, one more at pH 7, half more with the sulfate, nothing by heat. The effects of a full row of two settings are differences of means
    // (Box, Hunter and Hunter 1978, Statistics for Experimenters; from memory), so they come out as put in.
    [Fact]
    public async Task Effects_cube_and_next_jar_come_from_what_was_recorded()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await Kept(studio, "yield");
        TrialBegun begun = studio.Store.Trial(SubjectKey.Trial(1))!.Begun!;
        Assert.DoesNotContain("Mean", page.Text, StringComparison.Ordinal);
        foreach (TrialJar jar in begun.Jars)
        {
            double grams = 2 + (begun.Factors[1].Settings[jar.Levels[1]] == "7" ? 1 : 0) + (begun.Factors[0].Settings[jar.Levels[0]] == "aluminium-sulfate" ? 0.5 : 0);
            string colour = FormattableString.Invariant($"{50 + 4 * jar.Levels[1]} {10 + 2 * jar.Levels[0]} {20 + jar.Levels[2]}");
            page = await studio.SendAsync(ReadForm(await studio.GetAsync($"/trials/T-01?jar={jar.Order}")), ("lab", colour), ("within", "1,5"), ("result-0", FormattableString.Invariant($"{grams} ± 0.1")));
            Assert.Contains("Kept", page.Text, StringComparison.Ordinal);
        }
        Assert.Contains("8 jars, all read", page.Text, StringComparison.Ordinal);
        Assert.Contains("Effects on yield_g", page.Text, StringComparison.Ordinal);
        Assert.Contains("to-ph 5.5 to 7 1 (", page.Text, StringComparison.Ordinal);
        Assert.Contains("salt aluminium-sulfate to potash-alum -0.5 (", page.Text, StringComparison.Ordinal);
        // The cube's far corner: sulfate, pH 7, 60 C.
        Assert.Contains("aluminium-sulfate 7 60 3.5 1", page.Text, StringComparison.Ordinal);
        Assert.Contains("cube-plot", page.Html, StringComparison.Ordinal);
        Assert.Contains("salt × to-ph", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("salt × to-ph", (await studio.GetAsync("/trials/T-01?effects=single")).Text, StringComparison.Ordinal);
        page = await studio.GetAsync("/trials/T-01?aim=most%3Dyield_g");
        Assert.Contains("The next jar:", page.Text, StringComparison.Ordinal);
        Assert.Contains("because", page.Text, StringComparison.Ordinal);
        Assert.Contains("'deep' is not understood", (await studio.GetAsync("/trials/T-01?aim=deep")).Text, StringComparison.Ordinal);
    }

    // The pilot plant of Box, Hunter and Hunter 1978, Statistics for Experimenters, chapter 10 (from memory): mean yields 60 72 54 68 52 83 45 80 in standard order of temperature,
    // concentration and catalyst; printed effects 23, -5 and 1.5, of temperature with catalyst 10, with concentration 1.5, of concentration with catalyst 0.
    [Fact]
    public async Task The_pilot_plant_comes_out_as_printed()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Kept(studio, "output", "/trials/design?factors=temperature%3A%20160%20to%20180%20C%0Aconcentration%3A%2020%20to%2040%20%25%0Acatalyst%3A%20A%2C%20B&kind=full");
        int[] printed = [60, 72, 54, 68, 52, 83, 45, 80];
        foreach (TrialJar jar in studio.Store.Trial(SubjectKey.Trial(1))!.Begun!.Jars)
            await studio.SendAsync(ReadForm(await studio.GetAsync($"/trials/T-01?jar={jar.Order}")), ("result-0", FormattableString.Invariant($"{printed[jar.Levels[0] + 2 * jar.Levels[1] + 4 * jar.Levels[2]]}")));
        OpenStudio.Seen page = await studio.GetAsync("/trials/T-01");
        foreach (string said in (string[])["temperature 160 to 180 23 (", "concentration 20 to 40 -5 (", "catalyst A to B 1.5 (", "temperature × catalyst 10 (", "temperature × concentration 1.5 (", "concentration × catalyst 0 (", "160 20 A 60 1", "180 20 B 83 1", "160 40 B 45 1", "Mean 64.2"])
            Assert.Contains(said, page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lab", "red", "'red' is no colour")]
    [InlineData("result-0", "1,500 g", "can mean")]
    [InlineData("result-0", "-2 g", "is below nothing")]
    [InlineData("result-0", "2 mL", "a weight is needed")]
    [InlineData("result-0", "much", "there is no number in 'much'")]
    [InlineData("result-1", "5 g", "result-1")]
    [InlineData("again", "soon", "neither a day nor a time from now")]
    [InlineData("again", "2020-01-01", "is past")]
    [InlineData("again", "28", "28 of what?")]
    [InlineData("within", "2", "no colour stands beside it")]
    public async Task A_wrong_reading_is_said_and_nothing_is_kept(string field, string typed, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await Kept(studio, "yield, de");
        page = await studio.SendAsync(ReadForm(page), (field, typed));
        Assert.Contains(said, said.StartsWith("result", StringComparison.Ordinal) ? page.Html : page.Text, StringComparison.Ordinal);
        Assert.Contains($"value=\"{typed}\"", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain(studio.Store.Trial(SubjectKey.Trial(1))!.Jars, j => j.IsRead);
        Assert.Contains("Nothing was kept", (await studio.SendAsync(ReadForm(page))).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title", "", "Write what you call the trial")]
    [InlineData("results", "yield, chroma", "'chroma' belongs to the colour")]
    [InlineData("results", "yield, temp", "'temp' is set in this row")]
    [InlineData("again", "in a while", "neither a day nor a time")]
    public async Task A_wrong_trial_is_said_and_none_is_kept(string field, string typed, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Row)).Forms.Single(f => f.Action == "/trials");
        (string, string)[] fields = [.. new[] { ("title", "x"), ("results", "yield"), ("again", "") }.Select(f => f.Item1 == field ? (field, typed) : f)];
        Assert.Contains(said, (await studio.SendAsync(form, fields)).Text, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Trials());
        await studio.SendAsync(form, ("title", "x"));
        await studio.SendAsync(form, ("title", "x"));
        Assert.Single(studio.Store.Trials());
        Assert.Contains("There is no \"T-77\" here", (await studio.GetAsync("/trials/T-77")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_trial_ends_and_its_end_can_be_taken_back()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await Kept(studio, "yield");
        page = await studio.SendAsync(page.Forms.Single(f => f.Action == "/trials/T-01/end"), ("note", "heat does nothing"));
        Assert.Contains("trial ended; heat does nothing", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Forms, f => f.Action == "/trials/T-01/read");
        page = await studio.SendAsync(page.Forms.First(f => f.Action == "/trials/T-01/take-back"));
        Assert.False(studio.Store.Trial(SubjectKey.Trial(1))!.IsEnded);
        Assert.Contains(page.Forms, f => f.Action == "/trials/T-01/read");
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public async Task Every_jar_has_a_label_with_its_code_and_the_row_a_sheet()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Kept(studio, "yield, de", Row + Plan);
        OpenStudio.Seen page = await studio.GetAsync("/paints/labels?trial=T-01");
        Assert.Contains("8 labels of T-01", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Not everything fits", page.Text, StringComparison.Ordinal);
        byte[] pdf = await studio.BytesAsync("/pdf/labels?trial=T-01");
        IReadOnlyList<(double Left, double Top, double Width, double Height)> outlines = PdfReading.Outlines(pdf);
        Assert.Equal(8, outlines.Count);
        Assert.Equal("T-01/1", PdfReading.Code(pdf, outlines[0].Left, outlines[0].Top, outlines[0].Width, outlines[0].Height));
        Assert.Equal("T-01/8", PdfReading.Code(pdf, outlines[7].Left, outlines[7].Top, outlines[7].Width, outlines[7].Height));
        Assert.True(PdfReading.KeepsWithinThePaper(pdf));
        // What a phone reads from the label leads to its jar.
        OpenStudio.Seen found = await studio.GetAsync("/find?q=T-01%2F8");
        Assert.Contains("The label you read T-01 jar 8", found.Text, StringComparison.Ordinal);
        Assert.Contains("/trials/T-01?jar=8", found.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("The label you read", (await studio.GetAsync("/find?q=T-01%2F9")).Text, StringComparison.Ordinal);
        // Two of each, from the fourth place on.
        Assert.Equal(16, PdfReading.Outlines(await studio.BytesAsync("/pdf/labels?trial=T-01&copies=2&skip=3&width=40&height=25")).Count);
        Assert.Contains("There is no trial 'T-09'", (await studio.GetAsync("/paints/labels?trial=T-09")).Text, StringComparison.Ordinal);
        string sheet = PdfReading.Text(await studio.BytesAsync("/pdf/trial-sheet?trial=T-01"));
        foreach (string said in (string[])["Trial", "T-01", "potash-alum", "fading", "swatch"]) Assert.Contains(said, sheet, StringComparison.Ordinal);
        Assert.Contains("Keep to the order", (await studio.GetAsync("/print/trial-sheet?trial=T-01")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_verbs_know_a_trial()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await studio.SendAsync(ReadForm(await Kept(studio, "yield")), ("result-0", "2.4"));
        Verbs.Command list = await Verbs.Command.Of(["list", "--studio", studio.Folder]), show = await Verbs.Command.Of(["show", "T-01", "--studio", studio.Folder]);
        Assert.Contains("T-01", list.Data, StringComparison.Ordinal);
        Assert.Contains("jar 1: yield 2.4", show.Data, StringComparison.Ordinal);
        await studio.SendAsync(ReadForm(await studio.GetAsync("/trials/T-01?jar=2")), ("result-0", "3.1"));
        Assert.Contains("yield_g: mean 2.75", (await Verbs.Command.Of(["trial", "analyse", "T-01", "--studio", studio.Folder])).Data, StringComparison.Ordinal);
        Verbs.Command none = await Verbs.Command.Of(["trial", "next", "T-09", "--aim", "most=yield_g", "--studio", studio.Folder]), few = await Verbs.Command.Of(["trial", "next", "T-01", "--aim", "most=yield_g", "--studio", studio.Folder]);
        Assert.Contains("There is no T-09 in this studio", none.Messages, StringComparison.Ordinal);
        Assert.Contains("are the least", few.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_jar_leads_to_its_plan_when_the_row_had_one()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Kept(studio, "yield", Row + Plan);
        for (int jar = 1; jar <= 5; jar++) await studio.SendAsync(ReadForm(await studio.GetAsync($"/trials/T-01?jar={jar}")), ("result-0", FormattableString.Invariant($"{2 + 0.1 * jar}")));
        OpenStudio.Seen page = await studio.GetAsync("/trials/T-01?aim=most%3Dyield_g");
        string plan = System.Net.WebUtility.HtmlDecode(page.Html[page.Html.IndexOf("/lakes/plan?", StringComparison.Ordinal)..].Split('"')[0]);
        foreach (string field in (string[])["dyestuff=weld", "salt-amount=2%20g", "temp=", "%20C", "to-ph=", "salt="]) Assert.Contains(field, plan, StringComparison.Ordinal);
        Assert.Contains("5 g dry weld", (await studio.GetAsync(plan)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_verb_keeps_a_trial_and_reads_its_jars_like_the_pages()
    {
        string folder = Path.Combine(Path.GetTempPath(), "alumroot-" + Guid.NewGuid().ToString("N"));
        Task<Verbs.Command> Record(params string[] words) => Verbs.Command.Of(["record", .. words, "--studio", folder]);
        try
        {
            Assert.Contains("is not the address of a row", (await Record("trial", "/lakes/plan?dry=5g", "x")).Messages, StringComparison.Ordinal);
            Assert.Contains("belongs to the colour", (await Record("trial", Row, "heat", "hue")).Messages, StringComparison.Ordinal);
            Assert.Contains("T-01", (await Record("trial", Row, "heat", "yield, de")).Data, StringComparison.Ordinal);
            Assert.Contains("jar 3: yield 2,4 ± 0.1, colour L* 52, a* 38, b* 21", (await Record("T-01", "jar", "3", "yield=2,4 ± 0.1", "lab=52 38 21")).Data, StringComparison.Ordinal);
            foreach ((string[] words, string said) in ((string[], string)[])
                [(["T-01", "jar", "9", "yield=2"], "is no jar of this trial"), (["T-01", "jar", "3", "weight=2"], "'weight' is not read in T-01"), (["T-01", "jar", "3"], "Nothing was read of jar 3"),
                 (["T-01", "jar", "3", "yield"], "'yield' is not understood"), (["T-01", "jar", "3", "yield=2", "yield=3"], "stands twice"), (["T-01", "added", "3g"], "T-01 is no batch"), (["T-02", "jar", "1", "yield=2"], "There is no T-02")])
            {
                Verbs.Command wrong = await Record(words);
                Assert.Equal(2, wrong.Code);
                Assert.Contains(said, wrong.Messages, StringComparison.Ordinal);
            }
            Assert.Contains("trial ended; alum suffices", (await Record("T-01", "ended", "--note", "alum suffices")).Data, StringComparison.Ordinal);
            Assert.Contains("T-01", (await Verbs.Command.Of(["list", "suffices", "--studio", folder])).Data, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // The photograph of the guide: its first swatch is L* 60.6, a* -1.9, b* 13.1 by an instrument (MeasureVerbTests).
    [Fact]
    public async Task One_photograph_gives_the_colours_of_many_jars()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Kept(studio, "yield");
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        page = await studio.UploadAsync(page.Forms.First(f => f.Action == "/colours/target"), await Photo("target.cgats.txt"), "big-board.cgats.txt");
        OpenStudio.Form upload = page.Forms.First(f => f.Action == "/colours/photo");
        page = await studio.UploadAsync(upload with { Hidden = [.. upload.Hidden, KeyValuePair.Create("target", "big-board.cgats")] }, await Photo("photo.jpg"), "photo.jpg");
        OpenStudio.Form jars = page.Forms.Single(f => f.Action == "/trials/photo");
        Assert.Contains("Jar 3 stands at two areas", (await studio.SendAsync(jars, ("trial", "T-01"), ("jar-1", "3"), ("jar-2", "3"))).Text, StringComparison.Ordinal);
        Assert.Contains("'9' is no jar of T-01", (await studio.SendAsync(jars, ("trial", "T-01"), ("jar-1", "9"))).Text, StringComparison.Ordinal);
        Assert.Contains("No area names a jar", (await studio.SendAsync(jars, ("trial", "T-01"))).Text, StringComparison.Ordinal);
        page = await studio.SendAsync(jars, ("trial", "T-01"), ("jar-1", "3"), ("jar-2", "5"));
        Assert.StartsWith("/trials/T-01", page.Address, StringComparison.Ordinal);
        await studio.SendAsync(jars, ("trial", "T-01"), ("jar-1", "3"), ("jar-2", "5"));
        TrialState trial = studio.Store.Trial(SubjectKey.Trial(1))!;
        Assert.Equal([3, 5], trial.Jars.Where(j => j.IsRead).Select(j => j.Jar.Order));
        Assert.Equal(3, trial.Entries.Count);
        TrialJarRead read = trial.Jars[2].Colour!;
        Assert.True(Colour.Colorimetry.Ciede2000.Of(new Colour.Colorimetry.Lab(60.6258, -1.8628, 13.0704), new Colour.Colorimetry.Lab(read.Colour!.LabL, read.Colour.LabA, read.Colour.LabB)).DeltaE <= read.WithinDeltaE2000);
        Assert.Contains("target big-board.cgats", read.How, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Check());

        static Task<byte[]> Photo(string file) => File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "Photo", file));
    }

    private static OpenStudio.Form ReadForm(OpenStudio.Seen page) => page.Forms.Single(f => f.Action == "/trials/T-01/read");

    private static async Task<OpenStudio.Seen> Kept(OpenStudio studio, string results, string row = Row) =>
        await studio.SendAsync((await studio.GetAsync(row)).Forms.Single(f => f.Action == "/trials"), ("title", "salts and heat"), ("results", results));
}
