using Alumroot.Studio.Documents;

namespace Alumroot.Studio.Journal;

/// <summary>How far a lake has come, in the words of the work.</summary>
public enum BatchStage
{
    /// <summary>Only the plan is there.</summary>
    Planned,

    /// <summary>Its colour is being drawn out.</summary>
    Extracting,

    /// <summary>The metal salt is in the liquor.</summary>
    Salted,

    /// <summary>Alkali is in: the lake is coming down, or settles.</summary>
    ThrownDown,

    /// <summary>Its salts are being washed out.</summary>
    Washing,

    /// <summary>It drains on the cloth.</summary>
    OnTheCloth,

    /// <summary>The cake dries.</summary>
    Drying,

    /// <summary>The cake is dry.</summary>
    DryCake,

    /// <summary>It is ground, and sieved perhaps.</summary>
    Pigment,

    /// <summary>Nothing of it is left.</summary>
    UsedUp,

    /// <summary>It was given up.</summary>
    GivenUp,
}

/// <summary>The stage of a batch from what stands in its record.</summary>
internal static class BatchStages
{
    public static BatchStage Of(IReadOnlyList<BatchStep> steps, bool usedUp, bool givenUp)
    {
        if (givenUp) return BatchStage.GivenUp;
        if (usedUp) return BatchStage.UsedUp;
        if (steps.Count == 0) return BatchStage.Planned;
        BatchStep last = steps[^1];
        return last.Step switch
        {
            StepKind.Extract => BatchStage.Extracting,
            StepKind.Salt => steps.Any(s => s.Step == StepKind.Alkali) ? BatchStage.ThrownDown : BatchStage.Salted,
            StepKind.Alkali or StepKind.Settle => BatchStage.ThrownDown,
            StepKind.Wash => BatchStage.Washing,
            StepKind.Filter => last.Ended ? BatchStage.Drying : BatchStage.OnTheCloth,
            StepKind.Dry => last.Ended ? BatchStage.DryCake : BatchStage.Drying,
            StepKind.Grind => last.Ended ? BatchStage.Pigment : BatchStage.DryCake,
            _ => BatchStage.Pigment,
        };
    }
}
