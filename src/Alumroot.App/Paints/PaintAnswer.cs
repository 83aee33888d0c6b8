using Alumroot.Paint.Keeping;
using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;
using Alumroot.Quantities;

namespace Alumroot.App.Paints;

/// <summary>A recipe with what it is filled into and how the medium bears the colour.</summary>
/// <param name="Pigment">What the asker calls the pigment.</param>
/// <param name="Recipe">The recipe.</param>
/// <param name="Fill">What it is filled into; null when not asked.</param>
/// <param name="Filled">How many that gives.</param>
/// <param name="Pours">How often each is filled; 1 for what is filled once.</param>
/// <param name="Cost">What the pigment costs in all; null when not told.</param>
/// <param name="Assumptions">What was taken for granted.</param>
public sealed record PaintAnswer(string Pigment, PaintRecipe Recipe, PaintFill? Fill, double? Filled, int Pours, double? Cost, IReadOnlyList<string> Assumptions)
{
    // A pan counts as full from here on.
    private const double Full = 0.95;
    private const int MostPours = 60;

    /// <summary>How the medium bears the colour; null when it was not told what colour it is.</summary>
    public Suitability? Suits { get; init; }

    /// <summary>Whether oil absorption was measured.</summary>
    public bool OilMeasured { get; init; }

    /// <summary>Whether density was measured.</summary>
    public bool DensityMeasured { get; init; }

    /// <summary>What stays on slab and muller; it is taken off what is filled, or added to what is weighed for a number.</summary>
    public required SlabLoss Loss { get; init; }

    /// <summary>Whether the amounts were scaled up by the loss: a number was wanted.</summary>
    public bool IsScaledUp { get; private init; }

    /// <summary>How many it fills, with the span that volume and loss leave; null when not asked.</summary>
    public Estimate? FilledSpan
    {
        get
        {
            if (Filled is not { } count) return null;
            Estimate volume = Fill!.Name == "stick" ? Recipe.DryMillilitres : Recipe.WetMillilitres, kept = Loss.KeptFraction;
            double down = Both(volume.Low / volume.Value, kept.Low / kept.Value), up = Both(volume.High / volume.Value, kept.High / kept.Value);
            return new Estimate(count, Math.Max(0, count * (1 - down)), count * (1 + up));

            static double Both(double one, double other) => Math.Sqrt((1 - one) * (1 - one) + (1 - other) * (1 - other));
        }
    }

    /// <summary>The preservative; null when the medium needs none or none was wanted.</summary>
    public PreservativeDose? Dose { get; init; }

    /// <summary>Expected colours of the tints; null when the medium has none.</summary>
    public TintAnswer? Tints { get; init; }

    /// <summary>What each other part costs, by lots of the shelf; parts without a price are not there.</summary>
    public IReadOnlyList<(string Part, double Money)> PartCosts { get; init; } = [];

    /// <summary>Parts that cost something and have no price on the shelf.</summary>
    public IReadOnlyList<string> Unpriced { get; init; } = [];

    /// <summary>What one costs: the pigment where its cost is told, and the parts that have a price; null when nothing has one or nothing is filled.</summary>
    public double? CostEach => Filled is > 0 and var count && (Cost is not null || PartCosts.Count > 0) ? ((Cost ?? 0) + PartCosts.Sum(p => p.Money)) / count : null;

    /// <summary>Makes the recipe and fills it.</summary>
    /// <param name="name">What the asker calls the pigment.</param>
    /// <param name="ask">What is asked.</param>
    /// <param name="fill">What it is filled into, or null.</param>
    /// <param name="count">How many are to be filled; the pigment of <paramref name="ask"/> is then scaled.</param>
    /// <param name="cost">What the pigment costs in all.</param>
    /// <param name="assumed">What was taken for granted.</param>
    /// <param name="loss">What stays on slab and muller.</param>
    public static PaintAnswer Of(string name, PaintAsk ask, PaintFill? fill, double? count, double? cost, IReadOnlyList<string> assumed, SlabLoss loss)
    {
        ArgumentNullException.ThrowIfNull(ask);
        ArgumentNullException.ThrowIfNull(loss);
        var recipe = PaintRecipe.For(ask);
        if (fill is null) return new PaintAnswer(name, recipe, null, null, 1, cost, assumed) { Loss = loss };
        double shrinks = recipe.ShrinkageFraction;
        int pours = 1;
        while (fill.Refilled && 1 - Math.Pow(shrinks, pours) < Full && pours < MostPours) pours++;
        double each = fill.Millilitres * (fill.Refilled ? (1 - Math.Pow(shrinks, pours)) / (1 - shrinks) : 1);
        // A stick is as large as it is dry.
        double has = (fill.Name == "stick" ? recipe.DryMillilitres.Value : recipe.WetMillilitres.Value) * loss.KeptFraction.Value;
        if (count is not { } wanted) return new PaintAnswer(name, recipe, fill, has / each, pours, cost, assumed) { Loss = loss };
        return new PaintAnswer(name, PaintRecipe.For(ask with { PigmentGrams = ask.PigmentGrams * wanted * each / has }), fill, wanted, pours, cost, assumed) { Loss = loss, IsScaledUp = true };
    }
}
