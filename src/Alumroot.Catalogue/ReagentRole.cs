namespace Alumroot.Catalogue;

/// <summary>What a reagent does in lake making.</summary>
public enum ReagentRole
{
    /// <summary>Brings the metal of the lake.</summary>
    Salt,

    /// <summary>Brings the metal down.</summary>
    Alkali,

    /// <summary>Lowers the pH, or holds metal in solution.</summary>
    Acid,

    /// <summary>Something else: a test reagent, a filler.</summary>
    Other,
}
