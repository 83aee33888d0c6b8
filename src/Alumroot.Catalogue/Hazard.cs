using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>The hazard class, workplace limits and protection for a substance, at a strength where that matters.</summary>
/// <remarks>Immutable. Suppliers differ: the data sheet that came with the jar wins. Limits are for workplaces, mostly of the USA.</remarks>
public sealed class Hazard
{
    private Hazard(Fields row)
    {
        Key = row.Key();
        Name = row.Required("name");
        ReagentKeys = row.List("reagent_keys");
        StrengthFromPercent = row.OptionalNumber("strength_from_percent");
        StrengthBelowPercent = row.OptionalNumber("strength_below_percent");
        Formula = row.Text("formula");
        CasNumber = row.Text("cas");
        Pictograms = row.List("ghs_pictograms");
        SignalWord = row.Text("signal_word");
        HazardCodes = row.Text("h_codes");
        PrecautionCodes = row.Text("p_codes");
        ClassifiedBy = row.Text("classified_by");
        StrengthLimits = row.Text("strength_limits");
        LimitPpm = row.OptionalNumber("limit_ppm");
        LimitMilligramsPerCubicMetre = row.OptionalNumber("limit_mg_per_m3");
        ShortTermLimitPpm = row.OptionalNumber("short_term_ppm");
        ShortTermLimitMilligramsPerCubicMetre = row.OptionalNumber("short_term_mg_per_m3");
        ImmediateDanger = row.Text("immediate_danger");
        LimitBasis = row.Text("limit_basis");
        Protection = row.Text("protection");
        Note = row.Text("note");
        Stance = row.Enum<Stance>("stance");
        RefusalReason = row.Text("refusal_reason");
        Citation = row.Citation();
    }

    /// <summary>The row's short name.</summary>
    public string Key { get; }

    /// <summary>The substance, with its strength where that matters.</summary>
    public string Name { get; }

    /// <summary>Reagents this row belongs to; empty for things that are not in the reagent table, such as solvents.</summary>
    public IReadOnlyList<string> ReagentKeys { get; }

    /// <summary>The strength in percent by mass from which the row holds; null when it always holds.</summary>
    public double? StrengthFromPercent { get; }

    /// <summary>The strength in percent by mass below which the row holds; null when it always holds.</summary>
    public double? StrengthBelowPercent { get; }

    /// <summary>The formula, where there is one.</summary>
    public string Formula { get; }

    /// <summary>The CAS registry number, or numbers.</summary>
    public string CasNumber { get; }

    /// <summary>Pictograms of the globally harmonised system, such as GHS05.</summary>
    public IReadOnlyList<string> Pictograms { get; }

    /// <summary>"danger", "warning" or "none".</summary>
    public string SignalWord { get; }

    /// <summary>Hazard statement codes, such as "H302, H315".</summary>
    public string HazardCodes { get; }

    /// <summary>Precaution statement codes.</summary>
    public string PrecautionCodes { get; }

    /// <summary>Who classified it so: the harmonised European list, or suppliers.</summary>
    public string ClassifiedBy { get; }

    /// <summary>How the class changes with strength or between sheets.</summary>
    public string StrengthLimits { get; }

    /// <summary>Workplace limit as an average over eight hours, ppm.</summary>
    public double? LimitPpm { get; }

    /// <summary>Workplace limit as an average over eight hours, mg/m3.</summary>
    public double? LimitMilligramsPerCubicMetre { get; }

    /// <summary>Workplace limit over fifteen minutes, ppm.</summary>
    public double? ShortTermLimitPpm { get; }

    /// <summary>Workplace limit over fifteen minutes, mg/m3.</summary>
    public double? ShortTermLimitMilligramsPerCubicMetre { get; }

    /// <summary>The concentration that is at once dangerous to life, as published, with its unit.</summary>
    public string ImmediateDanger { get; }

    /// <summary>Whose limits they are and how they were read.</summary>
    public string LimitBasis { get; }

    /// <summary>What to wear and do.</summary>
    public string Protection { get; }

    /// <summary>What else to know.</summary>
    public string Note { get; }

    /// <summary>Whether the program plans with it at this strength.</summary>
    public Stance Stance { get; }

    /// <summary>Why it is refused; empty when it is not.</summary>
    public string RefusalReason { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Whether the row holds at a strength in percent by mass.</summary>
    public bool HoldsAt(double strengthPercent) =>
        (StrengthFromPercent is not { } from || strengthPercent >= from)
        && (StrengthBelowPercent is not { } below || strengthPercent < below || (below >= 100 && strengthPercent <= 100));

    internal static Hazard Read(Fields row) => new(row);
}
