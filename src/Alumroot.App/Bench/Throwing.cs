using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>The steps with salt and alkali: one goes in whole, the other by portions, each followed by a reading.</summary>
internal static class Throwing
{
    public static BenchStep? Begin(LakeInWork lake) => lake.Plan is not { } plan ? null
        : plan.Input.Order == OrderOfAddition.SaltFirst ? Salt(lake, plan, 0) : WholeAlkali(lake, plan);

    public static BenchStep? After(LakeInWork lake, Act latest)
    {
        if (lake.Plan is not { } plan) return null;
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        if (latest == Acts.AlkaliDone || latest == Acts.SaltDone) return null;
        if (alkaliLast)
        {
            if (latest == Acts.SaltIn || latest == Acts.SecondSaltIn)
                return lake.Count(Acts.SaltIn) + lake.Count(Acts.SecondSaltIn) < plan.Salts.Count ? Salt(lake, plan, 1) : ReadSalt(lake, plan);
            if (latest == Acts.SaltRead) return plan.Input.Alkali.Unit == SubstanceUnit.Millilitre ? Portion(lake, plan) : Dissolve(lake, plan);
            return latest == Acts.AlkaliIn ? ReadPortion(lake, plan) : Portion(lake, plan);
        }
        if (latest == Acts.AlkaliIn || latest == Acts.AlkaliDissolved) return Portion(lake, plan);
        return latest == Acts.SaltIn || latest == Acts.SecondSaltIn ? ReadPortion(lake, plan) : Portion(lake, plan);
    }

    private static BenchStep Salt(LakeInWork lake, LakePlan plan, int which)
    {
        SaltAmount salt = plan.Salts[which];
        string amount = BenchGuide.Typed(lake.Numbers.Weighed(Estimate.Exact(salt.Grams)));
        return new BenchStep(which == 0 ? Acts.SaltIn : Acts.SecondSaltIn, "Salt", $"{amount} {salt.Substance.PlainName}", new BenchPad.Amount(amount, $"Weighed {amount}", "Another weight"))
        {
            Why = [$"Dissolve it in {lake.Numbers.Poured(PlanNumbers.Enough(salt.WaterMillilitres))} of hot water, then stir it into the liquor."],
            Lot = which == 0 ? lake.Lot(LotClass.Salt) : null,
        };
    }

    private static BenchStep ReadSalt(LakeInWork lake, LakePlan plan) =>
        new(Acts.SaltRead, "Salt: the pH with the salt in", "Read the pH", ReadingKeys.Around(lake, plan.StartPh))
        {
            Why = [$"Expected {lake.Numbers.Ph90(plan.StartPh).Line}. It tells which alum it is and how sour the plant; a reading missed is no harm."],
        };

    private static BenchStep WholeAlkali(LakeInWork lake, LakePlan plan)
    {
        Substance alkali = plan.Input.Alkali;
        string amount = BenchGuide.Typed(lake.Numbers.Alkali(Estimate.Exact(plan.Alkali.Value), alkali));
        return new BenchStep(Acts.AlkaliIn, "Alkali, all of it first", $"{amount} {alkali.PlainName}", new BenchPad.Amount(amount, $"Put in {amount}", "Another amount") { Weighed = alkali.Unit == SubstanceUnit.Gram })
        {
            Why = [AlkaliHandling.Sentence(alkali, lake.Numbers.Poured(PlanNumbers.Enough(plan.AlkaliWaterMillilitres)))],
            Lot = lake.Lot(LotClass.Alkali),
        };
    }

    private static BenchStep Dissolve(LakeInWork lake, LakePlan plan)
    {
        Substance alkali = plan.Input.Alkali;
        // As much as it may take, so that the last portions need no second weighing.
        double grams = plan.Alkali.High;
        string amount = BenchGuide.Typed(lake.Numbers.Weighed(Estimate.Exact(grams)));
        string water = lake.Numbers.Poured(PlanNumbers.Enough(plan.AlkaliWaterMillilitres * grams / Math.Max(plan.Alkali.Value, 1e-9)));
        return new BenchStep(Acts.AlkaliDissolved, "Alkali: make its solution", $"{amount} {alkali.PlainName}", new BenchPad.Amount(amount, $"Weighed {amount}", "Another weight"))
        {
            Why = [$"{AlkaliHandling.Sentence(alkali, water)} This is the most it may take ({lake.Numbers.Alkali(plan.Alkali, alkali).Line}); it goes in by portions."],
            Lot = lake.Lot(LotClass.Alkali),
        };
    }

    private static BenchStep Portion(LakeInWork lake, LakePlan plan)
    {
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        Addition addition = lake.Addition!;
        string what = alkaliLast ? "Alkali" : "Salt";
        string name = alkaliLast ? plan.Input.Alkali.PlainName : plan.Salts[0].Substance.PlainName;
        Act act = alkaliLast ? Acts.AlkaliIn : Acts.SaltIn;
        Act done = alkaliLast ? Acts.AlkaliDone : Acts.SaltDone;
        if (addition.NextUnits is not { } units)
        {
            return new BenchStep(done, $"{what}: enough", "Stop here", new BenchPad.Done($"Stop: no more {name}"))
            {
                StopHere = true,
                Why = addition.Said,
                Also = [new BenchChoice(act, "Add more all the same")],
                Quarrel = addition.Quarrel,
                Explanations = addition.Explanations,
            };
        }
        string amount = BenchGuide.Typed(addition.Shown(Estimate.Exact(units)));
        string? poured = addition.Poured(units);
        return new BenchStep(act, $"{what}, portion {addition.Portions + 1}", $"Add {amount}", new BenchPad.Amount(amount, $"Added {amount}", $"Another amount of {name}") { Weighed = poured is null && !addition.IsPoured })
        {
            Why = [.. new[] { poured is null ? null : $"= {poured} of the solution." }.OfType<string>(), .. addition.Said],
            Mind = addition.Portions == 0 && plan.Input.Alkali.CarbonDioxideMolPerUnit > 0 && alkaliLast ? "Gas and froth: open window, deep pot, stand back from it." : null,
            Also = addition.Portions > 0 ? [new BenchChoice(done, "Stop here all the same")] : [],
            Quarrel = addition.Quarrel,
            Explanations = addition.Explanations,
        };
    }

    private static BenchStep ReadPortion(LakeInWork lake, LakePlan plan)
    {
        bool alkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        Addition addition = lake.Addition!;
        Estimate expected = addition.PhNow;
        return new BenchStep(alkaliLast ? Acts.AlkaliRead : Acts.SaltRead, $"{(alkaliLast ? "Alkali" : "Salt")}, after portion {addition.Portions}", "Read the pH", ReadingKeys.Around(lake, expected))
        {
            Why = [$"Expected {lake.Numbers.Ph90(expected).Line}. {Capital(AlkaliHandling.Wait(plan.Input.Alkali))}."],
        };
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
