namespace Alumroot.Quantities;

/// <summary>How much calcium and magnesium a water holds, in millimoles of both together per litre.</summary>
/// <remarks>default is 0, as in distilled water: an untested water is <c>Hardness?</c>. From 0 to 200 mmol/L. The degrees are customs: 10 mg CaO (German), 10 mg CaCO3 (French) in a litre, by the molar masses in units.csv.</remarks>
public readonly record struct Hardness : IComparable<Hardness>
{
    private Hardness(double millimolesPerLitre) => MillimolesPerLitre = millimolesPerLitre;

    /// <summary>In millimoles of calcium and magnesium per litre.</summary>
    public double MillimolesPerLitre { get; }

    /// <summary>In German degrees (°dH).</summary>
    public double GermanDegrees => MillimolesPerLitre / UnitFactors.MillimolesPerLitrePerGermanDegree;

    /// <summary>In French degrees (°fH).</summary>
    public double FrenchDegrees => MillimolesPerLitre / UnitFactors.MillimolesPerLitrePerFrenchDegree;

    /// <summary>In milligrams of calcium carbonate per litre, which test kits call ppm.</summary>
    public double MilligramsCalciumCarbonatePerLitre => FrenchDegrees * 10;

    /// <summary>A hardness in millimoles of calcium and magnesium per litre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 200, or not finite.</exception>
    public static Hardness FromMillimolesPerLitre(double millimolesPerLitre) => new(Within.Range(millimolesPerLitre, 0, 200));

    /// <summary>A hardness in German degrees (°dH).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 200 mmol/L, or not finite.</exception>
    public static Hardness FromGermanDegrees(double germanDegrees) => FromMillimolesPerLitre(germanDegrees * UnitFactors.MillimolesPerLitrePerGermanDegree);

    /// <summary>A hardness in French degrees (°fH).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 200 mmol/L, or not finite.</exception>
    public static Hardness FromFrenchDegrees(double frenchDegrees) => FromMillimolesPerLitre(frenchDegrees * UnitFactors.MillimolesPerLitrePerFrenchDegree);

    /// <summary>A hardness in milligrams of calcium carbonate per litre (ppm).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 200 mmol/L, or not finite.</exception>
    public static Hardness FromMilligramsCalciumCarbonatePerLitre(double milligramsPerLitre) => FromFrenchDegrees(milligramsPerLitre / 10);

    /// <summary>Less than.</summary>
    public static bool operator <(Hardness left, Hardness right) => left.MillimolesPerLitre < right.MillimolesPerLitre;

    /// <summary>More than.</summary>
    public static bool operator >(Hardness left, Hardness right) => left.MillimolesPerLitre > right.MillimolesPerLitre;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Hardness left, Hardness right) => left.MillimolesPerLitre <= right.MillimolesPerLitre;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Hardness left, Hardness right) => left.MillimolesPerLitre >= right.MillimolesPerLitre;

    /// <inheritdoc/>
    public int CompareTo(Hardness other) => MillimolesPerLitre.CompareTo(other.MillimolesPerLitre);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{MillimolesPerLitre} mmol/L");
}
