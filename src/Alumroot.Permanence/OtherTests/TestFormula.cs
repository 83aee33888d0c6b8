namespace Alumroot.Permanence.OtherTests;

/// <summary>The formulas of the other tests.</summary>
internal static class TestFormula
{
    private const double Hundred = 100, ExtractParts = 2.5, LinseedDensity = 0.93;

    // Grey scale for staining, ISO 105-A03, from memory: CIELAB difference of the grades 5, 4-5, ... 1.
    private static readonly double[] Staining = [0, 2.2, 4.3, 6.0, 8.5, 12.0, 16.9, 24.0, 34.1];

    /// <summary>The result of a formula; null when the values cannot be.</summary>
    internal static double? Of(string formula, IReadOnlyList<double> v)
    {
        double result = formula switch
        {
            "direct" or "change" => v[0],
            "difference" => v[0] - v[1],
            // ISO 787-2: what left over what was there.
            "loss" => Hundred * (v[0] - v[1]) / v[0],
            // ISO 787-3, 787-8: the residue of 100 mL of 250.
            "soluble" => Hundred * ExtractParts * v[1] / v[0],
            "percent" => Hundred * v[0] / v[1],
            // ISO 787-10: the liquid that the powder took the place of.
            "density" => v[0] * v[3] / (v[0] + v[1] - v[2]),
            // ASTM D281: linseed oil of 0.93 g/mL.
            "oil" => Hundred * LinseedDensity * v[0] / v[1],
            // ISO 787-24: K/S with that of the white taken off.
            "strength" => Hundred * (AbsorptionOverScattering(v[0]) - AbsorptionOverScattering(v[2])) / (AbsorptionOverScattering(v[1]) - AbsorptionOverScattering(v[2])),
            "lifted" => Hundred * (1 - v[1] / v[0]),
            "staining" => StainingGrade(v[0]),
            _ => throw new ArgumentException($"There is no formula {formula}.", nameof(formula)),
        };
        return double.IsFinite(result) && result >= 0 && (formula is not ("loss" or "soluble" or "lifted") || result <= Hundred) ? result : null;
    }

    /// <summary>The grade between those of the scale, straight between its steps.</summary>
    private static double StainingGrade(double deltaE)
    {
        for (int i = 1; i < Staining.Length; i++)
            if (deltaE <= Staining[i]) return 5 - 0.5 * (i - 1 + (deltaE - Staining[i - 1]) / (Staining[i] - Staining[i - 1]));
        return 1;
    }

    // Kubelka and Munk, for an opaque layer; the reflectance in percent.
    private static double AbsorptionOverScattering(double percent) => Math.Pow(1 - percent / Hundred, 2) / (2 * percent / Hundred);
}
