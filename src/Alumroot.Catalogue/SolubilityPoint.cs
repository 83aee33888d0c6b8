namespace Alumroot.Catalogue;

/// <summary>One row of a solubility table.</summary>
/// <param name="TemperatureCelsius">The temperature.</param>
/// <param name="AnhydrousGramsPer100GramsWater">Grams of the water-free substance that dissolve in 100 g of water.</param>
/// <param name="SolidPhase">The solid in contact with the solution, where the source says; else empty.</param>
/// <param name="Citation">Where the figure comes from.</param>
public sealed record SolubilityPoint(
    double TemperatureCelsius,
    double AnhydrousGramsPer100GramsWater,
    string SolidPhase,
    Citation Citation);
