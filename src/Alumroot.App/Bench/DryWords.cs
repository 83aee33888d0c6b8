using System.Globalization;

namespace Alumroot.App.Bench;

/// <summary>What the weights of a drying cake say.</summary>
internal static class DryWords
{
    public static IReadOnlyList<string> Progress(LakeInWork lake)
    {
        double[] grams = [.. lake.Grams(Acts.DryWeighed)];
        return grams.Length == 0 ? [] : [string.Create(CultureInfo.InvariantCulture, $"Last weight {grams[^1]:0.0##} g.")];
    }
}
