namespace Alumroot.Permanence.Dose;

/// <summary>What a filter that keeps out the ultraviolet is worth, by the class of the colour.</summary>
public static class UvFilter
{
    private const int Most = 8;

    private static readonly double[] Factors = [.. Enumerable.Range(1, Most).Select(n => WoolDoses.Megalux("iso", n, LightKind.WithoutUltraviolet) / WoolDoses.Megalux("iso", n, LightKind.WithUltraviolet))];

    /// <summary>How many times the dose for the same change, behind a filter against behind plain glass; straight in logarithms between the classes.</summary>
    /// <remarks>
    /// From the two columns of the table of CIE 157 for the blue wool references themselves. A lake of the same class may gain less or more; for natural dyes on cloth a filter was found
    /// to be worth about twice the dose (Padfield and Landi 1966), between the factors of classes 2 and 3 here. It says nothing of lamps that give no ultraviolet in any case.
    /// </remarks>
    /// <param name="blueWool">The class, 1 to 8; beyond them the ends hold.</param>
    public static double FactorAt(double blueWool)
    {
        double place = Math.Clamp(blueWool, 1, Most) - 1;
        int i = Math.Min((int)place, Most - 2);
        return Math.Exp(Math.Log(Factors[i]) + (place - i) * Math.Log(Factors[i + 1] / Factors[i]));
    }
}
