namespace Alumroot.Catalogue;

/// <summary>What is known of a reagent's solubility in water.</summary>
public enum SolubilityKind
{
    /// <summary>Not known to the catalogue.</summary>
    NotKnown,

    /// <summary>A table of grams against temperature.</summary>
    Table,

    /// <summary>Mixes with water in any proportion.</summary>
    Miscible,

    /// <summary>So little dissolves that it is added as a powder or slurry.</summary>
    PracticallyInsoluble,

    /// <summary>Exists as a solution only.</summary>
    SolutionOnly,
}
