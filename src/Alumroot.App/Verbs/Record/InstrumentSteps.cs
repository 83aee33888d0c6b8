using Alumroot.App.Studio;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Verbs.Record;

/// <summary>The smallest steps of the instruments, as typed, noted with what was read from them.</summary>
/// <param name="scale">The scale's; null when not told.</param>
/// <param name="ph">The strip's or meter's; null when not told.</param>
internal sealed class InstrumentSteps(string? scale, string? ph)
{
    /// <summary>Notes the steps with the values, in place; gives back why not, or null.</summary>
    public string? Note(Measured[] values) =>
        (scale is null ? null : Note(values, "--scale", scale, TypedAmount.StepOfScale(scale), "amount", "an amount that was weighed"))
        ?? (ph is null ? null : Note(values, "--ph-step", ph, TypedAmount.StepOfPh(ph), "ph", "a pH that was read, with --strip or --meter"));

    private static string? Note(Measured[] values, string option, string typed, TypedAmount step, string name, string needed)
    {
        if (step.Trouble is not null) return step.Trouble;
        int at = Array.FindIndex(values, v => v.Name == name && v.SiUnit == step.Value!.SiUnit);
        if (at < 0) return $"'{option} {typed}' belongs to {needed}. Name it, or leave the option out.";
        values[at] = values[at] with { Instrument = values[at].Instrument ?? "scale", ResolutionSi = step.Value!.SiValue };
        return null;
    }
}
