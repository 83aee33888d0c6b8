using Alumroot.Chemistry.Constants;

namespace Alumroot.Chemistry.Titration;

/// <summary>What may become of the carbon dioxide.</summary>
public enum GasRule
{
    /// <summary>No gas leaves, however high its pressure.</summary>
    Closed,

    /// <summary>The open air holds the pressure of carbon dioxide throughout.</summary>
    Air,

    /// <summary>Whatever would exceed one atmosphere leaves and does not come back.</summary>
    Vented,
}

/// <summary>A solution and what is added to it.</summary>
/// <param name="Name">Name of the case.</param>
/// <param name="Celsius">Temperature in degrees Celsius.</param>
/// <param name="Gas">What may become of carbon dioxide.</param>
/// <param name="StartWaterKg">Kilograms of water at the start, before the hydrate water of the reagents.</param>
/// <param name="Start">Reagents at the start with their moles.</param>
/// <param name="Titrant">What is added, if anything.</param>
/// <param name="Solids">Names of solids that may form and dissolve.</param>
public sealed record TitrationCase(
    string Name, double Celsius, GasRule Gas, double StartWaterKg, IReadOnlyList<(Reagent Reagent, double Moles)> Start, Reagent? Titrant, IReadOnlyList<string> Solids)
{
    /// <summary>log10 of the pressure of carbon dioxide in open air, atm, used by <see cref="GasRule.Air"/>: 400 ppm.</summary>
    public const double Log10AirCarbonDioxideAtm = -3.4;

    internal const string CarbonDioxide = "CO2(g)";

    internal IEnumerable<Equilibrium.AllowedPhase> Allowed()
    {
        foreach (string solid in Solids) yield return new Equilibrium.AllowedPhase(solid, Equilibrium.PhaseRule.MayForm, 0);
        if (Gas == GasRule.Air) yield return new Equilibrium.AllowedPhase(CarbonDioxide, Equilibrium.PhaseRule.Held, Log10AirCarbonDioxideAtm);
        if (Gas == GasRule.Vented) yield return new Equilibrium.AllowedPhase(CarbonDioxide, Equilibrium.PhaseRule.Vents, 0);
    }
}
