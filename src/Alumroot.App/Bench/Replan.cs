using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Bench;

/// <summary>What is left to add of what goes in last, as it is known after the readings so far.</summary>
/// <param name="NextUnits">The next safe portion, in grams or millilitres; null when nothing more is to go in.</param>
/// <param name="Remaining">All that is left to add.</param>
/// <param name="PhExpected">The pH to expect after the next portion.</param>
public sealed record Replan(double? NextUnits, Estimate Remaining, Estimate? PhExpected)
{
    /// <summary>Whether to stop: nothing more is to go in.</summary>
    public bool StopHere => NextUnits is null;

    /// <summary>The plan's own portions, as long as nothing was read that says otherwise.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="addedUnits">What has gone in.</param>
    public static Replan OfPlan(LakePlan plan, double addedUnits)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Estimate left = new(Math.Max(0, plan.Alkali.Value - addedUnits), Math.Max(0, plan.Alkali.Low - addedUnits), Math.Max(0, plan.Alkali.High - addedUnits));
        Portion? next = plan.Portions.FirstOrDefault(p => p.TotalUnits > addedUnits + 0.1 * p.Units);
        return next is null ? new Replan(null, left, null) : new Replan(next.TotalUnits - addedUnits, left, next.PhAfter);
    }
}
