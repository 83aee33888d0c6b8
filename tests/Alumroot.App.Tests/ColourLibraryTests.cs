using Alumroot.App.Colours;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>The library of swatches: narrowed, ordered, compared and printed, over HTTP. The distance of the compared pair is row 23 of the table of Sharma, Wu and Dalal 2005 (4.3065).</summary>
public sealed class ColourLibraryTests
{
    private static readonly string[] Plans =
    [
        "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L",
        "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=weld&dry=100+g&water=3+L&temp=60+C&to-ph=7.5&vessel=20+L",
    ];

    [Fact]
    public async Task Colours_are_narrowed_ordered_compared_and_printed()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey madder = await Lake(studio, Plans[0]), weld = await Lake(studio, Plans[1]);
        await Keep(studio, $"/lakes/{madder}", "50 2.5 0", "wet");
        await Keep(studio, $"/lakes/{weld}", "50 0 -2.5", "dry");

        // A bench reading of the pH takes the place of the plan's aim.
        studio.Store.Append(new BatchStep(StepKind.Alkali) { Act = "alkali-read", Values = [new Measured("ph", "5.5", 5.5, "1", "strip")] }.ToEntry(EntryId.New(DateTimeOffset.Now), madder, DateTimeOffset.Now));
        studio.Store.AppendNew(SubjectClass.Paint, EntryId.New(DateTimeOffset.Now), new PaintMade("Rose for skies", "watercolour") { Lakes = [new LakeUse(madder.ToString(), new Measured("amount", "2 g", 0.002, "kg"))] }, DateTimeOffset.Now);
        await Keep(studio, "/paints/P-01", "40 45 12", null);

        Assert.Equal(["painted in watercolour, lake of pH 5.5"], await Shown(studio, "medium=watercolour"));
        Assert.Equal(2, (await Shown(studio, "medium=not-told")).Count);
        Assert.Equal(["dry, lake of pH 7.5 by plan"], await Shown(studio, "ph=3"));
        Assert.Equal(2, (await Shown(studio, "ph=1")).Count);
        Assert.Equal(["dry, lake of pH 7.5 by plan"], await Shown(studio, "dyestuff=weld"));
        Assert.Equal(3, (await Shown(studio, "salt=potash+alum")).Count);
        Assert.Empty(await Shown(studio, "salt=not-told"));
        Assert.Equal("painted in watercolour, lake of pH 5.5", (await Shown(studio, "order=chroma"))[0]);
        Assert.Equal("painted in watercolour, lake of pH 5.5", (await Shown(studio, "order=darkest"))[0]);
        Assert.Equal("wet paste, lake of pH 5.5", (await Shown(studio, "order=earliest"))[0]);
        Assert.Equal("wet paste, lake of pH 5.5", (await Shown(studio, "order=hue"))[0]);

        // Hue by the last word of the plain name, chroma (45, 12 gives 46.6) and lightness by bands.
        Assert.Equal(["painted in watercolour, lake of pH 5.5"], await Shown(studio, "hue=red"));
        Assert.Equal(2, (await Shown(studio, "hue=gray")).Count);
        Assert.Equal(["painted in watercolour, lake of pH 5.5"], await Shown(studio, "strength=2"));
        Assert.Equal(2, (await Shown(studio, "strength=0")).Count);
        Assert.Equal(["painted in watercolour, lake of pH 5.5"], await Shown(studio, "light=1"));
        Assert.Equal(2, (await Shown(studio, "light=2")).Count);
        Assert.Empty(await Shown(studio, "light=2&hue=red"));
        Assert.Contains("Colours: red, chroma 30 to below 50, L* 30 to below 50", (await studio.GetAsync("/print/colour-card?hue=red&strength=2&light=1")).Text, StringComparison.Ordinal);

        // What is asked to be near is told how far each is: row 23 again.
        Assert.Contains("4.3 from the colour asked for", (await studio.GetAsync("/colours?near=50+2.5+0&of=weld")).Text, StringComparison.Ordinal);

        // The plot names its dots, and a table beneath says the same: hue and chroma of (45, 12) by hand.
        OpenStudio.Seen plot = await studio.GetAsync("/colours?medium=watercolour&order=hue");
        Assert.DoesNotContain("plot-number", plot.Html, StringComparison.Ordinal);
        plot = await studio.GetAsync("/colours?order=hue");
        Assert.Equal(3, plot.Html.Split("class=\"plot-number\"").Length - 1);
        Assert.Matches("15 47 40 within 1.0 ", plot.Text);

        IReadOnlyList<LakeColour> all = LakeColour.All(studio.Store);
        string a = $"{all.Single(c => c.Read.State == SwatchState.Wet).Id}", b = $"{all.Single(c => c.Read.State == SwatchState.Dry).Id}";
        Assert.Contains("4.3, ", (await studio.GetAsync($"/colours/compare?a={a}&b={b}")).Text, StringComparison.Ordinal);
        Assert.Contains("/colours/compare", (await studio.GetAsync("/colours")).Html, StringComparison.Ordinal);

        string card = PdfReading.Text(await studio.BytesAsync("/pdf/colour-card?dyestuff=weld&paper=a6")), page = (await studio.GetAsync("/print/colour-card?dyestuff=weld&paper=a6")).Text;
        foreach (string said in (string[])["Colours: weld", "dry, lake of pH 7.5 by plan", "L* 50, a* 0, b* -2; within 1.0", "Printed colour is not the record"])
        {
            Assert.Contains(said, page, StringComparison.Ordinal);
            Assert.Contains(string.Concat(said.Where(c => c != ' ')), string.Concat(card.Where(c => !char.IsWhiteSpace(c))), StringComparison.Ordinal);
        }
        Assert.Contains("There is nothing to print here", (await studio.GetAsync("/print/colour-card?dyestuff=woad")).Text, StringComparison.Ordinal);
        Assert.Contains("from the one before", (await studio.GetAsync($"/lakes/{madder}")).Text, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public async Task What_cannot_be_read_is_said_and_all_are_shown()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await Keep(studio, $"/lakes/{await Lake(studio, Plans[0])}", "50 2.5 0", "wet");
        OpenStudio.Seen page = await studio.GetAsync("/colours?near=red&from=-3&order=size");
        Assert.Contains("'red' is no Lab", page.Text, StringComparison.Ordinal);
        Assert.Contains("1 of 1.", page.Text, StringComparison.Ordinal);
        Assert.Contains("None of these of 1.", (await studio.GetAsync("/colours?ph=9")).Text, StringComparison.Ordinal);
    }

    private static async Task<SubjectKey> Lake(OpenStudio studio, string plan)
    {
        OpenStudio.Seen page = await studio.SendAsync((await studio.GetAsync(plan)).Forms.First(f => f.Action == "/lakes"));
        return SubjectKey.TryRead(page.Address.Split('?')[0].Split('/')[2])!.Value;
    }

    private static async Task Keep(OpenStudio studio, string page, string lab, string? state)
    {
        OpenStudio.Form form = (await studio.GetAsync(page)).Forms.First(f => f.Action == "/colours/typed");
        await (state is null ? studio.SendAsync(form, ("lab", lab)) : studio.SendAsync(form, ("lab", lab), ("state", state)));
    }

    /// <summary>What the page says each colour was read of, in its order.</summary>
    private static async Task<IReadOnlyList<string>> Shown(OpenStudio studio, string query)
    {
        string html = (await studio.GetAsync($"/colours?{query}")).Html;
        return [.. html.Split("<figcaption>").Skip(1).Select(c => c.Split("<br")[0]).Select(c => c[(c.IndexOf("</a>", StringComparison.Ordinal) + 4)..]).Select(c => c[(c.IndexOf(',', StringComparison.Ordinal) + 1)..].Trim())];
    }
}
