namespace Alumroot.Trials.Design;

/// <summary>One jar.</summary>
/// <param name="Order">When it is made, from 1, by lot.</param>
/// <param name="Block">The day or pot, from 1.</param>
/// <param name="Replicate">Which making of the same settings, from 1.</param>
/// <param name="Levels">The level of each factor, from 0.</param>
public sealed record Jar(int Order, int Block, int Replicate, IReadOnlyList<int> Levels);

/// <summary>A trial: its jars in the order of making, and what it can and cannot tell apart.</summary>
/// <param name="Request">What was asked for.</param>
/// <param name="Jars">In the order of making.</param>
public sealed record TrialDesign(TrialRequest Request, IReadOnlyList<Jar> Jars)
{
    /// <summary>Of a fraction: the least number of factors in an effect that is mixed up with nothing at all (III, IV, V...); null when nothing is mixed up.</summary>
    public int? Resolution { get; init; }

    /// <summary>Of a fraction: each added factor and the factors whose product sets it.</summary>
    public IReadOnlyList<(int Factor, IReadOnlyList<int> By)> Generators { get; init; } = [];

    /// <summary>Effects of one or two factors that cannot be told apart: each group is a set of sets of factors.</summary>
    public IReadOnlyList<IReadOnlyList<IReadOnlyList<int>>> Aliases { get; init; } = [];

    /// <summary>How well the effects are known beside a balanced design of as many jars with every level at its ends, 0 to 1 (D-efficiency); null where it has no meaning.</summary>
    public double? EfficiencyRatio { get; init; }

    /// <summary>Effects that blocks hide: products of factors that differ between blocks.</summary>
    public IReadOnlyList<IReadOnlyList<int>> HiddenByBlocks { get; init; } = [];
}
