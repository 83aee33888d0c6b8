namespace Alumroot.Permanence.Dose;

/// <summary>Whether light has its ultraviolet.</summary>
public enum LightKind
{
    /// <summary>Daylight behind plain glass, or a lamp like it.</summary>
    WithUltraviolet,

    /// <summary>Behind a filter that holds back all below about 400 nm, or a lamp that gives none.</summary>
    WithoutUltraviolet,
}

/// <summary>The two series of references; their numbers do not mean the same.</summary>
public enum WoolSeries
{
    /// <summary>References 1 to 8, eight dyes.</summary>
    Iso,

    /// <summary>References L2 to L9, blends of two dyes.</summary>
    American,
}

/// <summary>Published doses to a just noticeable change of the blue wool references.</summary>
internal static class WoolDoses
{
    private static readonly Dictionary<(string, int, LightKind), (double Megalux, double Factor)> Rows = PermanenceTables.Read("wool_doses.csv").ToDictionary(
        r => (r["series"], (int)r.Number("reference"), r["light"] == "with-uv" ? LightKind.WithUltraviolet : LightKind.WithoutUltraviolet),
        r => (r.Number("dose_megalux_hours"), r.Number("factor")));

    internal static double Megalux(string series, int reference, LightKind light) => Rows[(series, reference, light)].Megalux;

    internal static (double Megalux, double Factor)? Find(WoolSeries series, int reference, LightKind light) =>
        Rows.TryGetValue((series == WoolSeries.Iso ? "iso" : "american", reference, light), out var row) ? row : null;
}
