namespace Alumroot.Colour.Film;

/// <summary>Pigments in one film (Duncan 1940, from memory).</summary>
public static class Mixture
{
    /// <summary>Two constants: absorption and scattering add, each in the share of its pigment.</summary>
    /// <param name="fractions">Share of each pigment in the mass of all pigment.</param>
    /// <param name="pigments">Each pigment alone, in the same amount.</param>
    public static Layer TwoConstant(ReadOnlySpan<double> fractions, ReadOnlySpan<Layer> pigments)
    {
        if (fractions.Length != pigments.Length) throw new ArgumentException("Each pigment needs its share.", nameof(fractions));
        double k = 0, s = 0;
        for (int i = 0; i < fractions.Length; i++)
        {
            k += fractions[i] * pigments[i].AbsorbedUnits;
            s += fractions[i] * pigments[i].ScatteredUnits;
        }
        return new Layer(k, s);
    }

    /// <summary>One constant: colourants in a white that does nearly all of the scattering. Holds for tints, not for masstones.</summary>
    /// <param name="whiteRatio">K/S of the white alone.</param>
    /// <param name="fractions">Amount of each colourant for an amount of 1 of the white.</param>
    /// <param name="unitRatios">K/S that an amount of 1 of each colourant adds.</param>
    /// <returns>K/S of the mixture.</returns>
    public static double SingleConstant(double whiteRatio, ReadOnlySpan<double> fractions, ReadOnlySpan<double> unitRatios)
    {
        if (fractions.Length != unitRatios.Length) throw new ArgumentException("Each colourant needs its share.", nameof(fractions));
        double ratio = whiteRatio;
        for (int i = 0; i < fractions.Length; i++) ratio += fractions[i] * unitRatios[i];
        return ratio;
    }
}
