using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Film;

/// <summary>A pigment and a white in three bands, on the scale where 1 g of the white scatters 1.</summary>
/// <param name="Ratio">K/S of the pigment.</param>
/// <param name="Scatter">What 1 g of the pigment scatters.</param>
/// <param name="WhiteRatio">K/S of the white.</param>
/// <param name="Told">Whether <paramref name="Scatter"/> was told, and not taken as alike.</param>
internal sealed record PowderPair(IReadOnlyList<double> Ratio, IReadOnlyList<double> Scatter, IReadOnlyList<double> WhiteRatio, bool Told)
{
    // A photograph's or an instrument's doubt as a reflectance; our judgement, no source.
    private const double ReadingShare = 0.005;

    // The ratio of two powders' scattering is sought between these.
    private const double LeastScatter = 0.02, MostScatter = 50;

    /// <summary>From what is known; null when a band tells no K/S.</summary>
    /// <param name="basis">What is known.</param>
    /// <param name="white">The white.</param>
    /// <param name="alike">What the pigment scatters against the white where nothing tells it.</param>
    internal static PowderPair? Of(TintBasis basis, WhitePowder white, double alike)
    {
        IReadOnlyList<double> whiteRatio = ThreeBand.AbsorptionRatios(white.Colour, Surface.None);
        return basis switch
        {
            TintBasis.Full full => Even(ThreeBand.AbsorptionRatios(full.Colour, Surface.None), alike, whiteRatio, told: false),
            TintBasis.FullAndTint both => Fitted(both, whiteRatio),
            TintBasis.Drawn drawn => Drawn(drawn, white, whiteRatio, alike),
            _ => null,
        };
    }

    /// <summary>What each band of a drawdown says.</summary>
    internal static IReadOnlyList<FilmFound> Bands(ColourDrawdown read) => [.. ThreeBand.Measure(read, Surface.None, ReadingShare).Select(m => m.Found)];

    /// <summary>The colour of a mixture.</summary>
    /// <param name="fraction">Share of pigment in the powder.</param>
    internal Lab Colour(double fraction)
    {
        Span<double> reflectances = stackalloc double[Ratio.Count];
        for (int i = 0; i < Ratio.Count; i++)
            reflectances[i] = FilmOptics.Opaque(Mixture.TwoConstant([fraction, 1 - fraction], [new Layer(Ratio[i] * Scatter[i], Scatter[i]), new Layer(WhiteRatio[i], 1)]));
        return ThreeBand.Colour(reflectances);
    }

    private static PowderPair Even(IReadOnlyList<double> ratio, double scatter, IReadOnlyList<double> whiteRatio, bool told) => new(ratio, [.. ratio.Select(_ => scatter)], whiteRatio, told);

    private static PowderPair? Drawn(TintBasis.Drawn drawn, WhitePowder white, IReadOnlyList<double> whiteRatio, double alike)
    {
        IReadOnlyList<FilmFound> bands = Bands(drawn.Read);
        double?[] ratios = [.. bands.Select(f => f switch { FilmFound.Known { Film: var film } => film.AbsorbedUnits / film.ScatteredUnits, FilmFound.Hides hides => hides.AbsorptionRatio.Value, _ => (double?)null })];
        if (Array.Exists(ratios, r => r is null)) return null;
        double[] ratio = [.. ratios.Select(r => r!.Value)];
        double[] known = [.. bands.OfType<FilmFound.Known>().Select(k => k.Film.ScatteredUnits)];
        if (drawn.GramsPerSquareMetre is not { } grams || known.Length == 0) return Even(ratio, alike, whiteRatio, told: false);
        // A band that hides tells no scattering: the other bands' stands in, which grey powder shares.
        double per = grams * white.ScatteringTypical;
        return new PowderPair(ratio, [.. bands.Select(f => (f is FilmFound.Known { Film.ScatteredUnits: var s } ? s : known.Average()) / per)], whiteRatio, Told: true);
    }

    /// <summary>Scattering in each band so that the tint is the one that was seen; where full colour and white are nearly one in a band, whatever it comes to changes little.</summary>
    private static PowderPair Fitted(TintBasis.FullAndTint both, IReadOnlyList<double> whiteRatio)
    {
        IReadOnlyList<double> ratio = ThreeBand.AbsorptionRatios(both.Colour, Surface.None), tint = ThreeBand.AbsorptionRatios(both.Tint, Surface.None);
        return new PowderPair(ratio, [.. Enumerable.Range(0, ratio.Count).Select(Scattering)], whiteRatio, Told: true);

        // From c s (r - t) = (1 - c) (t - w), the mixing law solved for s.
        double Scattering(int band)
        {
            double s = (1 - both.PigmentFraction) * (tint[band] - whiteRatio[band]) / (both.PigmentFraction * (ratio[band] - tint[band]));
            return double.IsFinite(s) ? Math.Clamp(s, LeastScatter, MostScatter) : 1;
        }
    }
}
