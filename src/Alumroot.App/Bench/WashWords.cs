using System.Globalization;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Bench;

/// <summary>What the readings of the washings say.</summary>
internal static class WashWords
{
    /// <summary>Whether the last reading reached the aim.</summary>
    public static bool Enough(LakeInWork lake) => lake.Plan is { } plan && Readings(lake) is [.., var last] && last <= plan.Input.WashTo.MicrosiemensPerCentimetre;

    public static IReadOnlyList<string> Guidance(LakeInWork lake)
    {
        double[] read = Readings(lake);
        if (lake.Plan is not { } plan) return [];
        double aim = plan.Input.WashTo.MicrosiemensPerCentimetre;
        if (read.Length == 0) return [string.Create(CultureInfo.InvariantCulture, $"Aim: {aim:0} µS/cm, after about {plan.Washes.Count - 1} washes.")];
        return [read[^1] <= aim
            ? string.Create(CultureInfo.InvariantCulture, $"The meter read {read[^1]:0} µS/cm, the aim is {aim:0}: washed enough.")
            : string.Create(CultureInfo.InvariantCulture, $"The meter read {read[^1]:0} µS/cm, the aim is {aim:0}: wash again.")];
    }

    private static double[] Readings(LakeInWork lake) => [.. lake.Done.Where(d => d.Act == Acts.WashRead).SelectMany(d => d.Taken.Step.Values).Where(v => v.Name == "conductivity").Select(v => v.SiValue * 1e4)];
}
