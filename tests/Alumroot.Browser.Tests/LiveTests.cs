using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>Answers while typing, tried on the find page: nothing typed is lost, focus and history stay, and one sentence is said.</summary>
public sealed class LiveTests(Studio studio)
{
    [Fact]
    public async Task Answers_change_while_typing_and_focus_history_and_text_stay()
    {
        await using Visit visit = await studio.OpenAsync("/find");
        IPage page = visit.Page;
        int steps = await page.EvaluateAsync<int>("() => history.length");
        ILocator field = page.GetByLabel("Words");
        await field.PressSequentiallyAsync("madder");
        await page.GetByRole(AriaRole.Link, new() { Name = "Madder", Exact = true }).WaitForAsync();
        Assert.Equal("madder", await field.InputValueAsync());
        Assert.True(await field.EvaluateAsync<bool>("e => e === document.activeElement"));
        Assert.Equal(steps, await page.EvaluateAsync<int>("() => history.length"));
        Assert.EndsWith("/find?q=madder", page.Url, StringComparison.Ordinal);
        Assert.Empty(visit.Wrongs);
    }

    [Fact]
    public async Task What_is_typed_during_a_slow_answer_is_kept_and_asked_next()
    {
        await using Visit visit = await studio.OpenAsync("/find");
        IPage page = visit.Page;
        var asked = new List<string>();
        await page.RouteAsync("**/find?*", async route =>
        {
            asked.Add(new Uri(route.Request.Url).Query);
            await Task.Delay(1500);
            await route.ContinueAsync();
        });
        ILocator field = page.GetByLabel("Words");
        await field.PressSequentiallyAsync("m");
        await field.PressSequentiallyAsync("adder", new() { Delay = 100 });
        await page.WaitForURLAsync("**/find?q=madder");
        await page.GetByRole(AriaRole.Link, new() { Name = "Madder", Exact = true }).WaitForAsync();
        Assert.Equal("madder", await field.InputValueAsync());
        Assert.Equal(["?q=m", "?q=madder"], asked);
    }

    [Fact]
    public async Task A_letter_put_into_the_middle_leaves_the_caret_there()
    {
        await using Visit visit = await studio.OpenAsync("/find?q=mader");
        ILocator field = visit.Page.GetByLabel("Words");
        await field.FocusAsync();
        await field.EvaluateAsync("e => e.setSelectionRange(2, 2)");
        await visit.Page.Keyboard.TypeAsync("d");
        await visit.Page.WaitForURLAsync("**/find?q=madder");
        Assert.Equal("madder", await field.InputValueAsync());
        Assert.Equal(3, await field.EvaluateAsync<int>("e => e.selectionStart"));
    }

    [Fact]
    public async Task After_a_quiet_moment_one_sentence_is_said()
    {
        await using Visit visit = await studio.OpenAsync("/find");
        ILocator status = visit.Page.Locator("#live-status");
        Assert.Equal("", await status.InnerTextAsync());
        await visit.Page.GetByLabel("Words").PressSequentiallyAsync("madder");
        await visit.Page.WaitForFunctionAsync("() => /thing/.test(document.getElementById('live-status').textContent)");
        Assert.Matches("fits?", await status.TextContentAsync() ?? "");
    }

    [Fact]
    public async Task Control_K_leads_to_the_find_field_and_links_lead_the_focus_to_the_heading()
    {
        await using Visit visit = await studio.OpenAsync("/handbook/reading");
        await visit.Page.Keyboard.PressAsync("Control+k");
        await visit.Page.WaitForURLAsync("**/find");
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'find-words'");
        await visit.GoAsync("/handbook");
        await visit.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Troubles") }).ClickAsync();
        await visit.Page.WaitForURLAsync("**/handbook/trouble");
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.tagName === 'H1'");
    }

    [Fact]
    public async Task Without_script_finding_works_by_its_button()
    {
        await using Visit visit = await studio.OpenAsync("/find", View.Phone with { Script = false });
        await visit.Page.GetByLabel("Words").FillAsync("weld");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Find" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Weld", Exact = true }).ClickAsync();
        Assert.EndsWith("/handbook/dyestuffs/weld", visit.Page.Url, StringComparison.Ordinal);
    }
}
