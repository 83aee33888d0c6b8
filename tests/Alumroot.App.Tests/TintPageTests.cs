using System.Text.Json;
using System.Text.RegularExpressions;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Tests;

/// <summary>Colours to expect of the tints of a pastel, on the page of its recipe.</summary>
public sealed partial class TintPageTests
{
    private const string Pastel = "/paints/recipe?medium=soft-pastel&grams=40";

    [Fact]
    public async Task Without_a_colour_it_says_which_reading_would_tell()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync(Pastel);
        Assert.Contains("cannot be told yet", page.Text, StringComparison.Ordinal);
        Assert.Contains("over a black and a white card", page.Text, StringComparison.Ordinal);
        Assert.Equal(0, Samples(page));
        Assert.DoesNotContain("Colours to expect", (await studio.GetAsync("/paints/recipe?medium=oil&grams=40")).Text, StringComparison.Ordinal);
    }

    // By hand: L* 51.84 and 96 are reflectances of 0.2 and 0.9 (CIE 15); half and half K/S = (1.6 + 0.00556) / 2, R = 0.3028, L* 61.9.
    [Fact]
    public async Task A_grey_comes_out_as_by_hand_on_page_and_line_and_one_tint_narrows_the_row()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync(Pastel + "&full-colour=51.84+0+0&chalk=96+0+0");
        Assert.Equal(5, Samples(page));
        Assert.Contains("L* 62 (55 to 71)", page.Text, StringComparison.Ordinal);
        Assert.Contains("full colour alone", page.Text, StringComparison.Ordinal);
        double wide = Span(page);
        page = await studio.GetAsync(Pastel + "&full-colour=51.84+0+0&chalk=96+0+0&tint=83+0+0&tint-share=12,5+%25");
        Assert.Contains("the tint of 12.5 %", page.Text, StringComparison.Ordinal);
        Assert.True(Span(page) < wide / 3, $"{Span(page)} against {wide}");
        Verbs.Command verb = await Verbs.Command.Of(["paint", "--medium", "soft-pastel", "--grams", "40", "--full-colour", "51.84 0 0", "--chalk", "96 0 0", "--json"]);
        JsonElement half = JsonDocument.Parse(verb.Data).RootElement.GetProperty("tints")[1];
        Assert.Equal(61.89, half.GetProperty("l").GetProperty("value").GetDouble(), 0.01);
        Assert.Equal(50, half.GetProperty("pigment_percent").GetDouble());
    }

    [Fact]
    public async Task The_powder_of_a_lake_stands_in_for_the_full_colour()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        SubjectKey lake = await PaintPageTests.LakeOf(studio, 40);
        DateTimeOffset at = DateTimeOffset.UtcNow;
        // Wet paste is another colour than powder and does not count.
        studio.Store.Append(new SwatchRead(SwatchState.Wet, new LabText(30, 40, 20)).ToEntry(EntryId.New(at), lake, at));
        Assert.Contains("cannot be told yet", (await studio.GetAsync($"{Pastel}&lake={lake}")).Text, StringComparison.Ordinal);
        studio.Store.Append(new SwatchRead(SwatchState.Ground, new LabText(51.6, 35, 10.9)) { WithinDeltaE2000 = 1.3 }.ToEntry(EntryId.New(at), lake, at));
        OpenStudio.Seen page = await studio.GetAsync($"{Pastel}&lake={lake}");
        Assert.Equal(5, Samples(page));
        Assert.Contains($"of {lake} ground", page.Text, StringComparison.Ordinal);
        Assert.Contains("within 1.3", page.Text, StringComparison.Ordinal);
        // The fields offer what was read of the lake.
        Assert.Contains("<option value=\"51.6 35 10.9\">", page.Html, StringComparison.Ordinal);
        Assert.Contains("list=\"lake-colours\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_drawdown_weighed_tells_scattering_and_one_unweighed_only_the_ratio()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        const string drawn = "&over-black=33+22+8&over-white=58+32+10&bare-black=23+0+0&bare-white=94+0+1";
        Assert.Contains("gram for gram the pigment scatters", (await studio.GetAsync(Pastel + drawn + "&coverage=8")).Text, StringComparison.Ordinal);
        OpenStudio.Seen page = await studio.GetAsync(Pastel + drawn);
        Assert.Contains("absorption against scattering only", page.Text, StringComparison.Ordinal);
        Assert.Contains("grams on a square metre make the spans narrower", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync(Pastel + "&over-black=58+32+10&over-white=33+22+8&bare-black=23+0+0&bare-white=94+0+1");
        Assert.Contains("cannot be told from this drawdown", page.Text, StringComparison.Ordinal);
        Assert.Contains("exchanged", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("&full-colour=red", "Full colour: 'red' is no Lab")]
    [InlineData("&full-colour=50+30+10&tint=80+10+4", "write how much of the tint's powder is pigment")]
    [InlineData("&full-colour=50+30+10&tint=80+10+4&tint-share=120", "'120' does not do")]
    [InlineData("&tint=80+10+4&tint-share=12.5", "only together with the full colour")]
    [InlineData("&over-black=33+22+8", "Thin coat over white: write its Lab")]
    [InlineData("&coverage=-3&over-black=33+22+8&over-white=58+32+10&bare-black=23+0+0&bare-white=94+0+1", "'-3' does not do")]
    public async Task What_is_wrong_is_said(string fields, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await studio.GetAsync(Pastel + fields);
        Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.Equal(0, Samples(page));
    }

    private static int Samples(OpenStudio.Seen page) => Sample().Count(page.Html);

    private static double Span(OpenStudio.Seen page)
    {
        Match half = Lightness().Match(page.Text[page.Text.IndexOf("tint 2,", StringComparison.Ordinal)..]);
        return int.Parse(half.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture) - int.Parse(half.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
    }

    [GeneratedRegex("class=\"sample-colour\"")]
    private static partial Regex Sample();

    [GeneratedRegex(@"L\* \d+ \((\d+) to (\d+)\)")]
    private static partial Regex Lightness();
}
