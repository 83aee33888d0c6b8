using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Paint.Keeping;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Paints;

/// <summary>The lots of the shelf from which parts of a paint may be taken.</summary>
/// <param name="Lots">Binders, and chalk or borax among alkalis and salts, of which something is left.</param>
public sealed record PaintShelf(IReadOnlyList<LotState> Lots)
{
    private const int MostLots = 60;

    /// <summary>Reads the shelf.</summary>
    public static PaintShelf Of(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        string[] kinds = [.. new[] { LotClass.Binder, LotClass.Alkali, LotClass.Salt }.Select(SubjectLine.Word)];
        return new PaintShelf([.. store.List(null, MostLots, SubjectClass.Lot, kinds).Select(l => store.Lot(l.Subject)).OfType<LotState>().Where(l => l is { Bought: not null, LeftSi: > 0 })]);
    }

    /// <summary>The lots that may give a part: those whose packet names it, then binders whose packet names no part; none for pigment and water.</summary>
    public IReadOnlyList<LotState> For(string part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part == "pigment" || part.StartsWith("water", StringComparison.Ordinal) ? [] : [.. Naming(part), .. Lots.Where(l => IsUnplaced(l))];
    }

    /// <summary>The lots that may give a preservative: those whose packet names the one that is meant or any that is known, then binders whose packet names nothing.</summary>
    /// <param name="preservative">Which is meant; null when none is.</param>
    public IReadOnlyList<LotState> ForPreservative(string? preservative) =>
        [.. Lots.Where(IsPreservative).OrderBy(l => preservative is null || !PartNames.NamesPreservative(l.Bought!.Title, preservative)), .. Lots.Where(l => IsUnplaced(l))];

    /// <summary>The one lot whose packet names a part; null when none or several do, or it holds less than is wanted.</summary>
    /// <param name="part">The part.</param>
    /// <param name="weighed">How much of it is wanted.</param>
    /// <param name="gramsPerMillilitre">Its density.</param>
    public LotState? Only(string part, Measured weighed, double gramsPerMillilitre) =>
        Naming(part).ToArray() is [{ } one] && Use(one, part, weighed, gramsPerMillilitre).Amount is { } amount && amount.SiUnit == one.Bought!.Amount.SiUnit && amount.SiValue <= one.LeftSi ? one : null;

    /// <summary>What is taken of a lot for a part; from a lot that is measured by volume as a volume, where the density is known.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="part">The part.</param>
    /// <param name="weighed">What was weighed.</param>
    /// <param name="gramsPerMillilitre">Its density; null when it is not known.</param>
    public static LotUse Use(LotState lot, string part, Measured weighed, double? gramsPerMillilitre)
    {
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentNullException.ThrowIfNull(weighed);
        Measured amount = weighed with { Name = part };
        if (lot.Bought?.Amount.SiUnit == Measured.CubicMetre && gramsPerMillilitre is > 0 and var density)
        {
            double millilitres = 1000 * weighed.SiValue / density;
            amount = new Measured(part, string.Create(CultureInfo.InvariantCulture, $"{weighed.Typed}, {PaintFigures.Of(millilitres)} mL by its density"), Math.Round(millilitres / 1e6, 12), Measured.CubicMetre, "reckoned");
        }
        return new LotUse(lot.Key.ToString(), amount);
    }

    private IEnumerable<LotState> Naming(string part) => Lots.Where(l => PartNames.Names(l.Bought!.Title, part));

    private static bool IsUnplaced(LotState lot) => lot.Bought!.Substance == LotClass.Binder && !PartNames.NamesAny(lot.Bought.Title) && !IsPreservative(lot);

    private static bool IsPreservative(LotState lot) => Preservative.All.Any(p => PartNames.NamesPreservative(lot.Bought!.Title, p.Name));
}
