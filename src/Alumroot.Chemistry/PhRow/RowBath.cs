using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.PhRow;

/// <summary>A jar of the liquor in one draw: its pH with any amount of acid or alkali, and the amount for any pH.</summary>
internal sealed class RowBath
{
    // The equations are solved for logarithms, so that there is always a trace of what is to be added.
    private const double TraceMillilitres = 1e-6;

    private const double CloseEnoughPh = 0.005;
    private const int MostRounds = 60;

    private readonly Side _acid, _alkali;

    internal RowBath(BathModel acid, double acidUnitsPerMillilitre, BathModel alkali, double alkaliUnitsPerMillilitre, PlanDraw draw)
    {
        (_acid, _alkali) = (new Side(acid, acidUnitsPerMillilitre, draw), new Side(alkali, alkaliUnitsPerMillilitre, draw));
        StartPh = _alkali.PhWith(TraceMillilitres);
    }

    /// <summary>The pH of the liquor as it is.</summary>
    internal double StartPh { get; }

    /// <summary>Whether the liquor could be solved.</summary>
    internal bool IsSolved => !double.IsNaN(StartPh);

    /// <summary>The pH with so many millilitres of alkali, or of acid when below nothing.</summary>
    internal double PhWith(double signedMillilitres) => signedMillilitres >= 0 ? _alkali.PhWith(Math.Max(TraceMillilitres, signedMillilitres)) : _acid.PhWith(Math.Max(TraceMillilitres, -signedMillilitres));

    /// <summary>Millilitres of alkali to a pH, of acid below nothing; twice the most when that does not reach it, not a number when it cannot be solved.</summary>
    /// <param name="ph">The aim.</param>
    /// <param name="most">The most that may be given.</param>
    internal double DoseTo(double ph, double most)
    {
        if (Math.Abs(ph - StartPh) < CloseEnoughPh) return 0;
        int sign = ph > StartPh ? 1 : -1;
        double low = Math.Log(TraceMillilitres), high = Math.Log(most);
        double atHigh = sign * (PhWith(sign * most) - ph);
        if (double.IsNaN(atHigh)) return double.NaN;
        if (atHigh < 0) return sign * 2 * most;
        for (int round = 0; round < MostRounds && high - low > 1e-9; round++)
        {
            double middle = (low + high) / 2, off = sign * (PhWith(sign * Math.Exp(middle)) - ph);
            if (double.IsNaN(off)) return double.NaN;
            if (Math.Abs(off) < CloseEnoughPh) return sign * Math.Exp(middle);
            if (off < 0) low = middle;
            else high = middle;
        }
        return sign * Math.Exp((low + high) / 2);
    }

    /// <summary>The liquor with one titrant. Owns its work space.</summary>
    private sealed class Side
    {
        private readonly EquilibriumSolver _solver;
        private readonly EquilibriumState _state;
        private readonly double[] _liquor, _perMillilitre, _totals;

        internal Side(BathModel model, double unitsPerMillilitre, PlanDraw draw)
        {
            AqueousSystem system = model.SystemFor(draw);
            (_solver, _state) = (new EquilibriumSolver(system), new EquilibriumState(system));
            _liquor = model.Liquor(draw);
            _perMillilitre = [.. model.AlkaliPerUnit().Select(n => n * unitsPerMillilitre)];
            _totals = new double[_liquor.Length];
        }

        internal double PhWith(double millilitres)
        {
            for (int j = 0; j < _totals.Length; j++) _totals[j] = _liquor[j] + millilitres * _perMillilitre[j];
            return _solver.Solve(_totals, _state) == WhyNot.None ? _state.Ph : double.NaN;
        }
    }
}
