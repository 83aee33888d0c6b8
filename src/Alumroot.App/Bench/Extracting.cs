using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>The steps from the dry plant to the strained liquor.</summary>
internal static class Extracting
{
    private static readonly WaitKey[] Times = [new("30 minutes", 30), new("1 hour", 60), new("2 hours", 120), new("overnight", 720)];

    public static BenchStep DyestuffIn(LakeInWork lake)
    {
        LakePlan plan = lake.Plan!;
        string amount = BenchGuide.Typed(lake.Numbers.Weighed(Estimate.Exact(plan.Input.DryDyestuff!.Value.Grams)));
        string noun = PlanSentence.NounOf(lake.Answer!.Dyestuff);
        return new BenchStep(Acts.DyestuffIn, "Extract: the plant into the water", $"{amount} {noun}", new BenchPad.Amount(amount, $"Put in {amount}", "Dry weight that went in"))
        {
            Why = [$"Into {lake.Numbers.Poured(plan.Input.Water.Millilitres)} of water. Dry weight counts; four parts fresh are about one dry."],
            Lot = lake.Lot(LotClass.Dyestuff),
        };
    }

    public static BenchStep? After(LakeInWork lake, Act latest) =>
        latest == Acts.DyestuffIn || latest == Acts.AnotherBath ? DrawOut(lake)
        : latest == Acts.DrawOut ? Strain(lake)
        : latest == Acts.Strained || latest == Acts.RowRead ? ReadLiquor(lake)
        : null;

    private static BenchStep DrawOut(LakeInWork lake)
    {
        int bath = lake.Count(Acts.DrawOut) + 1;
        string warm = lake.Plan is { } plan ? lake.Numbers.Warm(plan.Input.Temperature) : "the heat of the plan";
        return new BenchStep(Acts.DrawOut, bath == 1 ? "Extract: draw the colour out" : $"Extract: bath {bath}", "How long?", new BenchPad.Wait(Times, "Another time, such as 90 min or 6 h"))
        {
            Why = [$"Keep it at {warm}, no hotter than the dyestuff stands; stir now and then. Never over an open flame with a solvent: the handbook's page Solvent in the air reckons your room."],
        };
    }

    private static BenchStep Strain(LakeInWork lake)
    {
        string? planned = lake.Plan is { } plan && lake.Count(Acts.Strained) == 0 ? BenchGuide.Typed(Shown.From(lake.Numbers.Poured(plan.Input.Water.Millilitres))) : null;
        return new BenchStep(Acts.Strained, "Extract: strain", "Strain the liquor off", new BenchPad.Amount(planned, $"Strained {planned}", "Liquor strained off, such as 2.6 L") { Weighed = false })
        {
            Why = ["Press the plant out gently. Fill up with water to the planned volume if some boiled away."],
        };
    }

    /// <summary>The dilution row of the liquor that was strained last.</summary>
    public static BenchStep ReadRow(LakeInWork lake) =>
        new(Acts.RowRead, $"Extract: dilution row of bath {Math.Max(1, lake.Count(Acts.Strained))}", "Thin it, read each glass", new BenchPad.Row("Each glass: part of liquor, absorbance"))
        {
            Why =
            [
                "Such as 1/2 0.62; 1/4 0.31; 1/8 0.16. Glasses between 0.05 and 1.5 count.",
                "Without an instrument give the light through the glass and through the same glass with water, as 1/4 49:100; the light must be linear, not the numbers of a picture.",
            ],
        };

    private static BenchStep ReadLiquor(LakeInWork lake) =>
        new(Acts.LiquorRead, "Extract: the liquor's own pH", "Read the pH", ReadingKeys.Around(lake, new Estimate(5, 4, 6)))
        {
            Why = [.. PlantWords.RowRemark(lake) is { } remark ? [remark] : Array.Empty<string>(), "A strip on the cooled liquor, before anything goes in. On a strongly coloured liquor look through the back of the strip.", .. PlantWords.Of(lake)],
            Also = [new BenchChoice(Acts.AnotherBath, "Another bath of the same plant"), new BenchChoice(Acts.RowRead, "Read a dilution row")],
        };
}
