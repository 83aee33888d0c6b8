using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>The plan changes while its fields are being filled: nothing typed is lost, focus and history stay, one sentence is said.</summary>
public sealed class PlanLiveTests(Studio studio)
{
    private static readonly string Water = "#water";

    [Fact]
    public async Task A_change_shows_at_once_and_focus_caret_and_history_stay()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder, View.Laptop);
        IPage page = visit.Page;
        int steps = await page.EvaluateAsync<int>("() => history.length");
        string before = await Alkali(page).InnerTextAsync();
        await OpenFoldAsync(page, "fold-salt");
        await page.FillAsync("#salt-amount", "");
        await page.Locator("#salt-amount").PressSequentiallyAsync("1½ oz");
        await page.WaitForURLAsync(url => url.Contains("salt-amount=1%C2%BD+oz", StringComparison.OrdinalIgnoreCase));
        await Assertions.Expect(Alkali(page)).Not.ToHaveTextAsync(before);
        Assert.Equal("1½ oz", await page.InputValueAsync("#salt-amount"));
        Assert.True(await page.EvaluateAsync<bool>("() => document.activeElement.id === 'salt-amount' && document.activeElement.selectionStart === 5"));
        Assert.True(await page.EvaluateAsync<bool>("() => document.getElementById('fold-salt').open"));
        Assert.Equal(steps, await page.EvaluateAsync<int>("() => history.length"));
        Assert.Empty(visit.Wrongs);
    }

    [Fact]
    public async Task Each_way_to_write_one_and_a_half_gives_the_same_amounts()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder, View.Laptop);
        await OpenFoldAsync(visit.Page, "fold-salt");
        var seen = new HashSet<string>();
        foreach (string number in new[] { "1,5", "1.5", "1½", "1 1/2" })
        {
            await visit.Page.FillAsync("#salt-amount", number + " oz");
            await visit.Page.WaitForURLAsync(url => Uri.UnescapeDataString(url.Replace('+', ' ')).Contains($"salt-amount={number} oz", StringComparison.Ordinal));
            await Assertions.Expect(visit.Page.Locator(".do-list .figure").First).ToContainTextAsync("42.5");
            seen.Add(await Alkali(visit.Page).InnerTextAsync());
        }
        Assert.Single(seen);
    }

    [Fact]
    public async Task Two_meanings_become_two_buttons()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        await visit.Page.FillAsync("#dry", "1,500 g");
        ILocator buttons = visit.Page.GetByRole(AriaRole.Group, new() { Name = "Meanings of Dry dyestuff" }).GetByRole(AriaRole.Link);
        await Assertions.Expect(buttons).ToHaveTextAsync(["1.5 g", "1500 g"]);
        await buttons.Nth(1).ClickAsync();
        await visit.Page.WaitForURLAsync("**dry=1500%20g*");
        await Assertions.Expect(visit.Page.Locator("#dry")).ToHaveValueAsync("1500 g");
        await Assertions.Expect(visit.Page.Locator("#sentence")).ToContainTextAsync("1500");
    }

    [Fact]
    public async Task Nothing_typed_or_picked_is_lost_while_an_answer_is_slow()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        IPage page = visit.Page;
        await OpenFoldAsync(page, "fold-water");
        int asked = 0;
        await page.RouteAsync("**/lakes/plan?*", async route =>
        {
            asked++;
            await Task.Delay(2000);
            await route.ContinueAsync();
        });
        await page.FillAsync("#dry", "90 g");
        await page.Locator("label[for=alkali-potash]").ClickAsync();
        await page.FillAsync(Water, "");
        await page.Locator(Water).PressSequentiallyAsync("2,5 L", new() { Delay = 60 });
        await page.WaitForURLAsync(url => url.Contains("water=2%2C5+L", StringComparison.Ordinal) && url.Contains("dry=90+g", StringComparison.Ordinal) && url.Contains("alkali=potash", StringComparison.Ordinal), new() { Timeout = 15000 });
        await Assertions.Expect(page.Locator("#sentence")).ToContainTextAsync("potash in water", new() { Timeout = 15000 });
        Assert.Equal(("90 g", "2,5 L", true), (await page.InputValueAsync("#dry"), await page.InputValueAsync(Water), await page.IsCheckedAsync("#alkali-potash")));
        Assert.Equal(2, asked);
        Assert.True(await page.EvaluateAsync<bool>("() => document.activeElement.id === 'water'"));
    }

    // The answer that knows the dyestuff no longer offers names before the weight, so the weight's field arrives anew.
    [Fact]
    public async Task A_field_that_arrives_anew_while_it_is_typed_in_keeps_the_focus_and_every_letter()
    {
        await using Visit visit = await studio.OpenAsync("/lakes/plan?salt=potash-alum&alkali=soda-ash", View.Laptop);
        IPage page = visit.Page;
        var answer = new TaskCompletionSource();
        await page.RouteAsync("**/lakes/plan?*dyestuff=madder", async route =>
        {
            await answer.Task;
            await route.ContinueAsync();
        });
        await page.GetByLabel("Which dyestuff?").FillAsync("madde");
        await page.Locator(".offers a").First.WaitForAsync();
        await page.GetByLabel("Which dyestuff?").PressAsync("End");
        await page.Keyboard.TypeAsync("r");
        await page.Locator("#dry").FocusAsync();
        await Assertions.Expect(page.Locator("#dry")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("1");
        answer.SetResult();
        await page.WaitForURLAsync("**dry=1");
        await Assertions.Expect(page.Locator("[data-live-sentence]")).ToContainTextAsync("A weight needs its unit");
        await page.Keyboard.TypeAsync("00 g");
        await page.Locator("#layer-do").WaitForAsync();
        Assert.Equal(("100 g", "dry"), (await page.InputValueAsync("#dry"), await page.EvaluateAsync<string>("() => document.activeElement.id")));
    }

    [Fact]
    public async Task After_a_quiet_moment_the_amount_the_path_and_the_cautions_are_said()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        Assert.Equal("", await visit.Page.Locator("#live-status").InnerTextAsync());
        await visit.Page.FillAsync("#dry", "80 g");
        await visit.Page.WaitForFunctionAsync("() => /^Alkali now .*\\sg, pH path rises to .*; \\d+ cautions\\.$/.test(document.getElementById('live-status').textContent)");
    }

    [Fact]
    public async Task A_phrase_of_the_sentence_leads_to_its_field_in_its_fold()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        await visit.Page.Locator("#sentence a", new() { HasText = "60" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'temp'");
        await Assertions.Expect(visit.Page.Locator("#temp")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task How_opens_the_explanation_of_that_number()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "How soda ash was reckoned" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#how-alkali .fold-inside")).ToBeInViewportAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "The plan, in full" }).First.ClickAsync();
        await visit.Page.WaitForURLAsync("**/handbook/how/plan");
    }

    private static ILocator Alkali(IPage page) => page.Locator(".do-list .figure", new() { HasText = "soda ash" }).Locator(".figure-line");

    private static Task OpenFoldAsync(IPage page, string id) => page.Locator($"#{id} > summary").ClickAsync();
}
