namespace Alumroot.App.Layout;

/// <summary>A place that can be gone to from every page.</summary>
/// <param name="Name">Its name, one trade word.</param>
/// <param name="Address">Its path, without the leading slash.</param>
/// <param name="Question">What it answers.</param>
public sealed record Place(string Name, string Address, string Question)
{
    /// <summary>The places, in the order shown everywhere. Only what exists is listed.</summary>
    public static IReadOnlyList<Place> All { get; } =
    [
        new("Waiting", "", "what is due now and next"),
        new("Lakes", "lakes", "plan a lake, make one, find it again"),
        new("Shelf", "shelf", "what is there, what it cost"),
        new("Colours", "colours", "measure a colour, compare, find one like it"),
        new("Paints", "paints", "make paint of a lake, label it, print"),
        new("Permanence", "permanence", "will it last: strips in the light, other tests"),
        new("Trials", "trials", "which jars to make, what they tell, what comes next"),
        new("Handbook", "handbook", "dyestuffs, salts, alkalis, troubles"),
        new("Find", "find", "search everything here"),
        new("Studio", "studio", "bowls, copies, sharing, how you like to work"),
    ];

    /// <summary>Whether a path lies in this place.</summary>
    /// <param name="path">A path relative to the base, without query.</param>
    public bool Holds(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Address.Length == 0 ? path.Length == 0 : path == Address || path.StartsWith(Address + "/", StringComparison.Ordinal);
    }
}
