using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Reading;

/// <summary>A unit that a typed word may mean, and whether it had to be chosen.</summary>
/// <param name="Unit">The unit; its factor leads to the field's own unit.</param>
/// <param name="Doubt">Why it had to be chosen, or null when the word says it.</param>
/// <param name="LowFactor">For a powder by volume: the least that one of the unit may be.</param>
/// <param name="HighFactor">For a powder by volume: the most.</param>
internal sealed record UnitChoice(Unit Unit, Doubt? Doubt, double? LowFactor = null, double? HighFactor = null);

/// <summary>Why no unit could be chosen.</summary>
internal sealed record UnitRefusal(UnreadReason Reason, QuantityKind? GivenKind, IReadOnlyList<string> Nearest);

/// <summary>Finds what a typed unit may mean in a field of a kind.</summary>
internal static class UnitChooser
{
    private const int LongestUnit = 24;

    private static readonly Dictionary<string, KitchenMeasures> Kitchens = new(StringComparer.OrdinalIgnoreCase)
    {
        ["us"] = KitchenMeasures.Us,
        ["usa"] = KitchenMeasures.Us,
        ["american"] = KitchenMeasures.Us,
        ["imperial"] = KitchenMeasures.Imperial,
        ["imp"] = KitchenMeasures.Imperial,
        ["uk"] = KitchenMeasures.Imperial,
        ["british"] = KitchenMeasures.Imperial,
        ["metric"] = KitchenMeasures.Metric,
    };

    /// <summary>The units that the word may mean, or why there is none.</summary>
    public static (IReadOnlyList<UnitChoice> Choices, UnitRefusal? Refusal) Choose(QuantityKind kind, string typedUnit, KitchenMeasures kitchen, PowderDensity? powder)
    {
        if (UnitTable.KeyOf(typedUnit).Length == 0)
            return Unstated(kind) is { Count: > 0 } usual ? (usual, null) : ([], new UnitRefusal(UnreadReason.MissingUnit, null, []));
        IReadOnlyList<UnitChoice> own = Meanings(kind, typedUnit, kitchen);
        if (own.Count > 0) return (own, null);
        IReadOnlyList<UnitChoice> spoons = kind == QuantityKind.Mass && powder is not null ? Meanings(QuantityKind.Volume, typedUnit, kitchen) : [];
        if (spoons.Count > 0) return (spoons.Select(s => AsPowder(s.Unit, powder!)).ToArray(), null);
        Unit? other = Enum.GetValues<QuantityKind>().SelectMany(k => Meanings(k, typedUnit, kitchen)).FirstOrDefault()?.Unit;
        return ([], other is null
            ? new UnitRefusal(UnreadReason.UnknownUnit, null, Nearest(kind, typedUnit, kitchen))
            : new UnitRefusal(UnreadReason.WrongKindOfUnit, other.Kind, []));
    }

    /// <summary>The unit that a field takes when none is typed; none where the unit matters too much.</summary>
    private static IReadOnlyList<UnitChoice> Unstated(QuantityKind kind) => kind switch
    {
        QuantityKind.Number or QuantityKind.Acidity => [new UnitChoice(Bare(kind), null)],
        QuantityKind.Temperature => [new UnitChoice(UnitTable.Get(kind, "°C"), Doubt.UnitMissing)],
        QuantityKind.Hardness => [new UnitChoice(UnitTable.Get(kind, "°dH"), Doubt.UnitMissing)],
        QuantityKind.Conductivity => [new UnitChoice(UnitTable.Get(kind, "µS/cm"), Doubt.UnitMissing)],
        QuantityKind.Concentration => [new UnitChoice(UnitTable.Get(kind, "mol/L"), Doubt.UnitMissing)],
        QuantityKind.Fraction => [new UnitChoice(UnitTable.Get(kind, "%"), Doubt.PercentOrRatio), new UnitChoice(Bare(kind), Doubt.PercentOrRatio)],
        _ => [],
    };

    private static Unit Bare(QuantityKind kind) => new(kind, "", "", null, 1, 0, true, "", "");

    private static IReadOnlyList<UnitChoice> Meanings(QuantityKind kind, string typedUnit, KitchenMeasures kitchen)
    {
        IReadOnlyList<Unit> found = UnitTable.Find(kind, typedUnit);
        if (found.Count == 0 && Qualified(typedUnit) is var (rest, said))
            return UnitTable.Find(kind, rest).Where(u => u.System == said).Select(u => new UnitChoice(u, null)).ToArray();
        if (found.Count == 1)
        {
            bool bareParts = kind == QuantityKind.Hardness && UnitTable.KeyOf(typedUnit) is "ppm" or "mg/l";
            return [new UnitChoice(found[0], bareParts ? Doubt.UnitWord : null)];
        }
        if (found.Any(u => u.System is null)) return found.Select(u => new UnitChoice(u, Doubt.UnitWord)).ToArray();
        Unit? preferred = found.FirstOrDefault(u => u.System == kitchen);
        if (preferred is not null) return [new UnitChoice(preferred, null)];
        Unit? spoon = found.FirstOrDefault(u => u.Symbol is "metric tsp" or "metric tbsp");
        return spoon is not null
            ? [new UnitChoice(spoon, Doubt.Kitchen)]
            : found.Select(u => new UnitChoice(u, Doubt.Kitchen)).ToArray();
    }

    /// <summary>"UK pints" is pints, imperial; null when no kitchen is named.</summary>
    private static (string Word, KitchenMeasures Said)? Qualified(string typedUnit)
    {
        string[] words = typedUnit.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int at = Array.FindIndex(words, w => Kitchens.ContainsKey(Letters(w)));
        return at < 0 || words.Length < 2
            ? null
            : (string.Join(' ', words.Where((_, i) => i != at)), Kitchens[Letters(words[at])]);
    }

    private static string Letters(string word) => string.Concat(word.Where(char.IsLetter));

    private static UnitChoice AsPowder(Unit volume, PowderDensity powder)
    {
        double middle = (powder.LowGramsPerMillilitre + powder.HighGramsPerMillilitre) / 2 * volume.ToBase;
        return new UnitChoice(
            volume with { ToBase = middle },
            Doubt.PowderByVolume,
            powder.LowGramsPerMillilitre * PowderDensity.FillingLow * volume.ToBase,
            powder.HighGramsPerMillilitre * PowderDensity.FillingHigh * volume.ToBase);
    }

    /// <summary>Symbols to offer: the unit that other words follow ("g dry"), else units that are spelt nearly so.</summary>
    private static string[] Nearest(QuantityKind kind, string typedUnit, KitchenMeasures kitchen)
    {
        string key = UnitTable.KeyOf(typedUnit);
        string firstWord = typedUnit.Split(' ', 2)[0];
        IReadOnlyList<UnitChoice> leading = firstWord.Length < typedUnit.Length ? Meanings(kind, firstWord, kitchen) : [];
        if (leading.Count > 0) return [.. leading.Select(c => c.Unit.Symbol)];
        if (key.Length > LongestUnit) return [];
        return UnitTable.Spellings(kind)
            .Select(s => (s.Unit.Symbol, Steps: EditSteps(key, s.Key), s.Key.Length))
            .Where(s => s.Steps < key.Length && s.Steps <= (Math.Max(key.Length, s.Length) <= 3 ? 1 : 2))
            .GroupBy(s => s.Symbol)
            .Select(g => (Symbol: g.Key, Steps: g.Min(s => s.Steps)))
            .OrderBy(s => s.Steps).ThenBy(s => s.Symbol, StringComparer.Ordinal)
            .Take(3).Select(s => s.Symbol).ToArray();
    }

    /// <summary>Letters to add, drop, change or swap with a neighbour to get from one word to the other (optimal string alignment).</summary>
    private static int EditSteps(string a, string b)
    {
        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++) d[i, 0] = i;
        for (int j = 0; j <= b.Length; j++) d[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
            for (int j = 1; j <= b.Length; j++)
            {
                d[i, j] = Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        return d[a.Length, b.Length];
    }
}
