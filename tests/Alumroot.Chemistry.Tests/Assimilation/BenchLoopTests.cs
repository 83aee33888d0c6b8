using System.Collections.Concurrent;
using System.Globalization;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>Five hundred seeded batches with a hidden truth, each poured and read as the bench says until it says stop.</summary>
public class BenchLoopTests(ITestOutputHelper output)
{
    private const int Batches = 100, MostPortions = 40;

    private sealed record Ended(ulong Seed, double Miss, int Portions, int Readings, int Covered, int Counted, int Alarms, bool Accused, StopReason? Stop, string What);

    [Fact]
    public void Batches_end_near_the_aim_and_spans_hold_nine_times_in_ten()
    {
        var all = new ConcurrentBag<Ended>();
        Parallel.For(1, Batches + 1, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => all.Add(Run((ulong)i)));
        Ended[] ended = [.. all.OrderBy(e => e.Seed)];
        double there = ended.Count(e => Math.Abs(e.Miss) <= BenchState.AimTolerancePh) / (double)Batches;
        double covered = ended.Sum(e => e.Covered) / (double)ended.Sum(e => e.Counted);
        double alarms = ended.Sum(e => e.Alarms) / (double)ended.Sum(e => e.Readings);
        double accused = ended.Count(e => e.Accused) / (double)Batches;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"within 0.3: {there:0.000}; spans hold: {covered:0.000} of {ended.Sum(e => e.Counted)}; alarms {alarms:0.000} of {ended.Sum(e => e.Readings)}; accused {accused:0.000}; portions {ended.Average(e => e.Portions):0.0}"));
        foreach (Ended e in ended.Where(e => Math.Abs(e.Miss) > BenchState.AimTolerancePh)) output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{e.Seed} {e.Miss:0.00} {e.Stop} {e.Portions} {e.What}"));
        Assert.True(there >= 0.90, $"only {there:P1} end within 0.3 of the aim");
        Assert.InRange(covered, 0.85, 0.95);
    }

    private static Ended Run(ulong seed)
    {
        var batch = new SimulatedBatch(seed);
        double aim = ((PlanAim.ToPh)batch.Input.Aim).Ph.Value;
        int portions = 0, covered = 0, counted = 0, alarms = 0, readings = 0;
        BenchState state;
        if (seed % 2 == 0)
        {
            batch.Read();
            readings++;
        }
        while (true)
        {
            state = Bench.State(batch.Input, batch.Events);
            if (state.Quarrel is not null) alarms++;
            double left = batch.TrulyLeft;
            counted++;
            if (state.RemainingUnits.Low <= left + 0.05 && left <= state.RemainingUnits.High + 0.05) covered++;
            if (state.Next is not { } next || portions == MostPortions) break;
            batch.Pour(next.Units);
            batch.Read();
            portions++;
            readings++;
        }
        bool accused = state.Hypotheses[0].Hypothesis is not BenchHypothesis.AsRecorded;
        return new Ended(seed, batch.TruePh - aim, portions, readings, covered, counted, alarms, accused, state.Stop, $"{batch.Input.Salts[0].Substance.Key} {batch.Input.Alkali.Key} {batch.Input.Temperature.Celsius:0} {batch.Input.StripStepPh}");
    }
}
