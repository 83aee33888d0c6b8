namespace Alumroot.Browser.Tests;

/// <summary>The rules of the house, tried on every page at phone and laptop width, light and dark. All of them only read, so they share one visit to the page (see <see cref="Tour"/>). WCAG 2.2 (W3C 2023) for the targets and axe's tags; the rest is our own interface brief.</summary>
public sealed class EveryPageTests(Studio studio)
{
    /// <summary>On a phone, on a phone at night, and on a laptop.</summary>
    internal static readonly (int Width, bool Dark)[] Looks = [(360, false), (360, true), (1280, false)];

    /// <summary>Each page in each look.</summary>
    public static IEnumerable<TheoryDataRow<string, int, bool>> AtEveryWidth =>
        from row in Pages.All
        from look in Looks
        select new TheoryDataRow<string, int, bool>(row.Data, look.Width, look.Dark);

    [Theory]
    [MemberData(nameof(AtEveryWidth))]
    public async Task The_page_keeps_the_house_rules(string path, int width, bool dark) =>
        Assert.Empty((await studio.Tour.OfAsync(path)).ByLook[(width, dark)]);

    [Theory]
    [MemberData(nameof(Pages.All), MemberType = typeof(Pages))]
    public async Task Nothing_scrolls_sideways_at_320_px_or_with_text_twice_as_large(string path) =>
        Assert.Empty((await studio.Tour.OfAsync(path)).Sideways);

    [Theory]
    [MemberData(nameof(Pages.All), MemberType = typeof(Pages))]
    public async Task The_skip_link_comes_first_and_every_stop_of_the_tab_key_is_seen(string path) =>
        Assert.Empty((await studio.Tour.OfAsync(path)).Keyboard);

    [Theory]
    [MemberData(nameof(Pages.All), MemberType = typeof(Pages))]
    public async Task Without_script_the_page_says_the_same(string path)
    {
        PageReport report = await studio.Tour.OfAsync(path);
        Assert.Equal(report.Text, report.TextWithoutScript);
        Assert.True(report.TextWithoutScript.Length > 40);
    }
}
