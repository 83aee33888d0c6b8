namespace Alumroot.Paint.Labels;

/// <summary>A hazard statement that follows from a content.</summary>
/// <param name="Substance">The content.</param>
/// <param name="Code">The statement's code, such as <c>H317</c>.</param>
/// <param name="Statement">Its words.</param>
/// <param name="Pictogram">The code of its pictogram, such as <c>GHS07</c>; empty for none.</param>
/// <param name="SignalWord">Danger, Warning, or empty.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record LabelHazard(string Substance, string Code, string Statement, string Pictogram, string SignalWord, string Source);

/// <summary>Finds the statements.</summary>
public static class LabelHazards
{
    private static readonly Lazy<IReadOnlyList<(double FromPercent, LabelHazard Hazard)>> Table = new(() =>
        [.. PaintTables.Read("label_hazards.csv").Select(r => (r.Number("from_percent"), new LabelHazard(r["substance"], r["code"], r["statement"], r["pictogram"], r["signal"], r["source"])))]);

    /// <summary>Substances whose statements are known.</summary>
    public static IReadOnlyList<string> Known => [.. Table.Value.Select(t => t.Hazard.Substance).Distinct()];

    /// <summary>The statements for contents in percent by mass; an irritant that is also a stronger hazard of the eye is named once.</summary>
    /// <param name="contentPercents">Contents by name, percent of the mass.</param>
    public static IReadOnlyList<LabelHazard> Of(IReadOnlyDictionary<string, double> contentPercents)
    {
        ArgumentNullException.ThrowIfNull(contentPercents);
        LabelHazard[] found = [.. Table.Value.Where(t => contentPercents.TryGetValue(t.Hazard.Substance, out double percent) && percent >= t.FromPercent).Select(t => t.Hazard)];
        return [.. found.Where(h => !(h.Code == "H319" && found.Any(o => o.Code == "H318")) && !(h.Code == "EUH208" && found.Any(o => o.Code == "H317" && o.Substance == h.Substance))).DistinctBy(h => (h.Code, h.Code == "EUH208" ? h.Substance : ""))];
    }
}
