using Alumroot.Chemistry.Equilibrium;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>Washing by decanting: settle, draw off, fill up again.</summary>
/// <remarks>
/// What stays behind is the settled pulp, taken as 0.3 of the bath (0.2 to 0.45; common practice, no source). Dissolved salts only: sulfate and dye held by the solid itself
/// come out more slowly and some never, so the sulfate test is the proof.
/// </remarks>
internal sealed class WashPlanner
{
    private const int MostWashes = 12;
    private static readonly double[] StaysBehind = [0.20, 0.30, 0.45];
    private readonly LakePlanInput _input;
    private readonly BathModel _bath;
    private readonly EquilibriumSolver _at20, _at25;

    internal WashPlanner(LakePlanInput input, BathModel bath)
    {
        (_input, _bath) = (input, bath);
        string[] components = bath.System.Components.Select(c => c.Name).ToArray();
        _at20 = new EquilibriumSolver(new AqueousSystem(bath.System.Constants, 20, components, []));
        _at25 = new EquilibriumSolver(new AqueousSystem(bath.System.Constants, 25, components, []));
    }

    /// <summary>Conductivity of the washing water itself, microsiemens per cm at 25 C.</summary>
    internal double WaterMicrosiemensPerCm25 { get; private set; }

    /// <summary>Plans the washes.</summary>
    /// <param name="dissolvedMol">Dissolved moles of each component at the end, water last.</param>
    /// <param name="litres">Liquid in the vessel.</param>
    internal IReadOnlyList<WashStep> Plan(double[] dissolvedMol, double litres)
    {
        int n = dissolvedMol.Length;
        var fresh = new double[n];
        fresh[n - 1] = litres * AqueousSystem.WaterMolesPerKg;
        if (!_input.WashWithPureWater) _bath.AddHardWater(fresh, litres, _input.Hardness.MillimolesPerLitre);
        var state20 = new EquilibriumState(_at20.System);
        var state25 = new EquilibriumState(_at25.System);
        WaterMicrosiemensPerCm25 = Conductivity(_at25, state25, fresh) ?? double.NaN;
        double[][] bath = StaysBehind.Select(_ => (double[])dissolvedMol.Clone()).ToArray();
        var steps = new List<WashStep>();
        for (int wash = 0; wash <= MostWashes; wash++)
        {
            var k20 = new double[3];
            var k25 = new double[3];
            var left = new double[3];
            for (int r = 0; r < 3; r++)
            {
                if (wash > 0)
                    for (int j = 0; j < n; j++) bath[r][j] = bath[r][j] * StaysBehind[r] + fresh[j] * (1 - StaysBehind[r]);
                if (Conductivity(_at20, state20, bath[r]) is not { } c20 || Conductivity(_at25, state25, bath[r]) is not { } c25) return steps;
                (k20[r], k25[r], left[r]) = (c20, c25, SaltGrams(bath[r]) * StaysBehind[r]);
            }
            // A tenth for the conductance model on top of what stays behind.
            steps.Add(new WashStep(wash, wash == 0 ? 0 : litres * (1 - StaysBehind[1]) * 1000,
                new Estimate(k25[1], k25[0] * 0.9, k25[2] * 1.1), new Estimate(k20[1], k20[0] * 0.9, k20[2] * 1.1), new Estimate(left[1], left[0], left[2])));
            if (k25[1] <= _input.WashTo.MicrosiemensPerCentimetre) break;
        }
        return steps;
    }

    private static double? Conductivity(EquilibriumSolver solver, EquilibriumState state, double[] totals)
    {
        // Components that are gone after many washes would be exact zeros: keep a trace, far below anything a meter sees.
        var t = new double[totals.Length];
        for (int j = 0; j < t.Length; j++) t[j] = totals[j];
        int proton = solver.System.IndexOfComponent("H+");
        for (int j = 0; j < t.Length - 1; j++)
        {
            if (j == proton || t[j] > 1e-12 * t[^1]) continue;
            // The trace comes in as a neutral salt would: its charge is balanced by H+.
            double added = 1e-12 * t[^1] - t[j];
            t[j] += added;
            t[proton] -= added * solver.System.Components[j].Charge;
        }
        return solver.Solve(t, state) == WhyNot.None ? Conductance.MicrosiemensPerCm(state) : null;
    }

    private double SaltGrams(double[] t)
    {
        double grams = 0;
        for (int j = 0; j < t.Length - 1; j++)
            if (j != _bath.System.ProtonIndex) grams += Math.Max(0, t[j]) * (_bath.System.Components[j].GramsPerMole ?? 0);
        return grams;
    }
}
