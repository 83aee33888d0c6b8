namespace Alumroot.Quantities;

/// <summary>Moles of something for each kilogram of water in the solution.</summary>
/// <remarks>default is 0, none of it. From 0 to 1000 mol/kg. The scale on which the equilibrium constants are written; it does not change with temperature as mol/L does.</remarks>
public readonly record struct Molality : IComparable<Molality>
{
    private Molality(double molesPerKilogram) => MolesPerKilogram = molesPerKilogram;

    /// <summary>In moles per kilogram of water.</summary>
    public double MolesPerKilogram { get; }

    /// <summary>A molality in moles per kilogram of water.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1000, or not finite.</exception>
    public static Molality FromMolesPerKilogram(double molesPerKilogram) => new(Within.Range(molesPerKilogram, 0, 1000));

    /// <summary>Less than.</summary>
    public static bool operator <(Molality left, Molality right) => left.MolesPerKilogram < right.MolesPerKilogram;

    /// <summary>More than.</summary>
    public static bool operator >(Molality left, Molality right) => left.MolesPerKilogram > right.MolesPerKilogram;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Molality left, Molality right) => left.MolesPerKilogram <= right.MolesPerKilogram;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Molality left, Molality right) => left.MolesPerKilogram >= right.MolesPerKilogram;

    /// <inheritdoc/>
    public int CompareTo(Molality other) => MolesPerKilogram.CompareTo(other.MolesPerKilogram);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{MolesPerKilogram} mol/kg");
}
