namespace Alumroot.Permanence.Dose;

/// <summary>What a meter showed at a time.</summary>
/// <param name="Hours">Time in hours from any fixed moment.</param>
/// <param name="Lux">Illuminance at the strip.</param>
public readonly record struct LuxReading(double Hours, double Lux);

/// <summary>A stretch without readings that is too long to draw a line across.</summary>
/// <param name="FromHours">The last reading before it.</param>
/// <param name="ToHours">The first reading after it.</param>
public readonly record struct LightGap(double FromHours, double ToHours)
{
    /// <summary>How long it is.</summary>
    public double LengthHours => ToHours - FromHours;
}

/// <summary>How the light of a time was found.</summary>
public enum DoseWay
{
    /// <summary>Readings of a meter or a logger, summed over time.</summary>
    Readings,

    /// <summary>One reading, or a lamp's level, times hours.</summary>
    Level,

    /// <summary>A window by its orientation and latitude.</summary>
    Window,

    /// <summary>The blue wool references that were exposed beside the samples.</summary>
    References,
}

/// <summary>Light that fell on a strip.</summary>
/// <param name="MegaluxHours">The dose, with its span.</param>
/// <param name="Way">How it was found.</param>
public sealed record LightDose(Quantities.Estimate MegaluxHours, DoseWay Way)
{
    /// <summary>Stretches that were filled in.</summary>
    public IReadOnlyList<LightGap> Gaps { get; init; } = [];

    /// <summary>Share of the dose that stems from filled-in stretches, 0 to 1.</summary>
    public double FilledShare { get; init; }
}
