namespace Alumroot.Colour.Colorimetry;

/// <summary>A colour of a clear liquid as three absorbances, which add up when dyes are mixed, nearly.</summary>
/// <remarks>The cone-like signals of the Bradford transform over those of the white, as minus their decadic logarithm: Beer's law for three broad bands. It is exact for a grey liquid and an approximation for all others.</remarks>
public static class BandAbsorbance
{
    // A signal below this is darkness; its logarithm would say more than is known.
    private const double Darkest = 1e-4;

    /// <summary>The three absorbances of a colour seen against the white of D50, long waves first.</summary>
    public static double[] Of(Lab d50)
    {
        Xyz of = ChromaticAdaptation.Bradford.Cones(d50.ToXyz(ColourNames.White)), white = ChromaticAdaptation.Bradford.Cones(ColourNames.White);
        return [One(of.X / white.X), One(of.Y / white.Y), One(of.Z / white.Z)];

        static double One(double share) => -Math.Log10(Math.Max(share, Darkest));
    }

    /// <summary>The colour, Lab for D50, of three absorbances.</summary>
    /// <param name="absorbances">Long waves first.</param>
    public static Lab ToLab(ReadOnlySpan<double> absorbances)
    {
        Xyz white = ChromaticAdaptation.Bradford.Cones(ColourNames.White);
        var cones = new Xyz(white.X * Math.Pow(10, -absorbances[0]), white.Y * Math.Pow(10, -absorbances[1]), white.Z * Math.Pow(10, -absorbances[2]));
        return Lab.From(ChromaticAdaptation.Bradford.FromCones(cones), ColourNames.White);
    }
}
