using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Numerics;

namespace Alumroot.Colour.Tests.Matching;

/// <summary>
/// The spans of shares and the bounds of colours from three bands, against mixtures reckoned with whole spectra. The doubt of K and S was set on the two halves of measured reflectances (Parkkinen and others 1989)
/// with invented scattering, by their own seeds; the third set was not looked at for it: invented dyes of one to three Gaussian bands in wavenumber, with a seed of its own.
/// </summary>
public sealed class ThreeBandPigmentTests(ITestOutputHelper output)
{
    private const double Black = 0.04, White = 0.86, Thin = 0.2, Reading = 0.005, Within = 1;

    [Theory]
    [InlineData("first half", true, 0.90, 0.90)]
    [InlineData("second half", true, 0.90, 0.90)]
    [InlineData("first half", false, 0.90, 0.90)]
    [InlineData("second half", false, 0.90, 0.90)]
    [InlineData("held out", true, 0.88, 0.84)]
    [InlineData("held out", false, 0.88, 0.90)]
    public void Shares_and_colours_are_held(string set, bool drawn, double leastShares, double leastColours)
    {
        (IReadOnlyList<ShelfPigment> pigments, ulong seed) = set switch { "first half" => (Chips(0, 31001), 7001UL), "second half" => (Chips(1, 52002), 9002UL), _ => (Dyes(64003), 13003UL) };
        var random = new SeededRandom(seed);
        (int mixtures, int told, int held, int near, double width) = (0, 0, 0, 0, 0);
        for (int i = 0; i < 300; i++)
        {
            ShelfPigment[] used = [.. pigments.OrderBy(_ => random.NextFraction()).Take(2 + i % 2)];
            double[] parts = [.. used.Select(_ => 0.1 + random.NextFraction())], shares = [.. parts.Select(p => p / parts.Sum())];
            ShelfPigment?[] known = [.. used.Select((p, j) => drawn ? Drawdown(p, random, (ulong)(i * 3 + j)) : Hiding(p, random, (ulong)(i * 3 + j)))];
            if (!Array.TrueForAll(known, k => k is not null)) continue;
            MixtureFound found = Unmixed(new MixtureAsk { Nanometres = ThreeBand.Nanometres, Pigments = known!, Aims = [new ColourAim(ViewingCondition.Graphic, Shelf.LabOf(used, shares, ViewingCondition.Graphic))], MostPigments = used.Length });
            mixtures++;
            foreach (MixturePart part in found.Parts.Where(_ => found.Parts.Count > 1))
            {
                double share = shares[Array.FindIndex(used, u => u.Key == part.Key)];
                told++;
                width += part.Fraction.High - part.Fraction.Low;
                if (part.Fraction.Low <= share && share <= part.Fraction.High) held++;
            }
            Lab made = Shelf.LabOf([.. found.Parts.Select(p => Array.Find(used, u => u.Key == p.Key)!)], [.. found.Parts.Select(p => p.Fraction.Value)], ViewingCondition.Graphic);
            if (Ciede2000.Of(made, found.Labs[0]).DeltaE <= found.WithinDeltaE2000) near++;
        }
        output.WriteLine($"{set}, {(drawn ? "drawdowns" : "hiding layers")}: {mixtures} mixtures, {held / (double)told:0.000} of {told} shares held (mean width {width / told:0.00}), {near / (double)mixtures:0.000} of colours");
        Assert.True(mixtures > 100);
        Assert.InRange(held / (double)told, leastShares, 0.995);
        Assert.InRange(near / (double)mixtures, leastColours, 0.995);
    }

    [Fact]
    public void The_same_seed_draws_the_same_and_a_film_that_tells_too_little_is_none()
    {
        ShelfPigment Drawn(ulong seed) => ThreeBandPigments.OfDrawdown("grey", new ColourDrawdown(Grey(0.3), Grey(Black), Grey(0.55), Grey(White)), Surface.None, Reading, seed)!;
        Assert.Equal(Drawn(5).Drawn.SelectMany(d => d), Drawn(5).Drawn.SelectMany(d => d));
        Assert.NotEqual(Drawn(5).Drawn.SelectMany(d => d), Drawn(6).Drawn.SelectMany(d => d));
        Assert.Null(ThreeBandPigments.OfDrawdown("hides", new ColourDrawdown(Grey(0.3), Grey(Black), Grey(0.3), Grey(White)), Surface.None, Reading, 1));
    }

    /// <summary>With no doubt of the pigments the span of the aim alone remains, as before.</summary>
    [Fact]
    public void Known_pigments_are_not_drawn()
    {
        IReadOnlyList<ShelfPigment> shelf = Shelf.Pigments(3);
        MixtureFound found = MixtureSearch.Find(new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = shelf, Aims = [new ColourAim(ViewingCondition.Graphic, Shelf.LabOf(shelf, [0.5, 0.3, 0.2], ViewingCondition.Graphic))] })[0];
        Assert.Null(found.WithinDeltaE2000);
    }

    private static MixtureFound Unmixed(MixtureAsk ask) => MixtureSearch.Unmix(ask) switch
    {
        Unmixing.Known known => known.Mixture,
        Unmixing.NotDecided open => open.Nearest,
        Unmixing.OutOfReach far => far.Nearest,
        _ => throw new InvalidOperationException("There is no fourth kind."),
    };

    private static ShelfPigment? Drawdown(ShelfPigment p, SeededRandom random, ulong seed)
    {
        Lab Over(double ground) => Read(Shelf.LabOf(Spectrum.Of(Shelf.Nanometres, p.Bands.Select(b => FilmOptics.Over(b.Times(Thin), ground))), ViewingCondition.Graphic), random);
        return ThreeBandPigments.OfDrawdown(p.Key, new ColourDrawdown(Over(Black), Grey(Black), Over(White), Grey(White)), Surface.None, Reading, seed);
    }

    private static Lab Read(Lab lab, SeededRandom random) => ThreeBand.Colour([.. ThreeBand.Reflectances(lab).Select(r => r + Reading / Distributions.NormalHalfWidth90 * random.NextNormal())]);

    private static ShelfPigment Hiding(ShelfPigment p, SeededRandom random, ulong seed)
    {
        Lab lab = Shelf.LabOf(Spectrum.Of(Shelf.Nanometres, p.Bands.Select(FilmOptics.Opaque)), ViewingCondition.Graphic);
        double sd = Within / 2.5;
        return ThreeBandPigments.OfHidingLayer(p.Key, new Lab(lab.L + sd * random.NextNormal(), lab.A + sd * random.NextNormal(), lab.B + sd * random.NextNormal()), Within, ThreeBandPigments.ScatteringOfLakes, Surface.None, seed);
    }

    private static Lab Grey(double r) => Shelf.LabOf(Spectrum.Of(Shelf.Nanometres, Shelf.Nanometres.Select(_ => r)), ViewingCondition.Graphic);

    /// <summary>Every second of the measured reflectances, each three times with another scattering.</summary>
    private static IReadOnlyList<ShelfPigment> Chips(int first, ulong seed)
    {
        var random = new SeededRandom(seed);
        IReadOnlyList<(string Id, Spectrum Spectrum)> chips = Given.Reflectances(10);
        return [.. Enumerable.Range(0, 3).SelectMany(version => chips.Where((_, i) => i % 2 == first).Select(c => Scattering($"{c.Id}-{version}", b => FilmOptics.AbsorptionRatio(Math.Clamp(c.Spectrum.Values[b], 0.01, 0.98)), random)))];
    }

    private static IReadOnlyList<ShelfPigment> Dyes(ulong seed)
    {
        var random = new SeededRandom(seed);
        return [.. Enumerable.Range(0, 45).Select(i =>
        {
            double floor = 0.01 + 0.1 * random.NextFraction();
            // Thousands of wavenumbers: 14.5 is 690 nm, 26.5 is 377 nm.
            (double At, double Height, double Width)[] bands = [.. Enumerable.Range(0, 1 + random.NextBelow(3)).Select(_ => (14.5 + 12 * random.NextFraction(), 0.3 * Math.Exp(3 * random.NextFraction()), 0.8 + 1.2 * random.NextFraction()))];
            return Scattering($"dye {i}", b => floor + bands.Sum(g => g.Height * Math.Exp(-Math.Pow((1e4 / Shelf.Nanometres[b] - g.At) / g.Width, 2) / 2)), random);
        })];
    }

    private static ShelfPigment Scattering(string key, Func<int, double> ratio, SeededRandom random)
    {
        double scatter = 0.3 + 1.5 * random.NextFraction(), tilt = 0.3 * random.NextNormal();
        return new ShelfPigment(key, [.. Enumerable.Range(0, Shelf.Nanometres.Count).Select(b => scatter * (1 + tilt * (b - 20) / 40.0)).Select((s, b) => new Layer(s * ratio(b), s))]);
    }
}
