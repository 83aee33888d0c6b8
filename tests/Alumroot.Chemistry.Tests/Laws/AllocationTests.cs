using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>After set-up a step allocates nothing, with or without sensitivities: no pause of the collector in the middle of a curve. Not a timing test; see docs/benchmarks.md for times.</summary>
public class AllocationTests
{
    private static readonly InputChange[] Eight =
    [
        new InputChange.StartAmount(EmbeddedConstants.Set.FindReagent("potassium-alum-dodecahydrate")!), new InputChange.TitrantAmount(), new InputChange.TitrantStrength(), new InputChange.StartWater(),
        new InputChange.Temperature(), new InputChange.PhaseLog10K("Al(OH)3(a)"), new InputChange.PhaseLog10K("CO2(g)"), new InputChange.SpeciesLog10K("CO2"),
    ];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_step_allocates_nothing(bool withSensitivities)
    {
        ConstantSet set = EmbeddedConstants.Set;
        var run = new TitrationRun(set, new TitrationCase("alum and soda", 25, 1, [(set.FindReagent("potassium-alum-dodecahydrate")!, 0.05)], set.FindReagent("sodium-carbonate"),
            TitrationCase.Allow(["Al(OH)3(a)", "Hydrobasaluminite"], GasRule.Vented)), withSensitivities ? Eight : []);
        Assert.Equal(WhyNot.None, run.Step(1e-5));
        Assert.Equal(WhyNot.None, run.Step(2e-5));
        double sum = 0;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 3; i <= 5000; i++)
        {
            if (run.Step(0.09 * i / 5000) != WhyNot.None) throw new InvalidOperationException("not solved");
            sum += run.State.Ph + run.State.IonicStrengthMolal + run.State.PhaseMoles("Al(OH)3(a)") + run.GasEvolvedMol;
            if (withSensitivities) sum += run.PhByInput[0] + run.GasByInput[^1];
        }
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(double.IsFinite(sum));
    }

    [Fact]
    public void A_cold_solve_allocates_nothing()
    {
        (AqueousSystem system, double[] totals) = LawCase.Of("alum-soda-basic-sulfate").Mixed(0.05);
        var solver = new EquilibriumSolver(system);
        var state = new EquilibriumState(system);
        Assert.Equal(WhyNot.None, solver.SolveCold(totals, state));
        long before = GC.GetAllocatedBytesForCurrentThread();
        WhyNot again = solver.SolveCold(totals, state);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.Equal(WhyNot.None, again);
    }
}
