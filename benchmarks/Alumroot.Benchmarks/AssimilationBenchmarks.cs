using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using BenchmarkDotNet.Attributes;

namespace Alumroot.Benchmarks;

/// <summary>The bench's answer to one more reading: a madder lake with four portions poured and five readings taken, the mix-ups weighed, the rest reckoned anew.</summary>
[MemoryDiagnoser, MinColumn]
public class AssimilationBenchmarks
{
    private readonly LakePlanInput _madder = new()
    {
        DryDyestuff = Mass.FromGrams(100),
        Water = Volume.FromMillilitres(3000),
        Hardness = Hardness.FromGermanDegrees(14),
        Temperature = Temperature.FromCelsius(60),
        PlantAcidMilliequivalentsPerGram = new Estimate(0.12, 0.03, 0.5),
        Salts = [new SaltPortion(SubstanceShelf.Find("potash-alum")!, Mass.FromGrams(50))],
        Alkali = SubstanceShelf.Find("soda-ash")!,
        Aim = new PlanAim.ToPh(Ph.FromValue(6.5)),
        StripStepPh = 0.2,
    };

    private readonly BenchEvent[] _events =
    [
        Read(3.4), new BenchEvent.AlkaliAdded(3.0), Read(3.4), new BenchEvent.AlkaliAdded(2.8), Read(3.6), new BenchEvent.AlkaliAdded(2.8), Read(3.8), new BenchEvent.AlkaliAdded(2.8), Read(4.0),
    ];

    /// <summary>From plan and readings to the next portion.</summary>
    [Benchmark]
    public AssimilationOutcome NextPortion() => Assimilator.Assimilate(_madder, _events);

    private static BenchEvent Read(double ph) => new BenchEvent.PhRead(Ph.FromValue(ph), 0.2, PhInstrument.Strip);
}
