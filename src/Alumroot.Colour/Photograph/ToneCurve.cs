namespace Alumroot.Colour.Photograph;

/// <summary>What stands between the light of a scene and the numbers of a picture, beyond the curve of the file: stray light in the lens and the contrast that a camera adds.</summary>
/// <param name="GlareShare">Stray light as a share of the picture's mean light.</param>
/// <param name="Contrast">Strength of an S-shaped curve: its middle steeper, its ends flatter.</param>
/// <param name="Lift">Strength of a bow: middle tones darker in the scene than in the file when below nothing.</param>
/// <remarks>In the encoded value v the scene's value is v + Contrast v (1 - v)(1 - 2v) + Lift v (1 - v): the first terms of any smooth curve that keeps black and white. The first undoes, to first order, a blend with 3v² - 2v³.</remarks>
internal readonly record struct ToneCurve(double GlareShare, double Contrast, double Lift)
{
    // A curve that is no longer rising is none.
    private const double MostBend = 0.45, MostGlareShare = 0.08;

    internal bool IsSane => Math.Abs(Contrast) <= MostBend && Math.Abs(Lift) <= MostBend && GlareShare is >= 0 and <= MostGlareShare;

    internal bool IsPlain => this == default;

    /// <summary>The light of the scene for the light that the file states.</summary>
    internal LinearRgb Scene(LinearRgb stated, LinearRgb meanOfPicture)
    {
        LinearRgb bent = Contrast == 0 && Lift == 0 ? stated : stated.Map(Straightened);
        return GlareShare == 0 ? bent : bent - meanOfPicture * GlareShare;
    }

    private double Straightened(double light)
    {
        double v = Encoded(Math.Max(light, 0));
        return Decoded(v + v * (1 - v) * (Contrast * (1 - 2 * v) + Lift));
    }

    // sRGB's curve and back (IEC 61966-2-1, from memory).
    private static double Encoded(double linear) => linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.Pow(linear, 1 / 2.4) - 0.055;

    private static double Decoded(double v) => v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
}
