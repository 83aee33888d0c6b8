namespace Alumroot.Paint.Keeping;

/// <summary>What keeps a water-borne paint from spoiling.</summary>
/// <param name="Key">Its key, such as <c>potassium-sorbate</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="OfBinder">Whether its percents are of the dry binder; otherwise of the water.</param>
/// <param name="LowPercent">The least that is in use.</param>
/// <param name="TypicalPercent">What is usual.</param>
/// <param name="HighPercent">The most that is in use.</param>
/// <param name="AcidPka">Where half of an acid is free; null for what does not work by a free acid.</param>
/// <param name="MostPh">The pH above which it is not worth its name.</param>
/// <param name="Mediums">Keys of the mediums in which it is in use.</param>
/// <param name="DropGrams">What a drop weighs; null for powders.</param>
/// <param name="Caution">What to mind.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Preservative(string Key, string Name, bool OfBinder, double LowPercent, double TypicalPercent, double HighPercent, double? AcidPka, double MostPh, IReadOnlyList<string> Mediums, double? DropGrams, string Caution, string Source)
{
    private static readonly Lazy<IReadOnlyList<Preservative>> Table = new(() => [.. PaintTables.Read("preservatives.csv").Select(r => new Preservative(
        r["key"], r["name"], r["basis"] == "binder", r.Number("use_low"), r.Number("use_typical"), r.Number("use_high"), r.OptionalNumber("pka"), r.Number("ph_max"),
        PaintTables.Parts(r["mediums"]), r.OptionalNumber("drop_grams"), r["caution"], r["source"]))]);

    /// <summary>All that are known.</summary>
    public static IReadOnlyList<Preservative> All => Table.Value;

    /// <summary>By key or name, or null.</summary>
    public static Preservative? Find(string? typed) => All.FirstOrDefault(p => string.Equals(p.Key, typed, StringComparison.OrdinalIgnoreCase) || string.Equals(p.Name, typed, StringComparison.OrdinalIgnoreCase));

    /// <summary>What is in use for a medium, the usual one first.</summary>
    public static IReadOnlyList<Preservative> For(string mediumKey) => [.. All.Where(p => p.Mediums.Contains(mediumKey))];

    /// <summary>The share of its acid that is free, which is what works, 1 / (1 + 10^(pH − pKa)); 1 for what does not work by a free acid.</summary>
    public double ActiveFraction(double ph) => AcidPka is { } pka ? 1 / (1 + Math.Pow(10, ph - pka)) : 1;
}
