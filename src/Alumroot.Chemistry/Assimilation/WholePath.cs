using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>The whole addition of one truth, from nothing to beyond the aim, over the amount of what is poured at its middle strength: a stronger one is just further along.</summary>
internal sealed class WholePath
{
    private const double LargestPhStep = 0.5, BeyondAim = 0.7;
    private const int MostSteps = 90;
    private readonly List<double> _units = [], _ph = [], _dissolved = [], _lnConductivity = [];
    private MonotoneCubic _curve = null!;

    private WholePath(bool rising) => Rising = rising;

    /// <summary>Whether pH rises along it.</summary>
    internal bool Rising { get; }

    internal int Count => _units.Count;

    internal double LastUnits => _units[^1];

    /// <summary>Traces it.</summary>
    /// <param name="c">The case.</param>
    /// <param name="z">The truth, with the strength of what is poured in the middle.</param>
    /// <param name="start">Where its first solution may start.</param>
    /// <param name="reach">What to reach.</param>
    /// <param name="atLeast">Units that it must cover.</param>
    /// <returns>Null when nothing could be solved.</returns>
    internal static WholePath? Trace(BenchCase c, double[] z, Trail? start, Reach reach, double atLeast)
    {
        var path = new BenchPath(c, z);
        start?.Lead(0, z, path.State);
        double scale = c.SaltFirst ? c.Stoichiometric : 1, x = 1e-7 * scale, step = 0.05 * scale, fixedAlkali = c.Log.AlkaliUnits;
        bool conducts = c.Log.Readings.Any(r => r.Kind == ReadingKind.LnConductivity);
        if (!path.Solve(c.SaltFirst ? x : fixedAlkali, c.SaltFirst ? 1 : x)) return null;
        var whole = new WholePath(c.SaltFirst);
        Keep();
        double limit = atLeast + (reach.Aim is PlanAim.AlkaliAmount ? 0 : 4 * scale);
        for (int i = 0; i < MostSteps && x < limit * (1 - 1e-9); i++)
        {
            if (x >= atLeast && whole.SeenEnough(reach.Aim, path.Truth.ModelOffsetPh)) break;
            double next = Math.Min(x + step, limit), before = path.State.Ph;
            if (!path.SolveWithin(c.SaltFirst ? next : fixedAlkali, c.SaltFirst ? 1 : next, step > 1e-4 * scale ? LargestPhStep : double.MaxValue, out bool taken)) break;
            if (!taken)
            {
                step *= 0.4;
                continue;
            }
            x = next;
            Keep();
            double moved = Math.Abs(path.State.Ph - before);
            if (moved < 0.25) step = Math.Min((moved < 0.1 ? 2 : 1.4) * step, (x < 1.3 * scale ? 0.12 : 0.4) * scale);
        }
        whole._curve = new MonotoneCubic(whole._units, whole._ph);
        return whole;

        void Keep()
        {
            whole._units.Add(x);
            whole._ph.Add(path.State.Ph);
            whole._dissolved.Add(path.DissolvedShare);
            if (conducts) whole._lnConductivity.Add(Misfit.LnConductivity(path));
        }
    }

    internal double PhAt(double units) => _curve.ValueAt(units);

    internal double DissolvedAt(double units) => Straight(_dissolved, units);

    internal double LnConductivityAt(double units) => Straight(_lnConductivity, units);

    /// <summary>Units beyond a place until a computed pH is reached: zero when it is already, infinite when it never is.</summary>
    internal double UntilPh(double from, Func<double, double> distance)
    {
        if (distance(from) >= 0) return 0;
        double low = from;
        for (int i = 0; i < _units.Count; i++)
        {
            double high = _units[i];
            if (high <= from) continue;
            if (distance(high) < 0)
            {
                low = high;
                continue;
            }
            for (int k = 0; k < 22; k++)
            {
                double mid = 0.5 * (low + high);
                if (distance(mid) >= 0) high = mid;
                else low = mid;
            }
            return 0.5 * (low + high) - from;
        }
        return double.PositiveInfinity;
    }

    /// <summary>Units beyond a place until all metal is down, or until the least is left when it never is.</summary>
    internal (double Units, bool Reached) UntilDown(double from)
    {
        double best = DissolvedAt(from), where = from;
        if (best <= LakePlanner.AllDownShare) return (0, true);
        double before = best, at = from;
        for (int i = 0; i < _units.Count; i++)
        {
            if (_units[i] <= from) continue;
            if (_dissolved[i] <= LakePlanner.AllDownShare) return (at + (before - LakePlanner.AllDownShare) / (before - _dissolved[i]) * (_units[i] - at) - from, true);
            if (_dissolved[i] < best) (best, where) = (_dissolved[i], _units[i]);
            (before, at) = (_dissolved[i], _units[i]);
        }
        return (where - from, false);
    }

    private bool SeenEnough(PlanAim aim, double offset) => aim switch
    {
        PlanAim.ToPh to => (Rising ? 1 : -1) * (_ph[^1] + offset - to.Ph.Value) > BeyondAim,
        PlanAim.AllMetalDown => _dissolved[^1] <= LakePlanner.AllDownShare || _dissolved[^1] > _dissolved.Min() + 0.05,
        _ => true,
    };

    private double Straight(List<double> y, double units)
    {
        if (units <= _units[0]) return y[0];
        for (int i = 1; i < y.Count; i++)
            if (units <= _units[i]) return y[i - 1] + (units - _units[i - 1]) / (_units[i] - _units[i - 1]) * (y[i] - y[i - 1]);
        return y[^1];
    }
}
