namespace Alumroot.Catalogue;

/// <summary>One thing a mole of a reagent brings into the bath.</summary>
/// <param name="Component">Its short name: K, Na, NH4, Al, Fe(II), Fe(III), Cu, Zn, Sn(II), Mg, Ca, Cl, SO4, CO3, HCO3, OH, NH3, acetate, citrate, tartrate, oxalate, H or H2O.</param>
/// <param name="MolesPerMole">Moles of it per mole of the reagent.</param>
public sealed record Delivery(string Component, double MolesPerMole);
