using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>One bath of the same plant.</summary>
/// <param name="Strained">Liquor strained off.</param>
/// <param name="KeptByPlant">Liquor that stayed in the plant: what was poured on and is not strained off.</param>
/// <param name="Strength">Colour of the strained liquor in any unit that is the same for all baths, such as the absorbance of the liquor; null when it was not measured.</param>
public sealed record Bath(Volume Strained, Volume KeptByPlant, Estimate? Strength);

/// <summary>What the baths tell of the plant. Amounts are shares of all the colour that water of this kind can draw.</summary>
/// <param name="DrawnRatio">Strained off so far, all baths together.</param>
/// <param name="LeftRatio">Still in the plant, dissolved or not.</param>
/// <param name="ReleasedRatio">Part of what is in the plant that one bath brings into solution.</param>
/// <param name="NextOfFirstRatio">What one more bath of the same volumes would bring, as a part of what the first brought.</param>
/// <param name="Measured">How many baths were measured; with none of them only what is usual stands behind the shares.</param>
public sealed record PlantState(Estimate DrawnRatio, Estimate LeftRatio, Estimate ReleasedRatio, Estimate NextOfFirstRatio, int Measured);

/// <summary>Cross-current extraction in stages: each bath brings a part of what is left into solution, and of that the strained part of the liquid is won.</summary>
/// <remarks>
/// The part is the same in each bath and is learned from the strengths of the liquors; the whole amount of colour drops out. Formulas, limits and tests:
/// docs/models/extraction.md.
/// </remarks>
public static class ExtractionStages
{
    private const int Steps = 99;

    // Between baths the volumes and the handling differ by so much; our judgement, no source.
    private const double HandlingLnSd = 0.08;

    /// <summary>Part of all the colour that each bath brings, by the model.</summary>
    /// <param name="baths">The baths in order; strengths are not looked at.</param>
    /// <param name="releasedRatio">Part of what is in the plant that one bath brings into solution, above 0 to 1.</param>
    /// <param name="leftRatio">What is left in the plant after the last.</param>
    public static double[] WonRatio(IReadOnlyList<Bath> baths, double releasedRatio, out double leftRatio)
    {
        ArgumentNullException.ThrowIfNull(baths);
        double bound = 1, dissolved = 0;
        double[] won = new double[baths.Count];
        for (int k = 0; k < won.Length; k++)
        {
            dissolved += releasedRatio * bound;
            bound -= releasedRatio * bound;
            double all = baths[k].Strained.Litres + baths[k].KeptByPlant.Litres;
            double share = all > 0 ? baths[k].Strained.Litres / all : 0;
            won[k] = share * dissolved;
            dissolved -= won[k];
        }
        leftRatio = bound + dissolved;
        return won;
    }

    /// <summary>What the baths tell; null without a bath from which liquor was strained.</summary>
    /// <param name="baths">The baths in order.</param>
    public static PlantState? Of(IReadOnlyList<Bath> baths)
    {
        ArgumentNullException.ThrowIfNull(baths);
        if (baths.Count == 0 || baths.Any(b => b.Strained.Litres <= 0)) return null;
        int[] measured = [.. Enumerable.Range(0, baths.Count).Where(k => baths[k].Strength is { Value: > 0 })];
        Bath[] oneMore = [.. baths, baths[^1]];
        double[] released = new double[Steps], left = new double[Steps], next = new double[Steps], ln = new double[Steps];
        for (int i = 0; i < Steps; i++)
        {
            double e = released[i] = (i + 1) / (Steps + 1.0);
            double[] won = WonRatio(oneMore, e, out _);
            _ = WonRatio(baths, e, out left[i]);
            next[i] = won[^1] / won[0];
            ln[i] = LnUsual(e) + LnLikelihood(baths, measured, won);
        }
        double top = ln.Max(), sum = ln.Sum(l => Math.Exp(l - top));
        double[] weights = [.. ln.Select(l => Math.Exp(l - top) / sum)];
        Estimate leftRatio = Spread(left, weights);
        return new PlantState(
            new Estimate(1 - leftRatio.Value, 1 - leftRatio.High, 1 - leftRatio.Low), leftRatio, Spread(released, weights), Spread(next, weights), measured.Length);
    }

    // A bath brings most of what is there and never quite all: a beta density of mean two thirds; our judgement, no source.
    private static double LnUsual(double e) => Math.Log(e) * 2.0 + Math.Log(1 - e);

    // The whole amount of colour is not known: only how the baths compare counts.
    private static double LnLikelihood(IReadOnlyList<Bath> baths, int[] measured, double[] won)
    {
        if (measured.Length < 2) return 0;
        double weights = 0, sum = 0, squares = 0;
        foreach (int k in measured)
        {
            Estimate s = baths[k].Strength!.Value;
            double sd = Math.Max((s.High - s.Low) / (2 * Distributions.NormalHalfWidth90 * s.Value), 0);
            double weight = 1 / (sd * sd + HandlingLnSd * HandlingLnSd);
            double away = Math.Log(s.Value * baths[k].Strained.Litres) - Math.Log(won[k]);
            weights += weight;
            sum += weight * away;
            squares += weight * away * away;
        }
        return -0.5 * (squares - sum * sum / weights);
    }

    private static Estimate Spread(double[] values, double[] weights)
    {
        double[] sorted = [.. values], by = [.. weights];
        Array.Sort(sorted, by);
        return new Estimate(At(0.5), At(0.05), At(0.95));

        double At(double q) => Distributions.WeightedQuantile(sorted, by, q);
    }
}
