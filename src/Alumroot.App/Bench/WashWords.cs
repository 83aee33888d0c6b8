using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Chemistry.Process;
using Alumroot.Quantities;

namespace Alumroot.App.Bench;

/// <summary>What the readings of the washings say.</summary>
internal static class WashWords
{
    /// <summary>Whether the last reading reached the aim.</summary>
    public static bool Enough(LakeInWork lake) => lake.Plan is { } plan && Readings(lake) is [.., var last] && last <= plan.Input.WashTo.MicrosiemensPerCentimetre;

    /// <summary>How far the washing is, and what to do.</summary>
    public static IReadOnlyList<string> Guidance(LakeInWork lake)
    {
        if (lake.Plan is not { } plan) return [];
        double[] read = Readings(lake);
        double aim = plan.Input.WashTo.MicrosiemensPerCentimetre;
        if (read.Length == 0) return [string.Create(CultureInfo.InvariantCulture, $"Aim: {aim:0} µS/cm, after about {plan.Washes.Count - 1} washes.")];
        string now = string.Create(CultureInfo.InvariantCulture, $"The meter read {read[^1]:0} µS/cm, the aim is {aim:0}");
        if (read[^1] <= aim) return [$"{now}: washed enough."];
        WashState state = Progress(plan, read);
        return state.Oddity switch
        {
            WashOddity.AimBelowWater => [$"{now}, but the water itself reads about {plan.WashWaterMicrosiemensPerCentimetre.ToString("0", CultureInfo.InvariantCulture)}: no washing with it gets there. Stop when the reading no longer falls."],
            WashOddity.NotFalling => [$"{now}, and it hardly fell. Stir the pulp up well, let it sink again, and draw off as much as you can. Salt that sits in the lake itself does not wash out."],
            WashOddity.BelowWater => [$"{now}. That is less than the water itself is taken to read: measure the water, or the meter is off."],
            _ => [$"{now}: wash again, {ToGo(state.WashesToGo)} more by what the readings say{(read.Length > 1 ? $"; {PlanNumbers.PercentSpan(state.KeptRatio)} of the salt stays at each draining" : "")}."],
        };
    }

    private static WashState Progress(LakePlan plan, double[] read)
    {
        double own = double.IsFinite(plan.WashWaterMicrosiemensPerCentimetre) ? plan.WashWaterMicrosiemensPerCentimetre : 0;
        return WashProgress.Of([.. read.Select(Conductivity.FromMicrosiemensPerCentimetre)], Conductivity.FromMicrosiemensPerCentimetre(own), plan.Input.WashTo);
    }

    private static string ToGo(Estimate washes)
    {
        int low = Whole(washes.Low), high = Whole(washes.High);
        return high >= 50 ? $"{low} or many" : low == high ? low == 1 ? "once" : $"{low}" : $"{low} to {high}";

        static int Whole(double w) => (int)Math.Clamp(Math.Ceiling(w - 1e-9), 1, 50);
    }

    private static double[] Readings(LakeInWork lake) => [.. lake.Done.Where(d => d.Act == Acts.WashRead).SelectMany(d => d.Taken.Step.Values).Where(v => v.Name == "conductivity").Select(v => v.SiValue * 1e4)];
}
