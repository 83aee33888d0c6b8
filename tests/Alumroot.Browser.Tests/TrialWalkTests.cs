using Alumroot.Studio.Journal;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>From laying out a row of jars to the next jar, by what the pages say; on a phone without script.</summary>
public sealed class TrialWalkTests(Studio studio)
{
    [Fact]
    public async Task From_a_row_of_jars_to_the_next_one()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await studio.OpenAsync("/trials", View.Phone with { Script = false }, own.Address);
        IPage page = visit.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Lay out a row of jars" }).ClickAsync();
        await page.GetByLabel("What is changed, one a line").FillAsync("salt: potash-alum, aluminium-sulfate\nto-ph: 5.5 to 7\ntemp: 20 to 60 C");
        await page.GetByLabel("How the jars are chosen").SelectOptionAsync("full");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay it out" }).ClickAsync();
        await Assertions.Expect(page.Locator("#jars-table tbody tr")).ToHaveCountAsync(8);
        Assert.Empty(await Rules.SidewaysAsync(page));
        await page.GetByLabel("What you call it").FillAsync("Weld, eight ways");
        await page.GetByLabel("What you will read beside the colour").FillAsync("yield");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this trial" }).ClickAsync();
        await page.WaitForURLAsync("**/trials/T-01*");
        for (int jar = 1; jar <= 8; jar++)
        {
            await page.GetByRole(AriaRole.Heading, new() { Name = $"Read jar {jar}" }).WaitForAsync();
            // Warmth and a higher pH give more; by how much is invented.
            JarState state = own.Store.Trial(SubjectKey.Trial(1))!.Jars.Single(j => j.Jar.Order == jar);
            double yield = 0.5 + 0.1 * state.Jar.Levels[1] + 0.2 * state.Jar.Levels[2] + 0.01 * (jar % 3);
            await page.GetByLabel("Colour of its swatch").FillAsync(FormattableString.Invariant($"{80 - jar % 2} -4 {50 + 3 * state.Jar.Levels[0]}"));
            await page.GetByLabel("yield").First.FillAsync(FormattableString.Invariant($"{yield:0.00} ± 0.02"));
            await page.GetByRole(AriaRole.Button, new() { Name = "Keep the reading" }).ClickAsync();
            await Assertions.Expect(page.Locator(".kept-line")).ToContainTextAsync("Kept");
        }
        Assert.True(own.Store.Trial(SubjectKey.Trial(1))!.Jars.All(j => j.IsRead));
        await page.GetByLabel("What you are after").FillAsync("most=yield");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("The next jar: .*because"));
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("temp 20 to 60");
        Assert.Empty(await Rules.SidewaysAsync(page));
        Assert.Empty(visit.Wrongs);
    }
}
