using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.PhRow;

/// <summary>The acids that bring a jar down to its pH (Data/row_acids.csv).</summary>
public static class RowAcids
{
    private static readonly Lazy<IReadOnlyList<Substance>> Loaded = new(() => [.. EmbeddedConstants.Table("row_acids.csv").Rows.Select(Of)]);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Substance> All => Loaded.Value;

    /// <summary>The acid of this key, or null.</summary>
    public static Substance? Find(string key) => All.FirstOrDefault(a => a.Key == key);

    private static Substance Of(TableRow row)
    {
        Reagent reagent = EmbeddedConstants.Set.FindReagent(row["reagent"]) ?? throw row.Wrong("reagent", $"there is no reagent {row["reagent"]}");
        double moles = row.Number("grams_per_unit") / reagent.GramsPerMole;
        var perUnit = new Reagent(row["key"], reagent.Formula, 1, Reaction.Of(reagent.Delivers.Terms.Select(t => (t.Component, t.Coefficient * moles))));
        return new Substance(row["key"], SubstanceRole.Acid, row["unit"] == "ml" ? SubstanceUnit.Millilitre : SubstanceUnit.Gram, row["plain_name"], reagent.Formula, perUnit, new Estimate(1, row.Number("strength_low"), row.Number("strength_high")));
    }
}
