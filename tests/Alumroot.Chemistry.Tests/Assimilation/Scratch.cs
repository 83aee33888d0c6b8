#pragma warning disable CA1806
using System.Diagnostics;
using System.Globalization;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
namespace Alumroot.Chemistry.Tests.Assimilation;
public class Scratch(ITestOutputHelper output)
{
    [Theory]
    [InlineData(86)] [InlineData(5)]
    public void Follow(ulong seed)
    {
        var b = new SimulatedBatch(seed);
        double whole = BenchCase.Of(new BenchHypothesis.AsRecorded(), 1, b.Input, []).First().Stoichiometric;
        double aim = ((PlanAim.ToPh)b.Input.Aim).Ph.Value;
        output.WriteLine($"{seed} {b.Input.Salts[0].Substance.Key} {b.Input.Alkali.Key} {b.Input.Temperature.Celsius:0} step {b.Input.StripStepPh} aim {aim:0.00} whole {whole:0.00}  {b.Describe()}");
        for (int i = 0; i < 40; i++)
        {
            BenchState s = Bench.State(b.Input, b.Events);
            double left = b.TrulyLeft;
            string rd = b.Events.LastOrDefault() is BenchEvent.PhRead r ? r.Ph.Value.ToString("0.00", CultureInfo.InvariantCulture) : "-";
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"x {b.Poured/whole:0.0000} read {rd} true {b.TruePh:0.00} now {s.PhNow.Value:0.00} ({s.PhNow.Low:0.00} {s.PhNow.High:0.00}) left {left/whole:0.0000} est {s.RemainingUnits.Value/whole:0.0000} ({s.RemainingUnits.Low/whole:0.0000} {s.RemainingUnits.High/whole:0.0000}) basic {s.BasicSaltRatio:0.00} next {s.Next?.Units/whole:0.0000} {s.Next?.Limit} over {s.Next?.OvershootRatio:0.00} {s.Stop} {s.Hypotheses[0].Hypothesis.GetType().Name} {s.Hypotheses[0].ProbabilityRatio:0.00} {s.Hypotheses[1].Hypothesis.GetType().Name} {s.Hypotheses[1].ProbabilityRatio:0.00} {(s.Quarrel is null ? "" : "QUARREL")}"));
            if (s.Next is not { } n) break;
            b.Pour(n.Units);
            b.Read();
        }
    }

    [Fact]
    public void Profile()
    {
        var b = new SimulatedBatch(8);
        double whole = BenchCase.Of(new BenchHypothesis.AsRecorded(), 1, b.Input, []).First().Stoichiometric;
        for (int i = 0; i < 8; i++) { b.Pour(0.095 * whole); b.Read(); }
        for (int rep = 0; rep < 3; rep++)
        {
            int n = 40;
            var sw = Stopwatch.StartNew();
            for (int i = 0; i < n; i++) Bench.State(b.Input, b.Events);
            output.WriteLine($"all {sw.Elapsed.TotalMilliseconds / n:0.00}");
            BenchCase[] cs = [.. BenchCase.Of(new BenchHypothesis.AsRecorded(), 1, b.Input, b.Events)];
            MapFit[] fits = [];
            sw.Restart();
            for (int i = 0; i < n; i++) fits = [.. cs.Select(c => MapFit.Along(c, 12)!)];
            output.WriteLine($"main fits {sw.Elapsed.TotalMilliseconds / n:0.000}");
            double fl = fits.Max(f => f.LogEvidence) - 9;
            sw.Restart();
            for (int i = 0; i < n; i++) foreach ((BenchHypothesis h, double p) in Hypotheses.For(b.Input, b.Events, new Workplace())) foreach (var c in BenchCase.Of(h, p, b.Input, b.Events)) MapFit.From(c, fits[1], 5, fl);
            output.WriteLine($"all fits {sw.Elapsed.TotalMilliseconds / n:0.000}");
            double[] sh = Evidence.Shares([.. fits.Select(f => f.LogEvidence)]);
            sw.Restart();
            for (int i = 0; i < n; i++) Guesses.Draw(fits, sh, new Reach(b.Input.Aim, whole, 0));
            output.WriteLine($"draws {sw.Elapsed.TotalMilliseconds / n:0.000}");
            sw.Restart();
            for (int i = 0; i < n; i++) { var p = new BenchTangents(cs[1], fits[1].Z, fits[1].Trail); p.FollowLog(_ => { }); }
            output.WriteLine($"tangents ctor+follow {sw.Elapsed.TotalMilliseconds / n:0.000}");
            sw.Restart();
            for (int i = 0; i < n; i++) { var p = new BenchPath(cs[1], fits[1].Z, fits[1].Trail); p.FollowLog(_ => { }); }
            output.WriteLine($"path ctor+follow {sw.Elapsed.TotalMilliseconds / n:0.000}");
            double[] zz = [.. fits[1].Z]; zz[Axis.AlkaliStrength] = 0;
            WholePath wp = null!;
            sw.Restart();
            for (int i = 0; i < n; i++) wp = WholePath.Trace(cs[1], zz, fits[1].Trail, new Reach(b.Input.Aim, whole, 0), 0.8 * whole)!;
            output.WriteLine($"whole path {sw.Elapsed.TotalMilliseconds / n:0.000} {wp.Count}");
            sw.Restart();
            for (int i = 0; i < n; i++) { var g = new StrengthGrid(cs[1], wp, cs[1].At(zz), -2, 2); }
            output.WriteLine($"strength grid {sw.Elapsed.TotalMilliseconds / n:0.000}");
            var gg = Guesses.Draw(fits, sh, new Reach(b.Input.Aim, whole, 0));
            sw.Restart();
            for (int i = 0; i < n; i++) { new NextStep(cs[1], b.Input, gg, b.Poured, whole); }
            output.WriteLine($"next {sw.Elapsed.TotalMilliseconds / n:0.000}");
            sw.Restart();
            for (int i = 0; i < n; i++) { QuarrelCheck.Check(b.Input, b.Events, [], fits); }
            output.WriteLine($"quarrel {sw.Elapsed.TotalMilliseconds / n:0.000}");
        }
    }
}
