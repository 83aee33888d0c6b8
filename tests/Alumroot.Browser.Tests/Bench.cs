using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>Hands at the bench: begins a batch and answers its steps by what the page shows.</summary>
internal static class Bench
{
    /// <summary>Begins a batch with the madder plan and stands at its bench.</summary>
    public static async Task<Visit> BeginAsync(Studio studio, OwnStudio own, View view)
    {
        Visit visit = await studio.OpenAsync(Plans.Madder, view, own.Address);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Begin this batch" }).ClickAsync();
        await Figure(visit).WaitForAsync();
        return visit;
    }

    /// <summary>The one large figure.</summary>
    public static ILocator Figure(Visit visit) => visit.Page.Locator("#bench-figure");

    /// <summary>Answers the step that stands there, as a maker does who follows the page; ends the alkali at the fifth portion, the washing at the third wash, the drying at the first weight.</summary>
    /// <param name="page">The bench.</param>
    /// <param name="line">The line above the figure.</param>
    public static async Task AnswerAsync(IPage page, string line)
    {
        ILocator pad = page.Locator(".bench-pad");
        ILocator press = line switch
        {
            "Alkali, portion 5" => pad.GetByText("Stop here all the same"),
            "Wash 3" => pad.GetByText("Washed enough: to the cloth"),
            "Dry" => pad.GetByText("It is dry: on to grinding"),
            "Filter: off the cloth" => await TypedAsync("Wet cake, such as 140 g", "120 g"),
            "Dry: first weight" => await TypedAsync("Weight now, such as 62.4 g", "15.4 g"),
            "Grind" => await TypedAsync("Ground pigment, such as 14.2 g", "15.2 g"),
            "Settle: draw off" => await TypedAsync("Drawn off, such as 2 L", "2 L"),
            _ when line.Contains("read, then draw off", StringComparison.Ordinal) => await TypedAsync("Conductivity, such as 850 µS", "900 uS"),
            "Sieve" => await SievedAsync(),
            _ when await pad.Locator(".bench-main").CountAsync() > 0 => pad.Locator(".bench-main"),
            _ when await pad.Locator(".bench-expected").CountAsync() > 0 => pad.Locator(".bench-expected"),
            _ => pad.Locator(".bench-keys button, .bench-waits button"),
        };
        await press.First.ClickAsync();

        async Task<ILocator> TypedAsync(string label, string value)
        {
            await page.GetByLabel(label).FillAsync(value);
            return pad.GetByRole(AriaRole.Button, new() { Name = "Keep it" });
        }

        async Task<ILocator> SievedAsync()
        {
            await page.GetByLabel("On 125 µm, g").FillAsync("9.1 g");
            return await TypedAsync("In the pan, g", "6 g");
        }
    }
}
