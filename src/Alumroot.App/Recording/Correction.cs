using Alumroot.App.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Recording;

/// <summary>A changed copy of an entry: what was typed wrong is typed anew, the rest stays.</summary>
/// <param name="Document">The copy; null when something is wrong.</param>
/// <param name="Troubles">What is wrong, by the number of the value.</param>
public sealed record Correction(StudioDocument? Document, IReadOnlyDictionary<int, string> Troubles)
{
    /// <summary>The name of the field of a value.</summary>
    public static string Field(int number) => $"value-{number}";

    /// <summary>Whether an entry has something that can be corrected by typing it anew.</summary>
    public static bool IsPossible(StudioDocument document) => document is BatchStep { Values.Count: > 0 } or BatchStep or Noted or BatchGivenUp;

    /// <summary>Makes the copy.</summary>
    /// <param name="entry">The entry to be corrected.</param>
    /// <param name="typed">Text by field name.</param>
    public static Correction Of(Entry entry, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(typed);
        var troubles = new Dictionary<int, string>();
        if (DocumentText.Read(entry) is not DocumentReading.Known { Document: var document }) return new Correction(null, troubles);
        StudioDocument changed = document with { Note = typed("note") };
        if (changed is BatchGivenUp given) changed = given with { Reason = typed("reason") ?? given.Reason };
        if (changed is BatchStep step)
        {
            Measured[] values = [.. step.Values.Select((v, i) => Read(v, typed(Field(i)), i, troubles))];
            // What was taken from the shelf is what was weighed.
            LotUse[] uses = [.. step.Uses.Select(u => step.Values.ToList().FindIndex(v => v == u.Amount) is >= 0 and var i ? u with { Amount = values[i] } : u)];
            changed = step with { Values = values, Uses = uses };
        }
        return new Correction(troubles.Count == 0 ? changed : null, troubles);
    }

    private static Measured Read(Measured value, string? typed, int number, Dictionary<int, string> troubles)
    {
        if (typed is null || typed == value.Typed) return value;
        TypedAmount read = value.Name switch
        {
            "ph" => TypedAmount.PhOf(typed, value.Instrument ?? "strip"),
            "conductivity" => TypedAmount.ConductivityOf(typed),
            "temperature" => TypedAmount.TemperatureOf(typed),
            _ => TypedAmount.Amount(typed),
        };
        if (read.Value is { } fresh && fresh.SiUnit == value.SiUnit) return fresh with { Name = value.Name, Instrument = value.Instrument, ResolutionSi = value.ResolutionSi };
        troubles[number] = read.Trouble ?? $"'{typed}' is of another kind than '{value.Typed}'. Take this entry back and make a new one.";
        return value;
    }
}
