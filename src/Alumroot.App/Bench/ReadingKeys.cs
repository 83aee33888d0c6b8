using System.Globalization;
using Alumroot.Quantities;

namespace Alumroot.App.Bench;

/// <summary>The keys for a pH: the likeliest readings at the strip's own steps.</summary>
internal static class ReadingKeys
{
    private const int Most = 6;
    private const double LeastStepPh = 0.1, LeastPh = 1, MostPh = 13;

    /// <summary>Six keys around what is expected.</summary>
    /// <param name="lake">The batch, for its strips.</param>
    /// <param name="expected">The pH expected.</param>
    public static BenchPad Around(LakeInWork lake, Estimate expected)
    {
        double step = Math.Max(LeastStepPh, lake.Plan?.Input.StripStepPh ?? 0.5);
        double first = Math.Clamp(Math.Round(expected.Value / step) - (Most / 2 - 1), Math.Ceiling(LeastPh / step), Math.Floor(MostPh / step) - Most + 1);
        return new BenchPad.Reading([.. Enumerable.Range(0, Most).Select(i => (first + i) * step).Select(ph =>
            new ReadingKey(ph.ToString(step < 0.5 ? "0.0#" : "0.#", CultureInfo.InvariantCulture), ph >= expected.Low - step / 2 && ph <= expected.High + step / 2))]);
    }
}
