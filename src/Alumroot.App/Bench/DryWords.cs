using System.Globalization;

namespace Alumroot.App.Bench;

/// <summary>What the weights of a drying cake say.</summary>
internal static class DryWords
{
    // Constant mass: two weighings that differ by no more than the scale can tell, or half a percent (common practice, no source; laboratories ask for less between weighings an hour apart).
    private const double ConstantShare = 0.005, ScaleSteps = 2;

    /// <summary>Whether the last two weights are the same.</summary>
    public static bool IsConstant(LakeInWork lake)
    {
        double[] grams = [.. lake.Grams(Acts.DryWeighed)];
        double step = lake.Plan?.Input.ScaleStep.Grams ?? 0.1;
        return grams is [.., var before, var now] && Math.Abs(before - now) <= Math.Max(ScaleSteps * step, ConstantShare * now);
    }

    public static IReadOnlyList<string> Progress(LakeInWork lake)
    {
        double[] grams = [.. lake.Grams(Acts.DryWeighed)];
        return grams switch
        {
            [] => [],
            [var only] => [string.Create(CultureInfo.InvariantCulture, $"First weight {only:0.0##} g. Two weights that stay the same say that it is dry.")],
            [.., var before, var now] when now > before + 0.5 => [string.Create(CultureInfo.InvariantCulture, $"It weighs {now - before:0.0##} g more than before: is a bowl in it, or did it take up damp?")],
            [.., var before, var now] when IsConstant(lake) => [string.Create(CultureInfo.InvariantCulture, $"The last two weights, {before:0.0##} and {now:0.0##} g, are the same: it is dry.")],
            [.., var before, var now] => [string.Create(CultureInfo.InvariantCulture, $"Last weight {now:0.0##} g, {before - now:0.0##} g less than before: not dry yet.")],
        };
    }
}
