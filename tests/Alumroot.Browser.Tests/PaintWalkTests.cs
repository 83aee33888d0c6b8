using Alumroot.Studio.Journal;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Alumroot.Browser.Tests;

/// <summary>From a recipe to a paint, its label and its sheet, by what the pages say; on a phone without script.</summary>
public sealed class PaintWalkTests(Studio studio)
{
    [Fact]
    public async Task From_recipe_to_paint_to_label_to_paper()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await studio.OpenAsync("/paints", View.Phone with { Script = false }, own.Address);
        IPage page = visit.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Reckon a recipe" }).ClickAsync();
        await page.GetByLabel("Medium").SelectOptionAsync("watercolour");
        await page.GetByLabel("Grams in hand").FillAsync("12,5");
        await page.GetByLabel("Fill into").SelectOptionAsync("half-pan");
        await page.GetByText("Wet cake, name, cost, honey").ClickAsync();
        await page.GetByLabel("Name of the pigment").FillAsync("weld lake");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the recipe" }).ClickAsync();
        Assert.Contains("12.5 g of weld lake in watercolour", await page.InnerTextAsync(".plan-sentence"), StringComparison.Ordinal);
        await page.GetByLabel("What you call it").FillAsync("Spring yellow");
        await page.GetByLabel("Where they are").FillAsync("tin 1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the paint" }).ClickAsync();
        await page.WaitForURLAsync("**/paints/P-01*");
        Assert.Equal("Spring yellow", own.Store.Paint(SubjectKey.Paint(1))!.Made!.Title);
        await page.GetByRole(AriaRole.Link, new() { Name = "Labels", Exact = true }).ClickAsync();
        await page.GetByLabel("For a").SelectOptionAsync("pan");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the labels" }).ClickAsync();
        await Assertions.Expect(page.Locator("svg.label-one")).ToBeVisibleAsync();
        string address = await page.GetByRole(AriaRole.Link, new() { Name = "Labels as PDF" }).GetAttributeAsync("href") ?? "";
        using (PdfDocument labels = PdfDocument.Open(await (await page.APIRequest.GetAsync(own.Address + address)).BodyAsync()))
            Assert.Contains("Spring", labels.GetPage(1).Text, StringComparison.Ordinal);
        await page.GotoAsync(own.Address + "/paints/P-01");
        await page.GetByRole(AriaRole.Link, new() { Name = "Card to print" }).ClickAsync();
        await Assertions.Expect(page.Locator(".print-sheet")).ToContainTextAsync("P-01 Spring yellow");
        using PdfDocument printed = PdfDocument.Open(await page.PdfAsync(new() { PreferCSSPageSize = true, Format = "A4" }));
        Assert.Contains("Spring yellow", printed.GetPage(1).Text.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("Reckon a recipe", printed.GetPage(1).Text, StringComparison.Ordinal);
        Assert.Empty(visit.Wrongs);
    }
}
