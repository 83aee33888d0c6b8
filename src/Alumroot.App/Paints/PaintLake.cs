using Alumroot.App.Colours;
using Alumroot.App.Requests;
using Alumroot.Catalogue;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Paints;

/// <summary>What the record tells of a lake that is to become paint.</summary>
/// <param name="Key">Its number.</param>
/// <param name="Name">Its name in plain words.</param>
/// <param name="LeftGrams">Pigment that is left; null when it was never weighed dry.</param>
/// <param name="ColourKey">The kind of colour; null when it is not known.</param>
public sealed record PaintLake(SubjectKey Key, string Name, double? LeftGrams, string? ColourKey)
{
    /// <summary>Its dyestuff; null when it is not known.</summary>
    public Dyestuff? Dyestuff { get; init; }

    /// <summary>The colours on its way, those of its paints among them.</summary>
    public IReadOnlyList<LakeColour> Swatches { get; init; } = [];

    /// <summary>Its coats over a black and a white card, those of its paints among them.</summary>
    public IReadOnlyList<KeptDrawdown> Drawdowns { get; init; } = [];

    /// <summary>Its last colour as powder, ground before dry; null when none was read.</summary>
    public LakeColour? Powder => Swatches.LastOrDefault(c => c.Read is { State: SwatchState.Dry or SwatchState.Ground, Ground: not SwatchGround.Black });

    /// <summary>The dyestuff of a lake, from the address of its plan; null when it is not known.</summary>
    public static Dyestuff? DyestuffOf(BatchState batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return batch.Plan is { } plan && PlanRequest.FromAddress(plan.PlanAddress)?[PlanFields.Dyestuff] is { } named
            ? CatalogueData.Embedded.FindDyestuff(named) ?? CatalogueData.Embedded.Dyestuffs.FirstOrDefault(d => string.Equals(d.Name, named, StringComparison.OrdinalIgnoreCase))
            : null;
    }

    /// <summary>Reads a lake from the record; null when there is none of that number.</summary>
    /// <param name="store">The record.</param>
    /// <param name="typed">The number as typed.</param>
    public static PaintLake? Of(StudioStore store, string? typed)
    {
        ArgumentNullException.ThrowIfNull(store);
        if (SubjectKey.TryRead(typed) is not { Class: SubjectClass.Batch } key || store.Batch(key) is not { } batch) return null;
        Dyestuff? dyestuff = DyestuffOf(batch);
        string what = batch.Plan is null ? "lake" : batch.Plan.Dyestuff is { Length: > 0 } d ? $"{d} lake" : "white ground";
        IReadOnlyList<LakeColour> way = LakeColour.Way(batch, store);
        return new PaintLake(key, $"{what} {key}", store.PigmentLeftKg(batch) is { } kg ? Math.Round(1000 * kg, 4) : null, ColourKinds.Of(dyestuff, batch.Plan?.Salt))
        {
            Dyestuff = dyestuff,
            Swatches = way,
            Drawdowns = way.Any(c => c.Read.Ground is not null) ? KeptDrawdown.Of(way, LakeColour.All(store)) : [],
        };
    }
}
