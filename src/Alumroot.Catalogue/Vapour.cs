using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>What is known of a vapour or gas in the air of a room. Exposure limits are for workplaces, mostly of the USA.</summary>
/// <param name="Key">Its short name.</param>
/// <param name="Name">Its name.</param>
/// <param name="MolarMassGramsPerMole">Molar mass.</param>
/// <param name="DensityGramsPerMillilitre">Density of the liquid at 20 °C; null for a gas.</param>
/// <param name="FlashPointCelsius">The least temperature at which the liquid can be lit; null for a gas.</param>
/// <param name="LowerExplosivePercent">Lower explosive limit in percent of the air's volume; null when it does not burn.</param>
/// <param name="UpperExplosivePercent">Upper explosive limit in percent of the air's volume; null when it does not burn.</param>
/// <param name="VapourPressureKilopascals">Vapour pressure at 20 °C; null for a gas.</param>
/// <param name="EightHourPpm">Workplace limit as a mean of eight hours, in parts per million by volume; null when none is set.</param>
/// <param name="QuarterHourPpm">Workplace limit as a mean of fifteen minutes; null when none is set.</param>
/// <param name="ImmediateDangerPpm">Concentration immediately dangerous to life; null when none is set.</param>
/// <param name="DishLowKilogramsPerSquareMetreHour">The low end of what an open dish loses in still air at 20 °C; null when not known.</param>
/// <param name="DishHighKilogramsPerSquareMetreHour">The high end of it; null when not known.</param>
/// <param name="Stance">Whether the tool takes part in its use.</param>
/// <param name="Note">A remark, or nothing.</param>
/// <param name="Citation">Where the figures come from.</param>
public sealed record Vapour(
    string Key,
    string Name,
    double MolarMassGramsPerMole,
    double? DensityGramsPerMillilitre,
    double? FlashPointCelsius,
    double? LowerExplosivePercent,
    double? UpperExplosivePercent,
    double? VapourPressureKilopascals,
    double? EightHourPpm,
    double? QuarterHourPpm,
    double? ImmediateDangerPpm,
    double? DishLowKilogramsPerSquareMetreHour,
    double? DishHighKilogramsPerSquareMetreHour,
    Stance Stance,
    string Note,
    Citation Citation)
{
    internal static Vapour Read(Fields row) => new(
        row.Key(), row.Required("name"), row.Number("molar_mass_g_per_mol"), row.OptionalNumber("density_20c_g_per_ml"),
        row.OptionalNumber("flash_point_c"), row.OptionalNumber("lower_explosive_vol_pct"), row.OptionalNumber("upper_explosive_vol_pct"),
        row.OptionalNumber("vapour_pressure_20c_kpa"), row.OptionalNumber("limit_8h_ppm"), row.OptionalNumber("limit_15min_ppm"),
        row.OptionalNumber("immediate_danger_ppm"), row.OptionalNumber("dish_low_kg_per_m2_h"), row.OptionalNumber("dish_high_kg_per_m2_h"),
        row.Enum<Stance>("stance"), row.Text("note"), row.Citation());
}
