using Alumroot.Catalogue;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs.Lookup;

/// <summary>What is known of a salt, alkali or acid.</summary>
public sealed record ReagentCard(
    string Key,
    string Name,
    string? Formula,
    ReagentRole Role,
    string? WhichOne,
    string? Note,
    double? MolarMassGPerMol,
    Estimate? PurityPercent,
    SolubilityKind SolubilityKind,
    IReadOnlyList<SolubilityCard> Solubility,
    IReadOnlyList<string> Hazards,
    Stance Stance,
    string? RefusalReason,
    string? UseInstead,
    CitationCard Citation)
{
    internal static ReagentCard Of(Reagent r) => new(
        r.Key, r.Name, Known(r.Formula), r.Role, Known(r.WhichOne), Known(r.Note),
        r.MolarMassGramsPerMole, r.PurityPercent, r.SolubilityKind,
        [.. (r.Solubility?.Points ?? []).Select(p => new SolubilityCard(p.TemperatureCelsius, Finite(r.SolubilityGramsPer100GramsWater(p.TemperatureCelsius)), p.AnhydrousGramsPer100GramsWater))],
        [.. CatalogueData.Embedded.HazardsOf(r.Key).Select(h => h.Note).Where(n => n.Length > 0)],
        r.Stance, Known(r.RefusalReason), Known(r.UseInstead), CitationCard.Of(r.Citation));

    private static string? Known(string text) => text.Length == 0 ? null : text;

    private static double? Finite(double? value) => value is { } x && double.IsFinite(x) ? x : null;
}

/// <summary>One temperature of a solubility table.</summary>
/// <param name="TemperatureC">The temperature.</param>
/// <param name="AsSoldGPer100GWater">Grams as sold, water of crystals included; null when not known or any amount.</param>
/// <param name="WaterFreeGPer100GWater">Grams of the water-free substance.</param>
public sealed record SolubilityCard(double TemperatureC, double? AsSoldGPer100GWater, double WaterFreeGPer100GWater);
