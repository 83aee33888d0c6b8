namespace Alumroot.Quantities;

/// <summary>A rise (positive) or fall (negative) of temperature, in kelvin. For a thermometer reading use <see cref="Temperature"/>.</summary>
/// <remarks>default is no change. From -2500 K to 2500 K. One kelvin is one degree Celsius of difference.</remarks>
public readonly record struct TemperatureChange : IComparable<TemperatureChange>
{
    private TemperatureChange(double kelvin) => Kelvin = kelvin;

    /// <summary>In kelvin.</summary>
    public double Kelvin { get; }

    /// <summary>A change in kelvin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Beyond 2500 K either way, or not finite.</exception>
    public static TemperatureChange FromKelvin(double kelvin) => new(Within.Range(kelvin, -2500, 2500));

    /// <summary>One change after another.</summary>
    public static TemperatureChange operator +(TemperatureChange left, TemperatureChange right) => FromKelvin(left.Kelvin + right.Kelvin);

    /// <summary>The first change without the second.</summary>
    public static TemperatureChange operator -(TemperatureChange left, TemperatureChange right) => FromKelvin(left.Kelvin - right.Kelvin);

    /// <summary>The change the other way.</summary>
    public static TemperatureChange operator -(TemperatureChange change) => FromKelvin(-change.Kelvin);

    /// <summary>Less than.</summary>
    public static bool operator <(TemperatureChange left, TemperatureChange right) => left.Kelvin < right.Kelvin;

    /// <summary>More than.</summary>
    public static bool operator >(TemperatureChange left, TemperatureChange right) => left.Kelvin > right.Kelvin;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(TemperatureChange left, TemperatureChange right) => left.Kelvin <= right.Kelvin;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(TemperatureChange left, TemperatureChange right) => left.Kelvin >= right.Kelvin;

    /// <inheritdoc/>
    public int CompareTo(TemperatureChange other) => Kelvin.CompareTo(other.Kelvin);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Kelvin} K");
}
