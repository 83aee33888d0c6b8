using Alumroot.Numerics;

namespace Alumroot.Chemistry.Equilibrium;

/// <content>The cold start: which phases are there, from nothing known.</content>
public sealed partial class EquilibriumSolver
{
    private static readonly double[] StartPh = [7, 4, 10, 2, 12];

    /// <summary>Solves from nothing known, trying a few starts.</summary>
    /// <param name="totalsMol">Moles of each component, water last.</param>
    /// <param name="state">Receives the result.</param>
    public WhyNot SolveCold(ReadOnlySpan<double> totalsMol, EquilibriumState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        state.Solved = false;
        totalsMol[..(_nc + 1)].CopyTo(_totals);
        for (int j = 0; j <= _nc; j++)
            if (!double.IsFinite(_totals[j])) return WhyNot.NotFinite;
        if (!(_totals[_nc] > 0)) return WhyNot.ImpossibleTotals;
        WhyNot why = WhyNot.NoConvergence;
        foreach (double ph in StartPh)
        {
            Begin(state, ph);
            why = FollowInterior(state);
            if (why != WhyNot.None) continue;
            why = Settle(state);
            if (why == WhyNot.None) return why;
        }
        state.Solved = false;
        return why;
    }

    private void Begin(EquilibriumState state, double ph)
    {
        double kg = _totals[_nc] / AqueousSystem.WaterMolesPerKg;
        double strength = 1e-6;
        for (int j = 0; j < _nc; j++)
        {
            double molal = Math.Max(Math.Abs(_totals[j]) / kg, 1e-12);
            state.LnActivity[j] = Math.Log(0.1 * molal);
            if (j != _s.ProtonIndex) strength += 0.3 * molal;
        }
        state.LnActivity[_s.ProtonIndex] = -ph * LnTo10;
        state.LnActivity[_nc] = 0;
        state.LnKgWater = Math.Log(kg);
        state.LnIonicStrength = Math.Log(Math.Min(strength, 1));
        KeepBelowTotals(state, kg);
        for (int p = 0; p < _s.Np; p++)
        {
            state.Present[p] = true;
            _phaseSize[p] = PhaseSize(p, kg);
            state.PhaseMol[p] = _s.Rules[p] == PhaseRule.Held ? 0 : 0.1 * _phaseSize[p];
            _slack[p] = 1;
        }
    }

    /// <summary>Lowers the components of the first guess until no species holds more than there is: a species far above all others would make the equations look dependent.</summary>
    private void KeepBelowTotals(EquilibriumState state, double kg)
    {
        for (int pass = 0; pass < 40; pass++)
        {
            bool settled = true;
            for (int i = 0; i < _s.Ns; i++)
            {
                double ln = _s.LnK[i], most = double.MaxValue, atoms = 0;
                for (int t = _s.TermStart[i]; t < _s.TermStart[i + 1]; t++)
                {
                    int j = _s.TermIndex[t];
                    ln += _s.TermCoefficient[t] * state.LnActivity[j];
                    if (j == _nc || j == _s.ProtonIndex) continue;
                    most = Math.Min(most, Math.Abs(_totals[j]) / (kg * _s.TermCoefficient[t]));
                    atoms += _s.TermCoefficient[t];
                }
                double excess = atoms == 0 ? 0 : ln - Math.Log(Math.Max(most, 1e-12));
                if (excess <= 0.1) continue;
                settled = false;
                for (int t = _s.TermStart[i]; t < _s.TermStart[i + 1]; t++)
                {
                    int j = _s.TermIndex[t];
                    if (j != _nc && j != _s.ProtonIndex) state.LnActivity[j] -= excess / atoms;
                }
            }
            if (settled) return;
        }
    }

    /// <summary>Moles of a phase that its scarcest component could make: the yardstick for its amount.</summary>
    private double PhaseSize(int p, double kg)
    {
        double least = double.MaxValue;
        for (int j = 0; j < _nc; j++)
        {
            double nu = Math.Abs(_s.PhaseNu[p * (_nc + 1) + j]);
            if (nu > 0 && j != _s.ProtonIndex && !IsHeld(j)) least = Math.Min(least, Math.Abs(_totals[j]) / nu);
        }
        return least is double.MaxValue or 0 ? 1e-3 * kg : least;
    }

    /// <summary>Whether the air supplies this component without end, so that its total limits nothing.</summary>
    private bool IsHeld(int component)
    {
        for (int p = 0; p < _s.Np; p++)
            if (_s.Rules[p] == PhaseRule.Held && _s.PhaseNu[p * (_nc + 1) + component] != 0) return true;
        return false;
    }

    /// <summary>Primal-dual interior-point path over all phases at once; leaves the state near the solution with the present phases marked.</summary>
    private WhyNot FollowInterior(EquilibriumState state)
    {
        _active = _s.Np;
        for (int p = 0; p < _s.Np; p++) _activeIndex[p] = p;
        _n = _fixed + _active;
        double mu = 0.1;
        for (int iteration = 0; iteration < 400; iteration++)
        {
            Iterations++;
            Evaluate(state, true);
            _factored = null;
            // Replace "saturated" by "amount times undersaturation equals mu" for every phase that need not be there.
            for (int p = 0; p < _s.Np; p++)
            {
                if (_s.Rules[p] == PhaseRule.Held) continue;
                int row = (_fixed + p) * _n;
                double moles = state.PhaseMol[p], si = -_rhs[_fixed + p];
                double size = Math.Max(_slack[p], moles);
                for (int j = 0; j <= _nc; j++) _jacobian[row + j] *= -moles / size;
                _jacobian[row + _fixed + p] = _slack[p] / size;
                _rhs[_fixed + p] = (mu * _phaseSize[p] + moles * si) / size;
            }
            if (!DenseLu.Factor(_jacobian, _pivots, _n)) return WhyNot.Singular;
            DenseLu.Solve(_jacobian, _pivots, _rhs, _n);
            double largest = 0;
            for (int i = 0; i < _fixed; i++) largest = Math.Max(largest, Math.Abs(_rhs[i]));
            if (!double.IsFinite(largest)) return WhyNot.NotFinite;
            double factor = largest > 1.5 ? 1.5 / largest : 1;
            for (int p = 0; p < _s.Np; p++)
            {
                if (_s.Rules[p] == PhaseRule.Held) continue;
                double dn = _rhs[_fixed + p];
                if (dn < 0) factor = Math.Min(factor, -0.95 * state.PhaseMol[p] / dn);
                double ds = SlackStep(state, p);
                if (ds < 0) factor = Math.Min(factor, -0.95 * _slack[p] / ds);
            }
            for (int p = 0; p < _s.Np; p++)
                if (_s.Rules[p] != PhaseRule.Held) _slack[p] += factor * SlackStep(state, p);
            Apply(state, _rhs, factor);
            if (state.LnKgWater is > 12 or < -60) return WhyNot.ImpossibleTotals;
            if (factor > 0.5 && largest < 1) mu = Math.Max(mu * (largest < 0.1 ? 0.05 : 0.3), 1e-13);
            if (largest < 1e-4 && mu <= 1e-12) break;
            if (iteration == 399) return WhyNot.NoConvergence;
        }
        for (int p = 0; p < _s.Np; p++)
        {
            bool there = _s.Rules[p] == PhaseRule.Held || state.PhaseMol[p] / _phaseSize[p] > _slack[p];
            state.Present[p] = there;
            if (!there) state.PhaseMol[p] = 0;
        }
        return WhyNot.None;
    }

    /// <summary>How the slack (minus the saturation) changes with the step that stands in the right-hand side.</summary>
    private double SlackStep(EquilibriumState state, int p)
    {
        double change = 0;
        for (int j = 0; j <= _nc; j++) change += _s.PhaseNu[p * (_nc + 1) + j] * _rhs[j];
        return -(_slack[p] + state.LnSaturation(p)) - change;
    }
}
