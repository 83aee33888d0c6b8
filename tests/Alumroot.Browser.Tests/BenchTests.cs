using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>What can happen at the bench while a step stands there. The checks are those of the project's own interface brief, section 8, numbers 7 and 8.</summary>
public sealed class BenchTests(Studio studio)
{
    [Fact]
    public async Task A_reload_in_mid_step_stands_at_the_same_step_and_adds_nothing()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await Bench.BeginAsync(studio, own, View.Phone);
        await visit.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Put in") }).ClickAsync();
        await Assertions.Expect(Bench.Figure(visit)).ToHaveTextAsync("How long?");
        await visit.Page.ReloadAsync();
        await Assertions.Expect(Bench.Figure(visit)).ToHaveTextAsync("How long?");
        await visit.Page.GoBackAsync();
        await visit.GoAsync($"/lakes/{own.First}/bench");
        await Assertions.Expect(Bench.Figure(visit)).ToHaveTextAsync("How long?");
        Assert.Equal(["dyestuff-in"], own.Acts);
        Assert.Empty(visit.Wrongs);
    }

    [Fact]
    public async Task A_double_press_makes_one_entry()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await Bench.BeginAsync(studio, own, View.Phone);
        await visit.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Put in") }).DblClickAsync();
        await Assertions.Expect(Bench.Figure(visit)).ToHaveTextAsync("How long?");
        await Assertions.Expect(visit.Page.Locator(".kept-line")).ToContainTextAsync("Kept");
        Assert.Equal(["dyestuff-in"], own.Acts);
    }

    [Fact]
    public async Task A_second_device_sees_the_entry_and_its_late_press_adds_nothing()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit phone = await Bench.BeginAsync(studio, own, View.Phone);
        await using Visit tablet = await studio.OpenAsync($"/lakes/{own.First}/bench", new View(768, 1024), own.Address);
        await phone.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Put in") }).ClickAsync();
        await Assertions.Expect(Bench.Figure(phone)).ToHaveTextAsync("How long?");
        await tablet.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Put in") }).ClickAsync();
        await Assertions.Expect(tablet.Page.Locator(".kept-line")).ToContainTextAsync("from another device");
        await Assertions.Expect(Bench.Figure(tablet)).ToHaveTextAsync("How long?");
        await Assertions.Expect(tablet.Page.Locator(".kept-row").First).ToContainTextAsync("plant into the water");
        Assert.Equal(["dyestuff-in"], own.Acts);
    }

    [Fact]
    public async Task A_wrong_entry_is_corrected_and_the_old_one_stays_to_be_read()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await Bench.BeginAsync(studio, own, View.Phone);
        IPage page = visit.Page;
        await page.GetByText("Another amount").ClickAsync();
        await page.GetByLabel("Dry weight that went in").FillAsync("98 g");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "All steps" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Correct: plant into the water: 98 g") }).ClickAsync();
        await page.GetByLabel("Amount").FillAsync("8o g");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the correction" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Amount")).ToHaveValueAsync("8o g");
        await page.GetByLabel("Amount").FillAsync("89 g");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the correction" }).ClickAsync();
        await Assertions.Expect(page.Locator(".kept-row s")).ToContainTextAsync("98 g");
        await Assertions.Expect(page.Locator(".kept-row", new() { Has = page.Locator("s") })).ToContainTextAsync("corrected");
        await Assertions.Expect(page.Locator("#steps")).ToContainTextAsync("89.0 g");
        await Assertions.Expect(page.Locator("#steps")).Not.ToContainTextAsync("98.0 g");
        Assert.Equal(0.089, Assert.Single(own.Store.Batch(own.First)!.Steps).Values[0].SiValue, 9);
    }

    [Fact]
    public async Task What_is_typed_stays_when_the_phone_is_turned_or_the_page_loaded_again()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await Bench.BeginAsync(studio, own, View.Phone);
        IPage page = visit.Page;
        await page.GetByText("Another amount").ClickAsync();
        ILocator field = page.GetByLabel("Dry weight that went in");
        await field.FillAsync("97,5");
        await page.SetViewportSizeAsync(740, 360);
        await Assertions.Expect(field).ToHaveValueAsync("97,5");
        await Assertions.Expect(field).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Assertions.Expect(field).ToBeVisibleAsync();
        await Assertions.Expect(field).ToHaveValueAsync("97,5");
        await field.PressAsync("End");
        await field.PressSequentiallyAsync(" g");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Assertions.Expect(Bench.Figure(visit)).ToHaveTextAsync("How long?");
        Assert.Equal(0.0975, Assert.Single(own.Store.Batch(own.First)!.Steps).Values[0].SiValue, 9);
        Assert.Equal(0, await page.EvaluateAsync<int>("() => Object.keys(localStorage).filter(k => k.startsWith('alumroot-typed')).length"));
    }

    [Fact]
    public async Task The_timer_is_right_after_ten_hidden_minutes_on_a_device_whose_clock_is_wrong_and_after_a_reload()
    {
        var clock = new MovedClock();
        await using OwnStudio own = await OwnStudio.StartAsync(clock);
        await using Visit visit = await Bench.BeginAsync(studio, own, View.Phone);
        IPage page = visit.Page;
        // The device is two hours and a bit ahead of the studio.
        await page.Clock.InstallAsync(new() { TimeDate = DateTime.UtcNow + TimeSpan.FromMinutes(127) });
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Put in") }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "30 minutes" }).ClickAsync();
        ILocator left = page.Locator("[data-left]");
        await Assertions.Expect(left).ToHaveTextAsync("30 minutes");
        clock.Pass(TimeSpan.FromMinutes(10));
        await page.Clock.FastForwardAsync("10:00");
        await Assertions.Expect(left).ToHaveTextAsync("20 minutes");
        await page.ReloadAsync();
        await Assertions.Expect(left).ToHaveTextAsync("20 minutes");
        clock.Pass(TimeSpan.FromMinutes(20.1));
        await page.Clock.FastForwardAsync("20:06");
        await Assertions.Expect(page.Locator(".bench-timer")).ToContainTextAsync("Ready since");
        Assert.Equal(["dyestuff-in", "draw-out"], own.Acts);
    }

    [Fact]
    public async Task Without_a_network_an_entry_waits_on_the_device_and_is_sent_once()
    {
        await using OwnStudio own = await OwnStudio.StartAsync();
        await using Visit visit = await Bench.BeginAsync(studio, own, View.Phone);
        IPage page = visit.Page;
        ILocator press = page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Put in") });
        await page.Context.SetOfflineAsync(true);
        await press.ClickAsync();
        await Assertions.Expect(page.Locator("#live-status")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#live-status")).ToContainTextAsync("Not yet sent: 1 entry is held on this device.");
        await press.ClickAsync();
        Assert.Empty(own.Acts);
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(Bench.Figure(visit)).ToHaveTextAsync("How long?");
        Assert.Equal(["dyestuff-in"], own.Acts);
        Assert.Equal("[]", await page.EvaluateAsync<string>("() => localStorage.getItem('alumroot-not-sent')"));
    }
}
