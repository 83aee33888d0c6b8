using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What came of taking the readings into account. Closed: nobody adds another kind.</summary>
public abstract record AssimilationOutcome
{
    private AssimilationOutcome() { }

    /// <summary>The plan, corrected by the bench.</summary>
    /// <param name="State">How things stand.</param>
    public sealed record Assimilated(BenchState State) : AssimilationOutcome;

    /// <summary>This course of events is not modelled; nothing is claimed.</summary>
    /// <param name="Reason">Why not.</param>
    public sealed record NotModelled(WhyNotModelled Reason) : AssimilationOutcome;

    /// <summary>The equations could not be solved for this bath; nothing is claimed.</summary>
    public sealed record NotSolved : AssimilationOutcome;
}

/// <summary>Why a course of events is not modelled.</summary>
public enum WhyNotModelled
{
    /// <summary>Salt went in during an addition of alkali into salt: the plan's salts are taken as all in from the start.</summary>
    SaltDuringAlkali,

    /// <summary>Alkali first: some went in after the salt.</summary>
    AlkaliDuringSalt,

    /// <summary>Alkali first with "all metal down" for an aim.</summary>
    AllDownWithAlkaliFirst,

    /// <summary>Alkali first, and no alkali is in yet: its amount is not known before.</summary>
    NoAlkaliYet,
}

/// <summary>Why to stop pouring.</summary>
public enum StopReason
{
    /// <summary>The aim is reached; another portion would not bring it nearer.</summary>
    Reached,

    /// <summary>The aim has been passed.</summary>
    Passed,

    /// <summary>More would dissolve the lake again.</summary>
    MoreWouldRedissolve,

    /// <summary>The given amount is all in.</summary>
    NothingLeft,

    /// <summary>The pH turns within less than can be measured out.</summary>
    FinerThanScale,
}

/// <summary>What keeps the next portion from being larger.</summary>
public enum PortionLimit
{
    /// <summary>It goes all the way to the aim.</summary>
    Aim,

    /// <summary>A larger one could pass the aim.</summary>
    Overshoot,

    /// <summary>A larger one would leave too long a way without a reading.</summary>
    Reading,

    /// <summary>A larger one would froth over.</summary>
    Froth,
}

/// <summary>The next safe portion.</summary>
/// <param name="Units">Grams or millilitres; in steps of the scale, or finer as solution.</param>
/// <param name="AsSolution">Too little for the scale: better dissolved and measured out, a twentieth of a step at a time.</param>
/// <param name="PhAfter">pH of the bath after it, when the froth is down.</param>
/// <param name="ReadingPhAfter">What strip or meter will read then: the same with the reading's own spread.</param>
/// <param name="OvershootRatio">Chance that it passes the aim by more than <see cref="BenchState.AimTolerancePh"/>, 0 to 1.</param>
/// <param name="GasLitres">Gas of this portion, litres at bath temperature.</param>
/// <param name="Limit">What keeps it from being larger.</param>
public sealed record NextPortion(double Units, bool AsSolution, Estimate PhAfter, Estimate ReadingPhAfter, double OvershootRatio, double GasLitres, PortionLimit Limit);

/// <summary>Something that the readings changed in what was assumed.</summary>
/// <param name="What">Which unknown.</param>
/// <param name="Assumed">Before any reading.</param>
/// <param name="Now">After all readings.</param>
/// <param name="ShiftFactor">How far the middle moved, in standard deviations of what was assumed; negative is down.</param>
public sealed record LearnedChange(Unknown What, Estimate Assumed, Estimate Now, double ShiftFactor);

/// <summary>What the bench teaches.</summary>
public enum Unknown
{
    /// <summary>Acid of the plant, milliequivalents for a gram of dry dyestuff.</summary>
    PlantAcidAmount,

    /// <summary>pK of the plant's acid.</summary>
    PlantAcidPk,

    /// <summary>Strength of the alkali over the nominal one.</summary>
    AlkaliStrength,

    /// <summary>Strength of the salt over the nominal one.</summary>
    SaltStrength,

    /// <summary>Probability that a basic salt comes down, 0 to 1.</summary>
    KindOfSolid,

    /// <summary>Shift of log10 K of the fresh hydroxide.</summary>
    HydroxideSolubility,

    /// <summary>Shift of log10 K of the basic salt.</summary>
    BasicSaltSolubility,

    /// <summary>log10 of the carbon dioxide pressure that stays in the bath, atm.</summary>
    GasHeld,

    /// <summary>Free acid of the salt over the base that its metal takes.</summary>
    FreeAcid,

    /// <summary>True hardness over the stated one.</summary>
    Hardness,

    /// <summary>True water over the stated one.</summary>
    Water,

    /// <summary>True temperature of the bath less the stated one, kelvin.</summary>
    Temperature,

    /// <summary>What the strips read above the truth, in pH.</summary>
    StripBias,

    /// <summary>What the meter reads above the truth, in pH.</summary>
    MeterBias,
}

/// <summary>How a batch stands after all that was poured and read so far. Spans hold nine times in ten.</summary>
public sealed record BenchState
{
    /// <summary>How far from the aimed pH still counts as there.</summary>
    public const double AimTolerancePh = 0.3;

    /// <summary>What is being poured: the alkali, or the salt when that goes in last.</summary>
    public required SubstanceRole Pouring { get; init; }

    /// <summary>What has been poured of it, as written down, grams or millilitres.</summary>
    public required double PouredUnits { get; init; }

    /// <summary>What is still to pour to the aim.</summary>
    public required Estimate RemainingUnits { get; init; }

    /// <summary>Probability that the aim is out of reach however much is poured; such cases stand at the upper end of the span.</summary>
    public required double BeyondReachRatio { get; init; }

    /// <summary>pH of the bath now.</summary>
    public required Estimate PhNow { get; init; }

    /// <summary>Share of the metal still in solution now.</summary>
    public required Estimate DissolvedMetalRatio { get; init; }

    /// <summary>Probability that basic salt comes down beside hydroxide; null where none can form.</summary>
    public required double? BasicSaltRatio { get; init; }

    /// <summary>The next safe portion; null when pouring is to stop.</summary>
    public required NextPortion? Next { get; init; }

    /// <summary>Why to stop; null while there is a next portion.</summary>
    public required StopReason? Stop { get; init; }

    /// <summary>What the readings changed, the greatest shift first; only what moved by half a standard deviation or more.</summary>
    public required IReadOnlyList<LearnedChange> Changes { get; init; }

    /// <summary>All hypotheses, the likeliest first; probabilities sum to 1.</summary>
    public required IReadOnlyList<WeighedHypothesis> Hypotheses { get; init; }

    /// <summary>Set when the last pH reading does not fit.</summary>
    public required Quarrel? Quarrel { get; init; }

    /// <summary>Share of the guesses behind the spans that could not be solved and were left out, 0 to 1.</summary>
    public required double UnsolvedRatio { get; init; }
}
