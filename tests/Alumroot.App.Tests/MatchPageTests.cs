using System.Globalization;
using System.Net;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Quantities;
using Alumroot.Studio.Journal;

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
        Estimate yellow = found.Parts.Single(p => p.Key == "yellow").Fraction;
        Assert.Equal(0.7, yellow.Value, 0.01);
        // Reading and band doubts of two pigments leave more open than an aim known within 0.5 does.
        Assert.InRange(yellow.High - yellow.Low, 0.1, 0.5);
        Assert.InRange(found.WithinDeltaE2000!.Value, 1, 8);
    }

    /// <summary>A lake of one colour and a white: a tint is found, with a span as wide as the guess of how much each scatters.</summary>
    [Fact]
    public async Task A_white_stands_beside_the_lakes()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await studio.SendAsync((await studio.GetAsync("/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L")).Forms.First(f => f.Action == "/lakes"));
        OpenStudio.Seen lake = await studio.GetAsync($"/lakes/{studio.Store.List(kind: SubjectClass.Batch).Single().Subject}");
        await studio.SendAsync(lake.Forms.First(f => f.Action == "/colours/typed"), ("lab", "45 45 15"), ("state", "dry"));
        MatchShelf shelf = MatchReading.OfLakes(LakeColour.All(studio.Store), StandInWhite.Find("strong-white"));
        // Three parts of lake to one of white, by the additive law of K and S (Duncan 1940).
        Lab tint = ThreeBand.Colour([.. Enumerable.Range(0, 3).Select(i => FilmOptics.Opaque(Mixture.TwoConstant([0.75, 0.25], [shelf.Pigments[0].Bands[i], shelf.Pigments[1].Bands[i]])))]);
        string aim = WebUtility.UrlEncode(Typed(tint));
        Assert.Contains("Cannot reach", (await studio.GetAsync($"/colours/match?aim={aim}")).Text, StringComparison.Ordinal);
        OpenStudio.Seen page = await studio.GetAsync($"/colours/match?aim={aim}&beside=strong-white");
        Assert.DoesNotContain("Cannot reach", page.Text, StringComparison.Ordinal);
        Assert.Contains("a strong white such as zinc sulfide 2.5", page.Text, StringComparison.Ordinal);
        Assert.Contains("200 seeded draws", page.Text, StringComparison.Ordinal);
        Estimate white = MatchReading.Find(tint, shelf, 2, 1)[0].Parts[1].Fraction;
        Assert.Equal(0.25, white.Value, 0.01);
        // Lake and white each scatter within a factor of 2.2 to 2.4: the odds are open by about 3 either way, 1/9 to 1/1.
        Assert.InRange(white.Low, 0.05, 0.15);
        Assert.InRange(white.High, 0.4, 0.6);
        Assert.Contains("your white", (await studio.GetAsync("/colours/match?aim=70+25+8&own-white=96+0+2")).Text, StringComparison.Ordinal);
        Assert.Contains("Your own white: 'bright' is no Lab", (await studio.GetAsync("/colours/match?aim=70+25+8&own-white=bright")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_tells_mixtures_or_what_is_missing()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        Assert.Contains("nothing to mix", (await studio.GetAsync("/colours/match?aim=50+20+15")).Text, StringComparison.Ordinal);
        string films = WebUtility.UrlEncode($"{Line("red", Red)}\n{Line("yellow", Yellow)}"), grounds = WebUtility.UrlEncode(Typed(Grey(Grounds[0]))) + "&white=" + WebUtility.UrlEncode(Typed(Grey(Grounds[1])));
        OpenStudio.Seen page = await studio.GetAsync($"/colours/match?aim=60+20+35&films={films}&black={grounds}");
        Assert.Contains("Approximate: three bands", page.Text, StringComparison.Ordinal);
        Assert.Contains("nine times in ten; reckoned", page.Text, StringComparison.Ordinal);
        Assert.Contains("needs its own drawdown", (await studio.GetAsync($"/colours/match?aim=60+20+35&films={films}&black={grounds}&beside=chalk")).Text, StringComparison.Ordinal);
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
