using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>How far to look ahead, and what for.</summary>
/// <param name="Aim">The aim.</param>
/// <param name="OfPlan">Grams or millilitres of the whole addition as planned: the measure of steps.</param>
/// <param name="UnitsLeft">With an amount for an aim: what is left of it; otherwise zero.</param>
internal readonly record struct Reach(PlanAim Aim, double OfPlan, double UnitsLeft);

/// <summary>The path of one truth from now on: pH and dissolved metal after so many more units.</summary>
internal sealed class PathAhead
{
    private const double LargestPhStep = 0.4, BeyondAim = 0.7;
    private const int MostSteps = 60;
    private readonly List<double> _units = [], _ph = [], _dissolved = [];
    private readonly bool _rising;

    private PathAhead(bool rising) => _rising = rising;

    internal double PhNow => _ph[0];

    internal double DissolvedNow => _dissolved[0];

    internal double LastUnits => _units[^1];

    /// <summary>Follows a path on from where it stands.</summary>
    /// <returns>Null when a step could not be solved before anything was seen.</returns>
    internal static PathAhead? Follow(BenchPath path, Reach reach)
    {
        BenchCase c = path.Case;
        var ahead = new PathAhead(c.SaltFirst);
        double offset = path.Truth.ModelOffsetPh, unit = reach.OfPlan, step = 0.05 * unit, gone = 0;
        double salts = c.Input.Salts.Sum(s => s.Amount.Grams);
        ahead.Keep(0, path.State.Ph + offset, path.DissolvedShare);
        double limit = reach.Aim is PlanAim.AlkaliAmount ? reach.UnitsLeft : 4 * unit;
        for (int i = 0; i < MostSteps && gone < limit * (1 - 1e-9); i++)
        {
            if (ahead.SeenEnough(reach.Aim)) break;
            double next = Math.Min(gone + step, limit);
            if (!path.SolveWithin(c.Log.AlkaliUnits + (c.SaltFirst ? next : 0), c.Log.Share + (c.SaltFirst ? 0 : next / salts), step > 0.004 * unit ? LargestPhStep : double.MaxValue, out bool taken)) break;
            if (!taken)
            {
                step *= 0.5;
                continue;
            }
            double before = ahead._ph[^1];
            ahead.Keep(next, path.State.Ph + offset, path.DissolvedShare);
            gone = next;
            if (Math.Abs(ahead._ph[^1] - before) < 0.15) step = Math.Min(1.5 * step, (gone < 1.2 * unit ? 0.12 : 0.3) * unit);
        }
        return ahead;
    }

    /// <summary>pH after so many more units; level beyond the end.</summary>
    internal double PhAt(double units) => At(_ph, units);

    internal double DissolvedAt(double units) => At(_dissolved, units);

    /// <summary>Units until a pH is reached: zero when it is already, infinite when it never is.</summary>
    internal double UntilPh(double ph)
    {
        double sign = _rising ? 1 : -1;
        if (sign * (_ph[0] - ph) >= 0) return 0;
        for (int i = 1; i < _ph.Count; i++)
            if (sign * (_ph[i] - ph) >= 0) return _units[i - 1] + (ph - _ph[i - 1]) / (_ph[i] - _ph[i - 1]) * (_units[i] - _units[i - 1]);
        return double.PositiveInfinity;
    }

    /// <summary>Units until all metal is down, or until the least is left when it never is.</summary>
    internal (double Units, bool Reached) UntilDown()
    {
        int best = 0;
        for (int i = 0; i < _dissolved.Count; i++)
        {
            if (_dissolved[i] <= LakePlanner.AllDownShare)
            {
                if (i == 0) return (0, true);
                double share = (_dissolved[i - 1] - LakePlanner.AllDownShare) / (_dissolved[i - 1] - _dissolved[i]);
                return (_units[i - 1] + share * (_units[i] - _units[i - 1]), true);
            }
            if (_dissolved[i] < _dissolved[best]) best = i;
        }
        return (_units[best], false);
    }

    /// <summary>Least dissolved share ahead.</summary>
    internal double LeastDissolved => _dissolved.Min();

    private bool SeenEnough(PlanAim aim) => aim switch
    {
        PlanAim.ToPh to => (_rising ? 1 : -1) * (_ph[^1] - to.Ph.Value) > BeyondAim,
        PlanAim.AllMetalDown => _dissolved[^1] <= LakePlanner.AllDownShare && _dissolved.Count > 1 || _dissolved[^1] > _dissolved.Min() + 0.05,
        _ => false,
    };

    private void Keep(double units, double ph, double dissolved)
    {
        _units.Add(units);
        _ph.Add(ph);
        _dissolved.Add(dissolved);
    }

    private double At(List<double> y, double units)
    {
        if (units <= 0 || y.Count == 1) return y[0];
        for (int i = 1; i < y.Count; i++)
            if (units <= _units[i]) return y[i - 1] + (units - _units[i - 1]) / (_units[i] - _units[i - 1]) * (y[i] - y[i - 1]);
        return y[^1];
    }
}
