using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
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
    private readonly double[] _jacobian, _rhs, _scale, _rowInverse, _totals, _previous, _tangent, _slack, _phaseSize, _g;
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
        _g = new double[system.NsPadded];
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

    /// <summary>Fills the right-hand side (minus the residuals) and, if wanted, the Jacobian, both with rows scaled to the size of their terms; keeps the worst balance.</summary>
    private void Evaluate(EquilibriumState state, bool withJacobian)
    {
        AqueousSystem s = _s;
        int nc = _nc, n = _n;
        double kg = Math.Exp(state.LnKgWater), strength = Math.Exp(state.LnIonicStrength), root = Math.Sqrt(strength);
        Span<double> r = _rhs.AsSpan(0, n), scale = _scale;
        Speciate(state, strength, root, withJacobian);
        (double halfZ2M, double allM) = Balance(state, kg, r, scale);
        // The species' part of each balance is also its derivative by ln kg of water, and over kg that of all molalities by the component.
        if (withJacobian) FillJacobian(state, kg, strength, halfZ2M, r);
        double water = kg * AqueousSystem.WaterMolesPerKg;
        r[nc] += water;
        scale[nc] += water;
        for (int a = 0; a < _active; a++)
        {
            int p = _activeIndex[a];
            double moles = state.PhaseMol[p], si = -s.PhaseLnK[p];
            ReadOnlySpan<double> nu = s.PhaseNu.AsSpan(p * (nc + 1), nc + 1);
            for (int j = 0; j < nu.Length; j++)
            {
                double v = nu[j];
                if (v == 0) continue;
                si += v * state.LnActivity[j];
                r[j] += v * moles;
                scale[j] += Math.Abs(v * moles);
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
            Span<double> row = _jacobian.AsSpan(j * n, n);
            for (int k = 0; k < row.Length; k++) row[k] *= inverse;
        }
        r[nc + 1] = 1 - halfZ2M / strength;
        r[nc + 2] = 1 - Math.Exp(state.LnActivity[nc]) - 0.017 * allM;
        _mass = Math.Max(worst, Math.Max(Math.Abs(r[nc + 1]), Math.Abs(r[nc + 2])));
    }

    /// <summary>Molality of every species, four at a time; with it the change of ln of the activity coefficient with ln of the ionic strength.</summary>
    private void Speciate(EquilibriumState state, double strength, double root, bool withSlope)
    {
        AqueousSystem s = _s;
        double[] u = state.LnActivity, molal = state.Molal;
        Vector256<double> one = Vector256.Create(1.0), vRoot = Vector256.Create(root), vStrength = Vector256.Create(strength), half = Vector256.Create(0.5);
        for (int i = 0; i < molal.Length; i += Vector256<double>.Count)
        {
            Vector256<double> den = one + Vector256.Create(s.DhC, i) * vRoot;
            Vector256<double> limit = Vector256.Create(s.DhLimit, i) * vRoot / den, slope = Vector256.Create(s.DhSlope, i) * vStrength;
            (Vector256.Create(s.LnK, i) + limit - slope).CopyTo(molal, i);
            if (withSlope) (slope - half * limit / den).CopyTo(_g, i);
        }
        ReadOnlySpan<int> start = s.TermStart, index = s.TermIndex;
        ReadOnlySpan<double> coefficient = s.TermCoefficient;
        for (int i = 0; i < s.Ns; i++)
        {
            double sum = 0;
            for (int t = start[i]; t < start[i + 1]; t++) sum += coefficient[t] * u[index[t]];
            molal[i] += sum;
        }
        for (int i = 0; i < molal.Length; i += Vector256<double>.Count) Vector256.Exp(Vector256.Create(molal, i)).CopyTo(molal, i);
    }

    /// <summary>Adds the species to the balances and to the scales of the rows.</summary>
    private (double HalfZ2M, double AllM) Balance(EquilibriumState state, double kg, Span<double> r, Span<double> scale)
    {
        AqueousSystem s = _s;
        r.Clear();
        for (int j = 0; j <= _nc; j++) scale[j] = Math.Abs(_totals[j]);
        ReadOnlySpan<int> start = s.TermStart, index = s.TermIndex;
        ReadOnlySpan<double> coefficient = s.TermCoefficient, molal = state.Molal;
        double halfZ2M = 0, allM = 0;
        for (int i = 0; i < s.Ns; i++)
        {
            double m = molal[i], amount = kg * m;
            halfZ2M += s.HalfZ2[i] * m;
            allM += m;
            for (int t = start[i]; t < start[i + 1]; t++)
            {
                int j = index[t];
                double term = coefficient[t] * amount;
                r[j] += term;
                scale[j] += Math.Abs(term);
            }
        }
        return (halfZ2M, allM);
    }

    /// <summary>Derivatives of all rows; those of the balances are scaled later with their residuals.</summary>
    /// <param name="state">The state.</param>
    /// <param name="kg">Kilograms of water.</param>
    /// <param name="strength">Ionic strength.</param>
    /// <param name="halfZ2M">Half the sum of z squared times molality.</param>
    /// <param name="speciesMol">Moles of each component in species.</param>
    private void FillJacobian(EquilibriumState state, double kg, double strength, double halfZ2M, ReadOnlySpan<double> speciesMol)
    {
        AqueousSystem s = _s;
        int nc = _nc, n = _n, strengthColumn = nc + 2, strengthRow = (nc + 1) * n, waterRow = (nc + 2) * n;
        Array.Clear(_jacobian, 0, n * n);
        // The innermost loop of every solve: references instead of checked indexes, whose bounds the compiled system guarantees.
        ref double jac = ref MemoryMarshal.GetArrayDataReference(_jacobian);
        ref int index = ref MemoryMarshal.GetArrayDataReference(s.TermIndex);
        ref double coefficient = ref MemoryMarshal.GetArrayDataReference(s.TermCoefficient);
        double strengthByStrength = 0, waterByStrength = 0, inverseStrength = 1 / strength;
        for (int i = 0; i < s.Ns; i++)
        {
            double m = state.Molal[i], amount = kg * m, g = _g[i], zi = s.HalfZ2[i] * m;
            strengthByStrength -= zi * g;
            waterByStrength -= m * g;
            int t0 = s.TermStart[i], t1 = s.TermStart[i + 1];
            for (int t = t0; t < t1; t++)
            {
                int j = Unsafe.Add(ref index, t);
                double c = Unsafe.Add(ref coefficient, t), term = c * amount;
                ref double row = ref Unsafe.Add(ref jac, j * n);
                for (int q = t0; q < t1; q++) Unsafe.Add(ref row, Unsafe.Add(ref index, q)) += term * Unsafe.Add(ref coefficient, q);
                Unsafe.Add(ref row, strengthColumn) -= term * g;
                Unsafe.Add(ref jac, strengthRow + j) += zi * c;
            }
        }
        double inverseKg = 1 / kg;
        for (int j = 0; j <= nc; j++)
        {
            _jacobian[j * n + nc + 1] = speciesMol[j];
            _jacobian[strengthRow + j] *= inverseStrength;
            _jacobian[waterRow + j] = 0.017 * speciesMol[j] * inverseKg;
        }
        _jacobian[nc * n + nc + 1] += kg * AqueousSystem.WaterMolesPerKg;
        _jacobian[strengthRow + strengthColumn] = (strengthByStrength - halfZ2M) * inverseStrength;
        _jacobian[waterRow + nc] += Math.Exp(state.LnActivity[nc]);
        _jacobian[waterRow + strengthColumn] = 0.017 * waterByStrength;
        for (int a = 0; a < _active; a++)
        {
            ReadOnlySpan<double> nu = s.PhaseNu.AsSpan(_activeIndex[a] * (nc + 1), nc + 1);
            for (int j = 0; j < nu.Length; j++)
            {
                if (nu[j] == 0) continue;
                _jacobian[j * n + _fixed + a] = nu[j];
                _jacobian[(_fixed + a) * n + j] = nu[j];
            }
        }
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
