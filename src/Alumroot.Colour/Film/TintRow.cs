using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Film;

/// <summary>The colours of a row of tints with a white powder, by two constants in three bands.</summary>
/// <remarks>
/// K and S add by mass (Duncan 1940): a tint has K/S = (c s r + (1 − c) r_white) / (c s + 1 − c); c is the share of pigment in the powder, r its K/S, and s what it scatters against the white, gram for gram.
/// Powder has no surface. Where s is not told it is taken as alike, within a span.
/// </remarks>
public sealed class TintRow
{
    /// <summary>The ends of what one powder scatters against another, gram for gram, when nothing tells it; our judgement, no source.</summary>
    public const double AlikeLow = 1 / 3.0, AlikeHigh = 3;

    // Nine tints in ten come out so near when all readings are exact, the guess of three bands alone; from simulated powders, on the page film.
    private static readonly Guess Between = new(0.3, 1.2, 1.6, 1.0), Drawn = new(1.2, 4, 4.5, 3.7);

    // A colour known within 1 nine times in ten has each of its three numbers within 0.66 (chi with three degrees of freedom against one).
    private const double CoordinateShare = 0.66;

    // The white is a stand-in: its lightness and its cream may be off by so much; from memory.
    private const double WhiteUnits = 1.5;

    private readonly TintBasis _basis;
    private readonly WhitePowder _white;
    private readonly double _within;
    private readonly PowderPair? _pair;

    /// <summary>A row.</summary>
    /// <param name="basis">What is known of the pigment.</param>
    /// <param name="white">What it is let down with.</param>
    /// <param name="readWithinDeltaE2000">Nine times in ten a colour that was read is no farther from the truth.</param>
    public TintRow(TintBasis basis, WhitePowder white, double readWithinDeltaE2000)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(white);
        (_basis, _white, _within) = (basis, white, readWithinDeltaE2000);
        _pair = PowderPair.Of(basis, white, 1);
        Trouble = _pair is null && basis is TintBasis.Drawn drawn ? PowderPair.Bands(drawn.Read).First(f => f is FilmFound.Clear or FilmFound.Nothing) : null;
    }

    /// <summary>What a band of the drawdown says instead of K/S; null when the colours can be told.</summary>
    public FilmFound? Trouble { get; }

    /// <summary>Whether scattering was told, and not taken as alike.</summary>
    public bool IsScatteringTold => _pair is { Told: true };

    /// <summary>What the pigment scatters against the white, gram for gram, in the mean of the bands; null when nothing is told.</summary>
    public double? ScatteringRatio => _pair?.Scatter.Average();

    /// <summary>How far the row passes from the tint that was read; null when none was.</summary>
    public double? MissedDeltaE2000 => _basis is TintBasis.FullAndTint both ? Ciede2000.Of(both.Tint, _pair!.Colour(both.PigmentFraction)).DeltaE : null;

    /// <summary>The colours of tints, each with its span; empty when nothing is told.</summary>
    /// <param name="pigmentFractions">Share of pigment in the powder of each, above 0 and at most 1.</param>
    public IReadOnlyList<ExpectedTint> Colours(IReadOnlyList<double> pigmentFractions)
    {
        ArgumentNullException.ThrowIfNull(pigmentFractions);
        if (_pair is null) return [];
        // A doubt whose end no film answers to leaves that end where the middle is.
        (PowderPair, PowderPair)[] moved = [.. Moved().Select(m => (m.One ?? _pair, m.Other ?? _pair))];
        return [.. pigmentFractions.Select(c => c == 1 && Read is { } read ? AsRead(read) : Spanned(c, _pair.Colour(c), [.. moved.Select(m => (m.Item1.Colour(c), m.Item2.Colour(c)))]))];
    }

    /// <summary>The full colour where it was read.</summary>
    private Lab? Read => _basis switch { TintBasis.Full full => full.Colour, TintBasis.FullAndTint both => both.Colour, _ => null };

    private ExpectedTint AsRead(Lab colour)
    {
        double u = CoordinateShare * _within;
        return new ExpectedTint(1, colour, new Lab(Math.Max(0, colour.L - u), colour.A - u, colour.B - u), new Lab(Math.Min(100, colour.L + u), colour.A + u, colour.B + u), _within);
    }

    private ExpectedTint Spanned(double fraction, Lab middle, IReadOnlyList<(Lab One, Lab Other)> moved)
    {
        Guess guess = _basis is TintBasis.FullAndTint ? Between : Drawn;
        (double downL, double upL) = Side(x => x.L, guess.L);
        (double downA, double upA) = Side(x => x.A, guess.A);
        (double downB, double upB) = Side(x => x.B, guess.B);
        // Of the two ends of a doubt the farther counts.
        double within = Math.Sqrt(guess.DeltaE2000 * guess.DeltaE2000 + moved.Sum(m => Math.Pow(Math.Max(Ciede2000.Of(middle, m.One).DeltaE, Ciede2000.Of(middle, m.Other).DeltaE), 2)));
        return new ExpectedTint(fraction, middle, new Lab(Math.Max(0, middle.L - downL), middle.A - downA, middle.B - downB), new Lab(Math.Min(100, middle.L + upL), middle.A + upA, middle.B + upB), within);

        (double Down, double Up) Side(Func<Lab, double> of, double bands)
        {
            double value = of(middle), down = bands * bands, up = bands * bands;
            foreach ((Lab one, Lab other) in moved)
            {
                double least = Math.Min(0, Math.Min(of(one), of(other)) - value), most = Math.Max(0, Math.Max(of(one), of(other)) - value);
                down += least * least;
                up += most * most;
            }
            return (Math.Sqrt(down), Math.Sqrt(up));
        }
    }

    /// <summary>Each doubt alone at both of its ends.</summary>
    private IEnumerable<(PowderPair? One, PowderPair? Other)> Moved()
    {
        double u = CoordinateShare * _within;
        switch (_basis)
        {
            case TintBasis.Drawn d:
                foreach ((Lab down, Lab up) in Ends(d.Read.OverBlack, u, u, u)) yield return Both(d with { Read = d.Read with { OverBlack = down } }, d with { Read = d.Read with { OverBlack = up } });
                foreach ((Lab down, Lab up) in Ends(d.Read.OverWhite, u, u, u)) yield return Both(d with { Read = d.Read with { OverWhite = down } }, d with { Read = d.Read with { OverWhite = up } });
                break;
            case TintBasis.Full f:
                foreach ((Lab down, Lab up) in Ends(f.Colour, u, u, u)) yield return Both(f with { Colour = down }, f with { Colour = up });
                break;
            case TintBasis.FullAndTint t:
                foreach ((Lab down, Lab up) in Ends(t.Colour, u, u, u)) yield return Both(t with { Colour = down }, t with { Colour = up });
                foreach ((Lab down, Lab up) in Ends(t.Tint, u, u, u)) yield return Both(t with { Tint = down }, t with { Tint = up });
                break;
        }
        foreach ((Lab down, Lab up) in Ends(_white.Colour, WhiteUnits, 0, WhiteUnits)) yield return (PowderPair.Of(_basis, _white with { Colour = down }, 1), PowderPair.Of(_basis, _white with { Colour = up }, 1));
        yield return IsScatteringTold
            ? (PowderPair.Of(_basis, _white with { ScatteringTypical = _white.ScatteringLow }, 1), PowderPair.Of(_basis, _white with { ScatteringTypical = _white.ScatteringHigh }, 1))
            : (PowderPair.Of(_basis, _white, AlikeLow), PowderPair.Of(_basis, _white, AlikeHigh));

        (PowderPair?, PowderPair?) Both(TintBasis one, TintBasis other) => (PowderPair.Of(one, _white, 1), PowderPair.Of(other, _white, 1));
    }

    private static IEnumerable<(Lab Down, Lab Up)> Ends(Lab colour, double l, double a, double b)
    {
        yield return (colour with { L = Math.Max(0, colour.L - l) }, colour with { L = Math.Min(100, colour.L + l) });
        if (a > 0) yield return (colour with { A = colour.A - a }, colour with { A = colour.A + a });
        yield return (colour with { B = colour.B - b }, colour with { B = colour.B + b });
    }

    private sealed record Guess(double L, double A, double B, double DeltaE2000);
}
