using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;
using BenchmarkDotNet.Attributes;

namespace Alumroot.Benchmarks;

/// <summary>A solve from nothing known, and the making of the system before it.</summary>
[MemoryDiagnoser, MinColumn]
public class ColdSolveBenchmarks
{
    private readonly ConstantSet _set = EmbeddedConstants.Set;
    private AqueousSystem _system = null!;
    private EquilibriumSolver _solver = null!;
    private EquilibriumState _state = null!;
    private double[] _totalsMol = [];

    /// <summary>Half-neutralised alum with both solids allowed.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _system = Compile();
        _solver = new EquilibriumSolver(_system);
        _state = new EquilibriumState(_system);
        _totalsMol = new double[_system.Components.Count + 1];
        _totalsMol[^1] = AqueousSystem.WaterMolesPerKg;
        _system.Add(_set.FindReagent("potassium-alum-dodecahydrate")!, 0.05, _totalsMol);
        _system.Add(_set.FindReagent("sodium-carbonate")!, 0.04, _totalsMol);
    }

    /// <summary>Constants to a system for one temperature.</summary>
    [Benchmark]
    public AqueousSystem Compile() => new(_set, 25, ["K+", "Al+3", "SO4-2", "Na+", "CO3-2"], TitrationCase.Allow(["Al(OH)3(a)", "Hydrobasaluminite"], GasRule.Vented));

    /// <summary>Which phases are there, and all amounts, from nothing known.</summary>
    [Benchmark]
    public WhyNot Solve() => _solver.SolveCold(_totalsMol, _state);
}
