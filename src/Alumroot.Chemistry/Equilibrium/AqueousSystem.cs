using System.Runtime.Intrinsics;
using Alumroot.Chemistry.Constants;

namespace Alumroot.Chemistry.Equilibrium;

/// <summary>How a phase may take part.</summary>
public enum PhaseRule
{
    /// <summary>A solid that may form from zero and dissolve again.</summary>
    MayForm,

    /// <summary>A gas that leaves for good whenever its pressure would exceed the given one.</summary>
    Vents,

    /// <summary>A gas held at the given pressure by the open air, entering or leaving.</summary>
    Held,
}

/// <summary>A phase that is allowed in a system.</summary>
/// <param name="Name">Name in the constant set.</param>
/// <param name="Rule">How it takes part.</param>
/// <param name="Log10Atm">For gases: log10 of the pressure in atm.</param>
public readonly record struct AllowedPhase(string Name, PhaseRule Rule, double Log10Atm = 0);

/// <summary>Components, species and phases compiled for one temperature: the fixed part of many solves.</summary>
/// <remarks>
/// Immutable and shareable between threads. Only components that can be present take part, so that a component at zero is the same as a system without it.
/// Unknown order in a solve: ln activity of each component, ln activity of water, ln kilogram of water, ln ionic strength, moles of each present phase.
/// </remarks>
public sealed class AqueousSystem
{
    /// <summary>Moles of water in a kilogram: molar mass 18.015 g/mol as in the reference cases (CODATA elements: 18.0153).</summary>
    public const double WaterMolesPerKg = 1 / 0.018015;

    internal readonly int Nc;               // components without water
    internal readonly int Ns;               // species
    internal readonly int NsPadded;         // species rounded up to whole vectors; what is beyond has ln K of -1000 and so no amount
    internal readonly int Np;               // phases
    internal readonly int ProtonIndex;
    internal readonly double[] LnK;         // per species, natural logarithm
    internal readonly int[] TermStart;      // per species, into TermIndex and TermCoefficient
    internal readonly int[] TermIndex;      // component index; Nc is water
    internal readonly double[] TermCoefficient;
    internal readonly double[] DhLimit, DhC, DhSlope, HalfZ2, Charge;
    internal readonly double[] PhaseLnK;    // ln of the activity product at saturation, pressure included
    internal readonly double[] PhaseNu;     // Np x (Nc + 1)
    internal readonly PhaseRule[] Rules;
    internal readonly double[] LnKPerKelvin, DhLimitPerKelvin, DhCPerKelvin, DhSlopePerKelvin, PhaseLnKPerKelvin;

    private readonly double[] _log10Atm;     // per phase; 0 for solids
    private readonly Dictionary<string, int> _componentIndex;
    private readonly Dictionary<string, int> _speciesIndex;

    /// <summary>Compiles a system.</summary>
    /// <param name="constants">The constants.</param>
    /// <param name="celsius">Temperature in degrees Celsius.</param>
    /// <param name="present">Components that can be present; H+ and water always are.</param>
    /// <param name="phases">Phases that are allowed; those with a component that is not present are left out.</param>
    /// <exception cref="ArgumentException">A component or phase is not in the set.</exception>
    public AqueousSystem(ConstantSet constants, double celsius, IEnumerable<string> present, IEnumerable<AllowedPhase> phases)
    {
        ArgumentNullException.ThrowIfNull(constants);
        ArgumentNullException.ThrowIfNull(phases);
        Constants = constants;
        Celsius = celsius;
        var wanted = new HashSet<string>(present, StringComparer.Ordinal) { Component.Proton };
        AllowedPhase[] allowed = phases.ToArray();
        foreach (AllowedPhase p in allowed)
        {
            Phase phase = constants.FindPhase(p.Name) ?? throw new ArgumentException($"nothing is known of the solid or gas \"{p.Name}\"", nameof(phases));
            if (p.Rule != PhaseRule.Held) continue;
            foreach ((string c, _) in phase.Dissolution.Terms)
                if (c != Component.Water) wanted.Add(c);
        }
        Components = constants.Components.Where(c => wanted.Contains(c.Name)).ToArray();
        Nc = Components.Count;
        _componentIndex = Components.Select((c, i) => (c.Name, i)).ToDictionary(x => x.Name, x => x.i, StringComparer.Ordinal);
        foreach (string name in wanted)
            if (!_componentIndex.ContainsKey(name)) throw new ArgumentException($"nothing is known of the component \"{name}\"", nameof(present));
        _componentIndex[Component.Water] = Nc;
        ProtonIndex = _componentIndex[Component.Proton];

        Species = constants.Species.Where(s => s.Formation.Terms.All(t => _componentIndex.ContainsKey(t.Component))).ToArray();
        Ns = Species.Count;
        _speciesIndex = Species.Select((s, i) => (s.Name, i)).ToDictionary(x => x.Name, x => x.i, StringComparer.Ordinal);
        NsPadded = (Ns + Vector256<double>.Count - 1) / Vector256<double>.Count * Vector256<double>.Count;
        LnK = Padded();
        DhLimit = new double[NsPadded];
        DhC = new double[NsPadded];
        DhSlope = new double[NsPadded];
        HalfZ2 = new double[Ns];
        Charge = new double[Ns];
        LnKPerKelvin = new double[Ns];
        DhLimitPerKelvin = new double[Ns];
        DhCPerKelvin = new double[Ns];
        DhSlopePerKelvin = new double[Ns];
        TermStart = new int[Ns + 1];
        var index = new List<int>();
        var coefficient = new List<double>();
        for (int i = 0; i < Ns; i++)
        {
            Species s = Species[i];
            Charge[i] = s.Charge;
            HalfZ2[i] = 0.5 * s.Charge * s.Charge;
            foreach ((string c, double n) in s.Formation.Terms)
            {
                index.Add(_componentIndex[c]);
                coefficient.Add(n);
            }
            TermStart[i + 1] = index.Count;
        }
        TermIndex = index.ToArray();
        TermCoefficient = coefficient.ToArray();

        Phases = allowed.Where(p => constants.FindPhase(p.Name)!.Dissolution.Terms.All(t => _componentIndex.ContainsKey(t.Component)))
            .Select(p => constants.FindPhase(p.Name)!).ToArray();
        Np = Phases.Count;
        PhaseLnK = new double[Np];
        PhaseLnKPerKelvin = new double[Np];
        PhaseNu = new double[Np * (Nc + 1)];
        Rules = new PhaseRule[Np];
        _log10Atm = new double[Np];
        for (int p = 0; p < Np; p++)
        {
            Phase phase = Phases[p];
            AllowedPhase rule = allowed.First(x => x.Name == phase.Name);
            Rules[p] = rule.Rule;
            _log10Atm[p] = phase.IsGas ? rule.Log10Atm : 0;
            foreach ((string c, double n) in phase.Dissolution.Terms) PhaseNu[p * (Nc + 1) + _componentIndex[c]] = n;
        }
        ApplyTemperature(null);
    }

    /// <summary>The same components, species and phases at another temperature, with constants moved and gas pressures replaced.</summary>
    /// <param name="celsius">Temperature in degrees Celsius.</param>
    /// <param name="log10Shift">What to add to log10 K of a phase or species of this name; null leaves all as they are.</param>
    /// <param name="log10Atm">New log10 pressure in atm of every vented gas; null keeps it.</param>
    public AqueousSystem Moved(double celsius, Func<string, double>? log10Shift = null, double? log10Atm = null) => new(this, celsius, log10Shift, log10Atm);

    private AqueousSystem(AqueousSystem like, double celsius, Func<string, double>? log10Shift, double? log10Atm)
    {
        Constants = like.Constants;
        Celsius = celsius;
        Components = like.Components;
        Species = like.Species;
        Phases = like.Phases;
        (Nc, Ns, Np, ProtonIndex) = (like.Nc, like.Ns, like.Np, like.ProtonIndex);
        (TermStart, TermIndex, TermCoefficient) = (like.TermStart, like.TermIndex, like.TermCoefficient);
        (HalfZ2, Charge, PhaseNu, Rules) = (like.HalfZ2, like.Charge, like.PhaseNu, like.Rules);
        (_componentIndex, _speciesIndex) = (like._componentIndex, like._speciesIndex);
        _log10Atm = like._log10Atm.ToArray();
        if (log10Atm is { } pressure)
            for (int p = 0; p < Np; p++)
                if (Rules[p] == PhaseRule.Vents) _log10Atm[p] = pressure;
        NsPadded = like.NsPadded;
        (LnK, DhLimit, DhC, DhSlope, PhaseLnK) = (Padded(), new double[NsPadded], new double[NsPadded], new double[NsPadded], new double[Np]);
        (LnKPerKelvin, DhLimitPerKelvin, DhCPerKelvin, DhSlopePerKelvin, PhaseLnKPerKelvin) = (new double[Ns], new double[Ns], new double[Ns], new double[Ns], new double[Np]);
        ApplyTemperature(log10Shift);
    }

    /// <summary>The constants it was compiled from.</summary>
    public ConstantSet Constants { get; }

    /// <summary>Temperature in degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>Components that take part, without water.</summary>
    public IReadOnlyList<Component> Components { get; }

    /// <summary>Species that take part.</summary>
    public IReadOnlyList<Species> Species { get; }

    /// <summary>Phases that are allowed and can form.</summary>
    public IReadOnlyList<Phase> Phases { get; }

    /// <summary>Place of a component in totals; water is the last; -1 when it does not take part.</summary>
    public int IndexOfComponent(string name) => _componentIndex.GetValueOrDefault(name, -1);

    /// <summary>Place of a species; -1 when it does not take part.</summary>
    public int IndexOfSpecies(string name) => _speciesIndex.GetValueOrDefault(name, -1);

    /// <summary>Place of a phase; -1 when it is not allowed or cannot form.</summary>
    public int IndexOfPhase(string name)
    {
        for (int p = 0; p < Np; p++)
            if (Phases[p].Name == name) return p;
        return -1;
    }

    /// <summary>Adds what an amount of a reagent brings to a vector of totals.</summary>
    /// <param name="reagent">The reagent; all its components must take part.</param>
    /// <param name="moles">Amount; negative takes away.</param>
    /// <param name="totalsMol">Moles of each component, water last; length is the number of components plus one.</param>
    public void Add(Reagent reagent, double moles, Span<double> totalsMol)
    {
        ArgumentNullException.ThrowIfNull(reagent);
        foreach ((string c, double n) in reagent.Delivers.Terms) totalsMol[_componentIndex[c]] += n * moles;
    }

    private double[] Padded()
    {
        var lnK = new double[NsPadded];
        Array.Fill(lnK, -1000);
        return lnK;
    }

    private void ApplyTemperature(Func<string, double>? log10Shift)
    {
        double kelvin = Celsius + 273.15;
        double ln10 = Math.Log(10);
        (double a, double b) = Constants.DebyeHueckel.At(Celsius);
        (double aPerKelvin, double bPerKelvin) = Constants.DebyeHueckel.SlopeAt(Celsius);
        for (int i = 0; i < Ns; i++)
        {
            Species s = Species[i];
            LnK[i] = (s.LogK.Log10K(kelvin) + (log10Shift?.Invoke(s.Name) ?? 0)) * ln10;
            LnKPerKelvin[i] = s.LogK.Log10KPerKelvin(kelvin) * ln10;
            (DhLimit[i], DhC[i], DhSlope[i]) = s.Activity.Coefficients(s.Charge, a, b);
            (DhLimitPerKelvin[i], DhCPerKelvin[i], DhSlopePerKelvin[i]) = s.Activity.CoefficientSlopes(s.Charge, aPerKelvin, bPerKelvin);
        }
        for (int p = 0; p < Np; p++)
        {
            Phase phase = Phases[p];
            PhaseLnK[p] = (phase.Log10ProductAtSaturation(kelvin) + _log10Atm[p] + (log10Shift?.Invoke(phase.Name) ?? 0) - (phase.Aqueous is { } dissolved ? log10Shift?.Invoke(dissolved.Name) ?? 0 : 0)) * ln10;
            PhaseLnKPerKelvin[p] = phase.Log10ProductPerKelvin(kelvin) * ln10;
        }
    }
}
