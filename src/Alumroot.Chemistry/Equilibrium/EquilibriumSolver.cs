using System.Runtime.CompilerServices;
using Alumroot.Numerics;

namespace Alumroot.Chemistry.Equilibrium;

/// <summary>Solves aqueous equilibria of one system by Newton's method on the logarithms of activities, with exact derivatives.</summary>
/// <remarks>
/// Holds work space, so one solver serves one thread; after it is made, a solve allocates nothing. A warm solve starts from a state nearby and the phases present
/// there. A cold solve first finds the phases by an interior-point path (amount times undersaturation goes to zero for every phase at once; for fixed activity
/// coefficients the problem is convex, so the path leads to the one solution), then finishes as a warm one. A result is given only when its residuals prove it.
/// </remarks>
public sealed partial class EquilibriumSolver
{
    private const double LnTo10 = 2.302585092994046;
    private readonly AqueousSystem _s;
    private readonly int _nc, _fixed, _nMax;
    private readonly double[] _jacobian, _rhs, _scale, _rowInverse, _totals, _previous, _tangent, _slack, _phaseSize;
    private readonly int[] _pivots, _activeIndex;
    private int _n, _active;
    private double _mass;
    private EquilibriumState? _factored;     // the state near which the Jacobian at hand was factored

    /// <summary>A solver for a system.</summary>
    public EquilibriumSolver(AqueousSystem system)
    {
        ArgumentNullException.ThrowIfNull(system);
        _s = system;
        _nc = system.Nc;
        _fixed = _nc + 3;
        _nMax = _fixed + system.Np;
        _jacobian = new double[_nMax * _nMax];
        _rhs = new double[_nMax];
        _tangent = new double[_nMax];
        _scale = new double[_nc + 1];
        _totals = new double[_nc + 1];
        _rowInverse = new double[_nc + 1];
        _previous = new double[_nc + 1];
        _pivots = new int[_nMax];
        _activeIndex = new int[system.Np];
        _slack = new double[system.Np];
        _phaseSize = new double[system.Np];
    }

    /// <summary>The system it solves.</summary>
    public AqueousSystem System => _s;

    /// <summary>Newton iterations of the last solve, for measuring.</summary>
    public int Iterations { get; private set; }

    /// <summary>Solves from nothing known.</summary>
    /// <param name="totalsMol">Moles of each component, water last.</param>
    public Outcome Equilibrate(ReadOnlySpan<double> totalsMol)
    {
        var state = new EquilibriumState(_s);
        WhyNot why = SolveCold(totalsMol, state);
        return why == WhyNot.None ? new Outcome.Solved(state, state.Residuals) : new Outcome.NotSolved(why);
    }

    /// <summary>Solves, starting from the values and phases in the state; falls back to a cold solve when that does not lead to a proven result.</summary>
    /// <param name="totalsMol">Moles of each component, water last.</param>
    /// <param name="state">Start and result.</param>
    public WhyNot Solve(ReadOnlySpan<double> totalsMol, EquilibriumState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        Iterations = 0;
        if (state.Solved)
        {
            _totals.CopyTo(_previous, 0);
            totalsMol[..(_nc + 1)].CopyTo(_totals);
            if (Follow(state) == WhyNot.None || Settle(state) == WhyNot.None) return WhyNot.None;
        }
        return SolveCold(totalsMol, state);
    }

    /// <summary>The cheap way along a curve: predict with the factors at hand, correct with the same factors; gives up as soon as that is not enough.</summary>
    private WhyNot Follow(EquilibriumState state)
    {
        if (!ReferenceEquals(_factored, state)) return WhyNot.NoConvergence;
        state.Solved = false;
        Array.Clear(_rhs, 0, _n);
        for (int j = 0; j <= _nc; j++) _rhs[j] = (_totals[j] - _previous[j]) * _rowInverse[j];
        double before = double.MaxValue;
        for (int correction = 0; correction < 4; correction++)
        {
            DenseLu.Solve(_jacobian, _pivots, _rhs, _n);
            double largest = 0;
            for (int i = 0; i < _fixed; i++) largest = Math.Max(largest, Math.Abs(_rhs[i]));
            if (!(largest < 0.3) || largest > 0.2 * before)
            {
                // A long first step is still a better start for Newton than none.
                if (correction == 0 && largest < 2) Apply(state, _rhs, 1);
                break;
            }
            before = largest;
            Apply(state, _rhs, 1);
            Evaluate(state, false);
            if (_mass >= 1e-12) continue;
            for (int a = 0; a < _active; a++)
            {
                int p = _activeIndex[a];
                if (_s.Rules[p] != PhaseRule.Held && state.PhaseMol[p] < 0) return WhyNot.NoConvergence;
            }
            for (int p = 0; p < _s.Np; p++)
                if (!state.Present[p] && state.LnSaturation(p) > 1e-9) return WhyNot.NoConvergence;
            return Prove(state);
        }
        return WhyNot.NoConvergence;
    }

    /// <summary>Newton with phases entering and leaving until the set is right.</summary>
    private WhyNot Settle(EquilibriumState state)
    {
        state.Solved = false;
        for (int round = 0; round < 4 * _s.Np + 4; round++)
        {
            WhyNot why = Newton(state);
            if (why == WhyNot.Singular && DropLeast(state)) continue;
            if (why != WhyNot.None) return why;
            // A phase that came out negative leaves; if none did, the most oversaturated absent one enters.
            int worst = -1;
            double value = 0;
            for (int a = 0; a < _active; a++)
            {
                int p = _activeIndex[a];
                if (_s.Rules[p] == PhaseRule.Held) continue;
                double relative = state.PhaseMol[p] / PhaseScale(p);
                if (relative < -1e-13 && relative < value) (worst, value) = (p, relative);
            }
            if (worst >= 0)
            {
                state.Present[worst] = false;
                state.PhaseMol[worst] = 0;
                continue;
            }
            value = 1e-9;
            for (int p = 0; p < _s.Np; p++)
            {
                if (state.Present[p]) continue;
                double si = state.LnSaturation(p);
                if (si > value) (worst, value) = (p, si);
            }
            if (worst >= 0)
            {
                state.Present[worst] = true;
                state.PhaseMol[worst] = 0;
                continue;
            }
            return Prove(state);
        }
        return WhyNot.PhasesDoNotSettle;
    }

    /// <summary>More phases than the phase rule allows make the equations singular: the scarcest leaves.</summary>
    private bool DropLeast(EquilibriumState state)
    {
        int least = -1;
        double value = double.MaxValue;
        for (int p = 0; p < _s.Np; p++)
        {
            if (!state.Present[p] || _s.Rules[p] == PhaseRule.Held) continue;
            double relative = state.PhaseMol[p] / PhaseScale(p);
            if (relative < value) (least, value) = (p, relative);
        }
        if (least < 0) return false;
        state.Present[least] = false;
        state.PhaseMol[least] = 0;
        return true;
    }

    private double PhaseScale(int p)
    {
        double least = double.MaxValue;
        for (int j = 0; j < _nc; j++)
        {
            double nu = Math.Abs(_s.PhaseNu[p * (_nc + 1) + j]);
            if (nu > 0 && j != _s.ProtonIndex) least = Math.Min(least, _scale[j] / nu);
        }
        return least == double.MaxValue ? 1 : Math.Max(least, 1e-300);
    }

    private WhyNot Newton(EquilibriumState state)
    {
        _active = 0;
        for (int p = 0; p < _s.Np; p++)
            if (state.Present[p]) _activeIndex[_active++] = p;
        _n = _fixed + _active;
        for (int iteration = 0; iteration < 120; iteration++)
        {
            Iterations++;
            Evaluate(state, true);
            _factored = null;
            if (!DenseLu.Factor(_jacobian, _pivots, _n)) return WhyNot.Singular;
            _factored = state;
            DenseLu.Solve(_jacobian, _pivots, _rhs, _n);
            double largest = 0;
            for (int i = 0; i < _fixed; i++) largest = Math.Max(largest, Math.Abs(_rhs[i]));
            if (!double.IsFinite(largest)) return WhyNot.NotFinite;
            double factor = largest > 1.5 ? 1.5 / largest : 1;
            for (int a = 0; a < _active; a++) largest = Math.Max(largest, Math.Abs(_rhs[_fixed + a]) / PhaseScale(_activeIndex[a]));
            Apply(state, _rhs, factor);
            if (state.LnKgWater is > 12 or < -60) return WhyNot.ImpossibleTotals;
            if (largest < 3e-7)
            {
                Evaluate(state, false);
                if (_mass < 1e-11) return WhyNot.None;
                if (largest < 1e-13) return _mass < 1e-9 ? WhyNot.None : WhyNot.NoConvergence;
            }
        }
        return WhyNot.NoConvergence;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Apply(EquilibriumState state, double[] step, double factor)
    {
        double[] u = state.LnActivity;
        for (int j = 0; j <= _nc; j++) u[j] += factor * step[j];
        state.LnKgWater += factor * step[_nc + 1];
        state.LnIonicStrength += factor * step[_nc + 2];
        for (int a = 0; a < _active; a++) state.PhaseMol[_activeIndex[a]] += factor * step[_fixed + a];
    }

    /// <summary>Fills the right-hand side (minus the residuals) and, if wanted, the Jacobian, both with rows scaled to the size of their terms; keeps the worst mass balance and the net charge.</summary>
    private void Evaluate(EquilibriumState state, bool withJacobian)
    {
        AqueousSystem s = _s;
        int nc = _nc, n = _n, ns = s.Ns;
        double[] u = state.LnActivity;
        double kg = Math.Exp(state.LnKgWater), strength = Math.Exp(state.LnIonicStrength), root = Math.Sqrt(strength);
        Span<double> r = _rhs.AsSpan(0, n);
        Span<double> jac = _jacobian.AsSpan(0, n * n);
        r.Clear();
        if (withJacobian) jac.Clear();
        Span<double> scale = _scale;
        for (int j = 0; j <= nc; j++) scale[j] = Math.Abs(_totals[j]);
        int kgCol = nc + 1, strengthCol = nc + 2;
        int strengthRow = (nc + 1) * n, waterRow = (nc + 2) * n;
        double halfZ2M = 0, allM = 0, strengthByStrength = 0, waterByStrength = 0;
        ReadOnlySpan<int> start = s.TermStart, index = s.TermIndex;
        ReadOnlySpan<double> coefficient = s.TermCoefficient;
        for (int i = 0; i < ns; i++)
        {
            double c = s.DhC[i];
            double den = 1 + c * root;
            double lnGamma = s.DhSlope[i] * strength - s.DhLimit[i] * root / den;
            double ln = s.LnK[i] - lnGamma;
            int t0 = start[i], t1 = start[i + 1];
            for (int t = t0; t < t1; t++) ln += coefficient[t] * u[index[t]];
            double m = Math.Exp(ln);
            double amount = kg * m;
            state.Molal[i] = m;
            halfZ2M += s.HalfZ2[i] * m;
            allM += m;
            for (int t = t0; t < t1; t++)
            {
                int j = index[t];
                double term = coefficient[t] * amount;
                r[j] += term;
                scale[j] += Math.Abs(term);
            }
            if (!withJacobian) continue;
            double g = s.DhSlope[i] * strength - s.DhLimit[i] * 0.5 * root / (den * den);   // d ln gamma / d ln I
            double zi = s.HalfZ2[i] * m;
            strengthByStrength -= zi * g;
            waterByStrength -= m * g;
            for (int t = t0; t < t1; t++)
            {
                int j = index[t];
                double term = coefficient[t] * amount;
                Span<double> row = jac.Slice(j * n, n);
                for (int q = t0; q < t1; q++) row[index[q]] += term * coefficient[q];
                row[kgCol] += term;
                row[strengthCol] -= term * g;
                jac[strengthRow + j] += zi * coefficient[t];
                jac[waterRow + j] += m * coefficient[t];
            }
        }
        double water = kg * AqueousSystem.WaterMolesPerKg;
        r[nc] += water;
        scale[nc] += water;
        if (withJacobian) jac[nc * n + kgCol] += water;
        for (int a = 0; a < _active; a++)
        {
            int p = _activeIndex[a];
            double moles = state.PhaseMol[p];
            ReadOnlySpan<double> nu = s.PhaseNu.AsSpan(p * (nc + 1), nc + 1);
            double si = -s.PhaseLnK[p];
            int row = (_fixed + a) * n;
            for (int j = 0; j <= nc; j++)
            {
                double v = nu[j];
                if (v == 0) continue;
                si += v * u[j];
                r[j] += v * moles;
                scale[j] += Math.Abs(v * moles);
                if (!withJacobian) continue;
                jac[j * n + _fixed + a] = v;
                jac[row + j] = v;
            }
            r[_fixed + a] = -si;
        }
        double worst = 0;
        for (int j = 0; j <= nc; j++)
        {
            double inverse = 1 / scale[j];
            double residual = (r[j] - _totals[j]) * inverse;
            worst = Math.Max(worst, Math.Abs(residual));
            r[j] = -residual;
            if (!withJacobian) continue;
            _rowInverse[j] = inverse;
            Span<double> row = jac.Slice(j * n, n);
            for (int k = 0; k < row.Length; k++) row[k] *= inverse;
        }
        double inverseStrength = 1 / strength;
        double aw = Math.Exp(u[nc]);
        r[nc + 1] = 1 - halfZ2M * inverseStrength;
        r[nc + 2] = 1 - aw - 0.017 * allM;
        worst = Math.Max(worst, Math.Max(Math.Abs(r[nc + 1]), Math.Abs(r[nc + 2])));
        _mass = worst;
        if (!withJacobian) return;
        Span<double> strengths = jac.Slice(strengthRow, n), waters = jac.Slice(waterRow, n);
        for (int j = 0; j <= nc; j++)
        {
            strengths[j] *= inverseStrength;
            waters[j] *= 0.017;
        }
        strengths[strengthCol] = (strengthByStrength - halfZ2M) * inverseStrength;
        waters[nc] += aw;
        waters[strengthCol] = 0.017 * waterByStrength;
    }

    private WhyNot Prove(EquilibriumState state)
    {
        double net = 0, gross = 1e-300;
        for (int i = 0; i < _s.Ns; i++)
        {
            double z = _s.Charge[i] * state.Molal[i];
            net += z;
            gross += Math.Abs(z);
        }
        double saturation = 0;
        for (int p = 0; p < _s.Np; p++)
        {
            double si = state.LnSaturation(p);
            saturation = Math.Max(saturation, state.Present[p] ? Math.Abs(si) : si);
        }
        state.Proof = new Residuals(_mass, Math.Abs(net) / gross, saturation);
        state.Solved = state.Proof.Hold;
        return state.Solved ? WhyNot.None : WhyNot.NoConvergence;
    }
}
