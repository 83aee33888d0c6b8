using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What may have happened at the bench. Closed: nobody adds another kind.</summary>
public abstract record BenchHypothesis
{
    private BenchHypothesis() { }

    /// <summary>Everything is as it was written down.</summary>
    public sealed record AsRecorded : BenchHypothesis;

    /// <summary>Another alkali was in the packet.</summary>
    /// <param name="Instead">What was in it.</param>
    public sealed record OtherAlkali(Substance Instead) : BenchHypothesis;

    /// <summary>Another salt was in the packet.</summary>
    /// <param name="Instead">What was in it.</param>
    public sealed record OtherSalt(Substance Instead) : BenchHypothesis;

    /// <summary>The salt's weight holds a bowl that was not taken off.</summary>
    /// <param name="SaltNumber">Which salt of the plan, from 0.</param>
    /// <param name="Bowl">The bowl.</param>
    public sealed record SaltBowlNotTared(int SaltNumber, Mass Bowl) : BenchHypothesis;

    /// <summary>The weight of a portion holds a bowl that was not taken off.</summary>
    /// <param name="PortionNumber">Which portion, from 1.</param>
    /// <param name="Bowl">The bowl.</param>
    public sealed record PortionBowlNotTared(int PortionNumber, Mass Bowl) : BenchHypothesis;

    /// <summary>The strips took the colour of the liquor and all read off by much the same.</summary>
    public sealed record ColouredStrip : BenchHypothesis;
}

/// <summary>A hypothesis, how likely it is after all readings, and what it would have made of the last one.</summary>
/// <param name="Hypothesis">What may have happened.</param>
/// <param name="ProbabilityRatio">Its probability after all readings, 0 to 1.</param>
/// <param name="PriorRatio">Its probability before any reading.</param>
/// <param name="WouldReadPh">The last pH reading as it would be expected under it from all that came before; null before the first reading or when that was not reckoned.</param>
public sealed record WeighedHypothesis(BenchHypothesis Hypothesis, double ProbabilityRatio, double PriorRatio, Estimate? WouldReadPh);

/// <summary>The last pH reading does not fit what was expected of it.</summary>
/// <param name="Reading">What was read; the middle if between two.</param>
/// <param name="ExpectedPh">What was expected, nine times in ten, if everything is as it was written down.</param>
/// <param name="Lowest">Lower end of what is expected 98 times in 100.</param>
/// <param name="Highest">Upper end of it.</param>
/// <param name="Explanations">What would explain all readings together, the likeliest first; that all is as recorded is among them, since a reading may simply be wrong.</param>
public sealed record Quarrel(Ph Reading, Estimate ExpectedPh, Ph Lowest, Ph Highest, IReadOnlyList<WeighedHypothesis> Explanations);
