namespace Alumroot.Quantities;

/// <summary>An absolute pressure of a gas, in standard atmospheres.</summary>
/// <remarks>default is 0 atm, a vacuum. From 0 to 10 000 atm. One standard atmosphere is 101.325 kPa exactly (NIST SP 811, B.8).</remarks>
public readonly record struct Pressure : IComparable<Pressure>
{
    private Pressure(double atmospheres) => Atmospheres = atmospheres;

    /// <summary>In standard atmospheres.</summary>
    public double Atmospheres { get; }

    /// <summary>In kilopascals.</summary>
    public double Kilopascals => Atmospheres * UnitFactors.KilopascalsPerAtmosphere;

    /// <summary>A pressure in standard atmospheres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 10 000, or not finite.</exception>
    public static Pressure FromAtmospheres(double atmospheres) => new(Within.Range(atmospheres, 0, 10_000));

    /// <summary>A pressure in kilopascals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 10 000 atm, or not finite.</exception>
    public static Pressure FromKilopascals(double kilopascals) => FromAtmospheres(kilopascals / UnitFactors.KilopascalsPerAtmosphere);

    /// <summary>Less than.</summary>
    public static bool operator <(Pressure left, Pressure right) => left.Atmospheres < right.Atmospheres;

    /// <summary>More than.</summary>
    public static bool operator >(Pressure left, Pressure right) => left.Atmospheres > right.Atmospheres;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Pressure left, Pressure right) => left.Atmospheres <= right.Atmospheres;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Pressure left, Pressure right) => left.Atmospheres >= right.Atmospheres;

    /// <inheritdoc/>
    public int CompareTo(Pressure other) => Atmospheres.CompareTo(other.Atmospheres);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Atmospheres} atm");
}
