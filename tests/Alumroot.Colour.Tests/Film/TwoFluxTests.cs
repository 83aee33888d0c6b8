using Alumroot.Colour.Film;
using CsCheck;

namespace Alumroot.Colour.Tests.Film;

/// <summary>The closed formulas against the two fluxes themselves, stepped through the film (Kubelka and Munk 1931: di/dx = −(K + S) i + S j, dj/dx = (K + S) j − S i).</summary>
public class TwoFluxTests
{
    private static readonly Gen<Layer> Layers = Gen.Select(Gen.Double[0, 3], Gen.Double[0, 6], (k, s) => new Layer(k, s));

    [Theory]
    [InlineData(0, 2, 0.3)]
    [InlineData(0.7, 0, 0.8)]
    [InlineData(0.0001, 0.0001, 0.5)]
    [InlineData(0.4, 2.9, 0)]
    [InlineData(1.3, 0.5, 0.8)]
    [InlineData(2, 3, 1)]
    public void Reflectance_over_a_ground_is_what_the_fluxes_give(double k, double s, double ground)
    {
        var film = new Layer(k, s);
        (double reflected, double through) = Stepped(film, ground);
        Assert.Equal(reflected, FilmOptics.Over(film, ground), 1e-9);
        if (ground == 0) Assert.Equal(through, FilmOptics.Transmittance(film), 1e-9);
        Assert.Equal(Stepped(film, 0).Through, FilmOptics.Transmittance(film), 1e-9);
    }

    [Fact]
    public void A_film_on_a_film_is_a_thicker_film() => Gen.Select(Layers, Gen.Double[0.05, 0.95], Gen.Double[0, 1]).Sample((film, share, ground) =>
    {
        double whole = FilmOptics.Over(film, ground), stacked = FilmOptics.Over(film.Times(share), FilmOptics.Over(film.Times(1 - share), ground));
        return Math.Abs(whole - stacked) < 1e-12;
    });

    [Fact]
    public void What_passes_and_what_returns_add_up() => Gen.Select(Layers, Gen.Double[0, 1]).Sample((film, ground) =>
    {
        // Stokes: R = R0 + T² Rg / (1 − R0 Rg); nothing is made out of nothing.
        double r0 = FilmOptics.OverBlack(film), t = FilmOptics.Transmittance(film);
        return Math.Abs(FilmOptics.Over(film, ground) - (r0 + t * t * ground / (1 - r0 * ground))) < 1e-12 && r0 + t <= 1 + 1e-12 && (film.AbsorbedUnits > 0 || Math.Abs(r0 + t - 1) < 1e-12);
    });

    [Fact]
    public void Thick_films_are_opaque_and_thin_ones_clear()
    {
        var film = new Layer(0.8, 3);
        Assert.Equal(FilmOptics.Opaque(film), FilmOptics.Over(film.Times(1e6), 0.8), 1e-12);
        Assert.Equal(0.8, FilmOptics.Over(film.Times(1e-12), 0.8), 1e-10);
        Assert.Equal(0, FilmOptics.Transmittance(film.Times(1e6)));
        Assert.Equal(24.01, FilmOptics.AbsorptionRatio(FilmOptics.OpaqueReflectance(24.01)), 1e-10);
    }

    [Fact]
    public void The_thickness_found_has_the_contrast_asked_for() => Gen.Select(Gen.Double[0.01, 3], Gen.Double[0.1, 6], Gen.Double[0.5, 0.99]).Sample((k, s, ratio) =>
        FilmOptics.ThicknessFor(new Layer(k, s), 0.02, 0.8, ratio) is { } x && Math.Abs(FilmOptics.ContrastRatio(new Layer(k, s).Times(x), 0.02, 0.8) - ratio) < 1e-12);

    [Fact]
    public void No_thickness_of_a_clear_film_hides_by_scattering()
    {
        Assert.Null(FilmOptics.ThicknessFor(new Layer(1, 0), 0, 0.8, 0.98));
        Assert.Null(FilmOptics.ThicknessFor(new Layer(1, 2), 0.8, 0.2, 0.98));
    }

    /// <summary>The ratio of the fluxes from the ground upwards, r' = S − 2 (K + S) r + S r² (Riccati), by Runge and Kutta; and what passes.</summary>
    private static (double Reflected, double Through) Stepped(Layer film, double ground)
    {
        const int steps = 4000;
        double h = 1.0 / steps, r = ground, through = 0;
        for (int i = 0; i < steps; i++)
        {
            double a = Slope(r), b = Slope(r + h * a / 2), c = Slope(r + h * b / 2), d = Slope(r + h * c), before = r;
            r += h * (a + 2 * b + 2 * c + d) / 6;
            // The downward flux falls by K + S − S r; Simpson over the step.
            through -= h * (Loss(before) + 4 * Loss(before + h * (a + b) / 4) + Loss(r)) / 6;
        }
        return (r, Math.Exp(through));

        double Slope(double x) => film.ScatteredUnits - 2 * (film.AbsorbedUnits + film.ScatteredUnits) * x + film.ScatteredUnits * x * x;
        double Loss(double x) => film.AbsorbedUnits + film.ScatteredUnits - film.ScatteredUnits * x;
    }
}
