using Alumroot.Chemistry.Constants;

namespace Alumroot.Chemistry.Titration;

/// <summary>An input whose influence on a titration is asked for. Closed: nobody adds another kind.</summary>
public abstract record InputChange
{
    private InputChange() { }

    /// <summary>Amount of a reagent at the start, per mole.</summary>
    /// <param name="Reagent">The reagent.</param>
    public sealed record StartAmount(Reagent Reagent) : InputChange;

    /// <summary>Amount of titrant added so far, per mole, at the end of the step that is looked at.</summary>
    public sealed record TitrantAmount : InputChange;

    /// <summary>Strength of the titrant over the whole addition: 1 means that all of it counts double.</summary>
    public sealed record TitrantStrength : InputChange;

    /// <summary>Water at the start, per kilogram.</summary>
    public sealed record StartWater : InputChange;

    /// <summary>Temperature, per kelvin.</summary>
    public sealed record Temperature : InputChange;

    /// <summary>log10 K of a solid's or gas's dissolution, per unit; for a gas with a set pressure this is also log10 of that pressure.</summary>
    /// <param name="Name">Name of the phase.</param>
    public sealed record PhaseLog10K(string Name) : InputChange;

    /// <summary>log10 K of a species' formation, per unit; Henry's constant of its gas stays as it is.</summary>
    /// <param name="Name">Name of the species.</param>
    public sealed record SpeciesLog10K(string Name) : InputChange;
}
