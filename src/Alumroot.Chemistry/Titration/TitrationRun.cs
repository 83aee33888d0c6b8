using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Titration;

/// <summary>One solution to which a titrant is added step by step; gas that has left stays away.</summary>
/// <remarks>Not safe for several threads. After the first step with titrant, a step allocates nothing, tracked influences included.</remarks>
public sealed class TitrationRun
{
    private readonly TitrationCase _case;
    private readonly InputChange[] _inputs;
    private readonly double[] _gasByInput, _phByInput;
    private Stage? _after;
    private Stage _now;

    /// <summary>Prepares a run.</summary>
    /// <param name="constants">The constants.</param>
    /// <param name="titrationCase">The solution and the titrant.</param>
    /// <param name="inputs">Inputs whose exact influence is followed through the steps; none by default.</param>
    /// <exception cref="ArgumentException">A solid or component is not in the constant set.</exception>
    public TitrationRun(ConstantSet constants, TitrationCase titrationCase, params IReadOnlyList<InputChange> inputs)
    {
        ArgumentNullException.ThrowIfNull(titrationCase);
        ArgumentNullException.ThrowIfNull(inputs);
        Constants = constants;
        _case = titrationCase;
        _inputs = inputs.ToArray();
        _gasByInput = new double[_inputs.Length];
        _phByInput = new double[_inputs.Length];
        _now = new Stage(constants, titrationCase, withTitrant: false, _inputs);
    }

    /// <summary>The constants in use.</summary>
    public ConstantSet Constants { get; }

    /// <summary>Moles of carbon dioxide that have left in all steps so far.</summary>
    public double GasEvolvedMol { get; private set; }

    /// <summary>The state after the last step.</summary>
    public EquilibriumState State => _now.State;

    /// <summary>Exact change of pH per unit of each tracked input, after the last step.</summary>
    public ReadOnlySpan<double> PhByInput => _phByInput;

    /// <summary>Exact change of the gas that has left, in mol per unit of each tracked input.</summary>
    public ReadOnlySpan<double> GasByInput => _gasByInput;

    /// <summary>Solves with this much titrant in all.</summary>
    /// <param name="titrantMol">Moles of titrant added since the start; 0 is the solution before the titrant.</param>
    /// <returns>None when the state is proven.</returns>
    public WhyNot Step(double titrantMol)
    {
        if (titrantMol != 0 && _case.Titrant is not null && _after is null) _now = _after = new Stage(Constants, _case, withTitrant: true, _inputs);
        return _now.Step(titrantMol, this);
    }

    private sealed class Stage
    {
        private readonly double[] _start, _perMole, _totals, _change;
        private readonly double[][] _startChange;
        private readonly InputChange[] _inputs;
        private readonly int[] _inputPlace, _inputGas;     // of a species: the gas in balance with it, or -1
        private readonly EquilibriumSolver _solver;
        private readonly int _gas = -1;
        private readonly double[] _gasNu;

        internal Stage(ConstantSet constants, TitrationCase c, bool withTitrant, InputChange[] inputs)
        {
            var present = new HashSet<string>(StringComparer.Ordinal);
            foreach ((Reagent r, double moles) in c.Start)
                if (moles != 0) Present(r, present);
            if (withTitrant) Present(c.Titrant!, present);
            var system = new AqueousSystem(constants, c.Celsius, present, c.Phases);
            int n = system.Nc + 1;
            _start = new double[n];
            _perMole = new double[n];
            _totals = new double[n];
            _change = new double[n];
            _gasNu = new double[n];
            _start[system.Nc] = c.StartWaterKg * AqueousSystem.WaterMolesPerKg;
            foreach ((Reagent r, double moles) in c.Start)
                if (moles != 0) system.Add(r, moles, _start);
            if (withTitrant) system.Add(c.Titrant!, 1, _perMole);
            for (int p = 0; p < system.Np; p++)
            {
                if (system.Rules[p] != PhaseRule.Vents) continue;
                _gas = p;
                Array.Copy(system.PhaseNu, p * n, _gasNu, 0, n);
            }
            _solver = new EquilibriumSolver(system);
            State = new EquilibriumState(system);
            _inputs = inputs;
            _inputPlace = new int[inputs.Length];
            _inputGas = new int[inputs.Length];
            _startChange = new double[inputs.Length][];
            for (int k = 0; k < inputs.Length; k++)
            {
                double[] change = _startChange[k] = new double[n];
                switch (inputs[k])
                {
                    case InputChange.StartAmount a:
                        if (a.Reagent.Delivers.Terms.All(t => system.IndexOfComponent(t.Component) >= 0)) system.Add(a.Reagent, 1, change);
                        break;
                    case InputChange.StartWater:
                        change[system.Nc] = AqueousSystem.WaterMolesPerKg;
                        break;
                    case InputChange.TitrantAmount:
                        _perMole.CopyTo(change, 0);
                        break;
                    case InputChange.PhaseLog10K p:
                        _inputPlace[k] = system.IndexOfPhase(p.Name);
                        break;
                    case InputChange.SpeciesLog10K s:
                        _inputPlace[k] = system.IndexOfSpecies(s.Name);
                        _inputGas[k] = system.Phases.ToList().FindIndex(p => p.Aqueous?.Name == s.Name);
                        break;
                }
            }
        }

        internal EquilibriumState State { get; }

        internal WhyNot Step(double titrantMol, TitrationRun run)
        {
            double gone = run.GasEvolvedMol;
            for (int j = 0; j < _totals.Length; j++) _totals[j] = _start[j] + titrantMol * _perMole[j] - gone * _gasNu[j];
            WhyNot why = _solver.Solve(_totals, State);
            if (why != WhyNot.None) return why;
            if (_inputs.Length > 0) Track(titrantMol, run);
            if (_gas >= 0 && State.Present[_gas]) run.GasEvolvedMol += State.PhaseMol[_gas];
            return why;
        }

        private void Track(double titrantMol, TitrationRun run)
        {
            bool linear = _solver.Linearise(State);
            for (int k = 0; k < _inputs.Length; k++)
            {
                if (!linear)
                {
                    run._phByInput[k] = double.NaN;
                    continue;
                }
                // Gas that left before depends on the input too; the titrant's last portion alone does not reach back.
                bool reachesBack = _inputs[k] is not InputChange.TitrantAmount;
                double goneBefore = reachesBack ? run._gasByInput[k] : 0;
                double strength = _inputs[k] is InputChange.TitrantStrength ? titrantMol : 0;
                for (int j = 0; j < _change.Length; j++) _change[j] = _startChange[k][j] + strength * _perMole[j] - goneBefore * _gasNu[j];
                _solver.ClearPerturbation();
                _solver.PerturbTotals(_change);
                switch (_inputs[k])
                {
                    case InputChange.Temperature:
                        _solver.PerturbTemperature(State, 1);
                        break;
                    case InputChange.PhaseLog10K when _inputPlace[k] >= 0:
                        _solver.PerturbPhase(_inputPlace[k], Math.Log(10));
                        break;
                    case InputChange.SpeciesLog10K when _inputPlace[k] >= 0:
                        _solver.PerturbSpecies(State, _inputPlace[k], Math.Log(10));
                        if (_inputGas[k] >= 0) _solver.PerturbPhase(_inputGas[k], -Math.Log(10));     // Henry's constant stays
                        break;
                }
                _solver.Respond();
                run._phByInput[k] = _solver.PhResponse;
                if (_gas >= 0) run._gasByInput[k] = goneBefore + _solver.PhaseResponse(_gas);
            }
        }

        private static void Present(Reagent reagent, HashSet<string> present)
        {
            foreach ((string c, _) in reagent.Delivers.Terms)
                if (c != Component.Water) present.Add(c);
        }
    }
}
