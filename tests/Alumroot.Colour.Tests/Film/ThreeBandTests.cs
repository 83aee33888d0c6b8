using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Colour.Tests.Matching;
using Alumroot.Numerics;

namespace Alumroot.Colour.Tests.Film;

/// <summary>K and S from colours alone, against the same films reckoned with whole spectra: measured reflectances (Parkkinen and others 1989) with invented scattering, black and white grounds of 0.04 and 0.86.</summary>
public sealed class ThreeBandTests
{
    private const double Black = 0.04, White = 0.86;

    // A drawdown that hides tells K/S alone, so it is drawn thin.
    private const double Thin = 0.2;

    private static readonly IReadOnlyList<ShelfPigment> Pigments = Shelf.Pigments(25);

    // The colours of the thirty measured reflectances go there and back.
    [Fact]
    public void Three_reflectances_have_the_colour() => Assert.All(Given.Reflectances(5), chip =>
    {
        Lab colour = SpectralWeights.For(ViewingCondition.Graphic, chip.Spectrum).LabOf(chip.Spectrum.ValueSpan);
        Lab back = ThreeBand.Colour([.. ThreeBand.Reflectances(colour)]);
        Assert.Equal(colour.L, back.L, 1e-9);
        Assert.Equal(colour.A, back.A, 1e-9);
        Assert.Equal(colour.B, back.B, 1e-9);
    });

    [Fact]
    public void A_grey_film_is_told_exactly()
    {
        var film = new Layer(0.3, 0.9);
        IReadOnlyList<FilmMeasurement> read = ThreeBand.Measure(new(Grey(FilmOptics.Over(film, Black)), Grey(Black), Grey(FilmOptics.Over(film, White)), Grey(White)), Surface.None, 0);
        Assert.All(read, band =>
        {
            Layer found = Assert.IsType<FilmFound.Known>(band.Found).Film;
            Assert.Equal(0.3, found.AbsorbedUnits, 1e-6);
            Assert.Equal(0.9, found.ScatteredUnits, 1e-6);
        });
    }

    /// <summary>Half the thickness over white and twice over black, told from the colours of one thickness; the page film states these figures.</summary>
    [Fact]
    public void Another_thickness_is_told_as_stated()
    {
        var off = new List<double>();
        foreach (ShelfPigment p in Pigments)
        {
            if (Read(p) is not { } three) continue;
            foreach ((double thickness, double ground) in new[] { (0.5 * Thin, White), (2 * Thin, Black) })
                off.Add(Off(p.Bands.Select(b => FilmOptics.Over(b.Times(thickness), ground)), three.Select(b => FilmOptics.Over(b.Times(thickness), ground))));
        }
        off.Sort();
        Assert.True(off.Count >= 36, $"{off.Count} told");
        Assert.Equal(0.7, off.Average(), 0.1);
        Assert.Equal(1.5, Distributions.SortedQuantile([.. off], 0.9), 0.2);
    }

    private static IReadOnlyList<Layer>? Read(ShelfPigment p)
    {
        Lab Over(double ground) => Colour(p.Bands.Select(b => FilmOptics.Over(b.Times(Thin), ground)));
        FilmFound[] found = [.. ThreeBand.Measure(new(Over(Black), Grey(Black), Over(White), Grey(White)), Surface.None, 1e-4).Select(m => m.Found)];
        return Array.TrueForAll(found, f => f is FilmFound.Known) ? [.. found.Select(f => ((FilmFound.Known)f).Film.Times(1 / Thin))] : null;
    }

    private static double Off(IEnumerable<double> spectrum, IEnumerable<double> three) => Ciede2000.Of(Colour(spectrum), ThreeBand.Colour([.. three])).DeltaE;

    private static Lab Colour(IEnumerable<double> values) => Shelf.LabOf(Spectrum.Of(Shelf.Nanometres, values), ViewingCondition.Graphic);

    private static Lab Grey(double reflectance) => Colour(Shelf.Nanometres.Select(_ => reflectance));
}
