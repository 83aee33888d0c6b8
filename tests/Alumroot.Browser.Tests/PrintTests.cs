using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Alumroot.Browser.Tests;

/// <summary>Pages on paper: navigation and fields off, letters of 9 pt and more, nothing cut off, the same words as on the screen.</summary>
public sealed class PrintTests(Studio studio)
{
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_page_prints_its_words_and_leaves_out_its_controls(string paper)
    {
        await using Visit visit = await studio.OpenAsync("/handbook/dyestuffs/madder", View.Laptop);
        byte[] pdf = await visit.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = false });
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
}
