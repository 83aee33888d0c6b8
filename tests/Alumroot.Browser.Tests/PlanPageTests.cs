using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>What the plan page must show in each of its states. The checks are those of the project's own interface brief, section 8.</summary>
public sealed partial class PlanPageTests(Studio studio)
{
    [Fact]
    public async Task Every_number_has_a_source_word_and_a_way_to_how_it_was_reckoned()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder, View.Laptop);
        string[] bare = await visit.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('.answer .figure')].filter(f => {
              const how = f.querySelector('.figure-how'), word = f.querySelector('.figure-source')?.textContent;
              const place = how && document.getElementById(new URL(how.href).hash.slice(1));
              return !['reckoned', 'measured', 'assumed'].includes(word) || !place || !f.querySelector('.figure-value').textContent.trim();
            }).map(f => f.textContent)
            """);
        Assert.Empty(bare);
        Assert.True(await visit.Page.Locator(".answer .figure").CountAsync() >= 12);
        foreach (string label in new[] { "soda ash", "end pH, froth down", "gas while you add", "air-dry pigment", "metal still dissolved" })
            Assert.Matches(Span(), await visit.Page.Locator(".figure", new() { HasText = label }).First.InnerTextAsync());
    }

    [Fact]
    public async Task Every_chart_has_a_name_and_the_same_as_a_table()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        foreach (string id in new[] { "path", "gas", "solids" })
        {
            ILocator chart = visit.Page.Locator($"#{id}");
            Assert.True((await chart.Locator("svg").First.GetAttributeAsync("aria-label"))!.Length > 30);
            Assert.Equal(12, await chart.Locator("table tbody tr").CountAsync());
        }
    }

    [Fact]
    public async Task A_refused_plan_shows_no_amount_in_words_or_attributes()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Refused);
        await Assertions.Expect(visit.Page.Locator(".caution")).ToContainTextAsync("Will not plan: with lead acetate");
        string markup = await visit.Page.EvaluateAsync<string>("() => decodeURIComponent(document.querySelector('main').outerHTML.replace(/<svg.*?<\\/svg>/gs, ''))");
        Assert.Empty(Amount().Matches(markup).Select(m => markup[Math.Max(0, m.Index - 40)..Math.Min(markup.Length, m.Index + 40)]));
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Plan with potash alum" }).ClickAsync();
        await visit.Page.WaitForURLAsync("**/lakes/plan?salt=potash-alum");
        await Assertions.Expect(visit.Page.Locator("#salt")).ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_pot_too_small_holds_the_amounts_back_until_one_button_changes_it()
    {
        await using Visit visit = await studio.OpenAsync(Plans.HeldBack);
        Assert.Contains("Change this first:", await visit.Page.InnerTextAsync(".answer"), StringComparison.Ordinal);
        Assert.Equal(0, await visit.Page.Locator(".figure, .chart, .sheet, table").CountAsync());
        await visit.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Take a vessel of") }).ClickAsync();
        await visit.Page.Locator("#layer-do").WaitForAsync();
        Assert.True(await visit.Page.Locator(".do-list .figure").CountAsync() >= 2);
    }

    [Fact]
    public async Task The_work_can_be_divided_to_fit_the_pot()
    {
        await using Visit visit = await studio.OpenAsync(Plans.HeldBack);
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Make it in 3 parts" }).ClickAsync();
        await visit.Page.Locator("#layer-do").WaitForAsync();
        Assert.StartsWith("33.3 g dry madder root in 1 L water", (await visit.Page.InnerTextAsync("#sentence")).Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_aim_out_of_reach_offers_the_nearest_and_it_is_in_reach()
    {
        await using Visit visit = await studio.OpenAsync(Plans.OutOfReach);
        await Assertions.Expect(visit.Page.Locator(".caution")).ToContainTextAsync("Cannot reach: pH 3.");
        ILocator acts = visit.Page.Locator(".caution .act a");
        Assert.True(await acts.CountAsync() >= 2);
        foreach (string address in await acts.EvaluateAllAsync<string[]>("all => all.map(a => a.getAttribute('href'))"))
        {
            await visit.GoAsync(address);
            await Assertions.Expect(visit.Page.Locator("#layer-do")).ToBeVisibleAsync();
        }
    }

    [Fact]
    public async Task Two_statements_that_quarrel_stand_side_by_side()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Quarrel, View.Laptop);
        ILocator quarrel = visit.Page.Locator("#stated-ph-quarrels");
        Assert.Equal(["The weights say", "It is written"], await quarrel.Locator("dt").AllInnerTextsAsync());
        Assert.Contains("Does not add up:", await quarrel.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(1, await quarrel.Locator("dd").EvaluateAllAsync<int>("d => new Set(d.map(e => e.getBoundingClientRect().top)).size"));
    }

    [Fact]
    public async Task What_was_typed_is_shown_back_exactly()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Troubled);
        Assert.Equal("5o g", await visit.Page.InputValueAsync("#water"));
        Assert.Equal("100", await visit.Page.InputValueAsync("#dry"));
        Assert.Equal("maddr", await visit.Page.InputValueAsync("#dyestuff"));
        Assert.Equal("true", await visit.Page.GetAttributeAsync("#water", "aria-invalid"));
    }

    [Fact]
    public async Task A_trouble_at_the_top_leads_into_its_fold()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Troubled);
        await visit.Page.EvaluateAsync("() => { document.getElementById('fold-water').open = false }");
        await visit.Page.Locator(".trouble-summary a", new() { HasText = "Water" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'water'");
        await Assertions.Expect(visit.Page.Locator("#water")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task On_a_phone_held_sideways_the_first_figure_is_seen_at_once()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder, new View(640, 360));
        await Assertions.Expect(visit.Page.Locator(".do-list .figure-value").First).ToBeInViewportAsync(new() { Ratio = 1 });
    }

    [Fact]
    public async Task Three_cautions_stand_open_and_the_rest_is_folded()
    {
        await using Visit visit = await studio.OpenAsync(Plans.Madder);
        Assert.Equal(3, await visit.Page.Locator("#mind .caution:visible").CountAsync());
        Assert.True(await visit.Page.Locator("#mind-more .caution").CountAsync() > 0);
    }

    [Fact]
    public async Task First_there_are_three_questions_and_the_shelf_folded()
    {
        await using Visit visit = await studio.OpenAsync("/lakes/plan");
        Assert.Equal(0, await visit.Page.Locator("details:not(#shelf-choices), details[open]").CountAsync());
        Assert.Equal(2, await visit.Page.Locator("fieldset").CountAsync());
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show the plan" }).ClickAsync();
        await visit.Page.GetByText("Still to say").WaitForAsync();
        Assert.Equal(3, await visit.Page.Locator(".still-to-say a").CountAsync());
    }

    [GeneratedRegex(@"\(\S+ to \S+\)")]
    private static partial Regex Span();

    [GeneratedRegex(@"\d\s*(?:g|kg|mg|mL|L|oz|lb|qt|cups?|°C|°F|%|pH|dH|µS|uS)(?![A-Za-z-])")]
    private static partial Regex Amount();
}
