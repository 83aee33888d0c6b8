using Alumroot.Chemistry.Constants;

namespace Alumroot.Chemistry.Equilibrium;

/// <summary>The state of one solution: a buffer that a solver fills and that can start the next solve.</summary>
/// <remarks>Reused along a curve so that a step allocates nothing. It can be read only after a solve that succeeded: there is no pH to read from a failure.</remarks>
public sealed class EquilibriumState
{
    internal readonly double[] LnActivity;   // components, then water
    internal readonly double[] PhaseMol;
    internal readonly bool[] Present;
    internal readonly double[] Molal;        // per species, padded to whole vectors
    internal double LnKgWater;
    internal double LnIonicStrength;
    internal bool Solved;
    internal Residuals Proof;

    /// <summary>An empty state for a system.</summary>
    public EquilibriumState(AqueousSystem system)
    {
        ArgumentNullException.ThrowIfNull(system);
        System = system;
        LnActivity = new double[system.Nc + 1];
        PhaseMol = new double[system.Np];
        Present = new bool[system.Np];
        Molal = new double[system.NsPadded];
    }

    /// <summary>The system it belongs to.</summary>
    public AqueousSystem System { get; }

    /// <summary>Whether the last solve into this state succeeded.</summary>
    public bool IsSolved => Solved;

    /// <summary>How well the state fulfils the balances.</summary>
    public Residuals Residuals => Read(Proof);

    /// <summary>pH: minus log10 of the activity of H+.</summary>
    public double Ph => Read(-LnActivity[System.ProtonIndex] / Math.Log(10));

    /// <summary>Ionic strength in mol per kg of water.</summary>
    public double IonicStrengthMolal => Read(Math.Exp(LnIonicStrength));

    /// <summary>Kilograms of water that are solvent.</summary>
    public double WaterKg => Read(Math.Exp(LnKgWater));

    /// <summary>Activity of water.</summary>
    public double WaterActivity => Read(Math.Exp(LnActivity[System.Nc]));

    /// <summary>Molality of a species, mol per kg of water; 0 when it does not take part.</summary>
    public double MolalityOf(string species)
    {
        int i = System.IndexOfSpecies(species);
        return Read(i < 0 ? 0 : Molal[i]);
    }

    /// <summary>log10 of the activity of a species; null when it does not take part.</summary>
    public double? Log10ActivityOf(string species)
    {
        int i = Read(System.IndexOfSpecies(species));
        if (i < 0) return null;
        double sum = System.LnK[i];
        for (int t = System.TermStart[i]; t < System.TermStart[i + 1]; t++) sum += System.TermCoefficient[t] * LnActivity[System.TermIndex[t]];
        return sum / Math.Log(10);
    }

    /// <summary>Dissolved amount of a component, mol per kg of water, over all its species.</summary>
    public double DissolvedMolal(string component)
    {
        int c = Read(System.IndexOfComponent(component));
        if (c < 0 || c == System.Nc) return 0;
        double sum = 0;
        for (int i = 0; i < System.Ns; i++)
            for (int t = System.TermStart[i]; t < System.TermStart[i + 1]; t++)
                if (System.TermIndex[t] == c) sum += System.TermCoefficient[t] * Molal[i];
        return sum;
    }

    /// <summary>Moles of a phase that is there; for a gas: moles that left in the last step.</summary>
    public double PhaseMoles(string phase)
    {
        int p = Read(System.IndexOfPhase(phase));
        return p < 0 || !Present[p] ? 0 : PhaseMol[p];
    }

    /// <summary>log10 of saturation of an allowed phase: 0 is saturated, below is undersaturated; for a gas log10 of its pressure over the set one.</summary>
    public double Log10Saturation(int phase) => Read(LnSaturation(phase) / Math.Log(10));

    /// <summary>log10 of the pressure in atm of a gas of the constant set over this solution; null when it cannot be there.</summary>
    public double? Log10PressureAtm(Phase gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        double sum = -Read(gas.Log10ProductAtSaturation(System.Celsius + 273.15));
        foreach ((string c, double n) in gas.Dissolution.Terms)
        {
            int i = System.IndexOfComponent(c);
            if (i < 0) return null;
            sum += n * LnActivity[i] / Math.Log(10);
        }
        return sum;
    }

    /// <summary>Copies another state of the same system, or of the same system moved in temperature or constants, as the start of a warm solve.</summary>
    public void CopyFrom(EquilibriumState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!ReferenceEquals(other.System.Components, System.Components) || !ReferenceEquals(other.System.Phases, System.Phases))
            throw new ArgumentException("the states belong to systems of different components or phases", nameof(other));
        other.LnActivity.CopyTo(LnActivity, 0);
        other.PhaseMol.CopyTo(PhaseMol, 0);
        other.Present.CopyTo(Present, 0);
        other.Molal.CopyTo(Molal, 0);
        LnKgWater = other.LnKgWater;
        LnIonicStrength = other.LnIonicStrength;
        Solved = other.Solved;
        Proof = other.Proof;
    }

    /// <summary>Moves the state by a whole response, as a start for a solve; phases that would vanish stay as they are.</summary>
    internal void Move(ReadOnlySpan<double> response, double factor)
    {
        int n = LnActivity.Length;
        for (int j = 0; j < n; j++) LnActivity[j] += factor * response[j];
        LnKgWater += factor * response[n];
        LnIonicStrength += factor * response[n + 1];
        for (int p = 0; p < PhaseMol.Length; p++)
            if (Present[p] && PhaseMol[p] + factor * response[n + 2 + p] is var moles and > 0) PhaseMol[p] = moles;
    }

    internal double LnSaturation(int p)
    {
        int n = System.Nc + 1;
        double sum = -System.PhaseLnK[p];
        for (int j = 0; j < n; j++) sum += System.PhaseNu[p * n + j] * LnActivity[j];
        return sum;
    }

    private T Read<T>(T value) => Solved ? value : throw new InvalidOperationException("The last solve into this state did not succeed; it holds no result to read.");
}
