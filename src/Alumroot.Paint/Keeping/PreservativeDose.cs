using Alumroot.Paint.Recipes;
using Alumroot.Quantities;

namespace Alumroot.Paint.Keeping;

/// <summary>Whether a preservative works in a paint.</summary>
public enum PreservativeWorking
{
    /// <summary>At every pH that the paint may have.</summary>
    Works,

    /// <summary>Only in the acid part of what the paint may have.</summary>
    MayFail,

    /// <summary>At none.</summary>
    DoesNothing,
}

/// <summary>How much of a preservative goes into a recipe, and whether it works there.</summary>
/// <param name="What">Which.</param>
/// <param name="Grams">How much, with the span of what is in use.</param>
/// <param name="BasisGrams">The water or the dry binder that it is reckoned on.</param>
/// <param name="PaintPh">The pH that the paint may have.</param>
public sealed record PreservativeDose(Preservative What, Estimate Grams, double BasisGrams, Estimate PaintPh)
{
    // A strip that was held to the paste is so near nine times in ten; our judgement, no source.
    private const double StripPh = 0.5;

    /// <summary>Whether it works.</summary>
    public PreservativeWorking Working => PaintPh.High <= What.MostPh ? PreservativeWorking.Works : PaintPh.Low < What.MostPh ? PreservativeWorking.MayFail : PreservativeWorking.DoesNothing;

    /// <summary>The share that works, from the least to the most acid paint.</summary>
    public Estimate ActiveFraction => new(What.ActiveFraction(PaintPh.Value), What.ActiveFraction(PaintPh.High), What.ActiveFraction(PaintPh.Low));

    /// <summary>For a recipe; null when the medium holds nothing that it is reckoned on, such as oil.</summary>
    /// <param name="what">Which.</param>
    /// <param name="recipe">The recipe.</param>
    /// <param name="stripPh">The paste's pH by a strip; null for what the medium's films have.</param>
    public static PreservativeDose? For(Preservative what, PaintRecipe recipe, double? stripPh)
    {
        ArgumentNullException.ThrowIfNull(what);
        ArgumentNullException.ThrowIfNull(recipe);
        if (recipe.Ask.Medium is not { FilmPhLow: { } low, FilmPhHigh: { } high }) return null;
        Estimate ph = stripPh is { } read ? new Estimate(read, read - StripPh, read + StripPh) : new Estimate((low + high) / 2, low, high);
        IEnumerable<PaintPart> solids = recipe.Parts.Skip(1).Where(p => !IsWater(p) && p.Name != "chalk");
        double basis = (what.OfBinder ? solids : recipe.Parts.Where(IsWater)).Sum(p => p.Grams.Value);
        return basis > 0 ? new PreservativeDose(what, new Estimate(basis * what.TypicalPercent / 100, basis * what.LowPercent / 100, basis * what.HighPercent / 100), basis, ph) : null;
    }

    private static bool IsWater(PaintPart part) => part.Name.StartsWith("water", StringComparison.Ordinal);
}
