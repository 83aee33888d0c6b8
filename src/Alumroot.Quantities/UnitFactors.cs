using Alumroot.Quantities.Units;

namespace Alumroot.Quantities;

/// <summary>The few factors that the types themselves need, taken from units.csv so that each stands in one place.</summary>
internal static class UnitFactors
{
    public static readonly double GramsPerOunce = UnitTable.Get(QuantityKind.Mass, "oz").ToBase;
    public static readonly double AbsoluteZeroCelsius = UnitTable.Get(QuantityKind.Temperature, "K").Offset;
    public static readonly double MillimolesPerLitrePerGermanDegree = UnitTable.Get(QuantityKind.Hardness, "°dH").ToBase;
    public static readonly double MillimolesPerLitrePerFrenchDegree = UnitTable.Get(QuantityKind.Hardness, "°fH").ToBase;

    /// <summary>Exact (NIST SP 811, B.8).</summary>
    public const double KilopascalsPerAtmosphere = 101.325;
}
