namespace Alumroot.Browser.Tests;

/// <summary>The rules of the house, tried on every page at phone and laptop width, light and dark. WCAG 2.2 (W3C 2023) for the targets and axe's tags; the rest is our own interface brief.</summary>
public sealed class EveryPageTests(Studio studio)
{
    /// <summary>Each page as seen on a phone, on a laptop, and on a phone at night.</summary>
    public static IEnumerable<TheoryDataRow<string, int, bool>> AtEveryWidth =>
        from row in Pages.All
        from seen in new[] { (Width: 360, Dark: false), (Width: 1280, Dark: false), (Width: 360, Dark: true) }
        select new TheoryDataRow<string, int, bool>(row.Data, seen.Width, seen.Dark);

    [Theory]
    [MemberData(nameof(AtEveryWidth))]
    public async Task The_page_keeps_the_house_rules(string path, int width, bool dark)
    {
        await using Visit visit = await studio.OpenAsync(path, new View(width, 800) { Dark = dark });
        await visit.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        Assert.Empty(await Rules.AxeAsync(visit.Page));
        Assert.Empty(await Rules.SidewaysAsync(visit.Page));
        Assert.Empty(await Rules.SmallTargetsAsync(visit.Page));
        Assert.Empty(await Rules.ColouredAsync(visit.Page));
        Assert.Empty(await Rules.InlineAsync(visit.Page));
        Assert.Empty(await Rules.SmallLettersAsync(visit.Page));
        Assert.Empty(await Rules.WordsAsync(visit.Page));
        Assert.Empty(visit.Wrongs);
    }

    [Theory]
    [MemberData(nameof(Pages.All), MemberType = typeof(Pages))]
    public async Task Nothing_scrolls_sideways_at_320_px_or_with_text_twice_as_large(string path)
    {
        await using Visit visit = await studio.OpenAsync(path, new View(320, 640));
        Assert.Empty(await Rules.SidewaysAsync(visit.Page));
        await visit.Page.SetViewportSizeAsync(1280, 900);
        await visit.Page.EvaluateAsync("() => { document.documentElement.style.fontSize = '200%' }");
        Assert.Empty(await Rules.SidewaysAsync(visit.Page));
        await visit.Page.SetViewportSizeAsync(640, 900);
        Assert.Empty(await Rules.SidewaysAsync(visit.Page));
    }

    [Theory]
    [MemberData(nameof(Pages.All), MemberType = typeof(Pages))]
    public async Task The_skip_link_comes_first_and_every_stop_of_the_tab_key_is_seen(string path)
    {
        await using Visit visit = await studio.OpenAsync(path);
        await visit.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("Skip to the page", await visit.Page.EvaluateAsync<string>("() => document.activeElement.textContent"));
        for (int stop = 0; stop < 60; stop++)
        {
            string[] wrongs = await visit.Page.EvaluateAsync<string[]>(
                """
                () => {
                  const e = document.activeElement, box = e.getBoundingClientRect(), style = getComputedStyle(e);
                  if (e === document.body) return ['end'];
                  const seen = box.bottom > 0 && box.top < innerHeight && (box.height > innerHeight || (box.top >= -1 && box.bottom <= innerHeight + 1));
                  const ringed = style.outlineStyle === 'solid' && parseFloat(style.outlineWidth) >= 3;
                  return seen && ringed ? [] : [`${seen ? 'no outline' : 'out of sight'}: ${e.outerHTML.slice(0, 120)}`];
                }
                """);
            if (wrongs is ["end"]) return;
            Assert.Empty(wrongs);
            await visit.Page.Keyboard.PressAsync("Tab");
        }
    }

    [Theory]
    [MemberData(nameof(Pages.All), MemberType = typeof(Pages))]
    public async Task Without_script_the_page_says_the_same(string path)
    {
        await using Visit with = await studio.OpenAsync(path);
        await using Visit without = await studio.OpenAsync(path, View.Phone with { Script = false });
        Assert.Equal(await with.Page.InnerTextAsync("main"), await without.Page.InnerTextAsync("main"));
        Assert.True((await without.Page.InnerTextAsync("main")).Length > 40);
    }
}
