using System.Net;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>The colour pages as a browser without script uses them: target, photograph, a colour kept with its lake, the way from wet to dry. The photograph is the example of the guide, whose truth is known (MeasureVerbTests).</summary>
public sealed class ColourPageTests
{
    private const string Plan = "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L";

    private static string Photo(string file) => Path.Combine(AppContext.BaseDirectory, "Photo", file);

    [Fact]
    public async Task A_colour_goes_from_the_photograph_to_the_lake()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen plan = await studio.GetAsync(Plan);
        await studio.SendAsync(plan.Forms.First(f => f.Action == "/lakes"));
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        Assert.Contains("No colour was read yet", page.Text, StringComparison.Ordinal);
        page = await studio.UploadAsync(FormTo(page, "/colours/target"), await Bytes("target.cgats.txt"), "big-board.cgats.txt");
        Assert.Contains("target big-board.cgats: 24 colours", page.Text, StringComparison.Ordinal);
        page = await studio.UploadAsync(WithField(FormTo(page, "/colours/photo"), "target", "big-board.cgats"), await Bytes("photo.jpg"), "photo.jpg");
        Assert.Contains("Good.", page.Text, StringComparison.Ordinal);
        Assert.Contains("Correction: mostly a root polynomial", page.Text, StringComparison.Ordinal);
        OpenStudio.Form keep = FormTo(page, "/colours/keep");
        SubjectKey lake = studio.Store.List(kind: SubjectClass.Batch).Single().Subject;
        // The first of the nine swatches stands first among the areas.
        page = await studio.SendAsync(keep, ("thing", "1"), ("lake", lake.ToString()), ("state", "dry"));
        Assert.StartsWith($"/lakes/{lake}", page.Address, StringComparison.Ordinal);
        LakeColour kept = LakeColour.Of(studio.Store.Batch(lake)!).Single();
        Assert.True(Ciede2000.Of(new Lab(60.6258, -1.8628, 13.0704), kept.Lab).DeltaE <= kept.Read.WithinDeltaE2000);
        Assert.Equal(SwatchState.Dry, kept.Read.State);
        Assert.Contains("target big-board.cgats", kept.Read.How, StringComparison.Ordinal);

        // An instrument's reading of the wet paste takes its place before it, with the difference in words.
        page = await studio.SendAsync(FormTo(page, "/colours/typed"), ("lab", "L 50,2 a -1,9 b 13"), ("state", "wet"));
        Assert.Contains("lighter", page.Text, StringComparison.Ordinal);
        Assert.Contains("another colour", page.Text, StringComparison.Ordinal);
        Assert.Equal([SwatchState.Wet, SwatchState.Dry], LakeColour.Of(studio.Store.Batch(lake)!).Select(c => c.Read.State));
        page = await studio.GetAsync("/colours?order=lightness&of=madder&near=50+0+13");
        Assert.Contains("2 of 2", page.Text, StringComparison.Ordinal);
        Assert.True(page.Text.IndexOf("wet paste", StringComparison.Ordinal) < page.Text.IndexOf(", dry", StringComparison.Ordinal));
        IReadOnlyList<LakeColour> both = LakeColour.All(studio.Store);
        page = await studio.GetAsync($"/colours/compare?a={both[0].Id}&b={both[1].Id}");
        Assert.Contains("another colour", page.Text, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Check());
    }

    [Fact]
    public async Task Without_a_target_only_differences_are_told_and_a_card_can_be_named()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        page = await studio.UploadAsync(FormTo(page, "/colours/photo"), await Bytes("photo.jpg"), "photo.jpg");
        Assert.Contains("only differences within this photograph can be told", page.Text, StringComparison.Ordinal);
        Assert.Contains("not bounded", page.Text, StringComparison.Ordinal);
        Assert.Contains("beside area 1, roughly", page.Text, StringComparison.Ordinal);
        Assert.Contains("Each area as the camera wrote it", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("nine times in ten the truth", page.Text, StringComparison.OrdinalIgnoreCase);
        page = await studio.GetAsync(page.Address.Split('?')[0] + "?card=1");
        Assert.Contains("Card only", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("beside area 1", page.Text, StringComparison.Ordinal);
        Assert.Contains("nine times in ten the truth", page.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task What_does_not_go_is_said_and_nothing_is_kept()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await studio.SendAsync((await studio.GetAsync(Plan)).Forms.First(f => f.Action == "/lakes"));
        OpenStudio.Seen page = await studio.GetAsync("/colours");
        Assert.Contains("could not be read as colours", (await studio.UploadAsync(FormTo(page, "/colours/target"), "CGATS.17\nBEGIN_DATA\n"u8.ToArray(), "t.txt")).Text, StringComparison.Ordinal);
        Assert.Contains("fewer than six", (await studio.UploadAsync(FormTo(page, "/colours/target"), "id,L,a,b\none,50,0,0\n"u8.ToArray(), "t.csv")).Text, StringComparison.Ordinal);
        Assert.Contains("not a JPEG, PNG or WebP", (await studio.UploadAsync(FormTo(page, "/colours/photo"), "nothing"u8.ToArray(), "p.jpg")).Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/lakes/{studio.Store.List(kind: SubjectClass.Batch).Single().Subject}");
        page = await studio.SendAsync(FormTo(page, "/colours/typed"), ("lab", "red"), ("state", "wet"));
        Assert.Contains("'red' is no Lab", page.Text, StringComparison.Ordinal);
        Assert.Empty(LakeColour.All(studio.Store));
        Assert.Equal(HttpStatusCode.OK, (await studio.GetAsync("/colours/photo/none")).Status);
    }

    // A comma may be a decimal sign or part numbers; both readings are told apart by blanks.
    [Theory]
    [InlineData("46.2 23 13.5", 46.2, 23, 13.5)]
    [InlineData("46,2 23,0 13,5", 46.2, 23, 13.5)]
    [InlineData("46.2,23,-13.5", 46.2, 23, -13.5)]
    [InlineData("L* 46.2; a* 23; b* -13.5", 46.2, 23, -13.5)]
    [InlineData("L=46 a=-2 b=0", 46, -2, 0)]
    public void Lab_is_read_as_people_type_it(string typed, double l, double a, double b) => Assert.Equal(new Lab(l, a, b), LabReading.Of(typed));

    [Theory]
    [InlineData("")]
    [InlineData("46 23")]
    [InlineData("146 23 13")]
    [InlineData("46 23 13 5")]
    [InlineData("red")]
    [InlineData("1e999 0 0")]
    public void What_is_no_Lab_is_not_read(string typed) => Assert.Null(LabReading.Of(typed));

    private static OpenStudio.Form FormTo(OpenStudio.Seen page, string action) => page.Forms.First(f => f.Action == action);

    private static OpenStudio.Form WithField(OpenStudio.Form form, string name, string value) => form with { Hidden = [.. form.Hidden, KeyValuePair.Create(name, value)] };

    private static Task<byte[]> Bytes(string file) => File.ReadAllBytesAsync(Photo(file), TestContext.Current.CancellationToken);
}
