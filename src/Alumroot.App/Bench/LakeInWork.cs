using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>A lake being made: its record beside its plan.</summary>
/// <param name="State">The record.</param>
/// <param name="Answer">The plan's answer; null when the batch has no plan.</param>
/// <param name="Assimilate">Takes readings into account; the result follows from its arguments alone.</param>
public sealed record LakeInWork(BatchState State, PlanAnswer? Answer, Func<LakePlanInput, IReadOnlyList<BenchEvent>, AssimilationOutcome> Assimilate)
{
    private readonly Lock _once = new();
    private Addition? _addition;

    /// <summary>The addition by portions as it stands; null without a plan.</summary>
    public Addition? Addition
    {
        get
        {
            if (Plan is not { } plan) return null;
            lock (_once) return _addition ??= new Addition(this, plan, Assimilate);
        }
    }

    /// <summary>What was done and counts, each with its act, in order of time.</summary>
    public IReadOnlyList<(StepTaken Taken, Act Act)> Done { get; } = [.. State.Taken.Select(t => (t, Acts.Of(t.Step)))];

    /// <summary>The plan whose amounts may be shown; null when there is none.</summary>
    public LakePlan? Plan => Answer is { AmountsWithheld: false } ? Answer.Plan : null;

    /// <summary>The plan's numbers in its units.</summary>
    public PlanNumbers Numbers { get; } = PlanNumbers.For(Answer ?? PlanMaker.Answer(PlanRequest.Empty));

    /// <summary>The latest act, or null.</summary>
    public Act? Latest => Done.Count > 0 ? Done[^1].Act : null;

    /// <summary>The latest entry of any kind: what a form must have seen.</summary>
    public EntryId Seen => State.Entries.MaxBy(e => e.Entry.At.UtcTicks)!.Entry.Id;

    /// <summary>How often an act was done.</summary>
    public int Count(Act act) => Done.Count(d => d.Act == act);

    /// <summary>All weights recorded with an act, in grams.</summary>
    public IEnumerable<double> Grams(Act act) => Values(act, "amount", Measured.Kilogram).Select(v => v * 1000);

    /// <summary>All volumes recorded with an act, in millilitres.</summary>
    public IEnumerable<double> Millilitres(Act act) => Values(act, "amount", Measured.CubicMetre).Select(v => v * 1e6);

    /// <summary>The plan's lot for a role, or null.</summary>
    public string? Lot(LotClass role) => State.Plan?.Lots.FirstOrDefault(l => l.Role == role)?.Lot;

    private IEnumerable<double> Values(Act act, string name, string unit) =>
        Done.Where(d => d.Act == act).SelectMany(d => d.Taken.Step.Values).Where(v => v.Name == name && v.SiUnit == unit).Select(v => v.SiValue);
}
