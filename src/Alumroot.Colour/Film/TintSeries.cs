namespace Alumroot.Colour.Film;

/// <summary>An opaque mixture of a colourant with a white, at one wavelength.</summary>
/// <param name="ColourantFraction">Share of the colourant in the mass of both; 1 is the masstone.</param>
/// <param name="InsideReflectance">Its reflectance inside the film.</param>
public readonly record struct Tint(double ColourantFraction, double InsideReflectance);

/// <summary>What a tint series says of its colourant. Closed: nobody adds another kind.</summary>
public abstract record TintFit
{
    private TintFit() { }

    /// <summary>Both constants, on the scale where the white scatters 1.</summary>
    /// <param name="Colourant">The colourant alone.</param>
    /// <param name="WorstReflectanceShare">The most by which a mixture's reflectance is missed.</param>
    /// <param name="Spare">How many mixtures there are more than needed; 0 means that nothing checks the fit.</param>
    public sealed record Known(Layer Colourant, double WorstReflectanceShare, int Spare) : TintFit;

    /// <summary>The series does not decide: fewer than two different mixtures, or none that shows the white.</summary>
    public sealed record NotDecided : TintFit;

    /// <summary>The best fit has a constant below nothing: the mixtures contradict each other or the model.</summary>
    public sealed record Contradicts : TintFit;
}

/// <summary>K and S of a colourant from its masstone and tints with a white whose scattering is set to 1 (Allen 1980).</summary>
/// <remarks>Each mixture of share c and ratio r = K/S gives c K − c r S = (1 − c)(r − r_white), a line in K and S; least squares with each line divided by 1 + r.</remarks>
public static class TintSeries
{
    /// <summary>The colourant's constants.</summary>
    /// <param name="whiteReflectance">Inside reflectance of the opaque white alone.</param>
    /// <param name="tints">The mixtures, in any order.</param>
    public static TintFit Fit(double whiteReflectance, IReadOnlyList<Tint> tints)
    {
        ArgumentNullException.ThrowIfNull(tints);
        double white = FilmOptics.AbsorptionRatio(whiteReflectance);
        double kk = 0, ks = 0, ss = 0, ky = 0, sy = 0;
        Tint[] used = [.. tints.Where(t => t.ColourantFraction > 0 && t.InsideReflectance is > 0 and <= 1)];
        foreach (Tint t in used)
        {
            double r = FilmOptics.AbsorptionRatio(t.InsideReflectance), w = 1 / (1 + r);
            double k = w * t.ColourantFraction, s = -w * t.ColourantFraction * r, y = w * (1 - t.ColourantFraction) * (r - white);
            kk += k * k;
            ks += k * s;
            ss += s * s;
            ky += k * y;
            sy += s * y;
        }
        double d = kk * ss - ks * ks;
        if (used.Select(t => t.ColourantFraction).Distinct().Count() < 2 || !(d > 1e-12 * kk * ss)) return new TintFit.NotDecided();
        var colourant = new Layer((ky * ss - sy * ks) / d, (kk * sy - ks * ky) / d);
        if (colourant.AbsorbedUnits < 0 || colourant.ScatteredUnits < 0) return new TintFit.Contradicts();
        double worst = used.Max(t => Math.Abs(FilmOptics.Opaque(Mixture.TwoConstant([1 - t.ColourantFraction, t.ColourantFraction], [new Layer(white, 1), colourant])) - t.InsideReflectance));
        return new TintFit.Known(colourant, worst, used.Length - 2);
    }
}
