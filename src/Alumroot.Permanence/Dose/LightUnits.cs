namespace Alumroot.Permanence.Dose;

/// <summary>Light by the meter of the eye and by its energy, for the light that the conversion was made for.</summary>
/// <remarks>Lux weighs light as eyes do. How much energy, and how much ultraviolet, comes with it depends on the lamp: these figures hold for D65 and for daylight only, within the spans that the table names.</remarks>
public static class LightUnits
{
    private static readonly Dictionary<string, double> Values = PermanenceTables.Read("light_units.csv").ToDictionary(r => r["key"], r => r.Number("value"));

    /// <summary>Energy of D65 from 300 to 800 nm for one megalux hour, MJ/m².</summary>
    public static double D65MegajoulesPerMegaluxHour => Values["d65-300-800"];

    /// <summary>Energy of D65 from 300 to 400 nm for one megalux hour, MJ/m².</summary>
    public static double D65UltravioletMegajoulesPerMegaluxHour => Values["d65-300-400"];

    /// <summary>Energy of the whole band of the sun for one megalux hour of daylight, MJ/m².</summary>
    public static double DaylightMegajoulesPerMegaluxHour => Values["daylight-total"];

    /// <summary>Energy of D65 at one wavelength for one megalux hour, kJ/(m² nm), for 340 or 420 nm: the two that radiometers of test cabinets read.</summary>
    /// <param name="nanometres">340 or 420.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another wavelength.</exception>
    public static double D65KilojoulesPerNanometre(int nanometres) =>
        nanometres is 340 or 420 ? Values[$"d65-at-{nanometres}"] : throw new ArgumentOutOfRangeException(nameof(nanometres));

    /// <summary>Ultraviolet that comes with light, MJ/m², from its content in microwatts per lumen: the unit of a conservator's meter.</summary>
    /// <param name="megaluxHours">The dose.</param>
    /// <param name="microwattsPerLumen">From 300 to 400 nm.</param>
    public static double UltravioletMegajoules(double megaluxHours, double microwattsPerLumen) => megaluxHours * 3600 * microwattsPerLumen * 1e-6;

    internal static double Value(string key) => Values[key];
}
