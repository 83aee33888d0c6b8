using Alumroot.Permanence.Dose;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Permanence;

/// <summary>The dose of an exposure up to a time, by every way that its entries allow.</summary>
internal sealed class LightTold
{
    /// <summary>Hours of light in a day where the maker does not say: as many as days have in the mean.</summary>
    internal const double UsualHoursADay = 12;

    private const double HoursADay = 24, LoggerUnseen = LuxIntegral.SingleFactor;

    private readonly ExposureState _exposure;
    private readonly (double Hours, LightDose Dose)? _byReferences;

    internal LightTold(ExposureState exposure)
    {
        _exposure = exposure;
        _byReferences = ByReferences(exposure);
    }

    /// <summary>The doses by the ways there are, the surest first; empty when there is none.</summary>
    /// <param name="until">Up to when; not before the exposure began.</param>
    internal IReadOnlyList<LightDose> Until(DateTimeOffset until)
    {
        double hours = Hours(until);
        return [.. new[] { Logged(until), ByMeter(hours), ByLamp(hours), ByWindow(hours), References(hours) }.OfType<LightDose>()];
    }

    /// <summary>The dose by the way that is used throughout; null when there is none.</summary>
    internal LightDose? At(DateTimeOffset until) => Until(until) is [var first, ..] ? first : null;

    private double Hours(DateTimeOffset at) => Math.Max(0, (at - _exposure.At).TotalHours);

    /// <summary>What the loggers saw; the time they did not see counts at the mean of the rest, within a factor of two.</summary>
    private LightDose? Logged(DateTimeOffset until)
    {
        double sum = 0, low = 0, high = 0, seen = 0, whole = 0, length = 0;
        foreach (ExposureEntry<LightLogged> log in _exposure.Logs)
        {
            LightLogged file = log.Said;
            if (file.Steps.Count == 0 || file.Dose.MegaluxHours <= 0) continue;
            double until1 = Math.Min((until - file.From).TotalHours, file.Steps[^1].Hours);
            whole += file.Dose.MegaluxHours;
            length += file.Steps[^1].Hours;
            if (until1 <= 0) continue;
            double part = Upto(file.Steps, until1);
            sum += part;
            low += part * file.Dose.Low / file.Dose.MegaluxHours;
            high += part * file.Dose.High / file.Dose.MegaluxHours;
            seen += until1;
        }
        if (length <= 0) return null;
        double unseen = Math.Max(0, Hours(until) - seen) * whole / length;
        return new LightDose(new Estimate(sum + unseen, low + unseen / LoggerUnseen, high + unseen * LoggerUnseen), DoseWay.Readings) { FilledShare = sum + unseen > 0 ? unseen / (sum + unseen) : 0 };
    }

    private LightDose? ByMeter(double hours)
    {
        LuxReading[] levels =
        [
            .. _exposure.Levels.Select(l => new LuxReading(Hours(l.At), l.Said.Level.SiValue)).OrderBy(l => l.Hours).DistinctBy(l => l.Hours),
        ];
        return levels.Length == 0 ? null : LuxIntegral.ByHand(levels, 0, hours, _exposure.Begun?.Light.HoursADay ?? UsualHoursADay);
    }

    private LightDose? ByLamp(double hours) => _exposure.Begun?.Light is { Way: LightWay.Lamp, Lux: { } lux } light
        ? LampLight.Of(hours * (light.HoursADay ?? UsualHoursADay) / HoursADay, new Estimate(lux, lux * (1 - LuxIntegral.MeterShare), lux * (1 + LuxIntegral.MeterShare))) : null;

    private LightDose? ByWindow(double hours)
    {
        if (_exposure.Begun?.Light is not { Way: LightWay.Window, LatitudeDegrees: { } latitude } light || Facing(light.Facing) is not { } facing) return null;
        double days = hours / HoursADay;
        int whole = (int)days, from = _exposure.At.DayOfYear;
        if (WindowLight.Of(latitude, facing, from, whole) is not { } below || WindowLight.Of(latitude, facing, from, whole + 1) is not { } above) return null;
        double share = days - whole;
        Estimate b = below.MegaluxHours, a = above.MegaluxHours;
        return new LightDose(new Estimate(b.Value + share * (a.Value - b.Value), b.Low + share * (a.Low - b.Low), b.High + share * (a.High - b.High)), DoseWay.Window);
    }

    // The references tell the whole; between, the light is taken to have been even.
    private LightDose? References(double hours) => _byReferences is { } told ? told.Dose with { MegaluxHours = told.Dose.MegaluxHours.Times(hours / told.Hours) } : null;

    private static (double, LightDose)? ByReferences(ExposureState exposure)
    {
        if (exposure.Begun is null) return null;
        LightKind kind = exposure.Begun.Light.WithoutUltraviolet ? LightKind.WithoutUltraviolet : LightKind.WithUltraviolet;
        for (int i = exposure.Readings.Count - 1; i >= 0; i--)
        {
            ExposureEntry<ExposureRead> reading = exposure.Readings[i];
            double hours = (reading.At - exposure.At).TotalHours;
            WoolReading[] wools =
            [
                .. StripChange.Of(exposure).Where(c => c.Reading == i && Reference(c.Sample) is not null).Select(c => new WoolReading(WoolSeries.Iso, Reference(c.Sample)!.Value, c.DeltaE)),
            ];
            if (hours > 0 && wools.Length > 0 && WoolDose.Of(wools, kind) is { } dose) return (hours, dose);
        }
        return null;
    }

    /// <summary>The number of a blue wool reference by its name; null for a sample.</summary>
    internal static int? Reference(string name) => new FadingSeries(name, []).Reference;

    /// <summary>Where a window looks, from its word.</summary>
    internal static WindowFacing? Facing(string? word) => word switch
    {
        "equator" => WindowFacing.Equator,
        "east-or-west" => WindowFacing.EastOrWest,
        "pole" => WindowFacing.Pole,
        _ => null,
    };

    private static double Upto(IReadOnlyList<DoseStep> steps, double hours)
    {
        (double h, double d) = (0, 0);
        foreach (DoseStep step in steps)
        {
            if (hours <= step.Hours) return step.Hours > h ? d + (step.MegaluxHours - d) * (hours - h) / (step.Hours - h) : step.MegaluxHours;
            (h, d) = (step.Hours, step.MegaluxHours);
        }
        return d;
    }
}
