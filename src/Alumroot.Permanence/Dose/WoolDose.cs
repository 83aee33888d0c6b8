using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Permanence.Dose;

/// <summary>How far one reference has changed.</summary>
/// <param name="Series">Which series.</param>
/// <param name="Reference">Its number, 1 to 8, or 2 to 9 of the American series.</param>
/// <param name="DeltaE">CIE 1976 difference from its covered half.</param>
public readonly record struct WoolReading(WoolSeries Series, int Reference, double DeltaE);

/// <summary>The dose as the references beside the samples tell it, where no meter was at hand.</summary>
/// <remarks>
/// A reference takes its published dose to grey scale 4, a difference of 1.7, and about as long again to grey scale 3, 3.4: so its difference is laid straight through both. Beyond 3.4 it bends, and the
/// span grows. Each published dose is known within a factor of two; the errors of a table hang together, so many references do not make it much surer.
/// </remarks>
public static class WoolDose
{
    private const double Noticeable = 1.7, Straight = 3.4, Farthest = 8, LeastSigned = 0.5;

    // How much the published doses of two references err together; judgement.
    private const double Together = 0.5;

    /// <summary>The dose; null when no reference has changed enough to be read and none is known.</summary>
    /// <param name="readings">One or more references.</param>
    /// <param name="light">Whether the light has its ultraviolet.</param>
    /// <param name="deviationDeltaE">Standard deviation of one of the three parts (L*, a*, b*) of a difference between two readings of a patch.</param>
    public static LightDose? Of(IReadOnlyList<WoolReading> readings, LightKind light, double deviationDeltaE = 0.3)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviationDeltaE);
        var told = new List<(double Log, double Own, double Table)>();
        foreach (WoolReading reading in readings)
        {
            // A length of three noisy parts is lifted near nothing; noise is taken off in squares.
            double square = reading.DeltaE * reading.DeltaE - 3 * deviationDeltaE * deviationDeltaE;
            if (square < LeastSigned * LeastSigned || reading.DeltaE > Farthest || WoolDoses.Find(reading.Series, reading.Reference, light) is not { } known) continue;
            double change = Math.Sqrt(square), bend = change > Straight ? Math.Log(change / Straight) : 0;
            told.Add((Math.Log(known.Megalux * change / Noticeable), Math.Sqrt(Math.Pow(deviationDeltaE / change, 2) + bend * bend + 0.15 * 0.15), Math.Log(known.Factor) / Distributions.NormalHalfWidth90));
        }
        if (told.Count == 0) return null;
        double weight = told.Sum(t => Weight(t)), mean = told.Sum(t => Weight(t) * t.Log) / weight;
        double apart = told.Sum(t => Math.Pow(Weight(t) / weight, 2) * (t.Own * t.Own + (1 - Together) * t.Table * t.Table)), together = Together * Math.Pow(told.Sum(t => Weight(t) / weight * t.Table), 2);
        double half = Distributions.NormalHalfWidth90 * Math.Sqrt(apart + together);
        return new LightDose(new Estimate(Math.Exp(mean), Math.Exp(mean - half), Math.Exp(mean + half)), DoseWay.References);
    }

    private static double Weight((double Log, double Own, double Table) told) => 1 / (told.Own * told.Own + told.Table * told.Table);
}
