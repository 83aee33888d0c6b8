using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>One line of planned beside actual.</summary>
/// <param name="What">What is compared.</param>
/// <param name="Planned">As planned, with its span; empty when nothing was planned.</param>
/// <param name="Actual">What was done; empty when not yet, or not measured.</param>
public sealed record StepRow(string What, string Planned, string Actual);

/// <summary>A batch's steps, planned and actual, in the order of the work.</summary>
public static class StepTable
{
    /// <summary>The lines that have something to say.</summary>
    public static IReadOnlyList<StepRow> Of(LakeInWork lake)
    {
        ArgumentNullException.ThrowIfNull(lake);
        return [.. Rows(lake).Where(r => r.Planned.Length + r.Actual.Length > 0)];
    }

    private static IEnumerable<StepRow> Rows(LakeInWork lake)
    {
        LakePlan? plan = lake.Plan;
        PlanNumbers numbers = lake.Numbers;
        bool alkaliLast = plan?.Input.Order != OrderOfAddition.AlkaliFirst;
        yield return new("dyestuff, dry", plan?.Input.DryDyestuff is { } dry ? Mass(dry.Grams) : "", Sum(lake, Acts.DyestuffIn));
        yield return new("liquor", plan is null ? "" : numbers.Poured(plan.Input.Water.Millilitres), Sum(lake, Acts.Strained));
        yield return new("pH of the liquor", plan?.Input.LiquorPh is { } ph ? ph.Value.ToString("0.0", CultureInfo.InvariantCulture) : "", Last(lake, Acts.LiquorRead, "ph"));
        for (int i = 0; i < (plan?.Salts.Count ?? 1); i++)
            yield return new(plan?.Salts[i].Substance.PlainName ?? "salt", plan is null ? "" : Mass(plan.Salts[i].Grams), Sum(lake, i == 0 ? Acts.SaltIn : Acts.SecondSaltIn));
        if (alkaliLast) yield return new("pH with the salt in", plan is null ? "" : numbers.Ph90(plan.StartPh).Line, Last(lake, Acts.SaltRead, "ph"));
        yield return new(plan?.Input.Alkali.PlainName ?? "alkali", plan is null ? "" : numbers.Alkali(plan.Alkali, plan.Input.Alkali).Line, Sum(lake, Acts.AlkaliIn));
        yield return new("pH at the end", plan is null ? "" : numbers.Ph90(plan.EndPh).Line, Last(lake, alkaliLast ? Acts.AlkaliRead : Acts.SaltRead, "ph"));
        yield return new("washes", plan is null ? "" : $"{Math.Max(0, plan.Washes.Count - 1)}", lake.Count(Acts.WashIn) is > 0 and var n ? n.ToString(CultureInfo.InvariantCulture) : "");
        yield return new("last meter reading", plan is null ? "" : $"{plan.Input.WashTo.MicrosiemensPerCentimetre:0}\u00A0µS/cm", Last(lake, Acts.WashRead, "conductivity"));
        yield return new("wet cake", "", Sum(lake, Acts.FilterOff));
        yield return new("dry cake", plan is null ? "" : numbers.Mass90(plan.YieldGrams).Line, LastAmount(lake, Acts.DryDone) is { Length: > 0 } done ? done : lake.Count(Acts.DryDone) > 0 ? LastAmount(lake, Acts.DryWeighed) : "");
        yield return new("ground", "", LastAmount(lake, Acts.Ground));
        yield return new("sieved, all fractions", "", LastAmount(lake, Acts.Sieved));

        string Mass(double grams) => numbers.Weighed(Estimate.Exact(grams)).Plain;
    }

    private static string Sum(LakeInWork lake, Act act)
    {
        double grams = lake.Grams(act).Sum(), millilitres = lake.Millilitres(act).Sum();
        string mass = grams > 0 ? lake.Numbers.Weighed(Estimate.Exact(grams)).Plain : "", volume = millilitres > 0 ? lake.Numbers.Poured(millilitres) : "";
        return mass.Length > 0 && volume.Length > 0 ? $"{mass} and {volume}" : mass + volume;
    }

    private static string LastAmount(LakeInWork lake, Act act) => lake.Grams(act).ToArray() is { Length: > 0 } grams ? lake.Numbers.Weighed(Estimate.Exact(grams[^1])).Plain : "";

    private static string Last(LakeInWork lake, Act act, string name) =>
        lake.Done.Where(d => d.Act == act).SelectMany(d => d.Taken.Step.Values).LastOrDefault(v => v.Name == name) is { } value ? value.Typed : "";
}
