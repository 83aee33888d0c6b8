using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>One glass of a dilution row.</summary>
/// <param name="LiquorRatio">Part of it that is liquor, above 0 to 1.</param>
/// <param name="Absorbance">Its absorbance at one wavelength or in one band of a photograph, against water in the same glass.</param>
public readonly record struct DilutionGlass(double LiquorRatio, double Absorbance);

/// <summary>What a dilution row tells of a liquor.</summary>
/// <param name="Absorbance">Absorbance of the liquor itself in the glass used, by the straight line through the glasses that can be trusted.</param>
/// <param name="Used">How many glasses the line rests on.</param>
/// <param name="TooPale">Glasses too pale to count.</param>
/// <param name="TooDark">Glasses too dark to count.</param>
/// <param name="Bends">The glasses bend away from a straight line by more than they scatter: stray light, or a dye that changes when it is thinned.</param>
public sealed record DilutionStrength(Estimate Absorbance, int Used, int TooPale, int TooDark, bool Bends);

/// <summary>Beer and Lambert on a dilution row: absorbance is proportional to the part of liquor.</summary>
/// <remarks>Docs: docs/models/extraction.md.</remarks>
public static class DilutionRow
{
    /// <summary>Below this a glass is too pale to be told from water; common practice, no source.</summary>
    public const double PaleAbsorbance = 0.05;

    /// <summary>Above this the light that is left is stray light; common practice, no source.</summary>
    public const double DarkAbsorbance = 1.5;

    // One reading of a simple instrument or a photograph: a hundredth and three parts in a hundred; our judgement, no source.
    private const double ReadingAbsorbance = 0.01, ReadingRatio = 0.03;

    /// <summary>Absorbance from linear light: −log10((glass − dark) / (water − dark)).</summary>
    /// <param name="glassRatio">Light through the glass, linear, in any unit.</param>
    /// <param name="waterRatio">Light through the same glass with water.</param>
    /// <param name="darkRatio">What is read with no light.</param>
    /// <returns>Null when no light is left or the water is not lighter than the dark.</returns>
    public static double? AbsorbanceOf(double glassRatio, double waterRatio, double darkRatio = 0) =>
        waterRatio > darkRatio && glassRatio > darkRatio ? -Math.Log10((glassRatio - darkRatio) / (waterRatio - darkRatio)) : null;

    /// <summary>The liquor's own absorbance; null when no glass can be trusted.</summary>
    /// <param name="glasses">The row, in any order.</param>
    public static DilutionStrength? Of(IReadOnlyList<DilutionGlass> glasses)
    {
        ArgumentNullException.ThrowIfNull(glasses);
        DilutionGlass[] good = [.. glasses.Where(g => g.LiquorRatio is > 0 and <= 1 && g.Absorbance is >= PaleAbsorbance and <= DarkAbsorbance)];
        if (good.Length == 0) return null;
        double top = 0, bottom = 0;
        foreach (DilutionGlass g in good)
        {
            double weight = 1 / Variance(g);
            top += weight * g.LiquorRatio * g.Absorbance;
            bottom += weight * g.LiquorRatio * g.LiquorRatio;
        }
        double slope = top / bottom;
        double chiSquare = good.Sum(g => (g.Absorbance - slope * g.LiquorRatio) * (g.Absorbance - slope * g.LiquorRatio) / Variance(g));
        // Where the glasses scatter more than a reading should, the span follows their scatter.
        double stretch = good.Length > 1 ? Math.Max(1, chiSquare / (good.Length - 1)) : 1;
        double half = Distributions.NormalHalfWidth90 * Math.Sqrt(stretch / bottom);
        return new DilutionStrength(
            new Estimate(slope, Math.Max(slope - half, 0), slope + half), good.Length,
            glasses.Count(g => g.Absorbance < PaleAbsorbance), glasses.Count(g => g.Absorbance > DarkAbsorbance), good.Length > 2 && stretch > 4);
    }

    private static double Variance(DilutionGlass g) => ReadingAbsorbance * ReadingAbsorbance + ReadingRatio * ReadingRatio * g.Absorbance * g.Absorbance;
}
