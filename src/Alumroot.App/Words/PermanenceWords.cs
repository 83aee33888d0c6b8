using System.Globalization;
using Alumroot.App.Permanence;
using Alumroot.Colour.Colorimetry;
using Alumroot.Permanence.Dose;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>Exposures in words.</summary>
internal static class PermanenceWords
{
    /// <summary>The places that light tests stand for in a first sentence.</summary>
    internal const string BrightWall = "bright-wall";

    /// <summary>How the light of an exposure is known.</summary>
    internal static string Of(LightWay way) => way switch
    {
        LightWay.Readings => "a meter now and then, or a logger",
        LightWay.Lamp => "a lamp at a known level",
        LightWay.Window => "a window",
        LightWay.References => "only the blue wool references beside it",
        _ => throw new ArgumentException($"There are no words for {way}.", nameof(way)),
    };

    /// <summary>How a dose was found.</summary>
    internal static string Of(DoseWay way) => way switch
    {
        DoseWay.Readings => "by the meter or logger",
        DoseWay.Level => "by level and hours",
        DoseWay.Window => "by latitude and window",
        DoseWay.References => "by the blue wool references",
        _ => throw new ArgumentException($"There are no words for {way}.", nameof(way)),
    };

    /// <summary>Where a window looks.</summary>
    internal static string Facing(string word) => word switch { "equator" => "toward the equator (south in the north)", "pole" => "toward the pole (north in the north)", _ => "east or west" };

    /// <summary>The light in a few words: "window toward the equator at 52 degrees".</summary>
    internal static string Light(ExposureLight light) => light switch
    {
        { Way: LightWay.Window, LatitudeDegrees: { } latitude, Facing: { } facing } => string.Create(CultureInfo.InvariantCulture, $"window {Facing(facing)} at {latitude:0.#} degrees"),
        { Way: LightWay.Lamp, Lux: { } lux } => string.Create(CultureInfo.InvariantCulture, $"lamp of {lux:0} lx for {light.HoursADay ?? LightTold.UsualHoursADay:0.#} h a day"),
        { Way: LightWay.Readings } => string.Create(CultureInfo.InvariantCulture, $"by a meter, {light.HoursADay ?? LightTold.UsualHoursADay:0.#} h of light a day"),
        _ => Of(light.Way),
    } + (light.WithoutUltraviolet ? ", without ultraviolet" : "");

    /// <summary>How an exposure stands.</summary>
    internal static string Stage(ExposureState exposure) => exposure.Stage switch { ExposureState.InTheLight => "in the light", ExposureState.Over => "ended", _ => "taken back" };

    /// <summary>"3.1 Mlx h (2.2 to 4.4)".</summary>
    internal static string Dose(Estimate megaluxHours) => $"{Figure(megaluxHours.Value)} Mlx h ({Figure(megaluxHours.Low)} to {Figure(megaluxHours.High)})";

    /// <summary>A dose or difference with two or three figures.</summary>
    internal static string Figure(double x) => Math.Abs(x) switch
    {
        >= 100 => x.ToString("0", CultureInfo.InvariantCulture),
        >= 10 => x.ToString("0.0", CultureInfo.InvariantCulture),
        >= 0.1 or 0 => x.ToString("0.00", CultureInfo.InvariantCulture),
        _ => x.ToString("0.0000", CultureInfo.InvariantCulture),
    };

    /// <summary>The first sentence about a sample: when it changes, or that it is not known yet and what to do.</summary>
    internal static string Verdict(SampleVerdict sample, ExposureFound exposure)
    {
        SampleFound found = sample.Found;
        if (found.Model is null) return $"No answer yet: {(found.ReadingCount == 1 ? "one reading after light is" : $"{found.ReadingCount} readings after light are")} too few. Three doses at least are needed; read again when as much light has come again.";
        CriterionFound seen = found.Criteria[0];
        if (seen.DoseMegaluxHours is { } dose)
            return $"Changes visibly after about {FadingWords.Years(LightPlace.Find(BrightWall), dose)} on a bright wall; {FadingWords.Class(seen)}.";
        double until = 2 * found.MostDoseMegaluxHours;
        string when = exposure.WhenReached(until) is { } at ? $" (about {TimeWords.Day(at)})" : "";
        return $"No answer yet: the change is below what can be seen after {Figure(found.MostDoseMegaluxHours)} Mlx h. Expose to about {Figure(until)} Mlx h{when} and read again.";
    }

    /// <summary>How the exposed half differs, with the grade of the grey scale: "5.3, lighter, duller; grey scale 2-3".</summary>
    internal static string Change(StripChange change) =>
        string.Create(CultureInfo.InvariantCulture, $"{change.DeltaE:0.0}, {ColourWords.Of(change.Before, ColourDifference.Between(change.Before, change.After))}; grey scale {GreyScale.Reported(change.Before, change.After)}");

    /// <summary>A range of classes: "3 to 6", "below 5"; null when there is none.</summary>
    internal static string? Classes(double? low, double? high) => (low, high) switch
    {
        (null, null) => null,
        (null, { } h) => string.Create(CultureInfo.InvariantCulture, $"up to {h:0.#}"),
        ({ } l, null) => string.Create(CultureInfo.InvariantCulture, $"{l:0.#} and above"),
        ({ } l, { } h) => l == h ? string.Create(CultureInfo.InvariantCulture, $"{l:0.#}") : string.Create(CultureInfo.InvariantCulture, $"{l:0.#} to {h:0.#}"),
    };
}
