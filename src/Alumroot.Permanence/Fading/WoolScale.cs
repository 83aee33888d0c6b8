using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Permanence.Fading;

/// <summary>On which side of the exposed references an answer lies when no number can be given.</summary>
public enum ClassBound
{
    /// <summary>Less lightfast than the least lightfast reference exposed.</summary>
    Below,

    /// <summary>More lightfast than the most lightfast reference exposed, or the difference was not reached yet.</summary>
    Above,
}

/// <summary>The class of a sample by the references that were exposed beside it: the logarithm of dose is laid straight between the two that enclose it.</summary>
internal static class WoolScale
{
    private const int Draws = 2000;
    private const ulong Seed = 20261126;

    private const double NearTheEnd = 0.25, ChanceDeviations = 1.3;

    // The scatter between strips is known from a handful, and the true form is none of those tried; simulated tests say so (docs/models/fading.md).
    internal const double Widening = 1.35;

    /// <summary>The class with its span; null with the side when it is not enclosed.</summary>
    /// <param name="sample">Dose of the sample.</param>
    /// <param name="references">Number and dose of each reference, by number; those that were not reached have their found dose beyond the exposure or infinite.</param>
    internal static (Estimate? Class, ClassBound? Bound) Of(DoseFound sample, IReadOnlyList<(int Number, DoseFound Dose)> references)
    {
        (int Number, DoseFound Dose)[] known = [.. references.Where(r => double.IsFinite(r.Dose.LogDose))];
        if (known.Length == 0) return (null, null);
        double[] means = [.. known.Select(r => r.Dose.LogDose)], deviations = [.. known.Select(r => r.Dose.Deviation)];
        int[] numbers = [.. known.Select(r => r.Number)];
        double[] rising = Rising(means, deviations);
        if (known.Length < 2) return (null, sample.LogDose < rising[0] ? ClassBound.Below : ClassBound.Above);
        if (IsBeyond(rising[0] - sample.LogDose, rising[1] - rising[0], sample.Deviation, deviations[0])) return (null, ClassBound.Below);
        if (IsBeyond(sample.LogDose - rising[^1], rising[^1] - rising[^2], sample.Deviation, deviations[^1])) return (null, ClassBound.Above);
        double value = Math.Clamp(Between(sample.LogDose, rising, numbers), numbers[0], numbers[^1]);
        var random = new SeededRandom(Seed);
        var drawn = new double[Draws];
        var at = new double[means.Length];
        for (int d = 0; d < Draws; d++)
        {
            for (int i = 0; i < at.Length; i++) at[i] = means[i] + Widening * deviations[i] * random.NextNormal();
            drawn[d] = Between(sample.LogDose + Widening * sample.Deviation * random.NextNormal(), Rising(at, deviations), numbers);
        }
        Array.Sort(drawn);
        return (new Estimate(value, Math.Min(value, Distributions.SortedQuantile(drawn, 0.05)), Math.Max(value, Distributions.SortedQuantile(drawn, 0.95))), null);
    }

    /// <summary>True when a sample lies beyond the last reference by more than chance and by more than a quarter of a class; nearer it counts as like that reference.</summary>
    private static bool IsBeyond(double beyond, double step, double one, double other) =>
        beyond > 0 && (beyond > NearTheEnd * step || beyond > ChanceDeviations * Math.Sqrt(one * one + other * other));

    /// <summary>The class at a dose; beyond the ends the nearest step goes on, for drawing spans only.</summary>
    private static double Between(double log, double[] rising, int[] numbers)
    {
        int i = 0;
        while (i < rising.Length - 2 && log > rising[i + 1]) i++;
        double step = Math.Max(rising[i + 1] - rising[i], 1e-6);
        double at = numbers[i] + (numbers[i + 1] - numbers[i]) * (log - rising[i]) / step;
        return Math.Clamp(at, numbers[0] - 0.5, numbers[^1] + 0.5);
    }

    /// <summary>The doses in rising order of class: neighbours that are out of order are drawn together by their weights (pool adjacent violators; Barlow and others 1972, from memory).</summary>
    private static double[] Rising(double[] means, double[] deviations)
    {
        var blocks = new List<(double Mean, double Weight, int Count)>();
        for (int i = 0; i < means.Length; i++)
        {
            double weight = 1 / Math.Max(deviations[i] * deviations[i], 1e-6);
            blocks.Add((means[i], weight, 1));
            while (blocks.Count > 1 && blocks[^2].Mean > blocks[^1].Mean)
            {
                (double m, double w, int c) = blocks[^1];
                (double m0, double w0, int c0) = blocks[^2];
                blocks.RemoveRange(blocks.Count - 2, 2);
                blocks.Add(((m * w + m0 * w0) / (w + w0), w + w0, c + c0));
            }
        }
        return [.. blocks.SelectMany(b => Enumerable.Repeat(b.Mean, b.Count))];
    }
}
