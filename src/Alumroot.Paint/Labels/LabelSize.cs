namespace Alumroot.Paint.Labels;

/// <summary>What the European rules ask of the size of a label with hazards and of its signs.</summary>
/// <param name="ToMillilitres">For packages that hold up to so much.</param>
/// <param name="ShortMillimetres">The shorter side of the label.</param>
/// <param name="LongMillimetres">Its longer side.</param>
/// <param name="IsAskedOutright">Whether the label must be so large; otherwise if possible.</param>
/// <param name="SignLeastMillimetres">The least side of a sign's red square.</param>
/// <param name="SignWantedMillimetres">Its side if possible.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LabelSize(double ToMillilitres, double ShortMillimetres, double LongMillimetres, bool IsAskedOutright, double SignLeastMillimetres, double SignWantedMillimetres, string Source)
{
    // Sizes that are cut to a tenth of a millimetre count as kept.
    private const double CutMillimetres = 0.1;

    private static readonly Lazy<IReadOnlyList<LabelSize>> Table = new(() =>
        [.. PaintTables.Read("label_sizes.csv").Select(r => new LabelSize(r.Number("to_millilitres"), r.Number("label_short"), r.Number("label_long"), r["must"] == "yes", r.Number("sign_least"), r.Number("sign_wanted"), r["source"]))]);

    /// <summary>The sizes for a package; null beyond what the table holds.</summary>
    /// <param name="packageMillilitres">What the package holds.</param>
    public static LabelSize? For(double packageMillilitres) => Table.Value.FirstOrDefault(s => packageMillilitres <= s.ToMillilitres);

    /// <summary>Whether a label is at least so large, whichever way it lies.</summary>
    /// <param name="widthMillimetres">Its width.</param>
    /// <param name="heightMillimetres">Its height.</param>
    public bool IsKeptBy(double widthMillimetres, double heightMillimetres) =>
        Math.Min(widthMillimetres, heightMillimetres) >= ShortMillimetres - CutMillimetres && Math.Max(widthMillimetres, heightMillimetres) >= LongMillimetres - CutMillimetres;
}
