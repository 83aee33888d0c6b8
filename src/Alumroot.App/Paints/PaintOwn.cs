using Alumroot.App.Requests;
using Alumroot.Paint.Recipes;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Paints;

/// <summary>A lot of the shelf that a part of a paint may come from, with its price.</summary>
/// <param name="Title">What the packet says.</param>
/// <param name="Amount">How much came.</param>
/// <param name="Money">What it cost in all.</param>
public sealed record PricedLot(string Title, Measured Amount, double Money)
{
    /// <summary>What a part costs that comes from it; null when the lot was bought by another kind of unit.</summary>
    public double? CostOf(PaintPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Amount switch
        {
            { SiUnit: Measured.Kilogram, SiValue: > 0 } => Money * part.Grams.Value / 1000 / Amount.SiValue,
            { SiUnit: Measured.CubicMetre, SiValue: > 0 } => Money * part.Millilitres.Value / 1e6 / Amount.SiValue,
            _ => null,
        };
    }
}

/// <summary>What the record tells of the maker's own paints: what stayed on her slab, and what her binders cost.</summary>
/// <param name="Losses">Medium and lost share of each paint that was weighed before filling.</param>
/// <param name="Lots">Binders with a price, the latest first.</param>
public sealed record PaintOwn(IReadOnlyList<(string Medium, double LostFraction)> Losses, IReadOnlyList<PricedLot> Lots)
{
    private const int MostLots = 60;

    /// <summary>When there is no record.</summary>
    public static PaintOwn Nothing { get; } = new([], []);

    /// <summary>Reads the record.</summary>
    public static PaintOwn Of(StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        return new PaintOwn(
            [.. store.Paints().Select(p => p.Made).OfType<PaintMade>().Select(m => (m.Medium, Lost: LostFraction(m))).Where(m => m.Lost is not null).Select(m => (m.Medium, m.Lost!.Value))],
            [.. store.List(null, MostLots, SubjectClass.Lot, [SubjectLine.Word(LotClass.Binder)]).Select(l => store.Lot(l.Subject)?.Bought).OfType<LotBought>()
                .Select(b => TypedMoney.Of(b.Cost) is { } money ? new PricedLot(b.Title, b.Amount, money) : null).OfType<PricedLot>()]);
    }

    /// <summary>What is lost in a medium: by her own weighings in it, else in any, else by judgement.</summary>
    public SlabLoss LossIn(string medium)
    {
        double[] same = [.. Losses.Where(l => l.Medium == medium).Select(l => l.LostFraction)];
        return SlabLoss.Of(same.Length > 0 ? same : [.. Losses.Select(l => l.LostFraction)]);
    }

    /// <summary>The lot whose title names a part; null when there is none with a price.</summary>
    public PricedLot? LotOf(string part) => Lots.FirstOrDefault(l => PartNames.Names(l.Title, part));

    /// <summary>The share of a paint that did not come off the slab: 1 less what came off over all that went in; null when it was not weighed or more came off than went in.</summary>
    public static double? LostFraction(PaintMade made)
    {
        ArgumentNullException.ThrowIfNull(made);
        double went = made.Parts.Append(made.PreservativeAmount).Where(p => p?.SiUnit == Measured.Kilogram).Sum(p => p!.SiValue);
        return made.CameOff is { SiUnit: Measured.Kilogram, SiValue: > 0 } off && went > 0 && 1 - off.SiValue / went is >= 0 and <= SlabLoss.MostFraction and var lost ? lost : null;
    }
}
