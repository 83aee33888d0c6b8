namespace Alumroot.Quantities;

/// <summary>A temperature on a thermometer, in degrees Celsius. For a rise or a fall use <see cref="TemperatureChange"/>.</summary>
/// <remarks>default is 0 °C, a real temperature: an unread thermometer is <c>Temperature?</c>. From absolute zero to 2000 °C. Two temperatures cannot be added.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double celsius) => Celsius = celsius;

    /// <summary>In degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>In kelvin.</summary>
    public double Kelvin => Celsius - UnitFactors.AbsoluteZeroCelsius;

    /// <summary>In degrees Fahrenheit.</summary>
    public double Fahrenheit => Celsius * 9 / 5 + 32;

    /// <summary>A temperature in degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below -273.15, above 2000, or not finite.</exception>
    public static Temperature FromCelsius(double celsius) => new(Within.Range(celsius, UnitFactors.AbsoluteZeroCelsius, 2000));

    /// <summary>A temperature in kelvin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 2273.15, or not finite.</exception>
    public static Temperature FromKelvin(double kelvin) => FromCelsius(kelvin + UnitFactors.AbsoluteZeroCelsius);

    /// <summary>A temperature in degrees Fahrenheit (5/9 of the reading less 32; NIST SP 811, B.8).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero, above 2000 °C, or not finite.</exception>
    public static Temperature FromFahrenheit(double fahrenheit) => FromCelsius((fahrenheit - 32) * 5 / 9);

    /// <summary>How much warmer the first is than the second.</summary>
    public static TemperatureChange operator -(Temperature left, Temperature right) => TemperatureChange.FromKelvin(left.Celsius - right.Celsius);

    /// <summary>The temperature after a rise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The result is below absolute zero or above 2000 °C.</exception>
    public static Temperature operator +(Temperature from, TemperatureChange rise) => FromCelsius(from.Celsius + rise.Kelvin);

    /// <summary>The temperature before a rise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The result is below absolute zero or above 2000 °C.</exception>
    public static Temperature operator -(Temperature from, TemperatureChange rise) => FromCelsius(from.Celsius - rise.Kelvin);

    /// <summary>Less than.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    /// <summary>More than.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    /// <summary>More than or equal.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    /// <summary>For logs and tests, with all digits; what people read is made in Writing.</summary>
    public override string ToString() => FormattableString.Invariant($"{Celsius} °C");
}
