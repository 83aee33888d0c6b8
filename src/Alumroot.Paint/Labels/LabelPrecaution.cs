namespace Alumroot.Paint.Labels;

/// <summary>A statement of precaution.</summary>
/// <param name="Code">Its code, such as <c>P102</c> or <c>P302+P352</c>.</param>
/// <param name="Statement">Its words.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LabelPrecaution(string Code, string Statement, string Source);

/// <summary>Finds the statements of precaution that follow from statements of hazard.</summary>
public static class LabelPrecautions
{
    /// <summary>So many go on a label at most, unless the hazards ask for more (CLP, Article 28, from memory).</summary>
    public const int Most = 6;

    private const string General = "general", Wear = "P280", Gloves = "Wear protective gloves.", Eyes = "Wear eye protection.", Both = "Wear protective gloves and eye protection.";

    private static readonly Lazy<IReadOnlyList<(string Hazard, double Rank, LabelPrecaution Said)>> Table = new(() =>
        [.. PaintTables.Read("label_precautions.csv").Select(r => (r["hazard"], r.Number("rank"), new LabelPrecaution(r["code"], r["statement"], r["source"])))]);

    /// <summary>All statements of precaution that the hazards have, most needed first; none when there is no statement of hazard, since supplements (EUH) have none.</summary>
    /// <param name="hazards">The hazards.</param>
    public static IReadOnlyList<LabelPrecaution> All(IReadOnlyList<LabelHazard> hazards)
    {
        ArgumentNullException.ThrowIfNull(hazards);
        string[] codes = [.. hazards.Select(h => h.Code).Where(c => c.StartsWith('H'))];
        if (codes.Length == 0) return [];
        (string Hazard, double Rank, LabelPrecaution Said)[] found = [.. Table.Value.Where(t => t.Hazard == General || codes.Contains(t.Hazard)).OrderBy(t => t.Rank)];
        string[] worn = [.. found.Where(t => t.Said.Code == Wear).Select(t => t.Said.Statement).Distinct()];
        return [.. found.DistinctBy(t => t.Said.Code).Select(t => t.Said.Code == Wear && worn.Contains(Gloves) && worn.Contains(Eyes) ? t.Said with { Statement = Both } : t.Said)];
    }

    /// <summary>The statements for a label, at most <see cref="Most"/>, in the order of their codes.</summary>
    /// <param name="hazards">The hazards.</param>
    public static IReadOnlyList<LabelPrecaution> For(IReadOnlyList<LabelHazard> hazards) => [.. All(hazards).Take(Most).OrderBy(p => p.Code, StringComparer.Ordinal)];
}
