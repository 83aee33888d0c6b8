using Alumroot.App.Parts;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Requests;

/// <summary>Something taken because nobody said otherwise.</summary>
/// <param name="Field">The field it stands in for.</param>
/// <param name="Text">What was assumed, as shown beside the field and in the list of assumptions.</param>
/// <param name="Value">The assumed value as one would type it.</param>
/// <param name="Source">Where the assumption comes from.</param>
public sealed record Assumption(string Field, string Text, string Value, string Source);

/// <summary>A caution to show with a plan.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Text">Its sentences.</param>
/// <param name="Level">How far the plan may go on.</param>
/// <param name="IsDanger">Whether it can blind, burn, poison or smother: such a caution is said in every kind of output.</param>
public sealed record PlanCaution(string Key, string Text, CautionWord Level, bool IsDanger = false);

/// <summary>Everything that came of asking for a plan.</summary>
public sealed record PlanAnswer
{
    /// <summary>What was asked.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>What has to be said about single fields.</summary>
    public required IReadOnlyDictionary<string, FieldReading> Fields { get; init; }

    /// <summary>Troubles in the order of the fields; when there are any, nothing was planned.</summary>
    public required IReadOnlyList<FieldTrouble> Troubles { get; init; }

    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>A substance or dyestuff that is not planned here, with its reason; no amounts then.</summary>
    public PlanRefusal? Refusal { get; init; }

    /// <summary>The dyestuff, when one is named and known.</summary>
    public Dyestuff? Dyestuff { get; init; }

    /// <summary>Whether the dyestuff takes on the salt's metal; null when either is not known.</summary>
    public LakingFinding? Laking { get; init; }

    /// <summary>What the plan was made from; null when fields are in trouble or refused.</summary>
    public LakePlanInput? Input { get; init; }

    /// <summary>What came of it; null when nothing was planned.</summary>
    public PlanOutcome? Outcome { get; init; }

    /// <summary>The plan, when there is one.</summary>
    public LakePlan? Plan => (Outcome as PlanOutcome.Planned)?.Plan;

    /// <summary>Mix-ups of packets that would explain a stated pH which the masses do not.</summary>
    public IReadOnlyList<MixUp> MixUps { get; init; } = [];

    /// <summary>Cautions, gravest first.</summary>
    public required IReadOnlyList<PlanCaution> Cautions { get; init; }

    /// <summary>Whether the amounts are held back until something is changed.</summary>
    public bool AmountsWithheld => Cautions.Any(c => c.Level == CautionWord.ChangeThisFirst);
}

/// <summary>Something that is not planned here.</summary>
/// <param name="What">Its name.</param>
/// <param name="Reason">Why not.</param>
/// <param name="Instead">What does the work instead.</param>
/// <param name="HandbookKey">Its reagent page in the handbook, or null.</param>
public sealed record PlanRefusal(string What, string Reason, string Instead, string? HandbookKey);
