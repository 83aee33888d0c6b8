namespace Alumroot.Paint.Recipes;

/// <summary>What carries the pigment.</summary>
/// <param name="Key">Its key, such as <c>egg-tempera</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Vehicle">What it is made of.</param>
/// <param name="DryBinderGramsPerMillilitre">Density of what stays of the binder.</param>
/// <param name="RatioLow">The least usual pigment volume concentration over the critical one.</param>
/// <param name="RatioTypical">The usual one.</param>
/// <param name="RatioHigh">The highest usual one.</param>
/// <param name="FilmPhLow">The lowest pH of the wet film; null where there is no water.</param>
/// <param name="FilmPhHigh">The highest.</param>
/// <param name="TouchDry">When it can be touched.</param>
/// <param name="ThroughDry">When it is dry all through.</param>
/// <param name="Preservative">Whether one is needed.</param>
/// <param name="KeepsWithout">How long it keeps without one.</param>
/// <param name="KeepsWith">How long it keeps with one that works; empty where none is in use.</param>
public sealed record Medium(string Key, string Name, string Vehicle, double DryBinderGramsPerMillilitre, double RatioLow, double RatioTypical, double RatioHigh, double? FilmPhLow, double? FilmPhHigh, string TouchDry, string ThroughDry, string Preservative, string KeepsWithout, string KeepsWith)
{
    private static readonly Lazy<IReadOnlyList<Medium>> Table = new(() => [.. PaintTables.Read("media.csv").Select(r => new Medium(
        r["key"], r["name"], r["vehicle"], r.Number("dry_binder_density"), r.Number("ratio_low"), r.Number("ratio_typical"), r.Number("ratio_high"),
        r.OptionalNumber("film_ph_low"), r.OptionalNumber("film_ph_high"), r["touch_dry"], r["through_dry"], r["preservative"], r["keeps_without"], r["keeps_with"]))]);

    /// <summary>All mediums.</summary>
    public static IReadOnlyList<Medium> All => Table.Value;

    /// <summary>A medium by its key, or null.</summary>
    public static Medium? Find(string key) => All.FirstOrDefault(m => string.Equals(m.Key, key, StringComparison.OrdinalIgnoreCase));
}
