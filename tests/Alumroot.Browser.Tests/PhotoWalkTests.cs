using System.Globalization;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>From a photograph with a target to a colour, by what the pages say; the corners are pressed on the picture. The photograph is the example of the guide, whose target lies at known pixels (docs/guide/examples/photo.json).</summary>
public sealed class PhotoWalkTests(Studio studio)
{
    private const double PhotoWidth = 800;
    private static readonly (double X, double Y)[] Corners = [(73.2, 187.9), (354.6, 179.4), (350.4, 366.9), (68.2, 363.2)];

    [Theory]
    [InlineData(360, 740, false)]
    [InlineData(1280, 900, true)]
    public async Task A_photograph_is_measured_by_corners_that_are_pressed(int width, int height, bool script)
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await studio.OpenAsync("/colours", new View(width, height) { Script = script }, own.Address);
        IPage page = visit.Page;
        await page.GetByLabel("File", new() { Exact = true }).SetInputFilesAsync(Photo("target.cgats.txt"));
        await page.GetByLabel("Its name").FillAsync("board");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the target" }).ClickAsync();
        await page.GetByLabel("Photograph of the samples").SetInputFilesAsync(Photo("photo.jpg"));
        await page.GetByLabel("Target in the picture").SelectOptionAsync(new SelectOptionValue { Label = "none" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Measure it" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("only differences within this photograph can be told");

        await visit.GoAsync(new Uri(page.Url).AbsolutePath + "/corners?target=board&of=target");
        double shown = 0;
        foreach ((double x, double y) in Corners)
        {
            ILocator picture = page.GetByRole(AriaRole.Button, new() { NameRegex = new("^The photograph") });
            shown = (await picture.BoundingBoxAsync())!.Width;
            Assert.Empty(await Rules.SidewaysAsync(page));
            if (script) Assert.Empty(await Rules.AllAsync(page));
            await picture.ClickAsync(new() { Position = new() { X = (float)(x / PhotoWidth * shown), Y = (float)(y / PhotoWidth * shown) } });
        }
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Four corners are shown");
        await page.GetByRole(AriaRole.Link, new() { Name = "Look at corner 2" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Corner 2 from near" })).ToBeVisibleAsync();
        string typed = await page.InputValueAsync("#c2");
        await page.GetByRole(AriaRole.Link, new() { Name = "right 1", Exact = true }).ClickAsync();
        // With script the page is patched in place, without a load to wait for.
        await Assertions.Expect(page.Locator("#c2")).Not.ToHaveValueAsync(typed);
        double seen = double.Parse((await page.InputValueAsync("#c2")).Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.InRange(seen - 1 - Corners[1].X, -PhotoWidth / shown, PhotoWidth / shown);
        Assert.Empty(await Rules.SidewaysAsync(page));
        Assert.Empty(await Rules.SmallTargetsAsync(page));
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure with these corners" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Good.");
        // The truth of the first swatch is L* 60.6.
        string first = await page.Locator("#areas tbody tr").First.InnerTextAsync();
        Assert.Matches(@"\b(59|60|61|62)\.\d", first);
        Assert.Empty(visit.Wrongs);
    }

    private static string Photo(string file) => Path.Combine(AppContext.BaseDirectory, "Photo", file);
}
