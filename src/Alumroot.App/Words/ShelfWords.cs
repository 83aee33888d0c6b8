using System.Globalization;
using Alumroot.Catalogue;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>Lots in words.</summary>
public static class ShelfWords
{
    /// <summary>"Salts".</summary>
    public static string Plural(LotClass kind) => kind switch
    {
        LotClass.Dyestuff => "Dyestuffs",
        LotClass.Salt => "Salts",
        LotClass.Alkali => "Alkalis",
        LotClass.Binder => "Binders and what else goes into paint",
        _ => "Papers and grounds",
    };

    /// <summary>What a kind is called in a list to choose from.</summary>
    public static string Kind(LotClass kind) => kind switch
    {
        LotClass.Binder => "for paint: gum, honey, oil, wax, preservative",
        LotClass.Support => "paper or another ground",
        _ => SubjectLine.Word(kind),
    };

    /// <summary>"lot-1, 450 g left of 500 g, 4.20, came 14 Nov 2026".</summary>
    public static string About(LotState lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return string.Join(", ", new[]
        {
            lot.Key.ToString(),
            StudioWords.Left(lot) is { } left ? $"{left} left of {lot.Bought!.Amount.Typed}" : "",
            lot.BelowNothing ? "more was used than came" : "",
            lot.Bought?.Cost ?? "",
            lot.Bought?.CameOn is { } came ? $"came {came.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}" : "",
        }.Where(t => t.Length > 0));
    }

    /// <summary>Pairs of the handbook's that stand together on this shelf, gravest first.</summary>
    public static IReadOnlyList<Incompatibility> PairsOn(IEnumerable<LotState> lots)
    {
        string[] keys = [.. lots.Where(l => l.LeftSi is not <= 0).Select(l => l.Bought?.PlanName?.Split('@', '+')[0]).OfType<string>().Distinct(StringComparer.Ordinal)];
        return [.. CatalogueData.Embedded.Incompatibilities.Where(p => keys.Any(a => keys.Any(b => a != b && p.Concerns(a, b)))).OrderByDescending(p => p.Severity)];
    }
}
