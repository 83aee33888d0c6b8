using Alumroot.Numerics;

namespace Alumroot.Chemistry.Equilibrium;

/// <content>Exact derivatives of a solved state by the implicit function theorem: one back-substitution per input.</content>
public sealed partial class EquilibriumSolver
{
    private double _kg, _inverseStrength;     // water and ionic strength of the state that is linearised

    /// <summary>Factors the Jacobian at a solved state, so that tangents can be taken there. Allocates nothing.</summary>
    /// <returns>False when the Jacobian is singular, as where a phase just appears.</returns>
    public bool Linearise(EquilibriumState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Solved) return false;
        _active = 0;
        for (int p = 0; p < _s.Np; p++)
            if (state.Present[p]) _activeIndex[_active++] = p;
        _n = _fixed + _active;
        Evaluate(state, true);
        _factored = null;
        if (!DenseLu.Factor(_jacobian, _pivots, _n)) return false;
        _factored = state;
        (_kg, _inverseStrength) = (Math.Exp(state.LnKgWater), Math.Exp(-state.LnIonicStrength));
        Array.Clear(_tangent, 0, _n);
        return true;
    }

    /// <summary>Starts a new perturbation.</summary>
    public void ClearPerturbation() => Array.Clear(_tangent, 0, _n);

    /// <summary>Adds a change of totals.</summary>
    /// <param name="changeMol">Change of each component's total in mol per unit of the input, water last.</param>
    public void PerturbTotals(ReadOnlySpan<double> changeMol)
    {
        for (int j = 0; j <= _nc; j++) _tangent[j] += changeMol[j] * _rowInverse[j];
    }

    /// <summary>Adds a change of ln K of a species' formation.</summary>
    public void PerturbSpecies(EquilibriumState state, int species, double lnK) => PerturbLnMolality(state, species, lnK);

    /// <summary>Adds a change of the ln of the activity product at which a phase is saturated.</summary>
    public void PerturbPhase(int phase, double lnK)
    {
        for (int a = 0; a < _active; a++)
            if (_activeIndex[a] == phase) _tangent[_fixed + a] += lnK;
    }

    /// <summary>Adds a change of temperature: every constant and the activity coefficients move with it.</summary>
    public void PerturbTemperature(EquilibriumState state, double kelvin)
    {
        ArgumentNullException.ThrowIfNull(state);
        double strength = Math.Exp(state.LnIonicStrength), root = Math.Sqrt(strength);
        for (int i = 0; i < _s.Ns; i++)
        {
            double den = 1 + _s.DhC[i] * root;
            double lnGammaPerKelvin = _s.DhSlopePerKelvin[i] * strength - _s.DhLimitPerKelvin[i] * root / den
                + _s.DhLimit[i] * strength * _s.DhCPerKelvin[i] / (den * den);
            PerturbLnMolality(state, i, kelvin * (_s.LnKPerKelvin[i] - lnGammaPerKelvin));
        }
        for (int p = 0; p < _s.Np; p++) PerturbPhase(p, kelvin * _s.PhaseLnKPerKelvin[p]);
    }

    /// <summary>Solves for the response to the perturbation. Read it with the properties that follow, before the next call.</summary>
    public void Respond() => DenseLu.Solve(_jacobian, _pivots, _tangent.AsSpan(0, _n), _n);

    /// <summary>Length of a whole response: components, water, kilograms of water, ionic strength, then every phase.</summary>
    internal int ResponseLength => _fixed + _s.Np;

    /// <summary>Writes the whole response, absent phases with zero.</summary>
    internal void CopyResponse(Span<double> target)
    {
        _tangent.AsSpan(0, _fixed).CopyTo(target);
        target[_fixed..].Clear();
        for (int a = 0; a < _active; a++) target[_fixed + _activeIndex[a]] = _tangent[_fixed + a];
    }

    /// <summary>Response of pH.</summary>
    public double PhResponse => -_tangent[_s.ProtonIndex] / LnTo10;

    /// <summary>Response of the moles of a phase; 0 when it is absent.</summary>
    public double PhaseResponse(int phase)
    {
        for (int a = 0; a < _active; a++)
            if (_activeIndex[a] == phase) return _tangent[_fixed + a];
        return 0;
    }

    /// <summary>Response of ln of the ionic strength.</summary>
    public double LnIonicStrengthResponse => _tangent[_nc + 2];

    /// <summary>Response of ln of the kilograms of water.</summary>
    public double LnWaterKgResponse => _tangent[_nc + 1];

    private void PerturbLnMolality(EquilibriumState state, int i, double change)
    {
        if (change == 0) return;
        double m = state.Molal[i], amount = m * _kg;
        for (int t = _s.TermStart[i]; t < _s.TermStart[i + 1]; t++)
        {
            int j = _s.TermIndex[t];
            _tangent[j] -= _s.TermCoefficient[t] * amount * change * _rowInverse[j];
        }
        _tangent[_nc + 1] -= _s.HalfZ2[i] * m * change * _inverseStrength;
        _tangent[_nc + 2] -= 0.017 * m * change;
    }
}
