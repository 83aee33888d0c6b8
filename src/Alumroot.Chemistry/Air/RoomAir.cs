using Alumroot.Quantities;

namespace Alumroot.Chemistry.Air;

/// <summary>A vapour or gas spread evenly through the air of a room.</summary>
/// <param name="VapourLitres">Volume of the vapour alone, at the temperature of the room and one atmosphere.</param>
/// <param name="Ppm">Parts per million by volume.</param>
/// <param name="MilligramsPerCubicMetre">The same as a mass.</param>
public readonly record struct RoomShare(double VapourLitres, double Ppm, double MilligramsPerCubicMetre)
{
    /// <summary>How much of the lower explosive limit that is, in percent of it.</summary>
    /// <param name="lowerExplosivePercent">The limit in percent of the air's volume.</param>
    public double PercentOfExplosive(double lowerExplosivePercent) => Ppm / (10_000 * lowerExplosivePercent) * 100;
}

/// <summary>The arithmetic of vapours in a room: ideal gas at one atmosphere, evenly mixed.</summary>
/// <remarks>Formulas, limits and tests: docs/models/vapour.md. Near the vessel the air holds more than the mean.</remarks>
public static class RoomAir
{
    /// <summary>How many times the mean of the room the air near an open vessel may hold; from memory.</summary>
    public static Estimate NearTheVessel { get; } = new(5.5, 3, 10);

    // The gas constant of the SI, in L kPa/(mol K), and the standard atmosphere.
    private const double GasConstant = 8.31446261815324;
    private const double AtmosphereKilopascals = 101.325;

    /// <summary>Litres of a mole of gas at one atmosphere: 24.055 at 20 °C.</summary>
    public static double MolarVolumeLitres(Temperature air) => GasConstant * air.Kelvin / AtmosphereKilopascals;

    /// <summary>Everything has evaporated in a shut room.</summary>
    /// <param name="moles">Moles of the vapour.</param>
    /// <param name="molarMassGramsPerMole">Its molar mass.</param>
    /// <param name="room">The room.</param>
    /// <param name="air">Temperature of the air.</param>
    /// <exception cref="ArgumentOutOfRangeException">The room has no volume.</exception>
    public static RoomShare AllEvaporated(double moles, double molarMassGramsPerMole, Volume room, Temperature air)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(room.Litres, nameof(room));
        double litres = moles * MolarVolumeLitres(air);
        return new RoomShare(litres, 1e6 * litres / room.Litres, 1e6 * moles * molarMassGramsPerMole / room.Litres);
    }

    /// <summary>The concentration in an aired room after a steady source has stood for a time, in parts per million: C(t) = G V / (M n R) (1 − exp(−n t)).</summary>
    /// <param name="gramsPerHour">What evaporates in an hour.</param>
    /// <param name="molarMassGramsPerMole">Its molar mass.</param>
    /// <param name="room">The room.</param>
    /// <param name="air">Temperature of the air.</param>
    /// <param name="airChangesPerHour">How often the air of the room is replaced in an hour; with none the gas only gathers.</param>
    /// <param name="hours">How long it has stood; infinite for the steady state.</param>
    /// <exception cref="ArgumentOutOfRangeException">The room has no volume, or an amount is negative.</exception>
    public static double VentilatedPpm(double gramsPerHour, double molarMassGramsPerMole, Volume room, Temperature air, double airChangesPerHour, double hours)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(room.Litres, nameof(room));
        ArgumentOutOfRangeException.ThrowIfNegative(gramsPerHour);
        ArgumentOutOfRangeException.ThrowIfNegative(airChangesPerHour);
        ArgumentOutOfRangeException.ThrowIfNegative(hours);
        double inAnHour = 1e6 * gramsPerHour / molarMassGramsPerMole * MolarVolumeLitres(air) / room.Litres;
        double hoursGathered = airChangesPerHour == 0 ? hours : -Math.Exp(-airChangesPerHour * hours) / airChangesPerHour + 1 / airChangesPerHour;
        return inAnHour * hoursGathered;
    }

    /// <summary>The most vapour that air can hold over the liquid, in parts per million; more would stay liquid.</summary>
    /// <param name="vapourPressureKilopascals">Vapour pressure of the liquid at the temperature of the room.</param>
    public static double SaturatedPpm(double vapourPressureKilopascals) => 1e6 * vapourPressureKilopascals / AtmosphereKilopascals;
}
