using Alumroot.Chemistry.Assimilation;
using Alumroot.Quantities;
using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>Brings a batch and its plan together.</summary>
public static class LakesInWork
{
    /// <summary>A batch by the number in an address; null when there is none.</summary>
    public static LakeInWork? Find(StudioStore studio, PlanShelf plans, string key)
    {
        ArgumentNullException.ThrowIfNull(studio);
        ArgumentNullException.ThrowIfNull(plans);
        return SubjectKey.TryRead(key) is { Class: SubjectClass.Batch } subject && studio.Batch(subject) is { } state ? Of(state, plans, studio.State()) : null;
    }

    /// <summary>A batch with its plan, and the bowls of its studio.</summary>
    public static LakeInWork Of(BatchState state, PlanShelf plans, StudioState studio)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(studio);
        var place = new Workplace { Bowls = [.. studio.Bowls.Select(b => Mass.FromGrams(b.Empty.SiValue * 1000))] };
        return new LakeInWork(state, state.Plan is { } plan ? plans.Of(plan.PlanAddress) : null, (input, events) => plans.Assimilated(state.Plan!.PlanAddress, input, events, place));
    }
}
