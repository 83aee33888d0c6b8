using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Film;

/// <summary>A film of which only colours are known, over black and over white, as a photograph tells them.</summary>
/// <param name="OverBlack">The film over black; Lab for D50 and 2 degrees.</param>
/// <param name="Black">The black ground.</param>
/// <param name="OverWhite">The film over white.</param>
/// <param name="White">The white ground.</param>
public sealed record ColourDrawdown(Lab OverBlack, Lab Black, Lab OverWhite, Lab White);

/// <summary>Approximate K and S from colours alone: a colour is taken as the reflectance at three wavelengths that has it.</summary>
/// <remarks>
/// Three numbers tell three reflectances. At wavelengths near the three peaks of the response of the eye the way back is well posed; they were fixed by judgement near those of Thornton 1971 (from memory).
/// The spectrum between is a straight guess, so all that follows is approximate: use it where no instrument is at hand.
/// </remarks>
public static class ThreeBand
{
    private static readonly double[] At = [450, 540, 610];
    private static readonly SpectralWeights Weights = SpectralWeights.For(ViewingCondition.Graphic, Spectrum.Of(At, At.Select(_ => 0.0)));

    private static readonly Matrix3 Back = new Matrix3(
        new Xyz(Weights.X[0], Weights.X[1], Weights.X[2]), new Xyz(Weights.Y[0], Weights.Y[1], Weights.Y[2]), new Xyz(Weights.Z[0], Weights.Z[1], Weights.Z[2])).Inverse();

    /// <summary>The three wavelengths, rising.</summary>
    public static IReadOnlyList<double> Nanometres => At;

    /// <summary>The reflectances at the three wavelengths that have a colour; strong colours may leave 0 to 1.</summary>
    public static IReadOnlyList<double> Reflectances(Lab colour)
    {
        Xyz r = Back.Times(colour.ToXyz(Weights.White));
        return [r.X, r.Y, r.Z];
    }

    /// <summary>The colour of three reflectances.</summary>
    public static Lab Colour(ReadOnlySpan<double> reflectances) => Weights.LabOf(reflectances);

    /// <summary>What a drawdown says at each of the three wavelengths.</summary>
    /// <param name="read">The four colours.</param>
    /// <param name="surface">The surface that film and grounds share.</param>
    /// <param name="readingHalfWidthShare">Nine readings in ten lie so near the truth, as a reflectance.</param>
    public static IReadOnlyList<FilmMeasurement> Measure(ColourDrawdown read, Surface surface, double readingHalfWidthShare)
    {
        ArgumentNullException.ThrowIfNull(read);
        IReadOnlyList<double> overBlack = Reflectances(read.OverBlack), black = Reflectances(read.Black), overWhite = Reflectances(read.OverWhite), white = Reflectances(read.White);
        return [.. Enumerable.Range(0, At.Length).Select(i => new FilmMeasurement(new Drawdown(overBlack[i], black[i], overWhite[i], white[i]), surface, readingHalfWidthShare))];
    }

    /// <summary>K/S at each of the three wavelengths of a film that hides; a reflectance out of range is held to it.</summary>
    /// <param name="colour">What the film shows.</param>
    /// <param name="surface">Its surface.</param>
    public static IReadOnlyList<double> AbsorptionRatios(Lab colour, Surface surface) =>
        [.. Reflectances(colour).Select(r => FilmOptics.AbsorptionRatio(Math.Clamp(surface.Inside(r), Darkest, 1)))];

    // Below this a reflectance says only that the film is very dark.
    private const double Darkest = 1e-3;
}
