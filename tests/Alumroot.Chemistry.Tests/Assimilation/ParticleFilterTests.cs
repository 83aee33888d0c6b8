using System.Collections.Concurrent;
using System.Globalization;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>The fit with its normal approximation against a particle filter: many truths drawn before any reading, each followed along the bench, weighed by how it reads.</summary>
/// <remarks>
/// Importance sampling with systematic resampling (Gordon, Salmond and Smith 1993, from memory). It shares the equations of the bath with the engine and nothing
/// of its search, its derivatives or its normal approximation. The engine's spans hold mix-ups too, the filter's do not; so batches are taken in which none weighs much.
/// </remarks>
public class ParticleFilterTests(ITestOutputHelper output)
{
    private const int Drawn = 12_000, Kept = 240;

    [Theory]
    [InlineData(7UL, 3)]
    [InlineData(12UL, 3)]
    [InlineData(33UL, 2)]
    [InlineData(40UL, 4)]
    [InlineData(51UL, 3)]
    public void Spans_agree_with_a_particle_filter(ulong seed, int portions)
    {
        var batch = new SimulatedBatch(seed);
        for (int i = 0; i < portions; i++)
        {
            batch.Pour(Bench.State(batch.Input, batch.Events).Next!.Units);
            batch.Read();
        }
        BenchState fit = Bench.State(batch.Input, batch.Events);
        (Estimate ph, Estimate left, double effective) = Filter(batch, seed);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seed}: pH {fit.PhNow} by particles {ph}; left {fit.RemainingUnits} by particles {left}; effective {effective:0}"));
        Assert.True(fit.Hypotheses[0] is { Hypothesis: BenchHypothesis.AsRecorded, ProbabilityRatio: > 0.9 }, "a mix-up weighs too much to compare: take another batch");
        Assert.True(effective > 60, $"only {effective:0} particles count");
        // Ends of a span from some hundred particles stray by a tenth of its width or so.
        double wide = ph.High - ph.Low;
        Assert.Equal(ph.Value, fit.PhNow.Value, 0.03 + 0.15 * wide);
        Assert.Equal(ph.Low, fit.PhNow.Low, 0.03 + 0.25 * wide);
        Assert.Equal(ph.High, fit.PhNow.High, 0.03 + 0.25 * wide);
        double span = left.High - left.Low;
        Assert.Equal(left.Value, fit.RemainingUnits.Value, 0.2 * span);
        Assert.Equal(left.Low, fit.RemainingUnits.Low, 0.3 * span);
        Assert.Equal(left.High, fit.RemainingUnits.High, 0.35 * span);
    }

    private static (Estimate Ph, Estimate Left, double Effective) Filter(SimulatedBatch batch, ulong seed)
    {
        BenchCase[] cases = [.. BenchCase.Of(new BenchHypothesis.AsRecorded(), 1, batch.Input, batch.Events)];
        var particles = new ConcurrentBag<(int Number, BenchCase Case, double[] Z, double LnWeight)>();
        Parallel.For(0, Drawn, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            var random = new SeededRandom(seed * 1_000_003 + (ulong)i);
            for (int k = 0; k < 4; k++) random.NextBits();
            double u = random.NextFraction() * cases.Sum(c => c.Prior);
            BenchCase c = cases.First(c => (u -= c.Prior) <= 0 || c == cases[^1]);
            double[] z = [.. Enumerable.Range(0, Axis.Count).Select(_ => random.NextNormal())];
            if (LnLikelihood(c, z) is { } ln) particles.Add((i, c, z, ln));
        });
        var sorted = particles.OrderBy(p => p.Number).ToArray();
        double[] weights = Evidence.Shares([.. sorted.Select(p => p.LnWeight)]);
        double effective = 1 / weights.Sum(w => w * w);
        var kept = new List<(BenchCase Case, double[] Z)>();
        double sum = 0;
        int next = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            sum += weights[i];
            while (next < Kept && (next + 0.5) / Kept <= sum)
            {
                kept.Add((sorted[i].Case, sorted[i].Z));
                next++;
            }
        }
        double aim = ((Chemistry.Planning.PlanAim.ToPh)batch.Input.Aim).Ph.Value;
        var phs = new ConcurrentBag<double>();
        var lefts = new ConcurrentBag<double>();
        Parallel.ForEach(kept.Select((k, i) => (k.Case, k.Z, Number: i)), new ParallelOptions { MaxDegreeOfParallelism = 2 }, k =>
        {
            (double ph, double left) = Ahead(k.Case, k.Z, aim, new SeededRandom(seed + 77 + (ulong)k.Number));
            phs.Add(ph);
            if (double.IsFinite(left)) lefts.Add(left);
        });
        return (Spread([.. phs]), Spread([.. lefts]), effective);
    }

    // Readings stray each by itself and all with the model's slow wave.
    private static double? LnLikelihood(BenchCase c, double[] z)
    {
        double[] away = Away(c, z, out _);
        if (away.Length == 0) return null;
        c.Log.Wave.Whiten(away);
        return -Misfit.Half(away);
    }

    private static double[] Away(BenchCase c, double[] z, out BenchPath path)
    {
        BenchPath p = path = new BenchPath(c, z);
        double[] away = new double[c.Log.Readings.Count];
        bool solved = path.FollowLog(step =>
        {
            for (int r = 0; r < away.Length; r++)
                if (c.Log.Readings[r].Step == step) away[r] = c.Log.Readings[r].Value - Misfit.Predicted(c.Log.Readings[r], p);
        });
        return solved ? away : [];
    }

    private static (double Ph, double Left) Ahead(BenchCase c, double[] z, double aim, SeededRandom random)
    {
        double[] away = Away(c, z, out BenchPath path);
        for (int k = 0; k < 4; k++) random.NextBits();
        double off = path.Truth.ModelOffsetPh + c.Log.Wave.Now(away) + c.Log.Wave.SdNow * random.NextNormal();
        double from = c.Log.AlkaliUnits, x = from, ph = path.State.Ph + off, now = ph, step = 0.005 * c.Stoichiometric;
        if (ph >= aim) return (now, 0);
        while (x < 4 * c.Stoichiometric)
        {
            if (!path.Solve(x + step, 1)) return (now, double.PositiveInfinity);
            double after = path.State.Ph + off;
            if (after >= aim) return (now, x + (aim - ph) / (after - ph) * step - from);
            (ph, x) = (after, x + step);
        }
        return (now, double.PositiveInfinity);
    }

    private static Estimate Spread(double[] values)
    {
        Array.Sort(values);
        return new Estimate(At(0.5), At(0.05), At(0.95));

        double At(double q) => values[(int)Math.Clamp(q * values.Length, 0, values.Length - 1)];
    }
}
