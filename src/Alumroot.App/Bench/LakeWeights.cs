using System.Globalization;
using Alumroot.Chemistry.Process;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Bench;

/// <summary>What a lake weighed on its way, from its record.</summary>
internal static class LakeWeights
{
    /// <summary>The weights in the order of the work.</summary>
    public static IReadOnlyList<(WeighedAs As, Mass Weight)> Of(LakeInWork lake)
    {
        var weights = new List<(WeighedAs, Mass)>();
        foreach ((WeighedAs weighed, Act act) in new[] { (WeighedAs.WetCake, Acts.FilterOff), (WeighedAs.DryCake, Acts.DryDone), (WeighedAs.Ground, Acts.Ground), (WeighedAs.Sieved, Acts.Sieved) })
        {
            double[] grams = [.. lake.Grams(act)];
            if (act == Acts.DryDone && grams.Length == 0 && lake.Count(Acts.DryDone) > 0) grams = [.. lake.Grams(Acts.DryWeighed)];
            if (grams.Length > 0) weights.Add((weighed, Mass.FromGrams(grams[^1])));
        }
        return weights;
    }

    /// <summary>The curve of the last sieving; null when it was not sieved.</summary>
    public static SizeCurve? Curve(LakeInWork lake, Mass scaleStep)
    {
        if (lake.Done.LastOrDefault(d => d.Act == Acts.Sieved).Taken is not { } sieved) return null;
        var retained = new List<(double OpeningMicrometres, Mass Retained)>();
        Mass pan = default;
        foreach (Measured value in sieved.Step.Values.Where(v => v.Name.StartsWith(BenchForm.Sieve, StringComparison.Ordinal)))
        {
            var mass = Mass.FromGrams(value.SiValue * 1000);
            if (double.TryParse(value.Name.AsSpan(BenchForm.Sieve.Length), NumberStyles.Float, CultureInfo.InvariantCulture, out double opening)) retained.Add((opening, mass));
            else pan = mass;
        }
        return SizeCurve.Of([.. retained.GroupBy(r => r.OpeningMicrometres).Select(g => (g.Key, Mass.FromGrams(g.Sum(r => r.Retained.Grams))))], pan, scaleStep);
    }
}
