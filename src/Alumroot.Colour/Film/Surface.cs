namespace Alumroot.Colour.Film;

/// <summary>What the surface of a film does to light: the correction of Saunderson 1942.</summary>
/// <param name="OutsideShare">k1: share of the incoming light that the surface throws back.</param>
/// <param name="InsideShare">k2: share of the light inside that the surface throws back in.</param>
/// <param name="GlossIncluded">Whether the instrument sees what k1 throws back.</param>
public readonly record struct Surface(double OutsideShare, double InsideShare, bool GlossIncluded = true)
{
    /// <summary>No surface: powders and pastels; common practice, no source.</summary>
    public static Surface None => new(0, 0);

    /// <summary>The reflectance inside the film; below 0 when less is measured than the surface alone gives back.</summary>
    /// <param name="measured">What the instrument shows.</param>
    public double Inside(double measured)
    {
        double through = GlossIncluded ? measured - OutsideShare : measured;
        return through / ((1 - OutsideShare) * (1 - InsideShare) + InsideShare * through);
    }

    /// <summary>What the instrument shows.</summary>
    /// <param name="inside">The reflectance inside the film.</param>
    public double Measured(double inside) =>
        (GlossIncluded ? OutsideShare : 0) + (1 - OutsideShare) * (1 - InsideShare) * inside / (1 - InsideShare * inside);

    /// <summary>How much the reflectance inside grows with what the instrument shows.</summary>
    /// <param name="inside">The reflectance inside the film.</param>
    public double InsidePerMeasured(double inside) => (1 - InsideShare * inside) * (1 - InsideShare * inside) / ((1 - OutsideShare) * (1 - InsideShare));
}
