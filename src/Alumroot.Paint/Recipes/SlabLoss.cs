using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Paint.Recipes;

/// <summary>Where the share that stays on slab and muller is known from.</summary>
public enum LossOrigin
{
    /// <summary>A judgement, from memory.</summary>
    Judged,

    /// <summary>The maker's own weighings.</summary>
    Weighed,

    /// <summary>The maker stated it.</summary>
    Stated,
}

/// <summary>The share of a wet paint that does not come off slab, muller and knife, with what dries away meanwhile.</summary>
/// <param name="Fraction">The share with its span.</param>
/// <param name="Origin">Where it is known from.</param>
/// <param name="Weighings">How many weighings it follows from.</param>
public sealed record SlabLoss(Estimate Fraction, LossOrigin Origin, int Weighings)
{
    /// <summary>More than this is no loss but a spilt paint; it is not reckoned with.</summary>
    public const double MostFraction = 0.9;

    // From here on the spread of the weighings themselves tells the span.
    private const int EnoughWeighings = 3;

    /// <summary>5 %, 2 to 12 %, for a palmful of paint on a slab that is scraped well; from memory.</summary>
    public static SlabLoss Judged { get; } = new(new Estimate(0.05, 0.02, 0.12), LossOrigin.Judged, 0);

    /// <summary>A share that the maker states; taken as exact.</summary>
    public static SlabLoss Stated(double fraction) => new(Estimate.Exact(fraction), LossOrigin.Stated, 0);

    /// <summary>
    /// From the maker's own weighings: their mean; the span is that of one more weighing by Student's t from three on, and as wide in proportion as the judgement's for one or two. The judgement when there are none.
    /// </summary>
    /// <param name="fractions">Each share, 1 less what came off over what went in.</param>
    public static SlabLoss Of(IReadOnlyList<double> fractions)
    {
        ArgumentNullException.ThrowIfNull(fractions);
        if (fractions.Count == 0) return Judged;
        double mean = fractions.Average();
        Estimate judged = Judged.Fraction;
        if (fractions.Count < EnoughWeighings) return new(new Estimate(mean, mean * judged.Low / judged.Value, Math.Min(MostFraction, mean * judged.High / judged.Value)), LossOrigin.Weighed, fractions.Count);
        int n = fractions.Count;
        double spread = Math.Sqrt(fractions.Sum(f => (f - mean) * (f - mean)) / (n - 1)), half = Distributions.StudentQuantile(0.95, n - 1) * spread * Math.Sqrt(1 + 1.0 / n);
        return new(new Estimate(mean, Math.Max(0, mean - half), Math.Min(MostFraction, mean + half)), LossOrigin.Weighed, n);
    }

    /// <summary>The share that is left, with its span.</summary>
    public Estimate KeptFraction => new(1 - Fraction.Value, 1 - Fraction.High, 1 - Fraction.Low);

    /// <summary>By which factor amounts are scaled up so that the wanted amount is left.</summary>
    public Estimate ScaleUp => new(1 / KeptFraction.Value, 1 / KeptFraction.High, 1 / KeptFraction.Low);
}
