using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>A walk through a page by the tab key: the skip link first, and every stop in sight with its outline.</summary>
internal static class Keyboard
{
    private const int MostStops = 60;
    private const int AtOnce = 6;

    // A stop taller than what is left of the screen may be partly hidden (WCAG 2.2, 2.4.11), but 44 px of it are seen.
    // The stop is looked at when the key comes up: by then the focus has moved and the page has scrolled to it.
    private const string Watch =
        """
        () => {
          const found = window.tabStops = { first: null, wrongs: [], end: false };
          document.addEventListener('keyup', event => {
            if (event.key !== 'Tab' || found.end) return;
            const e = document.activeElement, box = e.getBoundingClientRect(), style = getComputedStyle(e);
            if (e === document.body) { found.end = true; return; }
            found.first ??= e.textContent;
            const visible = Math.min(box.bottom, innerHeight) - Math.max(box.top, 0), seen = visible >= Math.min(box.height, 44) - 1;
            const ringed = style.outlineStyle === 'solid' && parseFloat(style.outlineWidth) >= 3;
            if (!seen || !ringed) found.wrongs.push(`${seen ? 'no outline' : 'out of sight'}: ${e.outerHTML.slice(0, 120)}`);
          });
        }
        """;

    /// <summary>Presses the tab key to the end of a freshly loaded page, or sixty times.</summary>
    /// <param name="page">The page.</param>
    public static async Task<IReadOnlyList<string>> WalkAsync(IPage page)
    {
        await page.EvaluateAsync(Watch);
        for (int pressed = 0; pressed < MostStops; pressed += AtOnce)
        {
            for (int i = 0; i < AtOnce; i++) await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("() => tabStops.end")) break;
        }
        string? first = await page.EvaluateAsync<string?>("() => tabStops.first");
        string[] wrongs = await page.EvaluateAsync<string[]>("() => tabStops.wrongs");
        return
        [
            .. first == "Skip to the page" ? Array.Empty<string>() : [$"The first stop is not the skip link but '{first}'."],
            .. wrongs,
        ];
    }
}
