using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;

namespace Alumroot.Colour.Tests.Film;

public class TintAndHidingTests
{
    private const double White = 0.94;

    [Fact]
    public void A_masstone_and_tints_give_the_colourant_back()
    {
        var colourant = new Layer(2.7, 0.6);
        Tint[] tints = [Made(colourant, 1), Made(colourant, 0.3), Made(colourant, 0.05), Made(colourant, 0.01)];
        TintFit.Known fit = Assert.IsType<TintFit.Known>(TintSeries.Fit(White, tints));
        Assert.Equal(2.7, fit.Colourant.AbsorbedUnits, 1e-9);
        Assert.Equal(0.6, fit.Colourant.ScatteredUnits, 1e-9);
        Assert.Equal(2, fit.Spare);
        Assert.True(fit.WorstReflectanceShare < 1e-12);
        // One reading off by a hundredth: the fit says how badly it is met.
        tints[1] = tints[1] with { InsideReflectance = tints[1].InsideReflectance + 0.01 };
        Assert.InRange(Assert.IsType<TintFit.Known>(TintSeries.Fit(White, tints)).WorstReflectanceShare, 0.001, 0.02);
    }

    [Fact]
    public void What_a_series_does_not_decide_is_said()
    {
        var colourant = new Layer(2.7, 0.6);
        Assert.IsType<TintFit.NotDecided>(TintSeries.Fit(White, []));
        Assert.IsType<TintFit.NotDecided>(TintSeries.Fit(White, [Made(colourant, 1)]));
        Assert.IsType<TintFit.NotDecided>(TintSeries.Fit(White, [Made(colourant, 0.1), Made(colourant, 0.1)]));
        // A tint lighter than its white and a dark masstone contradict each other.
        Assert.IsType<TintFit.Contradicts>(TintSeries.Fit(White, [Made(colourant, 1), new Tint(0.1, 0.97)]));
    }

    [Fact]
    public void The_hiding_thickness_of_a_spectrum_has_its_contrast_ratio()
    {
        double[] nanometres = [.. Enumerable.Range(0, 31).Select(i => 400 + 10.0 * i)], black = [.. nanometres.Select(_ => 0.04)], white = [.. nanometres.Select(_ => 0.8)];
        var film = new FilmSpectrum(nanometres, [.. nanometres.Select(n => new Layer(n < 580 ? 2 : 0.1, 3))], new Surface(0.04, 0.6));
        double thickness = film.ThicknessFor(0.98, black, white, ViewingCondition.Paint)!.Value;
        Assert.Equal(0.98, film.ContrastRatio(thickness, black, white, ViewingCondition.Paint), 1e-7);
        // A film without absorption or scattering never hides.
        Assert.Null(new FilmSpectrum(nanometres, [.. nanometres.Select(_ => new Layer(0, 1e-9))], Surface.None).ThicknessFor(0.98, black, white, ViewingCondition.Paint));
        // The same constants at every wavelength: Y follows the reflectance, so the closed formula holds (film_cases.csv, K26: X = 1.38786571537388).
        var flat = new FilmSpectrum(nanometres, [.. nanometres.Select(_ => new Layer(0.2939, 3.0025))], Surface.None);
        Assert.Equal(1.38786571537388, flat.ThicknessFor(0.98, [.. nanometres.Select(_ => 0.0)], white, ViewingCondition.Paint)!.Value, 1e-8);
    }

    private static Tint Made(Layer colourant, double share)
    {
        double white = FilmOptics.AbsorptionRatio(White);
        return new Tint(share, FilmOptics.Opaque(Mixture.TwoConstant([share, 1 - share], [colourant, new Layer(white, 1)])));
    }
}
