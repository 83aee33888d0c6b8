namespace Alumroot.Trials.Design;

/// <summary>How the jars of a trial are chosen.</summary>
public enum TrialKind
{
    /// <summary>Every combination of the levels.</summary>
    Full,

    /// <summary>A part of all combinations of two-level factors, chosen so that what matters least is mixed up.</summary>
    Fraction,

    /// <summary>Each level of one factor once in each row and column, for effects of place or day.</summary>
    LatinSquare,

    /// <summary>A given number of jars, chosen so that the effects are known best (D-optimal), for factors of any kind and with forbidden pairs.</summary>
    Best,
}
