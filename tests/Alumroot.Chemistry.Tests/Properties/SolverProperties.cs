using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Tests.Laws;
using Alumroot.Chemistry.Titration;
using CsCheck;

namespace Alumroot.Chemistry.Tests.Properties;

/// <summary>What holds for every mixture anybody could pour together.</summary>
public class SolverProperties(ITestOutputHelper output)
{
    [Fact]
    public void A_mixture_is_solved_and_proven_or_refused_with_a_reason()
    {
        int solved = 0, all = 0;
        Mixtures.Any.Sample(c =>
        {
            Interlocked.Increment(ref all);
            var run = new TitrationRun(EmbeddedConstants.Set, c);
            if (run.Step(0.02) is not WhyNot.None and var why)
            {
                Assert.False(run.State.IsSolved);
                Assert.Throws<InvalidOperationException>(() => run.State.Ph);
                Assert.Throws<InvalidOperationException>(() => run.State.PhaseMoles("Al(OH)3(a)"));
                return $"refused: {why}";
            }
            Interlocked.Increment(ref solved);
            Assert.True(run.State.Residuals.Hold);
            ElementCount.Check(c, run, 0.02);
            int solids = c.Phases.Count(p => p.Rule == PhaseRule.MayForm && run.State.PhaseMoles(p.Name) > 0);
            string strength = run.State.IonicStrengthMolal switch { < 0.001 => "dilute", < 0.5 => "in range", _ => "beyond the activity model" };
            return $"solved, {strength}, {Math.Min(solids, 3)} solids{(run.GasEvolvedMol > 0 ? ", fizzes" : "")}";
        }, output.WriteLine, iter: 3000, print: Mixtures.Text);
        Assert.True(solved >= 0.999 * all, $"only {solved} of {all} were solved");
    }

    [Fact]
    public void An_impossible_mixture_is_refused_and_holds_no_numbers()
    {
        ConstantSet set = EmbeddedConstants.Set;
        var system = new AqueousSystem(set, 25, ["Na+", "Cl-"], []);
        var solver = new EquilibriumSolver(system);
        int sodium = system.IndexOfComponent("Na+"), chloride = system.IndexOfComponent("Cl-");
        double[] totals = new double[system.Components.Count + 1];
        (totals[sodium], totals[chloride], totals[^1]) = (-0.1, -0.1, 55.5);
        Assert.IsType<Outcome.NotSolved>(solver.Equilibrate(totals));
        (totals[sodium], totals[chloride], totals[^1]) = (0.1, 0.1, -1);
        Assert.Equal(WhyNot.ImpossibleTotals, Assert.IsType<Outcome.NotSolved>(solver.Equilibrate(totals)).Reason);
        totals[^1] = double.NaN;
        Assert.Equal(WhyNot.NotFinite, Assert.IsType<Outcome.NotSolved>(solver.Equilibrate(totals)).Reason);

        // A state that was good becomes unreadable when the next solve into it fails.
        var state = new EquilibriumState(system);
        Assert.Throws<InvalidOperationException>(() => state.Ph);
        totals[^1] = 55.5;
        Assert.Equal(WhyNot.None, solver.Solve(totals, state));
        Assert.InRange(state.Ph, 6.9, 7.1);
        totals[sodium] = -0.1;
        Assert.NotEqual(WhyNot.None, solver.Solve(totals, state));
        Assert.Throws<InvalidOperationException>(() => state.Ph);
    }

    [Fact]
    public void Strong_base_never_lowers_the_ph() =>
        Mixtures.Workroom.Sample(c =>
        {
            var run = new TitrationRun(EmbeddedConstants.Set, c);
            double before = double.NegativeInfinity, lowest = 0;
            for (int i = 0; i <= 40; i++)
            {
                Assert.Equal(WhyNot.None, run.Step(0.004 * i));
                Assert.True(run.State.Ph >= before - 1e-8, FormattableString.Invariant($"pH falls from {before:r} to {run.State.Ph:r} at {0.004 * i} mol of base"));
                before = run.State.Ph;
                if (i == 0) lowest = before;
            }
            return lowest < 4 ? "from acid" : lowest < 8 ? "from the middle" : "from alkali";
        }, output.WriteLine, iter: 400, print: Mixtures.Text);

    [Fact]
    public void A_solid_appears_without_a_jump() =>
        Mixtures.Workroom.Sample(c =>
        {
            if (Onset(c) is not { } onset) return "no solid appears";
            // The two sides close in on each other as fast as the steps shrink.
            double before = double.MaxValue;
            foreach (double step in (double[])[1e-5, 1e-6, 1e-7])
            {
                double jump = Math.Abs(Ph(c, onset + step) - Ph(c, onset - step));
                double slope = Math.Max(Math.Abs(Slope(c, onset - step)), Math.Abs(Slope(c, onset + step)));
                Assert.True(jump <= 4 * step * slope + 1e-8, FormattableString.Invariant($"pH jumps by {jump:g3} over {2 * step:g3} mol at {onset:r} mol of base, where it should turn by {slope:g3} per mol"));
                Assert.True(jump <= before + 1e-8, FormattableString.Invariant($"the jump grows to {jump:g3} as the step shrinks"));
                before = jump;
            }
            return "a solid appears";
        }, output.WriteLine, iter: 150, print: Mixtures.Text);

    [Fact]
    public void Gas_that_left_never_comes_back() =>
        Gen.Select(Gen.Double[0.005, 0.1], Gen.Double[2, 95], Gen.Double[0.001, 0.2].Array[2, 12], Gen.OneOf<string>("sodium-carbonate", "potassium-carbonate", "sodium-bicarbonate", "sodium-hydroxide"), Gen.Bool)
            .Sample((alum, celsius, portions, alkali, basic) =>
            {
                ConstantSet set = EmbeddedConstants.Set;
                string[] solids = basic ? ["Al(OH)3(a)", "Hydrobasaluminite"] : ["Al(OH)3(a)"];
                (Reagent, double)[] start = [(set.FindReagent("potassium-alum-dodecahydrate")!, alum), (set.FindReagent("sodium-bicarbonate")!, 0.01)];
                var run = new TitrationRun(set, new TitrationCase("random", celsius, 1, start, set.FindReagent(alkali), TitrationCase.Allow(solids, GasRule.Vented)));
                double total = 0, gas = 0;
                foreach (double portion in portions)
                {
                    total += portion * alum;
                    Assert.Equal(WhyNot.None, run.Step(total));
                    Assert.True(run.GasEvolvedMol >= gas, "gas came back");
                    gas = run.GasEvolvedMol;
                }
                return gas > 0 ? "fizzes" : "keeps its gas";
            }, output.WriteLine, iter: 400);

    private static double? Onset(TitrationCase c)
    {
        double low = 0.001, high = 0.15;
        int few = Solids(c, low);
        if (Solids(c, high) <= few) return null;
        for (int i = 0; i < 60 && high - low > 1e-14; i++)
        {
            double middle = 0.5 * (low + high);
            if (Solids(c, middle) > few) high = middle;
            else low = middle;
        }
        return high;
    }

    private static TitrationRun At(TitrationCase c, double baseMol, params IReadOnlyList<InputChange> inputs)
    {
        var run = new TitrationRun(EmbeddedConstants.Set, c, inputs);
        Assert.Equal(WhyNot.None, run.Step(baseMol));
        return run;
    }

    private static int Solids(TitrationCase c, double baseMol)
    {
        EquilibriumState state = At(c, baseMol).State;
        return c.Phases.Count(p => state.PhaseMoles(p.Name) > 0);
    }

    private static double Ph(TitrationCase c, double baseMol) => At(c, baseMol).State.Ph;

    private static double Slope(TitrationCase c, double baseMol) => At(c, baseMol, new InputChange.TitrantAmount()).PhByInput[0];
}
