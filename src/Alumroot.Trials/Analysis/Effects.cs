using Alumroot.Quantities;

namespace Alumroot.Trials.Analysis;

/// <summary>From where the scatter behind the spans is known.</summary>
public enum ScatterFrom
{
    /// <summary>From jars made more than once.</summary>
    Replicates,

    /// <summary>From what the fitted effects leave unexplained.</summary>
    Rest,

    /// <summary>From the small effects themselves, since nothing is left over (Lenth 1989).</summary>
    SmallEffects,

    /// <summary>Not known: too few jars.</summary>
    Nowhere,
}

/// <summary>How far a judgement goes.</summary>
public enum Verdict
{
    /// <summary>The span lies on one side of nothing.</summary>
    Sure,

    /// <summary>The span holds nothing.</summary>
    CannotTell,
}

/// <summary>One effect.</summary>
/// <param name="Factors">The names of the one or two factors.</param>
/// <param name="Setting">For a factor of names: the name whose distance from the mean of all is meant; for a product of two the pair; null for a measured or two-level factor.</param>
/// <param name="Change">How much the response changes from the least or first setting to the most or second; for a named setting its distance from the mean. 90 % span.</param>
/// <param name="Verdict">Whether it can be told from nothing.</param>
/// <param name="SameAs">Effects that cannot be told from it in this trial.</param>
public sealed record Effect(IReadOnlyList<string> Factors, string? Setting, Estimate Change, Verdict Verdict, IReadOnlyList<string> SameAs)
{
    /// <summary>For a factor with two settings: first and second.</summary>
    public (string From, string To)? Ends { get; init; }

    /// <summary>Whether it is the bend of a measured factor: how far the middle lies above the line between the ends.</summary>
    public bool IsBend { get; init; }
}

/// <summary>What a trial tells of one response.</summary>
/// <param name="Response">Its name.</param>
/// <param name="Mean">The mean of all, with its span; of an angle the mean direction.</param>
/// <param name="Effects">In order of the model: factors, bends, products.</param>
/// <param name="Scatter">One standard deviation between jars made alike; null when it is not known.</param>
/// <param name="From">From where.</param>
/// <param name="FreedomCount">Degrees of freedom behind it.</param>
/// <param name="JarCount">How many jars had the response.</param>
/// <param name="LeftOut">Products of two factors that were left out because there were too few jars.</param>
public sealed record ResponseFound(string Response, Estimate Mean, IReadOnlyList<Effect> Effects, double? Scatter, ScatterFrom From, double FreedomCount, int JarCount, int LeftOut)
{
    /// <summary>Whether the fitted effects miss something that replicates show: what is left is larger than the scatter of replicates explains (5 in a hundred).</summary>
    public bool LacksFit { get; init; }
}
