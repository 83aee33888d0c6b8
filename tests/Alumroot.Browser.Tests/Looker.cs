using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>Two lasting tabs, one with script and one without, that look at one page after the other. Only for checks that read.</summary>
internal sealed class Looker(Visit with, Visit without) : IAsyncDisposable
{
    /// <summary>Goes to a page once and notes everything that the house rules ask about it.</summary>
    /// <param name="path">Its row in the list of pages.</param>
    public async Task<PageReport> LookAsync(string path)
    {
        IPage page = with.Page;
        with.TakeWrongs();
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await page.SetViewportSizeAsync(360, 740);
        (string text, string textWithout) = await TextsAsync(await with.FollowAsync(path));
        IReadOnlyList<string> keyboard = await Keyboard.WalkAsync(page);
        IReadOnlyList<string> sideways = await SidewaysAsync(page);

        await page.EvaluateAsync("() => { document.activeElement.blur(); scrollTo(0, 0); document.querySelectorAll('details').forEach(d => d.open = true) }");
        var byLook = new Dictionary<(int Width, bool Dark), IReadOnlyList<string>>();
        foreach ((int width, bool dark) in EveryPageTests.Looks)
        {
            await page.SetViewportSizeAsync(width, 800);
            await page.EmulateMediaAsync(new() { ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light });
            byLook[(width, dark)] = [.. await Rules.AllAsync(page, wholly: byLook.Count == 0), .. with.TakeWrongs()];
        }
        return new PageReport(byLook, sideways, keyboard, text, textWithout);
    }

    public async ValueTask DisposeAsync()
    {
        await with.DisposeAsync();
        await without.DisposeAsync();
    }

    // A page that tells the minutes left may turn between the two visits: then both are made anew, once.
    private async Task<(string With, string Without)> TextsAsync(string path)
    {
        (string With, string Without) texts = await OnceAsync();
        return texts.With == texts.Without ? texts : await OnceAsync();

        async Task<(string, string)> OnceAsync()
        {
            await Task.WhenAll(with.GoAsync(path), without.GoAsync(path));
            return (await with.Page.InnerTextAsync("main"), await without.Page.InnerTextAsync("main"));
        }
    }

    private static async Task<IReadOnlyList<string>> SidewaysAsync(IPage page)
    {
        var found = new List<string>();
        await LookAsync("320 px", 320, 640);
        await page.EvaluateAsync("() => { const large = new CSSStyleSheet(); large.replaceSync('html { font-size: 200% }'); document.adoptedStyleSheets = [large]; }");
        await LookAsync("1280 px, text twice as large", 1280, 900);
        await LookAsync("640 px, text twice as large", 640, 900);
        await page.EvaluateAsync("() => { document.adoptedStyleSheets = []; }");
        return found;

        async Task LookAsync(string how, int width, int height)
        {
            await page.SetViewportSizeAsync(width, height);
            found.AddRange((await Rules.SidewaysAsync(page)).Select(f => $"{how}: {f}"));
        }
    }
}
