namespace Alumroot.Catalogue;

/// <summary>Whether a dye takes on a metal, as a maker would ask it.</summary>
public enum LakingAnswer
{
    /// <summary>It is not known; a jar with a few grams would tell.</summary>
    NotKnown,

    /// <summary>This dyestuff is not planned at all.</summary>
    NotMadeHere,

    /// <summary>It does not take: the colour washes out.</summary>
    DoesNotTake,

    /// <summary>It hardly takes: pale, and it bleeds.</summary>
    HardlyTakes,

    /// <summary>It takes, and leaves colour in the liquor.</summary>
    TakesPartly,

    /// <summary>It takes well.</summary>
    TakesWell,
}
