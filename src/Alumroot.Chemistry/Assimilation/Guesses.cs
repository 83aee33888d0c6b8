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
    // Below this share a case is not followed further; that all is as recorded always is.
    private const double LeastShare = 0.01;
    private const int LeastDraws = 8, LeastAsRecorded = 16;

    // How far along the strength of what is poured to look, at least and at most, in standard deviations of what was assumed.
    private const double LeastSpan = 1, MostSpan = 3.5;

    // One set of normals for all: the same readings give the same answer.
    private static readonly Lazy<double[,]> Normals = new(() =>
    {
        double[,] cube = LatinHypercube.Make(Most, Axis.Count + 1, 20);
        for (int i = 0; i < Most; i++)
            for (int a = 0; a <= Axis.Count; a++) cube[i, a] = Distributions.NormalQuantile(cube[i, a]);
        return cube;
    });

    internal const int Most = 48;

    private Guesses(IReadOnlyList<Guess> all, IReadOnlyDictionary<BenchCase, double> logEvidence, double unsolved) => (All, LogEvidence, UnsolvedRatio) = (all, logEvidence, unsolved);

    internal IReadOnlyList<Guess> All { get; }

    /// <summary>ln of the evidence of each case that was followed, from its guesses.</summary>
    internal IReadOnlyDictionary<BenchCase, double> LogEvidence { get; }

    internal double UnsolvedRatio { get; }

    /// <summary>Makes them.</summary>
    /// <param name="fits">The fitted cases.</param>
    /// <param name="shares">Probability of each, by the fits.</param>
    /// <param name="reach">How far to look ahead.</param>
    /// <param name="number">How many, about.</param>
    internal static Guesses Draw(IReadOnlyList<MapFit> fits, double[] shares, Reach reach, int number = Most)
    {
        var logEvidence = new Dictionary<BenchCase, double>();
        var found = new List<(MapFit Fit, List<Drawn> Own)>();
        int unsolved = 0, made = 0, row = 0;
        double asRecorded = fits.Where(f => IsMain(f)).Max(f => (double?)f.LogEvidence) ?? 0;
        for (int f = 0; f < fits.Count; f++)
        {
            // Of what is as recorded the likelier idea is always followed, the other where it has a share in that.
            bool keep = shares[f] >= LeastShare || (IsMain(fits[f]) && fits[f].LogEvidence > asRecorded - 6);
            if (!keep) continue;
            int draws = Math.Max(IsMain(fits[f]) && fits[f].LogEvidence == asRecorded ? LeastAsRecorded : LeastDraws, (int)Math.Round(number * shares[f]));
            var own = new List<Drawn>();
            for (int i = 0; i < draws; i++, row++)
            {
                made++;
                if (One(fits[f], row, reach) is { } one) own.Add(one);
                else unsolved++;
            }
            if (own.Count == 0) continue;
            double best = own.Max(o => o.Log);
            logEvidence[fits[f].Case] = Math.Log(fits[f].Case.Prior) + best + Math.Log(own.Sum(o => Math.Exp(o.Log - best)) / draws);
            found.Add((fits[f], own));
        }
        var all = new List<Guess>();
        double top = logEvidence.Count == 0 ? 0 : logEvidence.Values.Max();
        foreach ((MapFit fit, List<Drawn> own) in found)
        {
            double best = own.Max(o => o.Log);
            double[] weights = [.. own.Select(o => Math.Exp(o.Log - best))];
            // A single guess may not carry the case: weights are cut at the mean times the root of their number (Ionides 2008, truncated importance sampling, from memory).
            double cut = weights.Average() * Math.Sqrt(weights.Length);
            for (int i = 0; i < weights.Length; i++) weights[i] = Math.Min(weights[i], cut);
            double sum = weights.Sum(), share = Math.Exp(logEvidence[fit.Case] - top);
            for (int i = 0; i < own.Count; i++) all.Add(new Guess(fit.Case, own[i].Truth, share * weights[i] / sum, own[i].Ahead));
        }
        double total = all.Sum(g => g.Weight);
        return new Guesses([.. all.Select(g => g with { Weight = g.Weight / total })], logEvidence, made == 0 ? 1 : (double)unsolved / made);

        static bool IsMain(MapFit fit) => fit.Case.Hypothesis is BenchHypothesis.AsRecorded;
    }

    private readonly record struct Drawn(BenchTruth Truth, PathAhead Ahead, double Log);

    private static Drawn? One(MapFit fit, int row, Reach reach)
    {
        double[,] normals = Normals.Value;
        BenchCase c = fit.Case;
        BenchLog log = c.Log;
        int poured = c.PouredAxis, turn = row / Most;
        var z = new double[Axis.Count];
        for (int a = 0; a < Axis.Count; a++) z[a] = normals[row % Most, (a + turn) % Axis.Count];
        double wave = normals[row % Most, Axis.Count], along = Distributions.NormalFraction(z[0]), square = 2 * Misfit.Half(z.AsSpan(1)), determinant = 0;
        for (int i = 1; i < Axis.Count; i++) determinant += Math.Log(fit.Marginal[i * Axis.Count + i]);
        DenseCholesky.SolveUpper(fit.Marginal, z, Axis.Count);
        (z[0], z[poured]) = (z[poured], z[0]);
        for (int a = 0; a < Axis.Count; a++) z[a] += fit.Z[a];
        double span = Math.Max(LeastSpan, 4 / fit.Marginal[0]), low = Math.Max(-MostSpan, fit.Z[poured] - span), high = Math.Min(MostSpan, fit.Z[poured] + span);
        if (log.Readings.Count == 0) (low, high) = (-MostSpan, MostSpan);
        z[poured] = 0;
        double others = Misfit.Half(z), middle = c.PouredStrength(0), now = log.PouredAt(log.Alkali.Count - 1, c.SaltFirst);
        double perUnit = c.SaltFirst ? 1 : 1 / c.Input.Salts.Sum(s => s.Amount.Grams);
        if (WholePath.Trace(c, z, fit.Trail, reach, (now + reach.UnitsLeft * perUnit) * c.PouredStrength(high) / middle) is not { } path) return null;
        var grid = new StrengthGrid(c, path, c.At(z), low, high);
        double drawn = grid.Draw(along);
        z[poured] = drawn;
        double strength = c.PouredStrength(drawn) / middle;
        BenchTruth truth = c.At(z);
        Span<double> distance = stackalloc double[log.Readings.Count];
        grid.Distances(strength, distance);
        // What the readings say of the model's wave here, and what they leave open.
        double waveNow = log.Wave.Now(distance) + log.Wave.SdNow * wave;
        var ahead = new PathAhead(path, strength, now, perUnit, truth.ModelOffsetPh, waveNow, reach.OfPlan);
        return new Drawn(truth, ahead, grid.LogSum - others + 0.5 * square - determinant);
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
