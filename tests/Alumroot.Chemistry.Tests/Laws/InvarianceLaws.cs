using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>What must not matter does not: the size of the pot, traces of nothing, the order of a list, the way there, the start of the search.</summary>
public class InvarianceLaws
{
    internal const string Up = "scale-up", Down = "scale-down", Trace = "trace", Order = "order", Path = "path", Warm = "warm";

    // The same sums may differ in their last digit: the vector exponential may round otherwise once the runtime has recompiled it.
    private const double LastDigits = 1e-13;

    internal static readonly string[] Names = [Up, Down, Trace, Order, Path, Warm];

    public static TheoryData<string> UpCases => LawCase.That(Up);

    public static TheoryData<string> DownCases => LawCase.That(Down);

    public static TheoryData<string> TraceCases => LawCase.That(Trace);

    public static TheoryData<string> OrderCases => LawCase.That(Order);

    public static TheoryData<string> PathCases => LawCase.That(Path, c => !c.IsVented);

    public static TheoryData<string> WarmCases => LawCase.That(Warm);

    [Theory, MemberData(nameof(UpCases))]
    public void A_thousand_pots_are_like_one(string name) => Scaled(LawCase.Of(name), 1000);

    [Theory, MemberData(nameof(DownCases))]
    public void A_thousandth_of_a_pot_is_like_one(string name) => Scaled(LawCase.Of(name), 0.001);

    [Theory, MemberData(nameof(TraceCases))]
    public void A_reagent_at_zero_equals_none_and_a_trace_changes_nothing(string name)
    {
        LawCase law = LawCase.Of(name);
        Reagent other = LawCase.Constants.FindReagent(law.Case.Start.Any(r => r.Reagent.Key.Contains("zinc", StringComparison.Ordinal)) ? "tin-ii-chloride-dihydrate" : "zinc-sulfate-heptahydrate")!;
        TitrationCase zero = law.Case with { Start = [.. law.Case.Start, (other, 0.0)] };
        TitrationCase trace = law.Case with { Start = [.. law.Case.Start, (other, 1e-16 * law.Case.StartWaterKg)] };
        for (int i = 1; i <= law.Steps.Count; i++)
        {
            EquilibriumState plain = LawCase.Run(law.Case, law.Steps.Take(i)).State;
            Same.State(plain, LawCase.Run(zero, law.Steps.Take(i)).State, $"{name} with none of {other.Key}", LastDigits);
            Same.State(plain, LawCase.Run(trace, law.Steps.Take(i)).State, $"{name} with a trace of {other.Key}");
        }
    }

    [Theory, MemberData(nameof(OrderCases))]
    public void The_order_of_reagents_and_solids_does_not_matter(string name)
    {
        LawCase law = LawCase.Of(name);
        TitrationCase turned = law.Case with { Start = [.. law.Case.Start.Reverse()], Phases = [.. law.Case.Phases.Reverse()] };
        Both(law, law.Case, turned, law.Steps, 1);
    }

    [Theory, MemberData(nameof(PathCases))]
    public void One_step_leads_where_many_lead(string name)
    {
        LawCase law = LawCase.Of(name);
        for (int i = 0; i < law.Steps.Count; i++)
        {
            EquilibriumState many = LawCase.Run(law.Case, law.Steps.Take(i).SelectMany(Halved).Append(law.Steps[i])).State;
            Same.State(many, LawCase.Run(law.Case, [law.Steps[i]]).State, $"{name} at {law.Steps[i]}");
        }

        IEnumerable<double> Halved(double x, int i) => [x, 0.5 * (x + law.Steps[i + 1])];
    }

    [Theory, MemberData(nameof(WarmCases))]
    public void A_warm_solve_ends_where_a_cold_one_ends(string name)
    {
        LawCase law = LawCase.Of(name);
        double[] steps = [.. law.Steps.Where(x => x > 0 || law.Case.Titrant is null)];
        (AqueousSystem system, _) = law.Mixed(steps[0]);
        var solver = new EquilibriumSolver(system);
        var warm = new EquilibriumState(system);
        foreach (double x in steps.Concat(steps.Reverse()))
        {
            double[] totals = law.Mixed(x).TotalsMol;
            Assert.Equal(WhyNot.None, solver.Solve(totals, warm));
            var cold = Assert.IsType<Outcome.Solved>(new EquilibriumSolver(system).Equilibrate(totals));
            Same.State(cold.State, warm, $"{name} at {x}");
        }
    }

    private static void Scaled(LawCase law, double factor)
    {
        TitrationCase scaled = law.Case with { StartWaterKg = law.Case.StartWaterKg * factor, Start = [.. law.Case.Start.Select(r => (r.Reagent, r.Moles * factor))] };
        Both(law, law.Case, scaled, law.Steps, factor);
    }

    private static void Both(LawCase law, TitrationCase first, TitrationCase second, IReadOnlyList<double> steps, double factor)
    {
        var a = new TitrationRun(LawCase.Constants, first);
        var b = new TitrationRun(LawCase.Constants, second);
        foreach (double x in steps)
        {
            Assert.Equal(WhyNot.None, a.Step(x));
            Assert.Equal(WhyNot.None, b.Step(x * factor));
            Same.State(a.State, b.State, $"{law.Case.Name} at {x}", times: factor);
            Assert.True(Math.Abs(a.GasEvolvedMol * factor - b.GasEvolvedMol) <= 1e-8 * factor * Math.Max(a.GasEvolvedMol, 1e-3 * law.Case.StartWaterKg), $"{law.Case.Name} at {x}: gas {a.GasEvolvedMol:r} and {b.GasEvolvedMol:r}");
        }
    }
}
