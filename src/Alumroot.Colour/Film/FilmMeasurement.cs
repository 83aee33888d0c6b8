using Alumroot.Quantities;

namespace Alumroot.Colour.Film;

/// <summary>A drawdown with its surface and the reliability of its readings: the film's constants and what follows from them, each with its span.</summary>
/// <remarks>
/// The film formula of Kubelka 1948 over two grounds is linear in a = 1 + K/S and q = b coth(b S X), so that any pair of grounds is solved at once:
/// a (R + Rg) + q (R − Rg) = 1 + R Rg for each.
/// </remarks>
public sealed class FilmMeasurement
{
    // Digits lost in the two linear equations.
    private const double Rounding = 1e-12;

    private readonly Drawdown _read;
    private readonly Surface _surface;
    private readonly double _reliability;

    /// <summary>Solves a drawdown.</summary>
    /// <param name="read">What the instrument showed.</param>
    /// <param name="surface">The surface that film and grounds share.</param>
    /// <param name="readingHalfWidthShare">Nine readings in ten lie so near the truth, as a reflectance; 0 for exact figures.</param>
    public FilmMeasurement(Drawdown read, Surface surface, double readingHalfWidthShare)
    {
        (_read, _surface, _reliability) = (read, surface, readingHalfWidthShare);
        Found = Solve();
    }

    /// <summary>What the readings say.</summary>
    public FilmFound Found { get; }

    /// <summary>Reflectance over black over reflectance over white, as the instrument shows them.</summary>
    public Estimate ContrastRatio
    {
        get
        {
            double ratio = _read.OverBlack / _read.OverWhite;
            double half = _reliability * Math.Sqrt(1 + ratio * ratio) / _read.OverWhite;
            return new Estimate(ratio, Math.Max(0, ratio - half), ratio + half);
        }
    }

    /// <summary>Anything that follows from the film, with the span that the readings leave; null when the film is not known.</summary>
    /// <param name="quantity">From K X and S X to the quantity.</param>
    public Estimate? Of(Func<Layer, double> quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        if (Found is not FilmFound.Known { Film: var film }) return null;
        double value = quantity(film);
        if (_reliability == 0) return Estimate.Exact(value);
        double below = 0, above = 0;
        foreach ((double black, double white) in (ReadOnlySpan<(double, double)>)[(1, 0), (-1, 0), (0, 1), (0, -1)])
        {
            // A reading that no film answers to at the edge of its span leaves that side open as far as the nearest film that does.
            double off = quantity(NearestFilm(black * _reliability, white * _reliability) ?? film) - value;
            below += off < 0 ? off * off : 0;
            above += off > 0 ? off * off : 0;
        }
        return new Estimate(value, value - Math.Sqrt(below), value + Math.Sqrt(above));
    }

    private FilmFound Solve()
    {
        double r1 = _surface.Inside(_read.OverBlack), g1 = _surface.Inside(_read.Black), r2 = _surface.Inside(_read.OverWhite), g2 = _surface.Inside(_read.White);
        if (!InRange(r1, true) || !InRange(g1, false) || !InRange(r2, true) || !InRange(g2, false)) return new FilmFound.Nothing(DrawdownTrouble.OutOfRange);
        double spread = _reliability * Math.Sqrt(2);
        if (_read.White - _read.Black <= Math.Max(spread, Rounding)) return new FilmFound.Nothing(DrawdownTrouble.GroundsAlike);
        double seen = _read.OverWhite - _read.OverBlack;
        if (seen < -spread - Rounding) return new FilmFound.Nothing(DrawdownTrouble.Exchanged);
        if (seen > _read.White - _read.Black + spread) return new FilmFound.Nothing(DrawdownTrouble.MoreThanTheGrounds);
        if (seen <= spread + Rounding) return Hiding();
        double scattering = g2 * r1 - g1 * r2, leeway = _reliability * _surface.InsidePerMeasured(r1) * Math.Sqrt(g2 * g2 + g1 * g1) + Rounding;
        if (scattering < -leeway) return new FilmFound.Nothing(DrawdownTrouble.DarkerThanPossible);
        if (scattering <= leeway) return Transparent(r2, g2);
        if (Film(r1, g1, r2, g2) is { } film) return new FilmFound.Known(film);
        // A white film may come out as absorbing less than nothing by the errors of its readings.
        bool might = Film(_surface.Inside(_read.OverBlack - _reliability), g1, _surface.Inside(_read.OverWhite - _reliability), g2) is not null;
        return might ? new FilmFound.Known(NoAbsorption(r1, g1)) : new FilmFound.Nothing(DrawdownTrouble.BrighterThanPossible);
    }

    private FilmFound.Hides Hiding()
    {
        double mean = (_read.OverBlack + _read.OverWhite) / 2, half = Math.Max(_reliability, Math.Abs(_read.OverWhite - _read.OverBlack) / 2);
        return new(new Estimate(Ratio(mean), Ratio(mean + half), Ratio(mean - half)));

        double Ratio(double measured) => FilmOptics.AbsorptionRatio(Math.Clamp(_surface.Inside(measured), 1e-4, 1));
    }

    private FilmFound.Clear Transparent(double r2, double g2)
    {
        double half = _reliability * _surface.InsidePerMeasured(r2);
        return new(new Estimate(Absorbed(r2), Absorbed(r2 + half), Absorbed(Math.Max(1e-6, r2 - half))));

        double Absorbed(double over) => Math.Max(0, Math.Log(g2 / over) / 2);
    }

    private Layer? NearestFilm(double black, double white)
    {
        double share = 1;
        for (int i = 0; i < 12; i++, share *= 0.7)
        {
            double r1 = _surface.Inside(_read.OverBlack + share * black), r2 = _surface.Inside(_read.OverWhite + share * white), g1 = _surface.Inside(_read.Black), g2 = _surface.Inside(_read.White);
            if (InRange(r1, true) && InRange(r2, true) && g2 * r1 - g1 * r2 > Rounding && Film(r1, g1, r2, g2) is { } film) return film;
        }
        return null;
    }

    /// <summary>The film by two linear equations; null when no film answers to the reflectances.</summary>
    private static Layer? Film(double r1, double g1, double r2, double g2)
    {
        double d = 2 * (g1 * r2 - g2 * r1);
        double a = ((1 + r1 * g1) * (r2 - g2) - (1 + r2 * g2) * (r1 - g1)) / d, q = ((r1 + g1) * (1 + r2 * g2) - (r2 + g2) * (1 + r1 * g1)) / d;
        if (!(a >= 1 - Rounding / Math.Min(1, Math.Abs(d))) || !(q > 0)) return null;
        double b = Math.Sqrt(Math.Max(0, (a - 1) * (a + 1)));
        if (!(q > b)) return null;
        double ratio = b / q, s = ratio < 1e-4 ? (1 + ratio * ratio / 3) / q : Math.Atanh(ratio) / b;
        return double.IsFinite(s) ? new Layer(Math.Max(0, a - 1) * s, s) : null;
    }

    /// <summary>A film that absorbs nothing, by what it shows over black: R = (Rg + (1 − Rg) S X) / (1 + (1 − Rg) S X).</summary>
    private static Layer NoAbsorption(double r, double g) => new(0, (r - g) / ((1 - g) * (1 - Math.Min(r, 0.9999))));

    private static bool InRange(double r, bool film) => r > (film ? 0 : -Rounding) && r <= 1 + Rounding;
}
