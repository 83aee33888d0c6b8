using Alumroot.Quantities.Reading;

namespace Alumroot.App.Trials;

/// <summary>How far the strip or meter of a row may be off.</summary>
public static class LadderStrip
{
    // A strip or meter is off by about a quarter of its step and a tenth for the whole row (one standard deviation; our judgement).
    private const double ShareOfStep = 0.25, LeastSdPh = 0.1, UsualStepPh = 0.5;

    /// <summary>The standard deviation for a step as typed; a blank is a step of 0.5. A sentence when it is none.</summary>
    public static (double? SdPh, string? Trouble) SdPh(string? typed)
    {
        double step = UsualStepPh;
        if (!string.IsNullOrWhiteSpace(typed))
        {
            if (QuantityReader.ReadNumber(typed, FieldRules.PhStep) is not Parsed<double>.Understood read) return (null, $"'{typed}' is no step of a strip or meter. Write it like 0.5.");
            step = read.Value;
        }
        return (Math.Sqrt(LeastSdPh * LeastSdPh + ShareOfStep * ShareOfStep * step * step), null);
    }
}
