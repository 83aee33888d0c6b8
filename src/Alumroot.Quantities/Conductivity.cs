namespace Alumroot.Quantities;

/// <summary>How well a water carries current, in microsiemens per centimetre. The temperature it was read at is kept beside it, not in it.</summary>
/// <remarks>default is 0 µS/cm: an unread meter is <c>Conductivity?</c>. From 0 to 10 million µS/cm. Conductivities of mixed waters do not add.</remarks>
public readonly record struct Conductivity : IComparable<Conductivity>
{
    private Conductivity(double microsiemensPerCentimetre) => MicrosiemensPerCentimetre = microsiemensPerCentimetre;

    /// <summary>In microsiemens per centimetre.</summary>
    public double MicrosiemensPerCentimetre { get; }

    /// <summary>In millisiemens per centimetre.</summary>
    public double MillisiemensPerCentimetre => MicrosiemensPerCentimetre / 1000;

    /// <summary>In siemens per metre.</summary>
    public double SiemensPerMetre => MicrosiemensPerCentimetre / 10_000;

    /// <summary>A conductivity in microsiemens per centimetre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 10 million, or not finite.</exception>
    public static Conductivity FromMicrosiemensPerCentimetre(double microsiemensPerCentimetre) => new(Within.Range(microsiemensPerCentimetre, 0, 1e7));

    /// <summary>A conductivity in siemens per metre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, above 1000, or not finite.</exception>
    public static Conductivity FromSiemensPerMetre(double siemensPerMetre) => FromMicrosiemensPerCentimetre(siemensPerMetre * 10_000);

    /// <summary>Less than.</summary>
    public static bool operator <(Conductivity left, Conductivity right) => left.MicrosiemensPerCentimetre < right.MicrosiemensPerCentimetre;

    /// <summary>More than.</summary>
    public static bool operator >(Conductivity left, Conductivity right) => left.MicrosiemensPerCentimetre > right.MicrosiemensPerCentimetre;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Conductivity left, Conductivity right) => left.MicrosiemensPerCentimetre <= right.MicrosiemensPerCentimetre;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Conductivity left, Conductivity right) => left.MicrosiemensPerCentimetre >= right.MicrosiemensPerCentimetre;

    /// <inheritdoc/>
    public int CompareTo(Conductivity other) => MicrosiemensPerCentimetre.CompareTo(other.MicrosiemensPerCentimetre);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{MicrosiemensPerCentimetre} µS/cm");
}
