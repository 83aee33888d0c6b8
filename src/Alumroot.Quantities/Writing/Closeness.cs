namespace Alumroot.Quantities.Writing;

/// <summary>One word for the width of an interval, by its half width relative to the value.</summary>
public enum Closeness
{
    /// <summary>At most 5 % either way.</summary>
    Close,

    /// <summary>At most 20 % either way.</summary>
    Fair,

    /// <summary>More than 20 % either way, or not known.</summary>
    Rough,
}

/// <summary>Sorts estimates by their width.</summary>
public static class ClosenessOfEstimate
{
    // Interval ends are computed numbers: 5 % within a millionth part still reads as 5 %.
    private const double Slack = 1 + 1e-6;

    /// <summary>The word for this estimate.</summary>
    public static Closeness Closeness(this Estimate estimate) => estimate.RelativeHalfWidth switch
    {
        <= 0.05 * Slack => Writing.Closeness.Close,
        <= 0.20 * Slack => Writing.Closeness.Fair,
        _ => Writing.Closeness.Rough,
    };
}
