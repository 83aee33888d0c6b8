using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>One row of the table of ammonia solutions: percent, density and strength.</summary>
/// <param name="Percent">Ammonia in percent by mass.</param>
/// <param name="DensityGramsPerMillilitre">Density of the solution at about 15 °C.</param>
/// <param name="AmmoniaMolesPerLitre">Ammonia in moles per litre of the solution.</param>
/// <param name="Citation">Where the row comes from.</param>
public sealed record AmmoniaStrength(
    double Percent,
    double DensityGramsPerMillilitre,
    double AmmoniaMolesPerLitre,
    Citation Citation)
{
    internal static AmmoniaStrength Read(Fields row) => new(
        row.Number("ammonia_percent"),
        row.Number("density_g_per_ml"),
        row.Number("ammonia_mol_per_l"),
        row.Citation());
}
