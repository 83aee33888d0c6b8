namespace Alumroot.Permanence.Dose;

/// <summary>What makes a colour last longer where it hangs.</summary>
public enum ExtendingWay
{
    /// <summary>Half the light, or half the hours.</summary>
    HalfTheLight,

    /// <summary>The next kind of place with at most half the light.</summary>
    DarkerPlace,

    /// <summary>A filter against ultraviolet before it.</summary>
    UvFilter,
}

/// <summary>A way and how many times longer the colour lasts by it.</summary>
/// <param name="Way">The way.</param>
/// <param name="Times">How many times longer.</param>
/// <param name="Place">The darker place, where that is the way.</param>
public sealed record Extending(ExtendingWay Way, double Times, LightPlace? Place = null)
{
    // Below this a lamp gives hardly any that a filter could hold back.
    private const double LittleMicrowatts = 75;

    // A darker place is worth naming when it has at most half the light.
    private const double DarkerShare = 0.5;

    /// <summary>The ways for a place. A filter's worth is told only when the class is known and the place has ultraviolet.</summary>
    /// <param name="place">Where it hangs.</param>
    /// <param name="blueWool">The colour's class; null when not known.</param>
    public static IReadOnlyList<Extending> Of(LightPlace place, double? blueWool)
    {
        ArgumentNullException.ThrowIfNull(place);
        var ways = new List<Extending> { new(ExtendingWay.HalfTheLight, 2) };
        LightPlace? darker = LightPlace.All.LastOrDefault(p => p.YearMegaluxHours.Value <= DarkerShare * place.YearMegaluxHours.Value);
        if (darker is not null) ways.Add(new Extending(ExtendingWay.DarkerPlace, place.YearMegaluxHours.Value / darker.YearMegaluxHours.Value, darker));
        if (blueWool is { } c && place.PerLumen.MostMicrowatts > LittleMicrowatts) ways.Add(new Extending(ExtendingWay.UvFilter, UvFilter.FactorAt(c)));
        return ways;
    }
}
