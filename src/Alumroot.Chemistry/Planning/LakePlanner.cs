using Alumroot.Chemistry.Equilibrium;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>Plans the throwing down of a lake: amounts, path, gas, vessel, washes and yield, each with its span. Pure and reproducible.</summary>
/// <remarks>The model, its sources and its limits are on docs/models/plan.md.</remarks>
public static class LakePlanner
{
    /// <summary>Share of the metal that may stay in solution when "all" is down.</summary>
    public const double AllDownShare = 0.005;

    private const double GasConstantLitreAtm = 0.08205737;   // L atm/(mol K), from the SI value and 101325 Pa

    /// <summary>Makes a plan.</summary>
    /// <exception cref="ArgumentException">There is no salt, a salt without mass, no water, or an alkali that gives no base.</exception>
    public static PlanOutcome Plan(LakePlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Salts.Count == 0 || input.Salts.Any(s => s.Amount.Grams <= 0)) throw new ArgumentException("each salt needs a mass above zero", nameof(input));
        if (input.Water.Litres <= 0) throw new ArgumentException("the water must be more than nothing", nameof(input));
        if (input.Alkali.BaseMolPerUnit <= 0) throw new ArgumentException("the alkali gives no base", nameof(input));

        double saltWater = DissolvingWater(input.Salts.Sum(s => s.Amount.Grams), input.SaltSolubilityGramsPer100g, 4);
        double alkaliWaterPerUnit = input.Alkali.Unit == SubstanceUnit.Millilitre ? 0 : DissolvingWater(1, input.AlkaliSolubilityGramsPer100g, 8);
        var bath = new BathModel(input, saltWater, alkaliWaterPerUnit);
        double stoichiometric = Math.Max((bath.BaseForMetal + bath.BaseForAcid) / input.Alkali.BaseMolPerUnit, 1e-9);
        double given = input.Aim is PlanAim.AlkaliAmount a ? a.Units : 0;
        double rule = RuleAmount(input) ?? 0;

        double reach = Math.Max(1.6, 1.2 * Math.Max(given, rule) / stoichiometric);
        PathBundle bundle = SaltFirst(input, bath, stoichiometric, reach);
        if (bundle.Paths.Count == 0) return new PlanOutcome.NotSolved();
        double[] amounts = Amounts(input, bundle, given);
        while (input.Aim is not PlanAim.AlkaliAmount && amounts.Count(double.IsPositiveInfinity) > amounts.Length / 2 && reach < (input.Aim is PlanAim.ToPh ? 60 : 4))
        {
            reach *= 3;
            bundle = SaltFirst(input, bath, stoichiometric, reach);
            if (bundle.Paths.Count == 0) return new PlanOutcome.NotSolved();
            amounts = Amounts(input, bundle, given);
        }
        if (input.Aim is PlanAim.ToPh aim && Unreachable(aim.Ph, bundle, amounts) is { } no) return no;
        if (input.Aim is PlanAim.AllMetalDown && amounts.Count(double.IsPositiveInfinity) > amounts.Length / 2) return Stays(bundle);

        // Draws that never get there, or are there from the start, stand at the ends of the span; the plan says so when they are many.
        double beyond = amounts.Count(double.IsInfinity) / (double)amounts.Length;
        double[] within = [.. amounts.Select(x => Math.Clamp(x, 0, reach * stoichiometric))];
        SpanCause cause = input.Aim is PlanAim.AlkaliAmount ? bundle.MainCause(bundle.Read((p, f) => p.At(p.Ph, given * f))) : bundle.MainCause(within);
        Estimate alkali = input.Aim is PlanAim.AlkaliAmount ? Estimate.Exact(given) : PathBundle.Summarise(within);
        return new PlanOutcome.Planned(new PlanAssembler(input, bath, bundle, alkali, cause, stoichiometric, saltWater, alkaliWaterPerUnit, beyond).Assemble());
    }

    /// <summary>Alkali by the trade's rule of half the salt's mass, for an alkali that is weighed; null otherwise.</summary>
    internal static double? RuleAmount(LakePlanInput input) =>
        input.Alkali.Unit == SubstanceUnit.Gram && input.Salts.Count == 1 ? 0.5 * input.Salts[0].Amount.Grams : null;

    internal static double GasLitres(double moles, double celsius) => moles * GasConstantLitreAtm * (celsius + 273.15);

    /// <summary>Water that dissolves an amount with a quarter to spare, and at least a few millilitres a gram.</summary>
    internal static double DissolvingWater(double grams, double? solubilityGramsPer100g, double leastMillilitresPerGram) =>
        solubilityGramsPer100g is > 0 and var s ? grams * Math.Max(125 / s, leastMillilitresPerGram) : grams * Math.Max(10, leastMillilitresPerGram);

    /// <summary>Amounts at which a path is computed: close together where the metal is all but down.</summary>
    internal static double[] Grid(double stoichiometric, double reach)
    {
        var xs = new List<double> { 1e-7 };
        double f = 0;
        while (f < reach)
        {
            f += f < 0.1 ? 0.05 : f < 0.7 ? 0.15 : f < 1.2 ? 0.05 : f < 1.6 ? 0.1 : 0.15 * f;
            xs.Add(Math.Min(f, reach));
        }
        return xs.Select(x => x * stoichiometric).ToArray();
    }

    private static PathBundle SaltFirst(LakePlanInput input, BathModel bath, double stoichiometric, double reach)
    {
        double[] perUnit = bath.AlkaliPerUnit();
        return PathBundle.Solve(input with { Order = OrderOfAddition.SaltFirst }, bath, Grid(stoichiometric, reach), d => (bath.LiquorWithSalts(d), perUnit));
    }

    private static double[] Amounts(LakePlanInput input, PathBundle bundle, double given) => input.Aim switch
    {
        PlanAim.ToPh aim => bundle.Read((p, f) => p.FirstAtPh(aim.Ph.Value) / f),
        PlanAim.AllMetalDown => bundle.Read((p, f) => p.FirstWithDissolvedBelow(AllDownShare) / f),
        _ => bundle.Read((_, f) => given / f),
    };

    private static int LeastDissolved(PlanPath p)
    {
        int best = 0;
        for (int i = 1; i < p.Count; i++)
            if (p.DissolvedFraction[i] < p.DissolvedFraction[best]) best = i;
        return best;
    }

    private static PlanOutcome.MetalStays Stays(PathBundle bundle)
    {
        int[] least = [.. bundle.Paths.Select(LeastDissolved)];
        return new PlanOutcome.MetalStays(
            PathBundle.Summarise([.. bundle.Paths.Select((p, i) => p.DissolvedFraction[least[i]])]),
            PathBundle.Summarise([.. bundle.Paths.Select((p, i) => p.Ph[least[i]])]));
    }

    private static PlanOutcome.CannotReach? Unreachable(Ph aim, PathBundle bundle, double[] amounts)
    {
        bool below = amounts.Count(double.IsNegativeInfinity) > amounts.Length / 2;
        bool above = amounts.Count(double.IsPositiveInfinity) > amounts.Length / 2;
        if (!below && !above) return null;
        Estimate reachable = PathBundle.Summarise(bundle.Paths.Select(p => below ? p.Ph[0] : p.Ph[p.Count - 1]).ToArray());
        Estimate dissolved = PathBundle.Summarise(bundle.Paths.Select(p => below ? p.DissolvedFraction[0] : p.DissolvedFraction[p.Count - 1]).ToArray());
        double[] down = bundle.Paths.Select(p => (Path: p, X: p.FirstWithDissolvedBelow(0.01))).Where(x => double.IsFinite(x.X)).Select(x => x.Path.At(x.Path.Ph, x.X)).ToArray();
        return new PlanOutcome.CannotReach(aim, reachable, below, down.Length * 2 > bundle.Paths.Count ? PathBundle.Summarise(down) : null, dissolved);
    }
}
