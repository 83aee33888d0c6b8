using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>Follows a bath and with it the exact change of pH with each unknown, along the gas that has left.</summary>
/// <remarks>
/// The response of the bath to a change of its totals and constants is exact (implicit function theorem). How totals and constants change with an unknown is a
/// formula nearly straight in it; it is taken from a central difference of that formula, good to nine digits, without solving anything.
/// </remarks>
internal sealed class BenchTangents : BenchPath
{
    private const double Half = 1e-4;
    private static readonly double LnTen = Math.Log(10);
    private readonly (double[] Liquor, double[] Salts, double[] PerUnit)[] _parts = new (double[], double[], double[])[Axis.Chemical];
    private readonly double[] _kelvin = new double[Axis.Chemical], _gasByAxis = new double[Axis.Chemical], _change;
    private readonly double[] _phaseLnK, _acidLnK = new double[Axis.Chemical];
    private readonly int _acid;

    internal BenchTangents(BenchCase c, double[] z, Trail? trail = null) : base(c, z, trail)
    {
        Trail = new Trail(z);
        _change = new double[System.Nc + 1];
        _phaseLnK = new double[Axis.Chemical * System.Np];
        _acid = System.IndexOfSpecies(BathModel.PlantAcidSpecies);
        Span<double> moved = stackalloc double[Axis.Count];
        for (int a = 0; a < Axis.Chemical; a++)
        {
            z.CopyTo(moved);
            moved[a] = z[a] + Half;
            BenchTruth above = c.At(moved);
            moved[a] = z[a] - Half;
            BenchTruth below = c.At(moved);
            _parts[a] = Slope(c.Parts(above), c.Parts(below));
            double hot = c.Bath.CelsiusOf(above.Draw), cold = c.Bath.CelsiusOf(below.Draw);
            _kelvin[a] = (hot - cold) / (2 * Half);
            _acidLnK[a] = LnTen * (above.Draw.AcidPkShift - below.Draw.AcidPkShift) / (2 * Half);
            for (int p = 0; p < System.Np; p++)
            {
                string name = System.Phases[p].Name;
                double shift = p == Gas
                    ? above.Draw.Log10GasAtm - below.Draw.Log10GasAtm
                    : BathModel.Log10Shift(above.Draw, hot, name) - BathModel.Log10Shift(below.Draw, cold, name);
                _phaseLnK[a * System.Np + p] = LnTen * shift / (2 * Half);
            }
        }
    }

    /// <summary>The states of this path, for others to start from.</summary>
    internal Trail Trail { get; }

    /// <summary>Change of pH with each chemical unknown after the last solution; not numbers where the equations are singular.</summary>
    internal double[] PhByAxis { get; } = new double[Axis.Chemical];

    protected override void Solved(double alkaliUnits, double saltShare)
    {
        bool linear = Solver.Linearise(State);
        int n = System.Nc + 1, length = Solver.ResponseLength;
        var kept = new EquilibriumState(System);
        kept.CopyFrom(State);
        double[] responses = linear ? new double[Axis.Chemical * length] : [];
        for (int a = 0; a < Axis.Chemical; a++)
        {
            if (!linear)
            {
                PhByAxis[a] = double.NaN;
                continue;
            }
            (double[] liquor, double[] salts, double[] perUnit) = _parts[a];
            for (int j = 0; j < n; j++)
                _change[j] = liquor[j] + saltShare * salts[j] + alkaliUnits * perUnit[j] - (Gas < 0 ? 0 : _gasByAxis[a] * System.PhaseNu[Gas * n + j]);
            Solver.ClearPerturbation();
            Solver.PerturbTotals(_change);
            if (_kelvin[a] != 0) Solver.PerturbTemperature(State, _kelvin[a]);
            if (_acidLnK[a] != 0 && _acid >= 0) Solver.PerturbSpecies(State, _acid, _acidLnK[a]);
            for (int p = 0; p < System.Np; p++)
                if (_phaseLnK[a * System.Np + p] is var lnK and not 0) Solver.PerturbPhase(p, lnK);
            Solver.Respond();
            Solver.CopyResponse(responses.AsSpan(a * length, length));
            PhByAxis[a] = Solver.PhResponse;
            if (Gas >= 0) _gasByAxis[a] += Solver.PhaseResponse(Gas);
        }
        Trail.Add(kept, responses);
    }

    private static (double[], double[], double[]) Slope((double[] Liquor, double[] Salts, double[] PerUnit) above, (double[] Liquor, double[] Salts, double[] PerUnit) below)
    {
        return (Of(above.Liquor, below.Liquor), Of(above.Salts, below.Salts), Of(above.PerUnit, below.PerUnit));

        static double[] Of(double[] a, double[] b)
        {
            var slope = new double[a.Length];
            for (int j = 0; j < a.Length; j++) slope[j] = (a[j] - b[j]) / (2 * Half);
            return slope;
        }
    }
}
