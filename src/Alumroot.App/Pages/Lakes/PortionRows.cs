using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Pages.Lakes;

/// <summary>A portion in words.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Add">How much of the solution, or of the liquid alkali.</param>
/// <param name="Weight">The same as weight; empty when it is poured.</param>
/// <param name="Sum">All so far.</param>
/// <param name="Ph">pH to expect.</param>
/// <param name="Span">Its span.</param>
public sealed record PortionRow(int Number, string Add, string Weight, string Sum, string Ph, string? Span);

/// <summary>The portions of what goes in last, measured out of its solution.</summary>
public static class PortionRows
{
    // A gram of dissolved salt or soda takes about this much room in its solution (the plan's own figure for the liquid in the pot).
    private const double MillilitresPerDissolvedGram = 0.4;

    /// <summary>All portions of a plan.</summary>
    public static IReadOnlyList<PortionRow> Of(LakePlan plan, PlanNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(numbers);
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        bool poured = alkaliLast && plan.Input.Alkali.Unit == SubstanceUnit.Millilitre;
        double units = plan.Portions.Count > 0 ? plan.Portions[^1].TotalUnits : 0;
        double water = alkaliLast ? PlanNumbers.Enough(plan.AlkaliWaterMillilitres) : plan.Salts.Sum(s => PlanNumbers.Enough(s.WaterMillilitres));
        double solution = water + MillilitresPerDissolvedGram * units;
        return [.. plan.Portions.Select(p =>
        {
            double millilitres = poured ? p.Units : units > 0 ? solution * p.Units / units : 0;
            Shown ph = numbers.Ph90(p.PhAfter);
            return new PortionRow(p.Number, numbers.Roughly(Math.Max(1, millilitres)), poured ? "" : Weight(p.Units), poured ? numbers.Poured(p.TotalUnits) : Weight(p.TotalUnits), ph.Value, ph.Span);
        })];

        string Weight(double grams) => numbers.Weighed(Estimate.Exact(grams)).Plain;
    }
}
