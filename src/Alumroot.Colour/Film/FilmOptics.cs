namespace Alumroot.Colour.Film;

/// <summary>A layer by how much it absorbs and scatters in its whole thickness, at one wavelength.</summary>
/// <param name="AbsorbedUnits">K X: absorption coefficient times thickness, a pure number.</param>
/// <param name="ScatteredUnits">S X: scattering coefficient times thickness, a pure number.</param>
public readonly record struct Layer(double AbsorbedUnits, double ScatteredUnits)
{
    /// <summary>The same film in another thickness.</summary>
    public Layer Times(double thickness) => new(AbsorbedUnits * thickness, ScatteredUnits * thickness);
}

/// <summary>Light in a film by the two fluxes of Kubelka and Munk 1931 and Kubelka 1948. All reflectances are inside the film; light is diffuse.</summary>
public static class FilmOptics
{
    // Below this b S X the hyperbolic forms lose digits and the series takes over.
    private const double Thin = 1e-4;

    /// <summary>K/S of an opaque layer from its reflectance, (1 − R)² / 2 R.</summary>
    /// <param name="opaqueReflectance">Above 0, at most 1.</param>
    public static double AbsorptionRatio(double opaqueReflectance) => (1 - opaqueReflectance) * (1 - opaqueReflectance) / (2 * opaqueReflectance);

    /// <summary>The reflectance of an opaque layer from its K/S, in the form that keeps digits when the layer is dark.</summary>
    /// <param name="absorptionRatio">K/S, not below 0; infinite gives 0.</param>
    public static double OpaqueReflectance(double absorptionRatio) => 1 / (1 + absorptionRatio + Math.Sqrt(absorptionRatio * (absorptionRatio + 2)));

    /// <summary>The reflectance of a layer on a ground.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="ground">Reflectance of what it lies on.</param>
    public static double Over(Layer layer, double ground)
    {
        (double a, double q) = Terms(layer);
        return double.IsInfinity(q) ? ground : (layer.ScatteredUnits + ground * (q - a)) / (a - ground * layer.ScatteredUnits + q);
    }

    /// <summary>The reflectance over a ground that gives nothing back.</summary>
    public static double OverBlack(Layer layer) => Over(layer, 0);

    /// <summary>The share of diffuse light that passes through.</summary>
    public static double Transmittance(Layer layer)
    {
        (double k, double s) = (layer.AbsorbedUnits, layer.ScatteredUnits);
        double b = Math.Sqrt(k * (k + 2 * s));
        if (b < Thin) return 1 / (1 + (k + s) * (1 + b * b / 6) + b * b / 2);
        double e = Math.Exp(-b);
        return 2 * b * e / ((k + s) * (1 - e * e) + b * (1 + e * e));
    }

    /// <summary>The reflectance in any thickness that hides.</summary>
    public static double Opaque(Layer layer) => layer.ScatteredUnits > 0 ? OpaqueReflectance(layer.AbsorbedUnits / layer.ScatteredUnits) : 0;

    /// <summary>Reflectance over black divided by reflectance over white.</summary>
    public static double ContrastRatio(Layer layer, double black, double white) => Over(layer, black) / Over(layer, white);

    /// <summary>The thickness in which a film reaches a contrast ratio.</summary>
    /// <param name="perThickness">The film in a thickness of 1.</param>
    /// <param name="black">Reflectance of the black ground.</param>
    /// <param name="white">Reflectance of the white ground.</param>
    /// <param name="ratio">The contrast ratio, such as 0.98.</param>
    /// <returns>The thickness in the same unit, or null when none reaches it: the film neither scatters nor absorbs, or the grounds are not darker and lighter.</returns>
    public static double? ThicknessFor(Layer perThickness, double black, double white, double ratio)
    {
        if (!(black < white) || !(ratio < 1) || !(perThickness.ScatteredUnits > 0)) return null;
        double low = 0, high = 1 / (perThickness.ScatteredUnits + perThickness.AbsorbedUnits);
        for (int i = 0; ContrastRatio(perThickness.Times(high), black, white) < ratio; i++)
        {
            if (i > 100) return null;
            high *= 2;
        }
        for (int i = 0; i < 200 && high - low > 1e-15 * high; i++)
        {
            double middle = (low + high) / 2;
            if (ContrastRatio(perThickness.Times(middle), black, white) < ratio) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>
    /// K X + S X and b S X coth(b S X): with both, R = (S X + Rg (q − a)) / (a − Rg S X + q), which is the usual formula multiplied by S X, so that a layer without scattering is no special case.
    /// </summary>
    private static (double A, double Q) Terms(Layer layer)
    {
        (double k, double s) = (layer.AbsorbedUnits, layer.ScatteredUnits);
        double b = Math.Sqrt(k * (k + 2 * s));
        return (k + s, b < Thin ? 1 + b * b / 3 : b / Math.Tanh(b));
    }
}
