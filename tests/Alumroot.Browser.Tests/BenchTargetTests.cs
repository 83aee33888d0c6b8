using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>The bench is answered with wet hands: keys of 64 px with 12 px between, and on a phone held sideways the figure and the first key without scrolling. Sizes of our own (interface brief, section 8, numbers 2 and 18).</summary>
public sealed class BenchTargetTests(Studio studio)
{
    /// <summary>A bench of each kind of answer: amount, reading, wait, meter, weight, in the demo studio.</summary>
    public static TheoryData<string> Benches { get; } = new(Pages.All.Select(row => row.Data).Where(path => path.EndsWith("To the bench", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Benches))]
    public async Task Every_key_is_64_px_with_12_px_between(string row)
    {
        await using Visit visit = await studio.OpenAsync("blank");
        await visit.GoAsync(await visit.FollowAsync(row));
        var found = new List<string>();
        await visit.Page.SetViewportSizeAsync(640, 360);
        await Assertions.Expect(visit.Page.Locator("#bench-figure")).ToBeInViewportAsync(new() { Ratio = 1 });
        await Assertions.Expect(visit.Page.Locator(".bench-pad :is(button, input:not([type=hidden]))").First).ToBeInViewportAsync(new() { Ratio = 1 });
        await visit.Page.EvaluateAsync("() => document.querySelectorAll('.bench details').forEach(d => d.open = true)");
        foreach ((int width, int height) in new[] { (640, 360), (320, 640), (360, 740), (1280, 900) })
        {
            await visit.Page.SetViewportSizeAsync(width, height);
            found.AddRange((await CrampedAsync(visit.Page)).Select(f => $"{width} px: {f}"));
        }
        Assert.Empty(found);
    }

    private static Task<string[]> CrampedAsync(IPage page) => page.EvaluateAsync<string[]>(
        """
        () => {
          const targets = [...document.querySelectorAll('.bench a.button, .bench button, .bench input:not([type=hidden]), .bench select, .bench summary')]
            .map(e => e.matches('[type=checkbox], [type=radio]') ? e.closest('label') : e)
            .map(e => ({ e, box: e.getBoundingClientRect() })).filter(t => t.box.width > 0);
          const name = t => t.e.outerHTML.slice(0, 90);
          if (targets.length < 3) return [`only ${targets.length} targets were found`];
          const small = targets.filter(t => t.box.width < 63.5 || t.box.height < 63.5).map(t => `${Math.round(t.box.width)} x ${Math.round(t.box.height)}: ${name(t)}`);
          const near = targets.flatMap((a, i) => targets.slice(i + 1).flatMap(b => {
            const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right), down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom);
            const gap = Math.max(across, down);
            return gap < 11.5 ? [`${Math.round(gap)} px between ${name(a)} and ${name(b)}`] : [];
          }));
          return [...small, ...near];
        }
        """);
}
