using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>A stranger plans a madder lake from the first page, by what the pages say: on a phone, by keyboard alone, and without script.</summary>
public sealed partial class WalkTests(Studio studio)
{
    [Fact]
    public async Task On_a_phone()
    {
        await using Visit visit = await studio.OpenAsync("/", View.Phone);
        IPage page = visit.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan a lake", Exact = true }).ClickAsync();
        await page.GetByText("It says only \"alum\"").ClickAsync();
        await page.GetByText("Clear, glassy crystals").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "It is Potash alum" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^Potash alum") })).ToBeCheckedAsync();
        await page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^Soda ash") }).CheckAsync();
        await page.GetByLabel("Which dyestuff?").FillAsync("madder");
        await page.GetByLabel("Its dry weight").FillAsync("100");
        await page.GetByRole(AriaRole.Link, new() { Name = "100 g", Exact = true }).ClickAsync();
        await page.Locator("#layer-do").WaitForAsync();
        string plan = (await page.InnerTextAsync("main")).Replace('\u00A0', ' ');
        Assert.Matches(SodaAsh(), plan);
        foreach (string words in new[] { "100 g dry madder root", "vessel, at least", "The telling reading", "Washing", "air-dry pigment", "Mind:" })
            Assert.Contains(words, plan, StringComparison.Ordinal);
        await Assertions.Expect(page.Locator(".do-list .figure-value").First).ToBeVisibleAsync();
        Assert.Empty(visit.Wrongs);
    }

    [Fact]
    public async Task By_keyboard_alone()
    {
        await using Visit visit = await studio.OpenAsync("/lakes/plan", View.Laptop);
        IPage page = visit.Page;
        await TabToAsync(page, "salt");
        await page.Keyboard.PressAsync("Space");
        await TabToAsync(page, "alkali");
        await page.Keyboard.PressAsync("Space");
        await page.WaitForURLAsync("**alkali=soda-ash*");
        Assert.Equal("alkali", await page.EvaluateAsync<string>("() => document.activeElement.id"));
        await TabToAsync(page, "dyestuff");
        await page.Keyboard.TypeAsync("madder");
        await TabToAsync(page, "dry");
        await page.Keyboard.TypeAsync("100 g");
        await page.Locator("#layer-do").WaitForAsync();
        Assert.Equal("dry", await page.EvaluateAsync<string>("() => document.activeElement.id"));
        await TabToAsync(page, "fold-temp", "() => document.activeElement.parentElement?.id");
        await page.Keyboard.PressAsync("Enter");
        await TabToAsync(page, "temp");
        await page.Keyboard.TypeAsync("140 F");
        await Assertions.Expect(page.Locator("#sentence")).ToContainTextAsync("at 60");
        Assert.Equal(("temp", "140 F"), (await page.EvaluateAsync<string>("() => document.activeElement.id"), await page.InputValueAsync("#temp")));
    }

    [Fact]
    public async Task Without_script()
    {
        await using Visit visit = await studio.OpenAsync("/", View.Phone with { Script = false });
        IPage page = visit.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan a lake", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^Home-baked soda") }).CheckAsync();
        await page.GetByLabel("Baking soda before baking").FillAsync("200 g");
        await page.GetByLabel("Powder after baking").FillAsync("1,280 g");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the plan" }).ClickAsync();
        Assert.Equal(2, await page.Locator(".still-to-say a").CountAsync());
        await page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^Potash alum") }).CheckAsync();
        await page.GetByLabel("Powder after baking", new() { Exact = true }).FillAsync("128 g");
        await page.GetByLabel("Which dyestuff?").FillAsync("maddr");
        await page.GetByLabel("Its dry weight").FillAsync("3.5 oz");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the plan" }).ClickAsync();
        await page.Locator(".offers a", new() { HasText = "madder" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("#layer-do")).ToBeVisibleAsync();
        Assert.Equal("3.5 oz", await page.InputValueAsync("#dry"));
        Assert.Contains("home-baked soda in water", await page.InnerTextAsync("#sentence"), StringComparison.Ordinal);
    }

    private static async Task TabToAsync(IPage page, string id, string where = "() => document.activeElement.id")
    {
        for (int stop = 0; stop < 80; stop++)
        {
            if (await page.EvaluateAsync<string?>(where) == id) return;
            await page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"The tab key did not come to {id}.");
    }

    [GeneratedRegex(@"soda ash\s+\d+(\.\d+)? g\s+\(\d+(\.\d+)? to \d+(\.\d+)?\) reckoned, (close|fair|rough), mostly ")]
    private static partial Regex SodaAsh();
}
