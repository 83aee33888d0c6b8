using Alumroot.Colour.Film;
using Alumroot.Numerics;
using Alumroot.Quantities;
using CsCheck;

namespace Alumroot.Colour.Tests.Film;

public class FilmMeasurementTests(ITestOutputHelper output)
{
    private static readonly Surface Gloss = new(0.04, 0.6);

    [Fact]
    public void A_drawdown_made_from_a_film_gives_the_film_back() =>
        Gen.Select(Gen.Double[0.001, 2], Gen.Double[0.05, 4], Gen.Double[0, 0.08], Gen.Double[0.6, 0.95], Gen.Bool).Sample((k, s, black, white, gloss) =>
        {
            var film = new Layer(k, s);
            Surface surface = gloss ? Gloss : Surface.None;
            Drawdown read = Made(film, surface, surface.Measured(black), surface.Measured(white));
            // What is left to see through the film decides how many digits can come back.
            double seen = read.OverWhite - read.OverBlack;
            if (seen < 1e-5) return true;
            return new FilmMeasurement(read, surface, 0).Found is FilmFound.Known { Film: var found }
                && Math.Abs(found.AbsorbedUnits - k) < 1e-9 / seen * (1 + k) && Math.Abs(found.ScatteredUnits - s) < 1e-9 / seen * (1 + s);
        });

    [Fact]
    public void Spans_hold_the_film_about_nine_times_in_ten()
    {
        const double reading = 0.002;
        int counted = 0, k = 0, s = 0, predicted = 0;
        for (ulong seed = 1; seed <= 600; seed++)
        {
            var random = new SeededRandom(seed * 7919 + 3);
            for (int i = 0; i < 4; i++) random.NextBits();
            var film = new Layer(0.05 + 1.2 * random.NextFraction(), 0.2 + 1.8 * random.NextFraction());
            Drawdown exact = Made(film, Gloss, 0.05, 0.8);
            double sd = reading / Distributions.NormalHalfWidth90;
            Drawdown read = exact with { OverBlack = exact.OverBlack + sd * random.NextNormal(), OverWhite = exact.OverWhite + sd * random.NextNormal() };
            var measured = new FilmMeasurement(read, Gloss, reading);
            if (measured.Found is not FilmFound.Known) continue;
            counted++;
            if (Holds(measured.Of(l => l.AbsorbedUnits), film.AbsorbedUnits)) k++;
            if (Holds(measured.Of(l => l.ScatteredUnits), film.ScatteredUnits)) s++;
            if (Holds(measured.Of(l => FilmOptics.Over(l.Times(0.5), 0.5)), FilmOptics.Over(film.Times(0.5), 0.5))) predicted++;
        }
        output.WriteLine($"K {k / (double)counted:0.000}, S {s / (double)counted:0.000}, predicted {predicted / (double)counted:0.000} of {counted}");
        Assert.True(counted > 450);
        Assert.InRange(k / (double)counted, 0.86, 0.95);
        Assert.InRange(s / (double)counted, 0.86, 0.95);
        Assert.InRange(predicted / (double)counted, 0.86, 0.96);
    }

    [Fact]
    public void A_hiding_film_tells_only_its_ratio()
    {
        Drawdown read = Made(new Layer(1, 4), Surface.None, 0.02, 0.8);
        FilmFound.Hides hides = Assert.IsType<FilmFound.Hides>(new FilmMeasurement(read, Surface.None, 0.002).Found);
        Assert.InRange(0.25, hides.AbsorptionRatio.Low, hides.AbsorptionRatio.High);
        Assert.Equal(0.25, hides.AbsorptionRatio.Value, 0.001);
        Assert.Null(new FilmMeasurement(read, Surface.None, 0.002).Of(l => l.ScatteredUnits));
    }

    [Fact]
    public void A_clear_film_tells_only_its_absorption()
    {
        Drawdown read = Made(new Layer(0.7, 0), Surface.None, 0.03, 0.8);
        FilmFound.Clear clear = Assert.IsType<FilmFound.Clear>(new FilmMeasurement(read, Surface.None, 0.002).Found);
        Assert.Equal(0.7, clear.AbsorbedUnits.Value, 1e-9);
        Assert.True(clear.AbsorbedUnits.Low < 0.7 && clear.AbsorbedUnits.High > 0.7);
    }

    [Fact]
    public void A_white_film_that_reads_a_little_too_bright_absorbs_nothing()
    {
        // R over black of S X = 4 without absorption is 0.8; a thousandth more lies within the reading.
        Drawdown read = Made(new Layer(0, 4), Surface.None, 0, 0.8) with { OverBlack = 0.801 };
        Layer film = Assert.IsType<FilmFound.Known>(new FilmMeasurement(read, Surface.None, 0.002).Found).Film;
        Assert.Equal(0, film.AbsorbedUnits, 0.005);
        Assert.Equal(4, film.ScatteredUnits, 0.1);
    }

    [Theory]
    [InlineData(0.30, 0.05, 0.40, 1.2, DrawdownTrouble.OutOfRange)]
    [InlineData(0.30, 0.8, 0.40, 0.8, DrawdownTrouble.GroundsAlike)]
    [InlineData(0.40, 0.05, 0.30, 0.8, DrawdownTrouble.Exchanged)]
    [InlineData(0.02, 0.05, 0.90, 0.8, DrawdownTrouble.MoreThanTheGrounds)]
    [InlineData(0.90, 0.05, 0.98, 0.8, DrawdownTrouble.BrighterThanPossible)]
    [InlineData(0.005, 0.05, 0.60, 0.8, DrawdownTrouble.DarkerThanPossible)]
    public void Readings_that_no_film_gives_are_named(double overBlack, double black, double overWhite, double white, DrawdownTrouble trouble) =>
        Assert.Equal(trouble, Assert.IsType<FilmFound.Nothing>(new FilmMeasurement(new Drawdown(overBlack, black, overWhite, white), Surface.None, 0.002).Found).Trouble);

    [Fact]
    public void Any_readings_end_in_a_film_or_a_reason() =>
        Gen.Select(Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2], Gen.Double[0, 0.02]).Sample((a, b, c, d, reading) =>
        {
            var measured = new FilmMeasurement(new Drawdown(a, b, c, d), Gloss, reading);
            return measured.Found is not FilmFound.Known { Film: var film }
                || (film.AbsorbedUnits >= 0 && film.ScatteredUnits >= 0 && double.IsFinite(film.AbsorbedUnits) && measured.Of(l => l.ScatteredUnits) is { } s && s.Low <= s.Value && s.Value <= s.High && double.IsFinite(s.High));
        }, iter: 2000);

    private static bool Holds(Estimate? e, double truth) => e is { } x && x.Low <= truth && truth <= x.High;

    private static Drawdown Made(Layer film, Surface surface, double black, double white) =>
        new(surface.Measured(FilmOptics.Over(film, surface.Inside(black))), black, surface.Measured(FilmOptics.Over(film, surface.Inside(white))), white);
}
