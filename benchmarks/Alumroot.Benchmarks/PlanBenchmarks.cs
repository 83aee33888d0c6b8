using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using BenchmarkDotNet.Attributes;

namespace Alumroot.Benchmarks;

/// <summary>A whole madder lake: 100 g of root in 2 L, 50 g of potash alum, soda ash to pH 6.5, with its spans.</summary>
[MemoryDiagnoser, MinColumn]
public class PlanBenchmarks
{
    private LakePlanInput _madder = null!;

    /// <summary>Makes the request and warms the tables.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _madder = new LakePlanInput
        {
            DryDyestuff = Mass.FromGrams(100),
            Water = Volume.FromMillilitres(2000),
            Hardness = Hardness.FromGermanDegrees(14),
            PlantAcidMilliequivalentsPerGram = new Estimate(0.5, 0.2, 1),
            Salts = [new SaltPortion(SubstanceShelf.Find("potash-alum")!, Mass.FromGrams(50))],
            Alkali = SubstanceShelf.Find("soda-ash")!,
            Aim = new PlanAim.ToPh(Ph.FromValue(6.5)),
        };
        Plan();
    }

    /// <summary>From request to plan.</summary>
    [Benchmark]
    public PlanOutcome Plan() => LakePlanner.Plan(_madder);
}
