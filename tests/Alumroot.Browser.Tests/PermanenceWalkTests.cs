using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;
using Alumroot.Studio.Journal;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>Strips are laid in the light, read from four photographs and judged, by what the pages say; on a phone without script. The photographs are drawn, so their truth is known: the reader of them has its own tests on real ones.</summary>
public sealed class PermanenceWalkTests(Studio studio)
{
    private static readonly double[] Days = [2, 4, 8, 16];

    // Dose per day 0.24 Mlx h: 24 000 lx for ten hours. What takes each thing to 1.7: a rose near BW3.
    private static readonly (string Name, Lab Fresh, double Dose17)[] Things =
        [("rose", new Lab(47, 36, 12), 1.3), ("BW2", new Lab(44, -4, -26), 0.6), ("BW3", new Lab(45, -4, -25), 1.5), ("BW4", new Lab(46, -4, -24), 3.8)];

    [Fact]
    public async Task From_four_photographs_to_a_verdict()
    {
        var clock = new MovedClock();
        await using OwnStudio own = await OwnStudio.StartAsync(clock);
        await using Visit visit = await studio.OpenAsync("/colours", View.Phone with { Script = false }, own.Address);
        IPage page = visit.Page;
        string file = Path.Combine(AppContext.BaseDirectory, "Photo", "target.cgats.txt");
        await page.GetByLabel("File", new() { Exact = true }).SetInputFilesAsync(file);
        await page.GetByLabel("Its name").FillAsync("board");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the target" }).ClickAsync();

        await visit.GoAsync("/permanence");
        await page.GetByRole(AriaRole.Link, new() { Name = "Lay strips in the light" }).ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("south window");
        await page.GetByLabel("Samples").FillAsync("rose");
        foreach (string reference in new[] { "BW2", "BW3", "BW4" }) await page.GetByRole(AriaRole.Checkbox, new() { Name = reference }).CheckAsync();
        await page.GetByRole(AriaRole.Radio, new() { NameRegex = new("^a meter") }).CheckAsync();
        await page.GetByLabel("hours of light a day").FillAsync("10");
        await page.GetByLabel("First look after").FillAsync("2 days");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the exposure" }).ClickAsync();
        await page.WaitForURLAsync("**/permanence/E-01*");
        await page.GetByText("Tell the light").ClickAsync();
        await page.GetByLabel("What a meter shows").FillAsync("24 000 lx");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the level" }).ClickAsync();

        Lab[] target = [.. ((Import.Done)ColourFile.Read(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken))).Document.Samples.Select(s => s.Lab!.Value)];
        double before = 0;
        foreach (double day in Days)
        {
            clock.Pass(TimeSpan.FromDays(day - before));
            before = day;
            await visit.GoAsync("/");
            await page.GetByRole(AriaRole.Link, new() { Name = "Read the strips of E-01" }).ClickAsync();
            await page.GetByLabel("Photograph of the strips").SetInputFilesAsync(new FilePayload { Name = "strips.png", MimeType = "image/png", Buffer = StripPicture.Png(target, [.. Things.Select(t => (t.Fresh, Faded(t.Fresh, t.Dose17, 0.24 * day)))]) });
            await page.GetByRole(AriaRole.Button, new() { Name = "Measure it" }).ClickAsync();
            await Assertions.Expect(page.Locator("main")).ToContainTextAsync("The target was found");
            Assert.Empty(await Rules.SidewaysAsync(page));
            for (int i = 0; i < Things.Length; i++)
            {
                Assert.Equal($"{2 * i + 1}", await page.InputValueAsync($"#covered-{i}"));
                Assert.Equal($"{2 * i + 2}", await page.InputValueAsync($"#exposed-{i}"));
            }
            await page.GetByLabel("Look again after").FillAsync($"{day} days");
            await page.GetByRole(AriaRole.Button, new() { Name = "Keep the reading" }).ClickAsync();
            await Assertions.Expect(page.Locator(".kept-line")).ToContainTextAsync("strips read: rose");
        }
        Assert.Equal(4, own.Store.Exposure(SubjectKey.Exposure(1))!.Readings.Count);
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Changes visibly after about");
        // 2 + ln(1.3 / 0.6) / ln(1.5 / 0.6) = 2.84, straight in the logarithm of dose as ISO 105-B08 steps go.
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(new System.Text.RegularExpressions.Regex(@"like reference (2\.[6-9]|3\.0)"));
        Assert.Empty(await Rules.SidewaysAsync(page));
        Assert.Empty(visit.Wrongs);
    }

    // First order to a difference of 14, toward a paler and duller colour.
    private static Lab Faded(Lab fresh, double dose17, double dose)
    {
        double change = 14 * (1 - Math.Exp(Math.Log(1 - 1.7 / 14) * dose / dose17)), toGrey = fresh.Chroma;
        return new Lab(fresh.L + 0.8 * change, fresh.A * (1 - 0.6 * change / toGrey), fresh.B * (1 - 0.6 * change / toGrey));
    }
}
