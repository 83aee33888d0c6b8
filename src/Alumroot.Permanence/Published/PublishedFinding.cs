using Alumroot.Quantities.Tables;

namespace Alumroot.Permanence.Published;

/// <summary>What others found about how a colour lasts in light.</summary>
/// <param name="Dyestuffs">Keys of the dyestuffs it tells of; empty when it tells of all.</param>
/// <param name="What">What was exposed.</param>
/// <param name="Metal">On which metal, in words.</param>
/// <param name="Medium">In which medium or on which cloth.</param>
/// <param name="ClassLow">The lower end of the blue wool class; null when none was given.</param>
/// <param name="ClassHigh">The upper end; null when none was given.</param>
/// <param name="Finding">The finding in our words.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Seen">What of the source was seen: an abstract, a table; <c>memory</c> when nothing was.</param>
public sealed record PublishedFinding(IReadOnlyList<string> Dyestuffs, string What, string Metal, string Medium, double? ClassLow, double? ClassHigh, string Finding, string Source, string Seen)
{
    private const string Any = "*";

    /// <summary>All findings.</summary>
    public static IReadOnlyList<PublishedFinding> All { get; } = [.. PermanenceTables.Read("published_fading.csv").Select(Of)];

    /// <summary>Whether it tells of most dyestuffs at once.</summary>
    public bool IsGeneral => Dyestuffs.Count == 0;

    /// <summary>The findings about a dyestuff, its own before the general ones.</summary>
    /// <param name="dyestuff">Key of the dyestuff; null for the general ones only.</param>
    public static IReadOnlyList<PublishedFinding> About(string? dyestuff) => [.. All.Where(f => dyestuff is not null && f.Dyestuffs.Contains(dyestuff)), .. All.Where(f => f.IsGeneral)];

    private static PublishedFinding Of(TableRow row) => new(
        row["dyestuffs"] == Any ? [] : PermanenceTables.Parts(row["dyestuffs"]), row["what"], row["metal"], row["medium"],
        row["class_low"].Length == 0 ? null : row.Number("class_low"), row["class_high"].Length == 0 ? null : row.Number("class_high"), row["finding"], row["source"], row["where"]);
}
