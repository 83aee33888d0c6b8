using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>Coats over a black and a white card in the record: kept by forms, and taken by hiding, mixtures and tints. The coats are reckoned by the film formula of Kubelka 1948.</summary>
public sealed class DrawdownPageTests
{
    private static readonly double[] Red = [0.9, 0.8, 0.15], Yellow = [1.1, 0.2, 0.05];
    private static readonly Lab Black = Grey(0.05), White = Grey(0.85);

    [Fact]
    public async Task A_paint_is_drawn_down_and_its_hiding_told()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await studio.SendAsync((await studio.GetAsync("/paints/recipe?pigment=rose&grams=20&medium=watercolour")).Forms.Single(f => f.Action == "/paints"), ("title", "Rose"), ("part-0", "8 g"));
        OpenStudio.Seen page = await Keep(studio, "/paints/P-01", Over(Red, 0.05), ("ground", "black"), ("wet", "0,1 mm"), ("bare", Typed(Black)));
        Assert.Contains("on a black card, 100 µm wet", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("over black and white", page.Text, StringComparison.Ordinal);
        page = await Keep(studio, "/paints/P-01", Over(Red, 0.85), ("ground", "white"), ("wet", "100 um"));
        Assert.Contains("measure the bare white card once", page.Text, StringComparison.Ordinal);
        page = await Keep(studio, "/paints/P-01", Over(Red, 0.85), ("ground", "white"), ("wet", "100"), ("bare", Typed(White)));
        Assert.Contains("It hides (98 %) from about", page.Text, StringComparison.Ordinal);
        Assert.Contains("µm wet (", page.Text, StringComparison.Ordinal);
        // K X, S X and K/S come back as they were put in, within the rounding of the kept Lab.
        Assert.Contains("540 nm 0.8 (", page.Text, StringComparison.Ordinal);
        SwatchRead kept = studio.Store.Paint(SubjectKey.Paint(1))!.Colours[0];
        Assert.Equal((SwatchGround.Black, 100), (kept.Ground, kept.WetMicrometres));
        Assert.Empty(studio.Store.Check());
    }

    [Theory]
    [InlineData("wet", "thick", "Wet thickness: 'thick' does not do")]
    [InlineData("wet", "-3", "Wet thickness: '-3' does not do")]
    [InlineData("bare", "grey", "The bare ground: 'grey' is no Lab")]
    [InlineData("bare", "20 0 0", "not which ground it is")]
    [InlineData("ground", "0", "'0' is not in the list")]
    public async Task What_is_wrong_is_said_and_what_was_typed_stays(string field, string typed, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 20);
        OpenStudio.Seen page = await Keep(studio, $"/lakes/{lake}", new Lab(50, 30, 10), ("state", "ground"), (field, typed));
        Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"50 30 10\"", page.Html, StringComparison.Ordinal);
        Assert.Empty(LakeColour.All(studio.Store));
    }

    [Fact]
    public async Task Mixtures_and_tints_take_coats_from_the_record()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey one = await PaintPageTests.LakeOf(studio, 20), other = SubjectKey.Batch(one.Year, one.Count + 1);
        DateTimeOffset begun = DateTimeOffset.UtcNow;
        studio.Store.Append(new BatchPlanned("weld", "", 0, "") { Dyestuff = "Weld", Salt = "Potash alum" }.ToEntry(EntryId.New(begun), other, begun));
        foreach ((SubjectKey lake, double[] dye) in new[] { (one, Red), (other, Yellow) })
        {
            Swatch(studio, lake, Over(dye, 0.05), SwatchGround.Black, Black);
            Swatch(studio, lake, Over(dye, 0.85), SwatchGround.White, White);
        }
        OpenStudio.Seen page = await studio.GetAsync("/colours/match");
        Assert.Contains("Take those of the record", page.Text, StringComparison.Ordinal);
        Lab aim = ThreeBand.Colour([.. Enumerable.Range(0, 3).Select(i => FilmOptics.Opaque(Mixture.TwoConstant([0.3, 0.7], [new Layer(Red[i], 1), new Layer(Yellow[i], 1)])))]);
        page = await studio.GetAsync($"/colours/match?aim={Uri.EscapeDataString(Typed(aim))}&kept-films=yes");
        Assert.Contains("Approximate: three bands", page.Text, StringComparison.Ordinal);
        Assert.Contains("in 10 parts by volume of the paints as they were drawn", page.Text, StringComparison.Ordinal);
        // Ten parts of 30 and 70 % are 3 and 7.
        Assert.Contains($"{other} Weld 7.0", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/paints/recipe?medium=soft-pastel&grams=10&lake={one}");
        KeptDrawdown coat = KeptDrawdown.Of(LakeColour.All(studio.Store)).Single(d => d.OverWhite.Subject == one);
        Assert.Contains($"<option value=\"{coat.Key}\">", page.Html, StringComparison.Ordinal);
        page = await studio.GetAsync($"/paints/recipe?medium=soft-pastel&grams=10&lake={one}&kept-coat={coat.Key}");
        Assert.Contains($"Reckoned from the coat of {one}", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/paints/recipe?medium=soft-pastel&grams=10&lake={other}&kept-coat={coat.Key}");
        Assert.Contains("this lake has no such coat", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_coats_of_one_thickness_and_state_belong_together_and_the_latest_count()
    {
        DateTimeOffset at = DateTimeOffset.UnixEpoch;
        LakeColour a = Colour(1, SwatchGround.Black, 100, 20), b = Colour(2, SwatchGround.White, 50, 60), c = Colour(3, SwatchGround.White, 100, 61), d = Colour(4, SwatchGround.White, 100, 62), e = Colour(5, SwatchGround.Paper, 100, 63);
        Assert.Empty(KeptDrawdown.Of([a, b, e]));
        KeptDrawdown drawn = Assert.Single(KeptDrawdown.Of([a, b, c, d, e]));
        Assert.Equal((a.Id, d.Id), (drawn.OverBlack.Id, drawn.OverWhite.Id));
        Assert.Null(drawn.Read);

        LakeColour Colour(int n, SwatchGround ground, double wet, double l) =>
            new(EntryId.TryRead($"entry-{n:000000}")!.Value, SubjectKey.Batch(26, 1), at.AddDays(n), new SwatchRead(SwatchState.Painted, new LabText(l, 0, 0)) { Ground = ground, WetMicrometres = wet }, "Madder", "");
    }

    private static async Task<OpenStudio.Seen> Keep(OpenStudio studio, string address, Lab lab, params (string, string)[] more) =>
        await studio.SendAsync((await studio.GetAsync(address)).Forms.Single(f => f.Action == "/colours/typed"), [("lab", Typed(lab)), .. more]);

    private static void Swatch(OpenStudio studio, SubjectKey lake, Lab lab, SwatchGround ground, Lab bare)
    {
        DateTimeOffset at = DateTimeOffset.UtcNow;
        studio.Store.Append(new SwatchRead(SwatchState.Painted, new LabText(lab.L, lab.A, lab.B)) { Ground = ground, GroundColour = new LabText(bare.L, bare.A, bare.B), WetMicrometres = 80, WithinDeltaE2000 = 1 }.ToEntry(EntryId.New(at), lake, at));
    }

    private static Lab Over(double[] absorption, double ground) => ThreeBand.Colour([.. absorption.Select(k => FilmOptics.Over(new Layer(k, 1), ground))]);

    private static Lab Grey(double reflectance) => ThreeBand.Colour([reflectance, reflectance, reflectance]);

    private static string Typed(Lab lab) => string.Create(CultureInfo.InvariantCulture, $"{lab.L:0.###} {lab.A:0.###} {lab.B:0.###}");
}
