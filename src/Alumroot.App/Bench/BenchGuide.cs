using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>What to do now at a batch, from its record and its plan alone. Pure: the same record gives the same step on every device and after every power cut.</summary>
public static class BenchGuide
{
    /// <summary>The step that stands.</summary>
    /// <param name="lake">The batch.</param>
    public static BenchStep Next(LakeInWork lake)
    {
        ArgumentNullException.ThrowIfNull(lake);
        if (lake.State.Stage is BatchStage.GivenUp or BatchStage.UsedUp) return Over(lake);
        return Following(lake, lake.Latest) is { } step ? step with { ReadyAt = lake.State.ReadyAt } : Over(lake);
    }

    /// <summary>The step that the maker asks for against the guide: more of what goes in last, or another bath.</summary>
    /// <param name="lake">The batch.</param>
    /// <param name="act">The act asked for.</param>
    public static BenchStep AllTheSame(LakeInWork lake, Act act)
    {
        BenchStep next = Next(lake);
        if (act == Acts.RowRead && next.Also.Any(a => a.Act == act)) return Extracting.ReadRow(lake);
        return next.Also.FirstOrDefault(a => a.Act == act) is { } also && act.Value == ActValue.Amount
            ? new BenchStep(act, next.Line, also.Label, new BenchPad.Amount(null, "", "How much, such as 1 g")) { Lot = next.Lot }
            : next;
    }

    // Each act leads to the next; what stands in the record decides, not what was on the screen.
    private static BenchStep? Following(LakeInWork lake, Act? latest)
    {
        if (latest is null) return lake.Plan?.Input.DryDyestuff is null ? Throwing.Begin(lake) : Extracting.DyestuffIn(lake);
        if (latest.Step == StepKind.Extract) return Extracting.After(lake, latest) ?? Throwing.Begin(lake);
        if (latest.Step is StepKind.Salt or StepKind.Alkali) return Throwing.After(lake, latest) ?? Finishing.Settle(lake);
        return Finishing.After(lake, latest);
    }

    private static BenchStep Over(LakeInWork lake) => new(Acts.NotSieved, "Done", lake.State.Stage switch
    {
        BatchStage.GivenUp => "Given up",
        BatchStage.UsedUp => "Used up",
        _ => lake.State.PigmentKg is { } kg ? $"{lake.Numbers.Weighed(Estimate.Exact(kg * 1000)).Plain} of pigment" : "Pigment",
    }, new BenchPad.Nothing())
    {
        Why = lake.State.GivenUp is { } given ? [given.Reason] : [$"Write {lake.State.Key} on the jar."],
    };

    /// <summary>The sieves asked for, by their openings in micrometres, and the pan beneath.</summary>
    public static IReadOnlyList<string> SieveNames { get; } = ["250", "125", "63", "pan"];

    /// <summary>The weight that the plan has for an act, in grams; null when it has none.</summary>
    internal static double? PlannedGrams(LakeInWork lake, Act act)
    {
        if (lake.Plan is not { } plan) return null;
        if (act == Acts.DyestuffIn) return plan.Input.DryDyestuff?.Grams;
        if (act == Acts.AlkaliDissolved) return plan.Alkali.High;
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        if (act == Acts.SaltIn && alkaliLast) return plan.Salts[0].Grams;
        if (act == Acts.SecondSaltIn && alkaliLast) return plan.Salts.Count > 1 ? plan.Salts[1].Grams : null;
        if (act == Acts.AlkaliIn && !alkaliLast) return plan.Input.Alkali.Unit == SubstanceUnit.Gram ? plan.Alkali.Value : null;
        return act == (alkaliLast ? Acts.AlkaliIn : Acts.SaltIn) && plan.Input.Alkali.Unit == SubstanceUnit.Gram ? lake.Addition!.NextUnits : null;
    }

    /// <summary>An amount as one would type it.</summary>
    internal static string Typed(Shown shown) => shown.Plain.Replace('\u00A0', ' ');
}
