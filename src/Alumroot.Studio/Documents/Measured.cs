using Alumroot.Quantities;

namespace Alumroot.Studio.Documents;

/// <summary>A value as it was typed and as it was understood.</summary>
/// <param name="Name">What was measured: <c>amount</c>, <c>ph</c>, <c>conductivity</c>, <c>temperature</c>.</param>
/// <param name="Typed">The text as typed, with its unit.</param>
/// <param name="SiValue">The value in the unit beside it.</param>
/// <param name="SiUnit">The SI unit: <c>kg</c>, <c>m3</c>, <c>K</c>, <c>S/m</c>, or <c>1</c> for a pure number such as pH.</param>
/// <param name="Instrument">What it was read from, such as <c>scale</c>, <c>strip</c>, <c>meter</c>; null when not told.</param>
/// <param name="ResolutionSi">The smallest step the instrument shows, in the same unit; null when not told.</param>
public sealed record Measured(string Name, string Typed, double SiValue, string SiUnit, string? Instrument = null, double? ResolutionSi = null)
{
    /// <summary>The unit of a mass.</summary>
    public const string Kilogram = "kg";

    /// <summary>The unit of a volume.</summary>
    public const string CubicMetre = "m3";

    /// <summary>A mass.</summary>
    public static Measured Of(string name, string typed, Mass mass, string? instrument = null) => new(name, typed, Tidy(mass.Grams / 1000), Kilogram, instrument);

    /// <summary>A volume.</summary>
    public static Measured Of(string name, string typed, Volume volume, string? instrument = null) => new(name, typed, Tidy(volume.Millilitres / 1e6), CubicMetre, instrument);

    /// <summary>A temperature.</summary>
    public static Measured Of(string name, string typed, Temperature temperature, string? instrument = null) => new(name, typed, Tidy(temperature.Celsius + 273.15), "K", instrument);

    /// <summary>A pH.</summary>
    public static Measured Of(string name, string typed, Ph ph, string? instrument = null) => new(name, typed, ph.Value, "1", instrument);

    /// <summary>A conductivity.</summary>
    public static Measured Of(string name, string typed, Conductivity conductivity, string? instrument = null) => new(name, typed, Tidy(conductivity.MicrosiemensPerCentimetre * 1e-4), "S/m", instrument);

    // A factor of ten must not turn 3 into 2.9999999999999996 in a file that people read.
    private static double Tidy(double value) => value == 0 ? 0 : Math.Round(value, Math.Clamp(12 - (int)Math.Ceiling(Math.Log10(Math.Abs(value))), 0, 15));
}
