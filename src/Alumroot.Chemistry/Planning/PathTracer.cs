using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Planning;

/// <summary>Follows one addition through its steps; gas that has left stays away; steps are halved where pH moves fast.</summary>
internal sealed class PathTracer
{
    /// <summary>Steps of a path that is shown.</summary>
    internal const double FinePhStep = 0.5;

    /// <summary>Steps of a path of which only the end is read.</summary>
    internal const double CoarsePhStep = 1;

    private readonly double _largestPhStep;
    private readonly AqueousSystem _system;
    private readonly EquilibriumSolver _solver;
    private readonly EquilibriumState _before;
    private readonly double[] _start, _perUnit, _totals, _gramsPerMole, _phase;
    private readonly bool[] _isGas;
    private readonly int _gas = -1;
    private readonly int[] _metals;
    private double _gone;

    internal PathTracer(AqueousSystem system, double[] startMol, double[] molPerUnit, int[] metals, double largestPhStep = FinePhStep)
    {
        _largestPhStep = largestPhStep;
        _system = system;
        _solver = new EquilibriumSolver(system);
        State = new EquilibriumState(system);
        _before = new EquilibriumState(system);
        (_start, _perUnit, _metals) = (startMol, molPerUnit, metals);
        _totals = new double[startMol.Length];
        _phase = new double[system.Np];
        _gramsPerMole = system.Phases.Select(p => p.GramsPerMole ?? 0).ToArray();
        _isGas = system.Phases.Select(p => p.IsGas).ToArray();
        for (int p = 0; p < system.Np; p++)
            if (system.Rules[p] == PhaseRule.Vents) _gas = p;
    }

    internal EquilibriumState State { get; }

    /// <summary>Follows the addition over rising amounts.</summary>
    /// <returns>False when a step could not be solved; the path then ends before it.</returns>
    /// <param name="xs">Amounts, rising.</param>
    /// <param name="path">Receives the points.</param>
    /// <param name="from">A solved first state of a like bath to start from; null starts from nothing.</param>
    /// <param name="first">The state of the first amount.</param>
    internal bool Trace(ReadOnlySpan<double> xs, PlanPath path, EquilibriumState? from, out EquilibriumState? first)
    {
        first = null;
        if (from is { IsSolved: true }) State.CopyFrom(from);
        _gone = 0;
        double last = 0;
        foreach (double x in xs)
        {
            if (!Advance(last, x, path, depth: path.Count == 0 ? 0 : 5)) return false;
            if (first is null)
            {
                first = new EquilibriumState(_system);
                first.CopyFrom(State);
            }
            last = x;
        }
        return true;
    }

    private bool Advance(double from, double x, PlanPath path, int depth)
    {
        double goneBefore = _gone, phBefore = depth > 0 ? path.Ph[path.Count - 1] : 0;
        if (depth > 0) _before.CopyFrom(State);
        if (!Solve(x)) return false;
        if (depth > 0 && Math.Abs(State.Ph - phBefore) > _largestPhStep)
        {
            State.CopyFrom(_before);
            _gone = goneBefore;
            double middle = 0.5 * (from + x);
            return Advance(from, middle, path, depth - 1) && Advance(middle, x, path, depth - 1);
        }
        Keep(x, path);
        return true;
    }

    private bool Solve(double x)
    {
        int n = _system.Nc + 1;
        for (int j = 0; j < n; j++) _totals[j] = _start[j] + x * _perUnit[j] - (_gas < 0 ? 0 : _gone * _system.PhaseNu[_gas * n + j]);
        if (_solver.Solve(_totals, State) != WhyNot.None) return false;
        if (_gas >= 0 && State.Present[_gas]) _gone += State.PhaseMol[_gas];
        return true;
    }

    private void Keep(double x, PlanPath path)
    {
        double total = 0, down = 0, grams = 0;
        int n = _system.Nc + 1;
        foreach (int m in _metals) total += _totals[m];
        for (int p = 0; p < _system.Np; p++)
        {
            double moles = State.Present[p] ? State.PhaseMol[p] : 0;
            _phase[p] = moles;
            if (_isGas[p]) continue;
            grams += moles * _gramsPerMole[p];
            foreach (int m in _metals) down += moles * _system.PhaseNu[p * n + m];
        }
        double dissolved = total > 0 ? Math.Clamp(1 - down / total, 0, 1) : 0;
        path.Add(x, State.Ph, _gone, dissolved, grams, State.IonicStrengthMolal, _phase);
    }
}
