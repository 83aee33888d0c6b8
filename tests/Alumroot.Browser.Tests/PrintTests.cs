using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Alumroot.Browser.Tests;

/// <summary>Pages on paper: navigation and fields off, letters of 9 pt and more, nothing cut off, the same words as on the screen.</summary>
public sealed class PrintTests(Studio studio)
{
    [Fact]
    public async Task A_page_prints_its_words_and_leaves_out_its_controls()
    {
        await using Visit visit = await studio.OpenAsync("/handbook/dyestuffs/madder", View.Laptop);
        byte[] pdf = await visit.Page.PdfAsync(new() { Format = "Letter", PreferCSSPageSize = false });
        using PdfDocument document = PdfDocument.Open(pdf);
        string text = string.Join(' ', document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.Contains("Rubia tinctorum", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Waiting", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Skip to the page", text, StringComparison.Ordinal);
        foreach (Page page in document.GetPages())
        {
            Assert.All(page.Letters, letter => Assert.True(letter.PointSize >= 8.9, $"{letter.Value} of {letter.PointSize} pt"));
            Assert.All(page.Letters, letter => Assert.InRange(letter.BoundingBox.Right, 0, page.Width - 20));
        }
    }

    [Fact]
    public async Task The_sheet_of_a_lake_prints_on_one_page_without_navigation()
    {
        await using Visit visit = await studio.OpenAsync("blank", View.Laptop);
        await visit.GoAsync(await visit.FollowAsync("/lakes » pigment, 16.3 » Sheet to print"));
        string number = (await visit.Page.Locator(".plan-sentence strong").First.TextContentAsync())!;
        using PdfDocument document = PdfDocument.Open(await visit.Page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = false }));
        Page page = Assert.Single(document.GetPages());
        string text = string.Join(' ', page.GetWords().Select(w => w.Text));
        foreach (string words in new[] { number, "actual", "pH to expect", "all readings invented" }) Assert.Contains(words, text, StringComparison.Ordinal);
        Assert.DoesNotContain("Print this page", text, StringComparison.Ordinal);
        Assert.All(page.Letters, letter => Assert.InRange(letter.BoundingBox.Right, 0, page.Width - 20));
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await visit.Page.SetViewportSizeAsync(703, 964); // 186 x 255 mm at 96 px to the inch
        Assert.Empty(await Rules.SidewaysAsync(visit.Page));
        Assert.Equal(0, await visit.Page.Locator("nav:visible, form:visible, button:visible, .button:visible, .skip:visible").CountAsync());
    }

    /// <summary>Plans whose sheets are long in one way or the other: portions, washes, salts, quarrels.</summary>
    public static TheoryData<string, string> Sheets
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (string plan in new[] { Plans.Madder, Plans.Kitchen, Plans.AlkaliFirst, Plans.Quarrel, Plans.ManyPortions, Plans.ManyWashes })
                rows.Add("A4", plan);
            rows.Add("Letter", Plans.ManyPortions);
            return rows;
        }
    }

    // 186 x 255 mm within margins of 12 mm fits A4 (210 x 297 mm, ISO 216) and Letter (8.5 x 11 in).
    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task A_plan_prints_as_one_sheet_for_the_bench(string paper, string plan)
    {
        await using Visit visit = await studio.OpenAsync(plan, View.Laptop);
        string figure = await visit.Page.Locator(".sheet-figure").First.TextContentAsync() ?? "";
        byte[] pdf = await visit.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = false });
        using PdfDocument document = PdfDocument.Open(pdf);
        Page page = Assert.Single(document.GetPages());
        string text = string.Join(' ', page.GetWords().Select(w => w.Text));
        foreach (string words in new[] { "actual", "pH to expect", "Mind:", "Pigment to expect", "all readings invented", figure.Replace('\u00A0', ' ') })
            Assert.Contains(words, text, StringComparison.Ordinal);
        Assert.DoesNotContain("What the plan rests on", text, StringComparison.Ordinal);
        double margin = 12 / 25.4 * 72;
        Assert.All(page.Letters, letter => Assert.True(letter.PointSize >= 8.9, $"{letter.Value} of {letter.PointSize} pt"));
        Assert.All(page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)), letter =>
        {
            Assert.InRange(letter.BoundingBox.Left, margin - 2, page.Width - margin + 2);
            Assert.InRange(letter.BoundingBox.Right, margin - 2, page.Width - margin + 2);
            Assert.InRange(letter.BoundingBox.Bottom, margin - 4, page.Height - margin + 2);
        });
        Assert.True(page.Letters.Max(l => l.BoundingBox.Top) - page.Letters.Min(l => l.BoundingBox.Bottom) <= 255 / 25.4 * 72, "The sheet is higher than 255 mm.");
    }
}
