using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using BenchmarkDotNet.Attributes;

namespace Alumroot.Benchmarks;

/// <summary>The measured titration: 0.05 mol/kg potash alum, 0.09 mol/kg sodium carbonate in 5,000 steps, 25 C, fresh aluminium hydroxide and venting allowed. Figures are per step.</summary>
[MemoryDiagnoser, MinColumn]
public class TitrationBenchmarks
{
    private const int Steps = 5000;
    private const double SodaMol = 0.09;

    private readonly ConstantSet _set = EmbeddedConstants.Set;
    private TitrationCase _case = null!;
    private InputChange[] _inputs = [];
    private TitrationRun _plain = null!, _tracked = null!;

    /// <summary>Makes the case.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        Reagent alum = _set.FindReagent("potassium-alum-dodecahydrate")!;
        _case = new TitrationCase("alum and soda", 25, 1, [(alum, 0.05)], _set.FindReagent("sodium-carbonate"), TitrationCase.Allow(["Al(OH)3(a)"], GasRule.Vented));
        _inputs =
        [
            new InputChange.StartAmount(alum), new InputChange.TitrantAmount(), new InputChange.TitrantStrength(), new InputChange.StartWater(), new InputChange.Temperature(),
            new InputChange.PhaseLog10K("Al(OH)3(a)"), new InputChange.PhaseLog10K("CO2(g)"), new InputChange.SpeciesLog10K("AlSO4+"),
        ];
    }

    /// <summary>Fresh runs, taken past their set-up: gas that has left stays away, so a run serves one curve.</summary>
    [IterationSetup]
    public void Begin()
    {
        _plain = new TitrationRun(_set, _case);
        _tracked = new TitrationRun(_set, _case, _inputs);
        _plain.Step(SodaMol / Steps);
        _tracked.Step(SodaMol / Steps);
    }

    /// <summary>One step of the whole curve.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Steps - 1)]
    public double Step() => Follow(_plain);

    /// <summary>The same with the exact influence of eight inputs followed.</summary>
    [Benchmark(OperationsPerInvoke = Steps - 1)]
    public double StepWithEightSensitivities() => Follow(_tracked);

    private static double Follow(TitrationRun run)
    {
        double sum = 0;
        for (int i = 2; i <= Steps; i++)
        {
            if (run.Step(SodaMol * i / Steps) != WhyNot.None) throw new InvalidOperationException($"step {i} was not solved");
            sum += run.State.Ph;
        }
        return sum;
    }
}
