using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>A first batch in an empty studio, from the first page to the finished pigment, by what the pages say: on a phone, and on a laptop without script.</summary>
public sealed class BenchWalkTests(Studio studio)
{
    private const int MostSteps = 60;

    [Theory]
    [InlineData(360, 740, true)]
    [InlineData(1280, 900, false)]
    public async Task A_first_batch_goes_from_its_plan_to_the_finished_pigment(int width, int height, bool script)
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await studio.OpenAsync("/", new View(width, height) { Script = script }, own.Address);
        IPage page = visit.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan a lake", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^Potash alum") }).CheckAsync();
        await page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^Soda ash") }).CheckAsync();
        await page.GetByLabel("Which dyestuff?").FillAsync("madder");
        await page.GetByLabel("Its dry weight").FillAsync("100 g");
        if (!script) await page.GetByRole(AriaRole.Button, new() { Name = "Show the plan" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin this batch" }).ClickAsync();
        await page.Locator("#bench-figure").WaitForAsync();

        long kept = own.Store.Count();
        var lines = new List<string>();
        while (await page.Locator(".bench-line").InnerTextAsync() is var line && line != "Done")
        {
            lines.Add(line);
            Assert.True(lines.Count < MostSteps, $"The walk does not end: {string.Join(" | ", lines.TakeLast(8))}");
            await Bench.AnswerAsync(page, line);
            await Assertions.Expect(page.Locator(".kept-line")).ToContainTextAsync("Kept");
            await page.WaitForLoadStateAsync();
            Assert.Equal(++kept, own.Store.Count());
            Assert.Empty(await Rules.SidewaysAsync(page));
        }
        foreach (string step in new[] { "Extract: strain", "Alkali: make its solution", "Alkali, portion 1", "Settle", "Wash 1", "Filter", "Dry: first weight", "Grind", "Sieve" })
            Assert.Contains(step, lines);
        BatchState batch = own.Store.Batch(own.First)!;
        Assert.Equal(BatchStage.Pigment, batch.Stage);
        Assert.Equal(0.0151, batch.PigmentKg!.Value, 6);
        Assert.Empty(own.Store.Check());
        await Assertions.Expect(page.Locator("#bench-figure")).ToHaveTextAsync("15.1 g of pigment");
        await page.GetByRole(AriaRole.Link, new() { Name = "All steps" }).ClickAsync();
        await Assertions.Expect(page.Locator(".kept-row")).ToHaveCountAsync((int)kept);
        Assert.Empty(visit.Wrongs);
    }
}
