using System.Collections.Concurrent;
using System.Globalization;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>Seeded batches with a hidden truth, each poured and read as the bench says until it says stop.</summary>
/// <remarks>
/// The ordinary run takes the first of five hundred; ALUMROOT_ALL_BATCHES=1 takes them all (docs/models/assimilation.md has what came of it). The bounds of the
/// ordinary run lie two and a half standard errors of its own number below and about those of the five hundred.
/// </remarks>
public class BenchLoopTests(ITestOutputHelper output)
{
    private const int All = 500, MostPortions = 60;

    private static readonly bool Whole = Environment.GetEnvironmentVariable("ALUMROOT_ALL_BATCHES") == "1";

    private sealed record Ended(ulong Seed, double MissPh, int Portions, int Readings, int Covered, int Counted, int Alarms, bool Accused, StopReason? Stop, string What);

    [Fact]
    public void With_narrow_strips_or_a_meter_batches_end_near_the_aim_and_spans_hold_nine_times_in_ten()
    {
        int batches = Whole ? All : 60;
        Told told = Walk(batches, coarse: false);
        double error = Math.Sqrt(0.9 * 0.1 / batches);
        Assert.True(told.There >= (Whole ? 0.90 : 0.90 - 2.5 * error), $"only {told.There:P1} end within 0.3 of the aim");
        Assert.InRange(told.Covered, 0.85, 0.95);
        Assert.True(told.Alarms <= 0.05, $"{told.Alarms:P1} of honest readings raise an alarm");
        Assert.True(told.Accused <= 0.05, $"{told.Accused:P1} of honest batches end accused of a mix-up");
    }

    [Fact]
    public void Strips_of_half_a_unit_are_known_to_be_too_coarse()
    {
        int batches = Whole ? All : 20;
        Told told = Walk(batches, coarse: true);
        Assert.True(told.There >= 0.75 - 2.5 * Math.Sqrt(0.75 * 0.25 / batches), $"only {told.There:P1} end within 0.3 of the aim");
        Assert.InRange(told.Covered, 0.82, 0.97);
    }

    private sealed record Told(double There, double Covered, double Alarms, double Accused);

    private Told Walk(int batches, bool coarse)
    {
        var all = new ConcurrentBag<Ended>();
        Parallel.For(1, batches + 1, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => all.Add(Run((ulong)i, coarse)));
        Ended[] ended = [.. all.OrderBy(e => e.Seed)];
        var told = new Told(
            ended.Count(e => Math.Abs(e.MissPh) <= BenchState.AimTolerancePh) / (double)batches,
            ended.Sum(e => e.Covered) / (double)ended.Sum(e => e.Counted),
            ended.Sum(e => e.Alarms) / (double)ended.Sum(e => e.Readings),
            ended.Count(e => e.Accused) / (double)batches);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"within 0.3: {told.There:0.000}; spans hold: {told.Covered:0.000} of {ended.Sum(e => e.Counted)}; alarms {told.Alarms:0.000} of {ended.Sum(e => e.Readings)}; accused {told.Accused:0.000}; portions {ended.Average(e => e.Portions):0.0}, median {ended.Select(e => e.Portions).Order().ElementAt(batches / 2)}"));
        foreach (Ended e in ended.Where(e => Math.Abs(e.MissPh) > BenchState.AimTolerancePh)) output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{e.Seed} {e.MissPh:0.00} {e.Stop} {e.Portions} {e.What}"));
        return told;
    }

    private static Ended Run(ulong seed, bool coarse)
    {
        var batch = new SimulatedBatch(seed, coarseStrips: coarse);
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
