using Alumroot.Quantities;

namespace Alumroot.Permanence.Dose;

/// <summary>A place where pictures hang or lie.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">In plain words, beginning with "in" or "on".</param>
/// <param name="Lux">Level while it is light; nine places in ten of this kind.</param>
/// <param name="HoursAYear">Hours of it in a year.</param>
/// <param name="Source">Key of the source.</param>
public sealed record LightPlace(string Key, string Name, Estimate Lux, double HoursAYear, string Source)
{
    private const double Million = 1e6;

    /// <summary>The places, from dark to bright.</summary>
    public static IReadOnlyList<LightPlace> All { get; } =
        [.. PermanenceTables.Read("light_places.csv").Select(r => new LightPlace(r["key"], r["name"], new Estimate(r.Number("lux_typical"), r.Number("lux_low"), r.Number("lux_high")), r.Number("hours_per_year"), r["source"]))];

    /// <summary>The place of a key.</summary>
    /// <param name="key">One of the keys of <see cref="All"/>.</param>
    public static LightPlace Find(string key) => All.Single(p => p.Key == key);

    /// <summary>Dose of a year.</summary>
    public Estimate YearMegaluxHours => Lux.Times(HoursAYear / Million);

    /// <summary>Ultraviolet in its light, microwatts per lumen.</summary>
    public (double LeastMicrowatts, double MostMicrowatts) PerLumen => Uv[Key];

    private static readonly Dictionary<string, (double, double)> Uv = PermanenceTables.Read("light_places.csv").ToDictionary(r => r["key"], r => (r.Number("uv_low_uw_per_lm"), r.Number("uv_high_uw_per_lm")));

    // A test in a window or under a lamp is no room: dose for dose its light may do so much more or less. Judgement.
    private const double LightFactor = 1.5;

    /// <summary>Years there until a dose is reached. The factors of the dose, of the place and of the kind of light are laid together as independent.</summary>
    /// <param name="megaluxHours">The dose that makes the change.</param>
    public Estimate YearsTo(Estimate megaluxHours)
    {
        Estimate year = YearMegaluxHours;
        double below = Root(Math.Log(megaluxHours.Value / megaluxHours.Low), Math.Log(year.High / year.Value), Math.Log(LightFactor));
        double above = Root(Math.Log(megaluxHours.High / megaluxHours.Value), Math.Log(year.Value / year.Low), Math.Log(LightFactor));
        double years = megaluxHours.Value / year.Value;
        return new Estimate(years, years / Math.Exp(below), years * Math.Exp(above));
    }

    private static double Root(double a, double b, double c) => Math.Sqrt(a * a + b * b + c * c);
}
