using System.Globalization;
using Alumroot.App.Paints;
using Alumroot.App.Parts;
using Alumroot.App.Verbs;
using Alumroot.App.Words;
using Alumroot.Paint.Keeping;
using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;
using Alumroot.Quantities;

namespace Alumroot.App.Requests;

/// <summary>A question for a paint recipe: one list of fields for address, form and command line.</summary>
public sealed class PaintRequest
{
    /// <summary>Names of the fields.</summary>
    public const string Lake = "lake", Pigment = "pigment", Grams = "grams", Oil = "oil-absorption", Density = "density", MediumField = "medium", Fill = "fill", Count = "count", Cost = "cost", NoHoney = "no-honey", Colour = "colour", CakeWater = "cake-water", Loss = "loss", Preservative = "preservative", PastePh = "paste-ph";

    /// <summary>The address of the page.</summary>
    public const string Path = "/paints/recipe";

    // Planning values for a natural alumina lake of which nothing was measured; the spans are wide because hardly any are published (docs/models/paint.md).
    private static readonly Estimate UsualOil = new(60, 40, 110), UsualDensity = new(2.1, 1.7, 2.4);

    // A rub-out repeats within a tenth, a small flask within a twentieth; from memory.
    private const double OilRepeats = 0.1, DensityRepeats = 0.05;

    /// <summary>What stands in the field of the preservative when none is wanted.</summary>
    public const string NoPreservative = "none";

    private const double MostLossPercent = 90;

    private readonly Func<string, string?> _typed;
    private readonly Func<string, string> _name;
    private readonly PaintOwn _own;
    private readonly List<FieldTrouble> _troubles = [];

    /// <summary>Every field.</summary>
    public static IReadOnlyList<string> Fields { get; } = [Lake, Pigment, Grams, Oil, Density, MediumField, Fill, Count, Cost, NoHoney, Colour, CakeWater, Loss, Preservative, PastePh, .. TintReading.Fields, TintReading.Kept];

    /// <summary>Reads the fields.</summary>
    /// <param name="typed">The text of a field, or null.</param>
    /// <param name="name">What the asker calls a field: an option, or the words above it.</param>
    /// <param name="lake">The lake that is to become paint, from the record; its weight and colour stand in for what is not typed.</param>
    /// <param name="own">What the record tells of the maker's own paints and binders.</param>
    public PaintRequest(Func<string, string?> typed, Func<string, string> name, PaintLake? lake = null, PaintOwn? own = null)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(name);
        (_typed, _name, From, _own) = (typed, name, lake, own ?? PaintOwn.Nothing);
        PigmentName = Typed(Pigment) ?? lake?.Name ?? "lake pigment";
        Refusal = PaintWords.Refusal(PigmentName);
        if (Refusal is null) Answer = Read();
    }

    /// <summary>The lake that it is asked for, or null.</summary>
    public PaintLake? From { get; }

    /// <summary>What the pigment is called.</summary>
    public string PigmentName { get; }

    /// <summary>Why no recipe is given; null when it is.</summary>
    public string? Refusal { get; }

    /// <summary>What is wrong with the fields, in the order of reading.</summary>
    public IReadOnlyList<FieldTrouble> Troubles => _troubles;

    /// <summary>The recipe; null when something is wrong or refused.</summary>
    public PaintAnswer? Answer { get; private set; }

    /// <summary>The text of a field; null when it is blank.</summary>
    public string? Typed(string field) => _typed(field) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>What is wrong with a field, or null.</summary>
    public string? Trouble(string field) => _troubles.FirstOrDefault(t => t.FieldId == field)?.Sentence;

    /// <summary>The question as an address.</summary>
    public string Address => Path + "?" + string.Join('&', Fields.Where(f => Typed(f) is not null).Select(f => $"{f}={Uri.EscapeDataString(Typed(f)!)}"));

    private PaintAnswer? Read()
    {
        if (Typed(MediumField) is not { } typed) return Say(MediumField, $"'{_name(MediumField)}' is missing: {string.Join(", ", Medium.All.Select(m => m.Key))}.");
        if (Medium.Find(typed) is not { } medium) return Say(MediumField, $"There is no medium '{typed}'.{(Nearest.To(typed, Medium.All.Select(m => m.Key)) is { } near ? $" The nearest is '{near}'." : "")} There are {string.Join(", ", Medium.All.Select(m => m.Key))}.");
        double? grams = Number(Grams, 1e6), count = Number(Count, 1e5), oil = Number(Oil, 500), density = Number(Density, 12), cost = Number(Cost, 1e9), water = Number(CakeWater, 95), lost = Number(Loss, MostLossPercent, zero: true), ph = Number(PastePh, 14);
        PaintFill? fill = null;
        if (Typed(Fill) is { } what && (fill = PaintFill.Of(what)) is null) Say(Fill, $"'{_name(Fill)} {what}' is not known. Write {PaintFill.Words}, such as tube-15ml.");
        ColourantClass? colour = Typed(Colour) is { } kind ? ColourKinds.Read(kind) : ColourantClass.Find(From?.ColourKey);
        if (Typed(Colour) is { } told && colour is null) Say(Colour, $"'{_name(Colour)} {told}' is neither a dyestuff of the handbook nor a kind of colour. Write one such as madder, or {string.Join(", ", ColourantClass.All.Select(c => c.Key))}.");
        Preservative? preservative = null;
        if (Typed(Preservative) is { } keeps && keeps != NoPreservative && (preservative = Alumroot.Paint.Keeping.Preservative.Find(keeps)) is null)
            Say(Preservative, KeepingWords.NoPreservative(_name(Preservative), keeps));
        TintAnswer? tints = medium.Key == TintReading.Medium ? TintReading.Read(Typed, (field, sentence) => Say(field, sentence), From) : null;
        if (_troubles.Count > 0) return null;
        if (count is null && grams is null && From?.LeftGrams is > 0 and var left) grams = left;
        if (grams is null == count is null) return Say(Grams, $"Give either the pigment in hand ({_name(Grams)} 20) or how many are to be filled ({_name(Fill)} half-pan, {_name(Count)} 12).");
        if (count is not null && fill is null) return Say(Fill, $"'{_name(Count)}' needs '{_name(Fill)}': {PaintFill.Words}.");
        double wet = (water ?? 0) / 100;
        var ask = new PaintAsk(
            medium, (grams ?? 1) * (count is null ? 1 - wet : 1), Measured(oil, OilRepeats, UsualOil), Measured(density, DensityRepeats, UsualDensity), Typed(NoHoney) is null, wet);
        SlabLoss loss = lost is { } stated ? SlabLoss.Stated(stated / 100) : _own.LossIn(medium.Key);
        PaintAnswer answer = PaintAnswer.Of(PigmentName, ask, fill, count, cost, PaintWords.Assumed(oil is null, density is null), loss);
        PaintPart[] bought = [.. answer.Recipe.Parts.Skip(1).Where(p => !p.Name.StartsWith("water", StringComparison.Ordinal))];
        return answer with
        {
            Dose = Dosed(preservative, answer.Recipe, ph),
            Tints = tints,
            PartCosts = [.. bought.Select(p => (p.Name, Money: _own.LotOf(p.Name)?.CostOf(p))).Where(p => p.Money is not null).Select(p => (p.Name, p.Money!.Value))],
            Unpriced = [.. bought.Where(p => _own.LotOf(p.Name)?.CostOf(p) is null).Select(p => p.Name)],
            Suits = colour is null ? null : Suitability.Of(medium, colour),
            OilMeasured = oil is not null,
            DensityMeasured = density is not null,
        };
    }

    /// <summary>What was chosen; else, where one is needed, the first of those in use that works at the paint's pH.</summary>
    private PreservativeDose? Dosed(Preservative? chosen, PaintRecipe recipe, double? ph)
    {
        if (chosen is not null) return PreservativeDose.For(chosen, recipe, ph);
        if (Typed(Preservative) is not null || recipe.Ask.Medium.Preservative is not ("needed" or "binder only")) return null;
        return Alumroot.Paint.Keeping.Preservative.For(recipe.Ask.Medium.Key).Select(p => PreservativeDose.For(p, recipe, ph)).OfType<PreservativeDose>().OrderBy(d => d.Working).FirstOrDefault();
    }

    private static Estimate Measured(double? value, double repeats, Estimate usual) => value is { } x ? new Estimate(x, x * (1 - repeats), x * (1 + repeats)) : usual;

    private PaintAnswer? Say(string field, string sentence)
    {
        _troubles.Add(new FieldTrouble(field, sentence));
        return null;
    }

    private double? Number(string field, double most, bool zero = false)
    {
        if (Typed(field) is not { } typed) return null;
        string text = typed;
        foreach (string unit in (string[])["g/ml", "g", "%"])
            if (text.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) text = text[..^unit.Length].Trim();
        // 1,500 may be one and a half or fifteen hundred.
        if (text.Length > 4 && text[^4] == ',' && text.Count(c => c == ',') == 1 && !text.Contains('.', StringComparison.Ordinal) && text[0] != '0')
        {
            Say(field, $"'{_name(field)} {typed}' can mean {text.Replace(',', '.')} or {text.Replace(",", "", StringComparison.Ordinal)}. Write it without the comma.");
            return null;
        }
        if (double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double x) && (x > 0 || (zero && x == 0)) && x <= most) return x;
        Say(field, $"'{_name(field)} {typed}' is not a number {(zero ? "from nothing" : "above nothing")}{(most < 1e5 ? $" and at most {most.ToString(CultureInfo.InvariantCulture)}" : "")}.");
        return null;
    }
}
