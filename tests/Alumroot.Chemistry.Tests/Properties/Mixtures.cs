using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using CsCheck;

namespace Alumroot.Chemistry.Tests.Properties;

/// <summary>Random solutions of the workroom: one to five reagents over eight decades of amount, any temperature of liquid water, any gas rule, any set of solids.</summary>
internal static class Mixtures
{
    private static readonly Reagent[] Reagents = [.. EmbeddedConstants.Set.Reagents];
    private static readonly string[] Solids = [.. EmbeddedConstants.Set.Phases.Where(p => !p.IsGas).Select(p => p.Name)];
    private static readonly string[] FreshSolids =
        ["Al(OH)3(a)", "Hydrobasaluminite", "Fe(OH)2", "Fe(OH)3(a)", "Cu(OH)2", "Brochantite", "Malachite", "Zn(OH)2(am)", "Zn4(OH)6SO4", "Sn(OH)2", "Mg(OH)2(active)", "Calcite", "Gypsum", "Portlandite"];

    private static readonly Gen<(Reagent, double)> Weighed = Gen.Select(Gen.Int[0, Reagents.Length - 1], Gen.Double[-8, Math.Log10(0.5)], (i, log) => (Reagents[i], Math.Pow(10, log)));

    /// <summary>Anything at all, sane or not.</summary>
    public static readonly Gen<TitrationCase> Any = Gen.Select(Weighed.List[1, 5], Gen.Double[0, 100], Gen.Enum<GasRule>(), Gen.Bool.Array[Solids.Length], Gen.Double[0.2, 2], Gen.Int[0, Reagents.Length - 1],
        (start, celsius, gas, allowed, water, titrant) => new TitrationCase("random", celsius, water, start, Reagents[titrant], TitrationCase.Allow(Solids.Where((_, i) => allowed[i]), gas)));

    /// <summary>Solutions within the range of the activity model, with the solids that form fresh.</summary>
    public static readonly Gen<TitrationCase> Workroom = Gen.Select(
        Gen.Select(Gen.Int[0, Reagents.Length - 1], Gen.Double[-5, Math.Log10(0.05)], (i, log) => (Reagents[i], Math.Pow(10, log))).List[1, 4], Gen.Double[2, 95],
        (start, celsius) => new TitrationCase("random", celsius, 1, start, EmbeddedConstants.Set.FindReagent("sodium-hydroxide"), TitrationCase.Allow(FreshSolids, GasRule.Closed)));

    public static string Text(TitrationCase c) =>
        FormattableString.Invariant($"{c.Celsius:r} C, {c.StartWaterKg:r} kg: ") + string.Join(' ', c.Start.Select(r => FormattableString.Invariant($"{r.Reagent.Key}={r.Moles:r}"))) + " + " + c.Titrant?.Key
        + " | " + string.Join(' ', c.Phases.Select(p => p.Name));
}
