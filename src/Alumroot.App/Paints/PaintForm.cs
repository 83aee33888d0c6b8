using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Paint.Recipes;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Paints;

/// <summary>A paint that was made after a recipe: what was typed, and what is wrong with it.</summary>
public sealed class PaintForm
{
    /// <summary>Names of the fields; the fields of a part and of its lot end with the place in the recipe.</summary>
    public const string Title = "title", Part = "part-", Filled = "filled", Where = "where", Preservative = "kept-by", PreservativeAmount = "kept-by-amount", PreservativeLot = "kept-by-from", From = "from-", CameOff = "came-off", Recipe = "recipe";

    private const int LongestTitle = 80, LongestWords = 120, MostFilled = 100_000;

    // Two scales may differ by so much.
    private const double ScaleShare = 0.02;

    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>What stands in a field.</summary>
    public string? Typed(string field) => _typed.GetValueOrDefault(field);

    /// <summary>The paint; null when something is wrong.</summary>
    public PaintMade? Document { get; private set; }

    /// <summary>Reads the form, or fills it from the recipe.</summary>
    /// <param name="request">The recipe that was followed.</param>
    /// <param name="typed">Text by field name; null or blank for nothing.</param>
    /// <param name="shelf">The lots that parts may come from.</param>
    /// <param name="posted">Whether the maker sent it; otherwise the recipe's own figures stand in it.</param>
    public static PaintForm Read(PaintRequest request, Func<string, string?> typed, PaintShelf shelf, bool posted)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(shelf);
        var form = new PaintForm();
        PaintAnswer answer = request.Answer ?? throw new ArgumentException("A paint is made after a recipe.", nameof(request));
        if (posted)
        {
            foreach (string name in (string[])[Title, Filled, Where, Preservative, PreservativeAmount, PreservativeLot, CameOff, .. Enumerable.Range(0, answer.Recipe.Parts.Count).SelectMany(i => new[] { PartField(i), LotField(i) })])
                if (typed(name) is { } text && !string.IsNullOrWhiteSpace(text)) form._typed[name] = text.Trim()[..Math.Min(text.Trim().Length, LongestWords)];
        }
        else form.FillFrom(answer, shelf);
        form.ReadFields(request, answer, shelf);
        return form;
    }

    /// <summary>The name of a part's field.</summary>
    public static string PartField(int place) => Part + place.ToString(CultureInfo.InvariantCulture);

    /// <summary>The name of the field of a part's lot.</summary>
    public static string LotField(int place) => From + place.ToString(CultureInfo.InvariantCulture);

    private void FillFrom(PaintAnswer answer, PaintShelf shelf)
    {
        _typed[Title] = $"{answer.Pigment}, {answer.Recipe.Ask.Medium.Name}";
        for (int i = 0; i < answer.Recipe.Parts.Count; i++)
        {
            PaintPart part = answer.Recipe.Parts[i];
            string typed = _typed[PartField(i)] = $"{PaintFigures.Of(part.Grams.Value)} g";
            if (i > 0 && TypedAmount.Amount(typed).Value is { } weight && shelf.Only(part.Name, weight, DensityOf(part)) is { } lot) _typed[LotField(i)] = lot.Key.ToString();
        }
        if (answer.Filled is { } n && n >= 1) _typed[Filled] = Math.Floor(n).ToString("0", CultureInfo.InvariantCulture);
        if (answer.Dose is { } dose) _typed[Preservative] = dose.What.Name;
    }

    private void ReadFields(PaintRequest request, PaintAnswer answer, PaintShelf shelf)
    {
        if (Typed(Title) is null) _troubles[Title] = "Name: nothing is typed. Write what you call the paint.";
        var parts = new List<Measured>();
        var uses = new List<LotUse>();
        for (int i = 0; i < answer.Recipe.Parts.Count; i++)
        {
            PaintPart part = answer.Recipe.Parts[i];
            string name = i == 0 ? "pigment" : part.Name;
            if (Typed(PartField(i)) is not { } text)
            {
                if (i == 0) _troubles[PartField(0)] = "Pigment: nothing is typed. Write what went in, such as 20 g.";
                continue;
            }
            TypedAmount read = TypedAmount.Amount(text);
            if (read.Value is { SiUnit: Measured.Kilogram } value && (value.SiValue > 0 || i > 0))
            {
                parts.Add(value with { Name = name });
                if (Lot(LotField(i), part.Name, shelf.For(part.Name)) is { } lot && value.SiValue > 0) uses.Add(PaintShelf.Use(lot, name, value, DensityOf(part)));
            }
            else _troubles[PartField(i)] = $"{name}: '{text}' is no weight. Write it like 20 g.";
        }
        Measured? keeps = Weight(PreservativeAmount, "Preservative"), off = Weight(CameOff, "Came off the slab");
        if (Lot(PreservativeLot, "Preservative", shelf.ForPreservative(Typed(Preservative))) is { } keeping)
        {
            if (keeps is not null) uses.Add(PaintShelf.Use(keeping, "preservative", keeps, null));
            else if (!_troubles.ContainsKey(PreservativeAmount)) _troubles[PreservativeAmount] = $"Preservative: {keeping.Key} is named, but not how much of it was taken. Write its weight, such as 0.2 g, or leave the lot out.";
        }
        double went = parts.Append(keeps).Sum(p => p?.SiValue ?? 0);
        if (off is not null && off.SiValue > went * (1 + ScaleShare))
            _troubles[CameOff] = $"Came off the slab: {off.Typed} is more than the {PaintFigures.Of(1000 * went)} g that went in. Take off the bowl's weight, or look at the parts.";
        int count = 0;
        if (Typed(Filled) is { } filled && (!int.TryParse(filled, NumberStyles.None, CultureInfo.InvariantCulture, out count) || count is < 1 or > MostFilled))
            _troubles[Filled] = $"Filled: '{filled}' is no whole number from 1. Count what was filled, or leave it empty.";
        if (_troubles.Count > 0) return;
        string title = Typed(Title)!;
        Document = new PaintMade(title[..Math.Min(title.Length, LongestTitle)], answer.Recipe.Ask.Medium.Key)
        {
            Parts = parts,
            Lakes = request.From is { } lake ? [new LakeUse(lake.Key.ToString(), parts[0] with { Name = "amount" })] : [],
            Filled = count > 0 ? [new PaintFilled(answer.Fill?.Name ?? "vessel", count) { Where = Typed(Where) }] : [],
            Preservative = Typed(Preservative),
            PreservativeAmount = keeps,
            CameOff = off,
            Uses = uses,
            RecipeAddress = request.Address,
        };
    }

    private LotState? Lot(string field, string label, IReadOnlyList<LotState> offered)
    {
        if (Typed(field) is not { } text) return null;
        LotState? lot = offered.FirstOrDefault(l => l.Key.ToString() == text);
        if (lot is null) _troubles[field] = $"{label}: '{text}' is not among the lots that could give it. Choose one of the list, or none.";
        return lot;
    }

    private static double DensityOf(PaintPart part) => part.Grams.Value / part.Millilitres.Value;

    private Measured? Weight(string field, string label)
    {
        if (Typed(field) is not { } text) return null;
        if (TypedAmount.Amount(text).Value is { SiUnit: Measured.Kilogram, SiValue: > 0 } value) return value;
        _troubles[field] = $"{label}: '{text}' is no weight. Write it like 18.2 g, or leave it empty.";
        return null;
    }
}
