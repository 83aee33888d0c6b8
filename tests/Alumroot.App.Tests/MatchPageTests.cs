using System.Globalization;
using System.Net;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;

namespace Alumroot.App.Tests;

/// <summary>Mixtures for a colour, looked for on a page. The drawdowns are reckoned here by the film formula of Kubelka 1948, so that the truth of a mixture is known.</summary>
public sealed class MatchPageTests
{
    private static readonly double[] Red = [0.9, 0.8, 0.15], Yellow = [1.1, 0.2, 0.05], Grounds = [0.05, 0.85];

    [Fact]
    public void A_mixture_is_found_again_from_drawdowns_of_its_parts()
    {
        (MatchShelf? shelf, int bad) = MatchReading.OfDrawdowns($"{Line("red", Red)}\n\n{Line("yellow", Yellow)}", Grey(Grounds[0]), Grey(Grounds[1]));
        Assert.Equal(0, bad);
        Assert.True(shelf!.Drawn);
        Lab aim = ThreeBand.Colour([.. Enumerable.Range(0, 3).Select(i => FilmOptics.Opaque(Mixture.TwoConstant([0.3, 0.7], [new Layer(Red[i], 1), new Layer(Yellow[i], 1)])))]);
        MixtureFound found = MatchReading.Find(aim, shelf, 3, 3)[0];
        Assert.InRange(found.WorstDeltaE2000, 0, 0.1);
        Assert.Equal(0.7, found.Parts.Single(p => p.Key == "yellow").Fraction.Value, 0.01);
    }

    [Fact]
    public async Task The_page_tells_mixtures_or_what_is_missing()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains("nothing to mix", (await studio.GetAsync("/colours/match?aim=50+20+15")).Text, StringComparison.Ordinal);
        string films = WebUtility.UrlEncode($"{Line("red", Red)}\n{Line("yellow", Yellow)}"), grounds = WebUtility.UrlEncode(Typed(Grey(Grounds[0]))) + "&white=" + WebUtility.UrlEncode(Typed(Grey(Grounds[1])));
        OpenStudio.Seen page = await studio.GetAsync($"/colours/match?aim=60+20+35&films={films}&black={grounds}");
        Assert.Contains("Approximate: three bands", page.Text, StringComparison.Ordinal);
        Assert.Contains("true colour within 4.1, nine times in ten", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/colours/match?aim=20+-60+-60&films={films}&black={grounds}");
        Assert.Contains("Cannot reach", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/colours/match?aim=blue&films=red%3B+1&black=&white=90+0+0");
        Assert.Contains("Colour that is wanted: 'blue' is no Lab", page.Text, StringComparison.Ordinal);
        Assert.Contains("Bare black ground: write its Lab", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/colours/match?aim=60+20+35&films=red%3B+1&black={grounds}");
        Assert.Contains("Drawdowns: line 1 could not be read", page.Text, StringComparison.Ordinal);
    }

    private static string Line(string name, double[] absorption) => $"{name}; {Typed(Over(absorption, Grounds[0]))}; {Typed(Over(absorption, Grounds[1]))}";

    private static Lab Over(double[] absorption, double ground) => ThreeBand.Colour([.. absorption.Select(k => FilmOptics.Over(new Layer(k, 1), ground))]);

    private static Lab Grey(double reflectance) => ThreeBand.Colour([reflectance, reflectance, reflectance]);

    private static string Typed(Lab lab) => string.Create(CultureInfo.InvariantCulture, $"{lab.L:0.000} {lab.A:0.000} {lab.B:0.000}");
}
