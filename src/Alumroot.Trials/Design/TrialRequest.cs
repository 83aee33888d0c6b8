namespace Alumroot.Trials.Design;

/// <summary>Two settings that must not come together.</summary>
/// <param name="Factor">Index of a factor.</param>
/// <param name="Level">Its level.</param>
/// <param name="OtherFactor">Index of another factor.</param>
/// <param name="OtherLevel">Its level.</param>
public sealed record ForbiddenPair(int Factor, int Level, int OtherFactor, int OtherLevel);

/// <summary>What a trial is to be.</summary>
/// <param name="Factors">What is set; one to twelve.</param>
/// <param name="Kind">How the jars are chosen.</param>
public sealed record TrialRequest(IReadOnlyList<Factor> Factors, TrialKind Kind)
{
    /// <summary>How many jars at most (fraction), or how many (best); null where the kind decides it.</summary>
    public int? Jars { get; init; }

    /// <summary>How often each jar is made.</summary>
    public int Replicates { get; init; } = 1;

    /// <summary>Over how many days or pots the work is spread; each holds the same number of jars.</summary>
    public int Blocks { get; init; } = 1;

    /// <summary>Whether the effect of one factor may hang on the setting of another.</summary>
    public bool Interactions { get; init; } = true;

    /// <summary>Settings that must not come together.</summary>
    public IReadOnlyList<ForbiddenPair> Forbidden { get; init; } = [];

    /// <summary>The seed of the run order and of the search.</summary>
    public ulong Seed { get; init; } = 1;
}
