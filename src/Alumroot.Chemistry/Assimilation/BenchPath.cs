using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>Follows the bath of one truth through what was poured; gas that has left stays away.</summary>
internal class BenchPath
{
    private readonly double[] _totals;
    private readonly EquilibriumState _before;
    private readonly int _gas = -1;
    private readonly double[] _z;
    private readonly Trail? _trail;
    private int _place;

    internal BenchPath(BenchCase c, double[] z, Trail? trail = null)
    {
        (Case, _z, _trail) = (c, z, trail);
        BenchTruth truth = Truth = c.At(z);
        System = c.Bath.SystemFor(truth.Draw);
        Solver = new EquilibriumSolver(System);
        State = new EquilibriumState(System);
        _before = new EquilibriumState(System);
        (Liquor, Salts, PerUnit) = c.Parts(truth);
        _totals = new double[System.Nc + 1];
        for (int p = 0; p < System.Np; p++)
            if (System.Rules[p] == PhaseRule.Vents) _gas = p;
    }

    internal BenchCase Case { get; }

    internal BenchTruth Truth { get; }

    internal AqueousSystem System { get; }

    internal EquilibriumSolver Solver { get; }

    internal EquilibriumState State { get; }

    internal double[] Liquor { get; }

    internal double[] Salts { get; }

    internal double[] PerUnit { get; }

    internal double GasGoneMol { get; private set; }

    protected int Gas => _gas;

    /// <summary>Share of the metal in solution.</summary>
    internal double DissolvedShare
    {
        get
        {
            double total = 0, down = 0;
            int n = System.Nc + 1;
            foreach (int m in Case.Bath.MetalIndexes) total += _totals[m];
            for (int p = 0; p < System.Np; p++)
            {
                if (!State.Present[p] || System.Phases[p].IsGas) continue;
                foreach (int m in Case.Bath.MetalIndexes) down += State.PhaseMol[p] * System.PhaseNu[p * n + m];
            }
            return total > 0 ? Math.Clamp(1 - down / total, 0, 1) : 0;
        }
    }

    /// <summary>Follows the whole log.</summary>
    /// <param name="after">Called after each step of the log with its number.</param>
    /// <returns>False when a step could not be solved.</returns>
    internal bool FollowLog(Action<int> after)
    {
        BenchLog log = Case.Log;
        for (int s = 0; s < log.Alkali.Count; s++)
        {
            int parts = s == 0 ? 1 : Case.Substeps(s);
            for (int i = 1; i <= parts; i++)
            {
                double f = (double)i / parts;
                double alkali = s == 0 ? log.Alkali[0] : log.Alkali[s - 1] + f * (log.Alkali[s] - log.Alkali[s - 1]);
                double share = s == 0 ? log.SaltShare[0] : log.SaltShare[s - 1] + f * (log.SaltShare[s] - log.SaltShare[s - 1]);
                _trail?.Lead(_place, _z, State);
                _place++;
                if (!Solve(alkali, share)) return false;
            }
            after(s);
        }
        return true;
    }

    /// <summary>Solves with so much alkali and salt in the bath.</summary>
    internal bool Solve(double alkaliUnits, double saltShare)
    {
        int n = System.Nc + 1;
        for (int j = 0; j < n; j++)
            _totals[j] = Liquor[j] + saltShare * Salts[j] + alkaliUnits * PerUnit[j] - (_gas < 0 ? 0 : GasGoneMol * System.PhaseNu[_gas * n + j]);
        if (Solver.Solve(_totals, State) != WhyNot.None) return false;
        Solved(alkaliUnits, saltShare);
        if (_gas >= 0 && State.Present[_gas]) GasGoneMol += State.PhaseMol[_gas];
        return true;
    }

    /// <summary>Takes a step and takes it back when the pH moved by more than a limit.</summary>
    internal bool SolveWithin(double alkaliUnits, double saltShare, double largestPhStep, out bool taken)
    {
        _before.CopyFrom(State);
        double gone = GasGoneMol, ph = State.Ph;
        taken = true;
        if (!Solve(alkaliUnits, saltShare)) return false;
        if (Math.Abs(State.Ph - ph) <= largestPhStep) return true;
        State.CopyFrom(_before);
        GasGoneMol = gone;
        taken = false;
        return true;
    }

    /// <summary>Called after each solution, before its gas is taken away.</summary>
    protected virtual void Solved(double alkaliUnits, double saltShare)
    {
    }
}
