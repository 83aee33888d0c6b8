using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>The rules of the house, tried on every page: one visit with script, one without. WCAG 2.2 (W3C 2023) for the targets and axe's tags; the rest is our own interface brief.</summary>
/// <remarks>Two classes below share the pages, so that they are looked at on two cores at once.</remarks>
public abstract class EveryPage(Studio studio)
{
    /// <summary>One of the two halves of the pages.</summary>
    /// <param name="half">0 or 1.</param>
    protected static TheoryData<string> Half(int half) => [.. Pages.All.Select(row => row.Data).Where((_, i) => i % 2 == half)];

    /// <summary>Everything that is wrong with a page, each finding with where it was seen.</summary>
    protected async Task<IReadOnlyList<string>> WrongsAsync(string path)
    {
        var wrongs = new List<string>();
        await using Visit visit = await studio.OpenAsync(path);
        IPage page = visit.Page;
        string words = await page.InnerTextAsync("main");
        wrongs.AddRange(await Rules.InlineAsync(page));
        wrongs.AddRange((await Rules.TabStopsAsync(page)).Select(w => $"tab key: {w}"));

        await page.SetViewportSizeAsync(320, 640);
        wrongs.AddRange((await Rules.SidewaysAsync(page)).Select(w => $"320 px: {w}"));
        await page.EvaluateAsync("() => { document.documentElement.style.fontSize = '200%' }");
        foreach (int width in (int[])[1280, 640])
        {
            await page.SetViewportSizeAsync(width, 900);
            wrongs.AddRange((await Rules.SidewaysAsync(page)).Select(w => $"letters twice as large, {width} px: {w}"));
        }
        await page.EvaluateAsync("() => { document.documentElement.removeAttribute('style'); document.querySelectorAll('details').forEach(d => d.open = true) }");
        foreach (int width in (int[])[360, 1280])
        {
            await page.SetViewportSizeAsync(width, 800);
            wrongs.AddRange((await SeenAsync(page)).Select(w => $"{width} px: {w}"));
        }
        await page.SetViewportSizeAsync(360, 800);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = ColorScheme.Dark });
        wrongs.AddRange((await Rules.ContrastAsync(page)).Concat(await Rules.ColouredAsync(page)).Select(w => $"dark: {w}"));
        wrongs.AddRange(visit.Wrongs);

        await using Visit without = await studio.OpenAsync(path, View.Phone with { Script = false });
        string plain = await without.Page.InnerTextAsync("main");
        if (plain.Length <= 40) wrongs.Add($"without script there is hardly a word: '{plain}'");
        if (plain != words) wrongs.Add($"without script the page says something else: '{plain}' against '{words}'");
        return wrongs;
    }

    private static async Task<IEnumerable<string>> SeenAsync(IPage page) =>
    [
        .. await Rules.AxeAsync(page), .. await Rules.SidewaysAsync(page), .. await Rules.SmallTargetsAsync(page), .. await Rules.ColouredAsync(page),
        .. await Rules.SmallLettersAsync(page), .. await Rules.WordsAsync(page),
    ];
}

/// <summary>The pages with even numbers.</summary>
public sealed class EveryEvenPageTests(Studio studio) : EveryPage(studio)
{
    /// <summary>Their addresses.</summary>
    public static TheoryData<string> These => Half(0);

    [Theory]
    [MemberData(nameof(These))]
    public async Task The_page_keeps_the_house_rules(string path) => Assert.Empty(await WrongsAsync(path));
}

/// <summary>The pages with odd numbers.</summary>
public sealed class EveryOddPageTests(Studio studio) : EveryPage(studio)
{
    /// <summary>Their addresses.</summary>
    public static TheoryData<string> These => Half(1);

    [Theory]
    [MemberData(nameof(These))]
    public async Task The_page_keeps_the_house_rules(string path) => Assert.Empty(await WrongsAsync(path));
}
