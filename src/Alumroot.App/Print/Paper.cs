namespace Alumroot.App.Print;

/// <summary>A sheet of paper.</summary>
/// <param name="Key">Its word in an address.</param>
/// <param name="WidthMillimetres">Its width.</param>
/// <param name="HeightMillimetres">Its height.</param>
public sealed record Paper(string Key, double WidthMillimetres, double HeightMillimetres)
{
    /// <summary>ISO 216 A4.</summary>
    public static Paper A4 { get; } = new("a4", 210, 297);

    /// <summary>The usual sheet of North America, 8.5 by 11 inches.</summary>
    public static Paper Letter { get; } = new("letter", 215.9, 279.4);

    /// <summary>ISO 216 A6, a card.</summary>
    public static Paper A6 { get; } = new("a6", 105, 148);

    /// <summary>All that are offered.</summary>
    public static IReadOnlyList<Paper> All { get; } = [A4, Letter, A6];

    /// <summary>A paper by its word; A4 when it is none.</summary>
    public static Paper Of(string? key) => All.FirstOrDefault(p => p.Key == key) ?? A4;
}
