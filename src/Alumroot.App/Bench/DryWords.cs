using Alumroot.App.Words;
using Alumroot.Chemistry.Process;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>What the weights of a drying cake say.</summary>
internal static class DryWords
{
    /// <summary>The drying as its weights tell it.</summary>
    public static Drying Of(LakeInWork lake)
    {
        (DateTimeOffset At, double Grams)[] weights = [.. lake.Done.Where(d => d.Act == Acts.DryWeighed)
            .SelectMany(d => d.Taken.Step.Values.Where(v => v.Name == "amount" && v.SiUnit == Measured.Kilogram).Select(v => (d.Taken.At, v.SiValue * 1000)))];
        return DryingFit.Of([.. weights.Select(w => new Weighing((w.At - weights[0].At).TotalHours, w.Grams))], lake.Plan?.Input.ScaleStep ?? Mass.FromGrams(0.1));
    }

    /// <summary>Whether two weights far enough apart are the same.</summary>
    public static bool IsConstant(LakeInWork lake) => Of(lake) is Drying.Constant;

    public static IReadOnlyList<string> Progress(LakeInWork lake)
    {
        string last = lake.Grams(Acts.DryWeighed).ToArray() is { Length: > 0 } grams ? Weight(lake, grams[^1]) : "";
        return Of(lake) switch
        {
            Drying.NotKnown { Weights: 0 } => [],
            Drying.NotKnown { Weights: 1 } first => [$"First weight {last}. Two weights an hour or more apart that stay the same say that it is dry. Weigh again in {Wait(first.WaitHours)}."],
            Drying.NotKnown more => [$"Last weight {last}: not dry yet. From the third weight on it can be said how long it still takes. Weigh again in {Wait(more.WaitHours)}."],
            Drying.Gained gained => [$"It weighs {Weight(lake, gained.GainGrams)} more than before: is a bowl in it, or did it take up damp?"],
            Drying.TooSoon soon => [$"The last two weights are the same, but too close in time to tell. Wait another {Wait(soon.WaitHours)}."],
            Drying.Constant => [$"The last two weights are the same, {last}: it is dry."],
            Drying.StillDrying drying => [$"Last weight {last}. By its weights it will come to {lake.Numbers.Mass90(drying.EndGrams).Line}, in about {HourWords.Of(drying.ToGoHours)}."],
            _ => [],
        };
    }

    private static string Wait(double hours) => WaitText.Of(TimeSpan.FromHours(Math.Clamp(hours, 0, 1000)));

    private static string Weight(LakeInWork lake, double grams) => lake.Numbers.Weighed(Estimate.Exact(grams)).Plain;
}
