using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>The steps from the thrown-down lake to the sieved pigment.</summary>
internal static class Finishing
{
    private static readonly WaitKey[] Long = [new("4 hours", 240), new("overnight", 720), new("1 day", 1440), new("2 days", 2880)];

    public static BenchStep Settle(LakeInWork lake) => new(Acts.Settle, "Settle", "Let it sink", new BenchPad.Wait(Long, "Another time, such as 6 h"))
    {
        Why = ["Cover it against dust, lid loose: gas may still come. Look again when the liquid above stands clear."],
    };

    public static BenchStep? After(LakeInWork lake, Act latest)
    {
        if (latest == Acts.Settle) return DrawOff(lake);
        if (latest == Acts.DrawnOff) return WashIn(lake);
        if (latest == Acts.WashIn) return WashSettle();
        if (latest == Acts.WashSettle) return WashRead(lake);
        if (latest == Acts.WashRead) return WashWords.Enough(lake) ? WashedEnough(lake) : WashIn(lake);
        if (latest == Acts.WashDone) return FilterOn();
        if (latest == Acts.FilterOn) return FilterOff(lake);
        if (latest == Acts.FilterOff) return DryWeigh(lake, first: true);
        if (latest == Acts.DryWeighed) return DryWords.IsConstant(lake) ? Dry(lake) : DryOn(lake);
        if (latest == Acts.DryOn) return DryWeigh(lake, first: false);
        if (latest == Acts.DryDone) return Grind();
        return latest == Acts.Ground ? Sieve() : null;
    }

    private static BenchStep DrawOff(LakeInWork lake) => new(Acts.DrawnOff, "Settle: draw off", "Draw the clear off", new BenchPad.Amount(null, "", "Drawn off, such as 2 L") { Weighed = false, Skip = "Drawn off, not measured" })
    {
        Why = [First(lake) is { } wash ? $"The meter should read {lake.Numbers.Number(wash.MicrosiemensPerCm25, "µS/cm").Line} at 25 °C in what you draw off." : "Leave the pulp undisturbed."],
        Mind = "Washings with copper, tin or iron do not go to soil or drain: keep them in a labelled jar and ask the local waste authority.",
    };

    private static BenchStep WashIn(LakeInWork lake)
    {
        int number = lake.Count(Acts.WashIn) + 1;
        WashStep? planned = lake.Plan?.Washes.FirstOrDefault(w => w.Number == number) ?? lake.Plan?.Washes.LastOrDefault(w => w.Number > 0);
        string? water = planned is null ? null : BenchGuide.Typed(Shown.From(lake.Numbers.Roughly(planned.WaterMillilitres)));
        return new BenchStep(Acts.WashIn, $"Wash {number}", water is null ? "Fill up with water" : $"Fill up: {water}", new BenchPad.Amount(water, $"Filled up {water}", "Another amount, such as 2 L") { Weighed = false })
        {
            Why = WashWords.Guidance(lake),
            Also = number > 1 ? [new BenchChoice(Acts.WashDone, "Washed enough: to the cloth")] : [new BenchChoice(Acts.WashDone, "Leave it unwashed")],
        };
    }

    private static BenchStep WashedEnough(LakeInWork lake) => new(Acts.WashDone, "Wash: enough", "Stop washing", new BenchPad.Done("Washed enough: to the cloth"))
    {
        StopHere = true,
        Why = WashWords.Guidance(lake),
        Also = [new BenchChoice(Acts.WashIn, "Wash once more all the same")],
    };

    private static BenchStep WashSettle() => new(Acts.WashSettle, "Wash: let it sink", "Stir, let it sink", new BenchPad.Wait(Long, "Another time, such as 6 h"));

    private static BenchStep WashRead(LakeInWork lake)
    {
        int number = lake.Count(Acts.WashIn);
        WashStep? planned = lake.Plan?.Washes.FirstOrDefault(w => w.Number == number);
        return new BenchStep(Acts.WashRead, $"Wash {number}: read, then draw off", "Read the meter", new BenchPad.Meter("Conductivity, such as 850 µS"))
        {
            Why = planned is null ? ["In the clear liquid, before it is drawn off."] : [$"Expected {lake.Numbers.Number(planned.MicrosiemensPerCm25, "µS/cm").Line} at 25 °C. Then draw the clear off."],
        };
    }

    private static BenchStep FilterOn() => new(Acts.FilterOn, "Filter", "On the cloth", new BenchPad.Wait(Long, "Another time, such as 3 h"))
    {
        Why = ["Wet the cloth first, pour gently, and return the first cloudy run."],
    };

    private static BenchStep FilterOff(LakeInWork lake) => new(Acts.FilterOff, "Filter: off the cloth", "Weigh the wet cake", new BenchPad.Amount(null, "", "Wet cake, such as 140 g") { Skip = "Taken off, not weighed" })
    {
        Why = ["The wet cake's weight tells the loss and lets you make paint straight from the paste."],
    };

    private static BenchStep DryWeigh(LakeInWork lake, bool first) => new(Acts.DryWeighed, first ? "Dry: first weight" : "Dry: weigh again", "Weigh the cake", new BenchPad.Amount(null, "", "Weight now, such as 62.4 g") { Skip = null })
    {
        Why = first ? ["On its dish, thin, at no more than 40 °C and out of the sun. Take the bowl off."] : DryWords.Progress(lake),
        Also = [new BenchChoice(Acts.DryDone, first ? "It is dry already" : "It is dry: on to grinding")],
    };

    private static BenchStep Dry(LakeInWork lake) => new(Acts.DryDone, "Dry: constant", "It is dry", new BenchPad.Done("Dry: on to grinding"))
    {
        StopHere = true,
        Why = DryWords.Progress(lake),
        Also = [new BenchChoice(Acts.DryWeighed, "Weigh once more all the same")],
    };

    private static BenchStep DryOn(LakeInWork lake) => new(Acts.DryOn, "Dry", "Look again in", new BenchPad.Wait(Long, "Another time, such as 8 h"))
    {
        Why = DryWords.Progress(lake),
        Also = [new BenchChoice(Acts.DryDone, "It is dry: on to grinding")],
    };

    private static BenchStep Grind() => new(Acts.Ground, "Grind", "Grind, then weigh", new BenchPad.Amount(null, "", "Ground pigment, such as 14.2 g") { Skip = "Ground, not weighed" })
    {
        Mind = "Dust: wear a dust mask, wipe wet, do not sweep or blow. Copper and tin lakes are worse to breathe than they look.",
    };

    private static BenchStep Sieve() => new(Acts.Sieved, "Sieve", "Weigh each sieve", new BenchPad.Sieves(BenchGuide.SieveNames))
    {
        Also = [new BenchChoice(Acts.NotSieved, "Not sieved")],
        Mind = "Dust: lid on the sieves, mask on.",
    };

    private static WashStep? First(LakeInWork lake) => lake.Plan?.Washes.FirstOrDefault(w => w.Number == 0);
}
