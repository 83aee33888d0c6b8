using System.Net;
using System.Text.RegularExpressions;
using Alumroot.App.Colours;
using Alumroot.App.Photographs;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>Corners shown by pressing on the photograph, as a browser without script sends them. The photograph is the example of the guide; its target's corners and its colours are known (photo.json, MeasureVerbTests).</summary>
public sealed partial class CornerTests
{
    private const string Corners = "73,188 354.6,179.4 350.4,366.9 68,363";
    private const string Plan = "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L";

    [Fact]
    public async Task Four_presses_a_nudge_and_a_typed_corner_measure_the_photograph()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await studio.SendAsync((await studio.GetAsync(Plan)).Forms.First(f => f.Action == "/lakes"));
        string photo = await UploadedAsync(studio);
        string at = $"{photo}/corners?target=board&of=target";
        Assert.Contains("corner 1 of 4: the target's corner nearest its first patch", (await studio.GetAsync(at)).Text, StringComparison.Ordinal);

        // The photograph is 800 wide and shown 280 wide, so a press tells a corner to within two of its pixels.
        OpenStudio.Seen page = await studio.GetAsync($"{at}&at.x=25&at.y=65");
        Assert.Equal("72.4,186.6", Points(page));
        foreach ((int x, int y) in new[] { (124, 62), (122, 128), (24, 127) }) page = await studio.GetAsync($"{at}&points={Points(page)}&at.x={x}&at.y={y}");
        Assert.Contains("Four corners are shown", page.Text, StringComparison.Ordinal);

        // The fourth is looked at; one nudge to the left moves it by a pixel.
        double before = PixelText.Points(Points(page))[3].X;
        page = await studio.GetAsync(Link(page, "left 1"));
        Assert.Equal(before - 1, PixelText.Points(Points(page))[3].X, 6);
        page = await studio.GetAsync($"{at}&points={Points(page)}&typed=yes&c1=73+188&c2=354,6+179,4&c3=350.4,366.9&c4=68;363");
        Assert.Equal(Corners, Points(page));

        page = await studio.GetAsync(Link(page, "Measure with these corners"));
        Assert.Contains("Good.", page.Text, StringComparison.Ordinal);
        SubjectKey lake = studio.Store.List(kind: SubjectClass.Batch).Single().Subject;
        await studio.SendAsync(page.Forms.First(f => f.Action == "/colours/keep"), ("thing", "1"), ("lake", lake.ToString()), ("state", "dry"));
        LakeColour kept = LakeColour.Of(studio.Store.Batch(lake)!).Single();
        Assert.True(Ciede2000.Of(new Lab(60.6258, -1.8628, 13.0704), kept.Lab).DeltaE <= kept.Read.WithinDeltaE2000);
        Assert.Contains("corners shown by hand", kept.Read.How, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_area_that_is_shown_comes_after_those_that_are_found()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        string photo = await UploadedAsync(studio);
        OpenStudio.Seen found = await studio.GetAsync($"{photo}?target=board");
        OpenStudio.Seen page = await studio.GetAsync($"{photo}/corners?target=board&of=area&points=544,150 596,151.8 596,202 542.5,202");
        page = await studio.GetAsync(Link(page, "Measure with these corners"));
        Assert.Equal(Areas(found) + 1, Areas(page));
        page = await studio.GetAsync(Link(page, "Forget what was shown"));
        Assert.Equal(Areas(found), Areas(page));
    }

    [Fact]
    public async Task What_cannot_be_meant_is_said()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        string photo = await UploadedAsync(studio), at = $"{photo}/corners?target=board&of=target";
        OpenStudio.Seen page = await studio.GetAsync($"{at}&points=73,188 350,367 354,179 68,363");
        Assert.Contains("cross over", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Measure with these corners", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"{at}&points={Corners}&typed=yes&c1=here&c2=900+179&c3=350.4+366.9&c4=68+363");
        Assert.Contains("Corner 1: 'here' is no place in this picture of 800 x 600 pixels", page.Text, StringComparison.Ordinal);
        Assert.Contains("Corner 2: '900 179'", page.Text, StringComparison.Ordinal);
        // Turned half round, the patches are not those of the target.
        page = await studio.GetAsync($"{photo}?target=board&corners=350.4,366.9 68,363 73,188 354.6,179.4");
        Assert.Contains("does not look like the target of the reference", page.Text, StringComparison.Ordinal);
        Assert.Contains("not here", (await studio.GetAsync("/colours/photo/none/corners")).Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"{photo}/corners?points=1,x&look=9&at.x=a&at.y=3&corners=1,2,3&areas=;;");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("corner 1 of 4", page.Text, StringComparison.Ordinal);
    }

    // By key a browser sends the first place of the picture.
    [Theory]
    [InlineData(0, 0, false, 399.5, 299.5)]
    [InlineData(279, 209, false, 798.0714, 598.0714)]
    [InlineData(420, 315, true, 400, 300)]
    [InlineData(-4, 9000, false, 0, 599)]
    public void A_press_is_a_place_in_the_photograph(int x, int y, bool wide, double right, double down)
    {
        PixelPoint p = CornerPress.Of($"{x}", $"{y}", wide, 800, 600)!.Value;
        Assert.Equal(right, p.X, wide ? 0.5 : 0.001);
        Assert.Equal(down, p.Y, wide ? 0.5 : 0.001);
    }

    private static async Task<string> UploadedAsync(OpenStudio studio)
    {
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        page = await studio.UploadAsync(page.Forms.First(f => f.Action == "/colours/target"), await Bytes("target.cgats.txt"), "board.txt");
        OpenStudio.Form form = page.Forms.First(f => f.Action == "/colours/photo");
        page = await studio.UploadAsync(form with { Hidden = [.. form.Hidden, KeyValuePair.Create("target", "board")] }, await Bytes("photo.jpg"), "photo.jpg");
        return page.Address.Split('?')[0];
    }

    private static Task<byte[]> Bytes(string file) => File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "Photo", file), TestContext.Current.CancellationToken);

    private static string Points(OpenStudio.Seen page) => WebUtility.HtmlDecode(PointsShape().Match(page.Html).Groups[1].Value);

    private static int Areas(OpenStudio.Seen page) => Regex.Count(page.Html, "type=\"radio\" name=\"thing\"");

    private static string Link(OpenStudio.Seen page, string words) => WebUtility.HtmlDecode(Regex.Match(page.Html, $"href=\"([^\"]+)\">{words}<").Groups[1].Value);

    [GeneratedRegex("<input type=\"hidden\" name=\"points\" value=\"([^\"]*)\"")]
    private static partial Regex PointsShape();
}
