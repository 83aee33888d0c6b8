using Alumroot.App.Words;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Permanence;

/// <summary>A number typed into a form, with or without its unit.</summary>
internal static class NumberField
{
    /// <summary>The number, or the sentence that says why it is none; both null for a blank.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="label">The field's name.</param>
    /// <param name="rule">What it may be.</param>
    /// <param name="units">Units that may stand behind it.</param>
    internal static (double? Value, string? Trouble) Read(string? typed, string label, FieldRule<double> rule, params ReadOnlySpan<string> units)
    {
        if (string.IsNullOrWhiteSpace(typed)) return (null, null);
        string bare = typed.Trim();
        foreach (string unit in units)
            if (bare.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            {
                bare = bare[..^unit.Length].TrimEnd();
                break;
            }
        // The reader takes no sign; south of the equator there is one.
        bool negative = rule.Least < 0 && bare.StartsWith('-');
        FieldRule<double> plain = rule.Least < 0 ? rule with { Least = 0, SensibleLow = 0, ZeroAllowed = true } : rule;
        return QuantityReader.ReadNumber(negative ? bare[1..] : bare, plain) switch
        {
            Parsed<double>.Understood u => (negative ? -u.Value : u.Value, null),
            Parsed<double>.TwoReadings two => (null, ReadingWords.Trouble(label, two)),
            Parsed<double>.NotUnderstood not => (null, ReadingWords.Trouble(label, not)),
            _ => (null, null),
        };
    }
}
