using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>Where a lake was weighed on its way.</summary>
public enum WeighedAs
{
    /// <summary>Off the cloth, wet.</summary>
    WetCake,

    /// <summary>Dried to constant weight.</summary>
    DryCake,

    /// <summary>After grinding.</summary>
    Ground,

    /// <summary>All sieve fractions together.</summary>
    Sieved,
}

/// <summary>One row of a balance.</summary>
/// <param name="As">Where it was weighed.</param>
/// <param name="Grams">What it weighed; the span is that of the scale.</param>
/// <param name="LostGrams">Less than in the row before; null in the first.</param>
/// <param name="LostRatio">The same as a part of the row before.</param>
/// <param name="OfPlanRatio">Part of the plan's pigment; null for a wet cake or without a plan.</param>
/// <param name="MoreThanBefore">It weighs more than before by more than the scale can err: a dish on the scale, or not dry.</param>
public sealed record BalanceRow(WeighedAs As, Estimate Grams, Estimate? LostGrams, Estimate? LostRatio, Estimate? OfPlanRatio, bool MoreThanBefore);

/// <summary>Where the mass of a lake went: each weight beside the one before, and beside the plan.</summary>
public static class MassBalance
{
    /// <summary>The rows, in the order of the work.</summary>
    /// <param name="weights">What was weighed, in the order of the work.</param>
    /// <param name="scaleStep">The smallest step of the scale.</param>
    /// <param name="plannedPigment">Dry pigment by the plan, in grams; null without a plan.</param>
    public static IReadOnlyList<BalanceRow> Of(IReadOnlyList<(WeighedAs As, Mass Weight)> weights, Mass scaleStep, Estimate? plannedPigment)
    {
        ArgumentNullException.ThrowIfNull(weights);
        // A rounded weight lies anywhere in its step; a difference of two in a triangle twice as wide.
        double half = Distributions.NormalHalfWidth90 * scaleStep.Grams / Math.Sqrt(12), differenceHalf = half * Math.Sqrt(2);
        var rows = new List<BalanceRow>();
        for (int i = 0; i < weights.Count; i++)
        {
            double grams = weights[i].Weight.Grams;
            double? before = i == 0 ? null : weights[i - 1].Weight.Grams;
            double lost = (before ?? grams) - grams;
            Estimate? lostGrams = before is null ? null : new Estimate(lost, lost - differenceHalf, lost + differenceHalf);
            rows.Add(new BalanceRow(
                weights[i].As, new Estimate(grams, Math.Max(grams - half, 0), grams + half), lostGrams,
                before > 0 ? lostGrams!.Value.Times(1 / before.Value) : null,
                weights[i].As != WeighedAs.WetCake && plannedPigment is { Low: > 0 } plan ? new Estimate(grams / plan.Value, grams / plan.High, grams / plan.Low) : null,
                before is not null && -lost > 2 * differenceHalf));
        }
        return rows;
    }
}
