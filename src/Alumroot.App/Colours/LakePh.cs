using Alumroot.App.Bench;
using Alumroot.App.Requests;
using Alumroot.App.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Colours;

/// <summary>The pH at which a lake came down.</summary>
/// <param name="Ph">The pH.</param>
/// <param name="Read">True when it was read at the bench, false when it is only what the plan aimed at.</param>
public sealed record LakePh(double Ph, bool Read)
{
    /// <summary>The last reading while the lake came down, or else the plan's aim; null when neither is told.</summary>
    public static LakePh? Of(BatchState lake)
    {
        ArgumentNullException.ThrowIfNull(lake);
        Measured? read = lake.Steps.Where(s => s.Step is StepKind.Salt or StepKind.Alkali).SelectMany(s => s.Values).LastOrDefault(v => v.Name == BenchForm.Ph);
        if (read is not null) return new LakePh(read.SiValue, true);
        return lake.Plan is { } plan && PlanRequest.FromAddress(plan.PlanAddress)?[PlanFields.ToPh] is { Length: > 0 } aim && TypedAmount.PhOf(aim, "").Value is { } aimed
            ? new LakePh(aimed.SiValue, false) : null;
    }
}
