namespace Alumroot.Catalogue;

/// <summary>How firmly a metal takes a dye down.</summary>
/// <remarks>default is <see cref="NotKnown"/>.</remarks>
public enum LakingStrength
{
    /// <summary>Nobody seems to have said; no guess is made.</summary>
    NotKnown,

    /// <summary>The dye washes out.</summary>
    None,

    /// <summary>Some dye is held, mostly by the surface; much is lost in washing.</summary>
    Weak,

    /// <summary>A usable lake, with colour left in the liquor.</summary>
    Moderate,

    /// <summary>A chelate: the liquor clears when metal and pH are right.</summary>
    Strong,
}
