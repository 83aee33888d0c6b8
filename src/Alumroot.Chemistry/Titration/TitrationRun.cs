using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Titration;

/// <summary>One solution to which a titrant is added step by step; gas that has left stays away.</summary>
/// <remarks>Not safe for several threads. After the first step with titrant, a step allocates nothing.</remarks>
public sealed class TitrationRun
{
    private readonly Stage _before;
    private readonly TitrationCase _case;
    private Stage? _after;
    private Stage _now;

    /// <summary>Prepares a run.</summary>
    /// <exception cref="ArgumentException">A solid or component is not in the constant set.</exception>
    public TitrationRun(ConstantSet constants, TitrationCase titrationCase)
    {
        ArgumentNullException.ThrowIfNull(titrationCase);
        Constants = constants;
        _case = titrationCase;
        _before = _now = new Stage(constants, titrationCase, withTitrant: false);
    }

    /// <summary>The constants in use.</summary>
    public ConstantSet Constants { get; }

    /// <summary>Moles of carbon dioxide that have left in all steps so far.</summary>
    public double GasEvolvedMol { get; private set; }

    /// <summary>The state after the last step.</summary>
    public EquilibriumState State => _now.State;

    /// <summary>Solves with this much titrant in all.</summary>
    /// <param name="titrantMol">Moles of titrant added since the start; 0 is the solution before the titrant.</param>
    /// <returns>None when the state is proven.</returns>
    public WhyNot Step(double titrantMol)
    {
        if (titrantMol != 0 && _case.Titrant is not null && ReferenceEquals(_now, _before)) _now = _after ??= new Stage(Constants, _case, withTitrant: true);
        return _now.Step(titrantMol, this);
    }

    private sealed class Stage
    {
        private readonly double[] _start, _perMole, _totals;
        private readonly EquilibriumSolver _solver;
        private readonly int _gas = -1;
        private readonly double[] _gasNu;

        internal Stage(ConstantSet constants, TitrationCase c, bool withTitrant)
        {
            var present = new HashSet<string>(StringComparer.Ordinal);
            foreach ((Reagent r, double moles) in c.Start)
                if (moles != 0) Present(r, present);
            if (withTitrant) Present(c.Titrant!, present);
            var system = new AqueousSystem(constants, c.Celsius, present, c.Allowed());
            _start = new double[system.Nc + 1];
            _perMole = new double[system.Nc + 1];
            _totals = new double[system.Nc + 1];
            _gasNu = new double[system.Nc + 1];
            _start[system.Nc] = c.StartWaterKg * AqueousSystem.WaterMolesPerKg;
            foreach ((Reagent r, double moles) in c.Start)
                if (moles != 0) system.Add(r, moles, _start);
            if (withTitrant) system.Add(c.Titrant!, 1, _perMole);
            for (int p = 0; p < system.Np; p++)
            {
                if (system.Rules[p] != PhaseRule.Vents) continue;
                _gas = p;
                Array.Copy(system.PhaseNu, p * (system.Nc + 1), _gasNu, 0, system.Nc + 1);
            }
            _solver = new EquilibriumSolver(system);
            State = new EquilibriumState(system);
        }

        internal EquilibriumState State { get; }

        internal WhyNot Step(double titrantMol, TitrationRun run)
        {
            double gone = run.GasEvolvedMol;
            for (int j = 0; j < _totals.Length; j++) _totals[j] = _start[j] + titrantMol * _perMole[j] - gone * _gasNu[j];
            WhyNot why = _solver.Solve(_totals, State);
            if (why == WhyNot.None && _gas >= 0 && State.Present[_gas]) run.GasEvolvedMol += State.PhaseMol[_gas];
            return why;
        }

        private static void Present(Reagent reagent, HashSet<string> present)
        {
            foreach ((string c, _) in reagent.Delivers.Terms)
                if (c != Component.Water) present.Add(c);
        }
    }
}
