namespace Alumroot.Paint.Suiting;

/// <summary>A kind of natural colour, as far as it matters to a medium.</summary>
/// <param name="Key">Its key, such as <c>anthraquinone-insect</c>.</param>
/// <param name="Name">What belongs to it.</param>
/// <param name="PhLow">The lowest pH at which the colour keeps.</param>
/// <param name="PhHigh">The highest.</param>
/// <param name="Above">Key of what it does above.</param>
/// <param name="HeatCelsius">The heat it stands; null when wax is not too hot for it.</param>
/// <param name="Sources">Keys of the sources.</param>
/// <param name="Confidence">How sure it is: high, medium, low.</param>
public sealed record ColourantClass(string Key, string Name, double PhLow, double PhHigh, string Above, double? HeatCelsius, IReadOnlyList<string> Sources, string Confidence)
{
    private static readonly Lazy<IReadOnlyList<ColourantClass>> Table = new(() =>
        [.. PaintTables.Read("colourant_classes.csv").Select(r => new ColourantClass(r["key"], r["name"], r.Number("ph_low"), r.Number("ph_high"), r["above"], r.OptionalNumber("heat_c"), PaintTables.Parts(r["source"]), r["confidence"]))]);

    /// <summary>All kinds.</summary>
    public static IReadOnlyList<ColourantClass> All => Table.Value;

    /// <summary>A kind by its key, or null.</summary>
    public static ColourantClass? Find(string? key) => All.FirstOrDefault(c => string.Equals(c.Key, key, StringComparison.OrdinalIgnoreCase));
}
