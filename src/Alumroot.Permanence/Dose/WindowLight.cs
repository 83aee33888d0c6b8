using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.Permanence.Dose;

/// <summary>Where a window looks.</summary>
public enum WindowFacing
{
    /// <summary>Toward the equator: south in the north.</summary>
    Equator,

    /// <summary>East or west.</summary>
    EastOrWest,

    /// <summary>Toward the pole: north in the north.</summary>
    Pole,
}

/// <summary>Light on a strip that stands upright in an unshaded window behind glass.</summary>
/// <remarks>
/// Yearly sums on the level by latitude, upright over level, and what a pane lets through stand in <c>window_light.csv</c> and <c>light_units.csv</c>; the days of the year share it by the path of the sun, half of it straight
/// and half from the sky. East and west are taken midway. Weather, houses and trees opposite, curtains and deep sills change it: the span has a factor of 1.5, of 1.8 for less than half a year.
/// </remarks>
public static class WindowLight
{
    private const double YearFactor = 1.5, SeasonFactor = 1.8, KilowattsToLumens = 1000, Million = 1e6;
    private const int DaysAYear = 365;

    private static readonly TableRow[] Rows = [.. PermanenceTables.Read("window_light.csv")];

    /// <summary>The latitudes that the table holds.</summary>
    public static (double LeastDegrees, double MostDegrees) Latitudes { get; } = (Rows[0].Number("latitude_degrees"), Rows[^1].Number("latitude_degrees"));

    /// <summary>The dose of some days; null when the table does not hold the latitude.</summary>
    /// <param name="latitudeDegrees">South is negative.</param>
    /// <param name="facing">Where the window looks.</param>
    /// <param name="fromDayOfYear">1 to 366.</param>
    /// <param name="days">How many.</param>
    /// <param name="panes">Panes of glass between; 0 for out of doors.</param>
    public static LightDose? Of(double latitudeDegrees, WindowFacing facing, int fromDayOfYear, int days, int panes = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(days);
        ArgumentOutOfRangeException.ThrowIfNegative(panes);
        if (YearMegaluxHours(latitudeDegrees, facing, panes) is not { } year) return null;
        double dose = facing == WindowFacing.EastOrWest
            ? 0.5 * (SunPath.Share(latitudeDegrees, true, fromDayOfYear, days) + SunPath.Share(latitudeDegrees, false, fromDayOfYear, days)) * year
            : SunPath.Share(latitudeDegrees, facing == WindowFacing.Equator, fromDayOfYear, days) * year;
        double factor = days < DaysAYear / 2 ? SeasonFactor : YearFactor;
        return new LightDose(new Estimate(dose, dose / factor, dose * factor), DoseWay.Window);
    }

    /// <summary>The dose of a whole year, megalux hours; null when the table does not hold the latitude.</summary>
    /// <param name="latitudeDegrees">South is negative.</param>
    /// <param name="facing">Where the window looks.</param>
    /// <param name="panes">Panes of glass between.</param>
    public static double? YearMegaluxHours(double latitudeDegrees, WindowFacing facing, int panes = 1)
    {
        double latitude = Math.Abs(latitudeDegrees);
        if (!(latitude >= Latitudes.LeastDegrees && latitude <= Latitudes.MostDegrees)) return null;
        double glass = Math.Pow(LightUnits.Value("glass-mean"), panes), level = At(latitude, "horizontal_kwh_per_m2_year") * KilowattsToLumens / Million * glass;
        double equator = level * LightUnits.Value("efficacy-global") * At(latitude, "equator_ratio"), pole = level * LightUnits.Value("efficacy-diffuse") * At(latitude, "pole_ratio");
        return facing switch { WindowFacing.Equator => equator, WindowFacing.Pole => pole, _ => 0.5 * (equator + pole) };
    }

    private static double At(double latitude, string column)
    {
        int i = 0;
        while (i < Rows.Length - 2 && latitude > Rows[i + 1].Number("latitude_degrees")) i++;
        double low = Rows[i].Number("latitude_degrees"), share = (latitude - low) / (Rows[i + 1].Number("latitude_degrees") - low);
        return Rows[i].Number(column) * (1 - share) + Rows[i + 1].Number(column) * share;
    }
}
