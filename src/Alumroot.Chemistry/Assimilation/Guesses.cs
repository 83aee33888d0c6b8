using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>One truth that the readings allow, with its weight and its path to come.</summary>
/// <param name="Case">Its case.</param>
/// <param name="Truth">The truth.</param>
/// <param name="Weight">Its weight among all; they sum to 1.</param>
/// <param name="Ahead">The path from now on; pH with the model's offset.</param>
internal sealed record Guess(BenchCase Case, BenchTruth Truth, double Weight, PathAhead Ahead);

/// <summary>Draws from Laplace's normals of the likely cases, each followed exactly through the log and weighed by how well it really fits.</summary>
internal sealed class Guesses
{
    // Below this share a case is not followed further.
    private const double LeastShare = 0.005;
    private const int LeastDraws = 12;

    // One set of normals for all: the same readings give the same answer.
    private static readonly Lazy<double[,]> Normals = new(() =>
    {
        double[,] cube = LatinHypercube.Make(Most, Axis.Count, 20);
        for (int i = 0; i < Most; i++)
            for (int a = 0; a < Axis.Count; a++) cube[i, a] = Distributions.NormalQuantile(cube[i, a]);
        return cube;
    });

    internal const int Most = 96;

    private Guesses(IReadOnlyList<Guess> all, double unsolved) => (All, UnsolvedRatio) = (all, unsolved);

    internal IReadOnlyList<Guess> All { get; }

    internal double UnsolvedRatio { get; }

    /// <summary>Makes them.</summary>
    /// <param name="fits">The fitted cases.</param>
    /// <param name="shares">Probability of each.</param>
    /// <param name="reach">How far to look ahead.</param>
    /// <param name="number">How many, about.</param>
    internal static Guesses Draw(IReadOnlyList<MapFit> fits, double[] shares, Reach reach, int number = Most)
    {
        var all = new List<Guess>();
        double[,] normals = Normals.Value;
        int unsolved = 0, made = 0, row = 0;
        var z = new double[Axis.Count];
        double kept = shares.Where(s => s >= LeastShare).Sum();
        for (int f = 0; f < fits.Count; f++)
        {
            if (shares[f] < LeastShare) continue;
            MapFit fit = fits[f];
            int draws = Math.Max(LeastDraws, (int)Math.Round((number - LeastDraws) * shares[f] / kept));
            var own = new List<(BenchTruth Truth, PathAhead Ahead, double Log)>();
            for (int i = 0; i < draws; i++, row++)
            {
                made++;
                double square = 0;
                for (int a = 0; a < Axis.Count; a++)
                {
                    z[a] = normals[row % Most, (a + row / Most) % Axis.Count];
                    square += z[a] * z[a];
                }
                DenseCholesky.SolveUpper(fit.Lower, z, Axis.Count);
                for (int a = 0; a < Axis.Count; a++) z[a] += fit.Z[a];
                BenchTruth truth = fit.Case.At(z);
                var path = new BenchPath(fit.Case, truth);
                double misfit = Misfit.OfPrior(z);
                if (!path.FollowLog(step => misfit += At(step, path)) || PathAhead.Follow(path, reach) is not { } ahead)
                {
                    unsolved++;
                    continue;
                }
                own.Add((truth, ahead, 0.5 * square - misfit));
            }
            if (own.Count == 0) continue;
            double top = own.Max(o => o.Log);
            double[] weights = [.. own.Select(o => Math.Exp(o.Log - top))];
            // A single guess may not carry the case: weights are cut at the mean times the root of their number (Ionides 2008, truncated importance sampling, from memory).
            double cut = weights.Average() * Math.Sqrt(weights.Length);
            for (int i = 0; i < weights.Length; i++) weights[i] = Math.Min(weights[i], cut);
            double sum = weights.Sum();
            for (int i = 0; i < own.Count; i++) all.Add(new Guess(fit.Case, own[i].Truth, shares[f] / kept * weights[i] / sum, own[i].Ahead));

            double At(int step, BenchPath path)
            {
                double add = 0;
                foreach (BenchReading r in fit.Case.Log.Readings)
                    if (r.Step == step) add += Misfit.OfReading(r, Misfit.Predicted(r, path));
                return add;
            }
        }
        double total = all.Sum(g => g.Weight);
        return new Guesses([.. all.Select(g => g with { Weight = g.Weight / total })], made == 0 ? 1 : (double)unsolved / made);
    }

    /// <summary>Probability of what a guess says is so.</summary>
    internal double Share(Func<Guess, bool> so)
    {
        double sum = 0;
        foreach (Guess g in All)
            if (so(g)) sum += g.Weight;
        return sum;
    }

    /// <summary>Median with 5 and 95 % points of what is read from each guess.</summary>
    internal Quantities.Estimate Read(Func<Guess, double> value) => Read(All, value);

    /// <summary>The same of some guesses only.</summary>
    internal static Quantities.Estimate Read(IReadOnlyList<Guess> some, Func<Guess, double> value) => Spans(some, value, 0.05);

    /// <summary>Median with other points.</summary>
    internal static Quantities.Estimate Spans(IReadOnlyList<Guess> some, Func<Guess, double> value, double tail)
    {
        double[] values = [.. some.Select(value)], weights = [.. some.Select(g => g.Weight)];
        double total = weights.Sum();
        for (int i = 0; i < weights.Length; i++) weights[i] /= total;
        Array.Sort(values, weights);
        return new Quantities.Estimate(Distributions.WeightedQuantile(values, weights, 0.5), Distributions.WeightedQuantile(values, weights, tail), Distributions.WeightedQuantile(values, weights, 1 - tail));
    }
}
