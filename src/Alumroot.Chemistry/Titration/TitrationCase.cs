using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;

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
/// <param name="StartWaterKg">Kilograms of water at the start, before the hydrate water of the reagents.</param>
/// <param name="Start">Reagents at the start with their moles.</param>
/// <param name="Titrant">What is added, if anything.</param>
/// <param name="Phases">Solids and gases that are allowed.</param>
public sealed record TitrationCase(
    string Name, double Celsius, double StartWaterKg, IReadOnlyList<(Reagent Reagent, double Moles)> Start, Reagent? Titrant, IReadOnlyList<AllowedPhase> Phases)
{
    /// <summary>Name of carbon dioxide gas in the constants.</summary>
    public const string CarbonDioxide = "CO2(g)";

    /// <summary>log10 of the pressure of carbon dioxide in open air, atm: 400 ppm, as in the reference cases.</summary>
    public const double Log10AirCarbonDioxideAtm = -3.4;

    /// <summary>Solids that may form, and carbon dioxide by the rule.</summary>
    public static IReadOnlyList<AllowedPhase> Allow(IEnumerable<string> solids, GasRule gas)
    {
        List<AllowedPhase> list = solids.Select(s => new AllowedPhase(s, PhaseRule.MayForm)).ToList();
        if (gas == GasRule.Air) list.Add(new AllowedPhase(CarbonDioxide, PhaseRule.Held, Log10AirCarbonDioxideAtm));
        if (gas == GasRule.Vented) list.Add(new AllowedPhase(CarbonDioxide, PhaseRule.Vents));
        return list;
    }
}
