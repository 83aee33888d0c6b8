using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Quantities.Reading;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Trials;

/// <summary>What is read of a jar: its name, the column it becomes, and reading it as typed, such as "2.4 g" or "1,5 ± 0,2".</summary>
public static class ResultText
{
    /// <summary>The result that is a weight, and the one that is a pH.</summary>
    public const string Yield = "yield", FinalPh = "ph_end";

    /// <summary>The most results of a trial, and the longest name.</summary>
    public const int Most = 12, LongestName = 30;

    private static readonly FieldRule<double> AnyNumber = new(0, 0.001, 100_000, 1_000_000_000) { ZeroAllowed = true };
    private static readonly string[] PlusMinus = ["±", "+/-", "+-"];

    /// <summary>Names of results from a line such as "yield, de, hours"; a sentence that says what is wrong instead.</summary>
    /// <param name="typed">The line; null or blank for none.</param>
    /// <param name="factors">Names that are taken already.</param>
    public static (IReadOnlyList<string> Names, string? Trouble) Names(string? typed, IReadOnlyList<string> factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        string[] names = [.. (typed ?? "").Split([',', ';', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(n => n.ToLowerInvariant() is "yield_g" or Yield ? Yield : n).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (names.Length > Most) return ([], $"What is read: {names.Length} names were typed; {Most} are the most.");
        if (names.FirstOrDefault(n => n.Length > LongestName) is { } tooLong) return ([], $"What is read: '{tooLong[..LongestName]}…' is too long a name. Write a word, such as yield.");
        if (names.FirstOrDefault(n => n.ToLowerInvariant() is "l" or "a" or "b" or "colour" or "color" or "chroma" or "hue") is { } colour) return ([], $"What is read: '{colour}' belongs to the colour, which is always asked. Leave it out.");
        if (names.FirstOrDefault(n => factors.Contains(n, StringComparer.OrdinalIgnoreCase)) is { } set) return ([], $"What is read: '{set}' is set in this row. Give the reading another name.");
        return (names, null);
    }

    /// <summary>The column that a result becomes where it is analysed.</summary>
    public static string Column(string name) => name == Yield ? "yield_g" : name;

    /// <summary>The name with its unit, for a field or a head.</summary>
    public static string Label(string name) => name switch { Yield => "yield, g", FinalPh => "pH at the end", "de" => "fading, ΔE", "hours" => "hours", _ => name };

    /// <summary>The value in the unit of its column.</summary>
    public static double Number(Measured value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.SiUnit == Measured.Kilogram ? Math.Round(1000 * value.SiValue, 9) : value.SiValue;
    }

    /// <summary>Its doubt in the same unit; null when it is not told.</summary>
    public static double? Within(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.WithinSi is { } w ? result.Value.SiUnit == Measured.Kilogram ? Math.Round(1000 * w, 9) : w : null;
    }

    /// <summary>A result as typed; the sentence that says what is wrong instead.</summary>
    public static (TrialResult? Result, string? Trouble) Read(string name, string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        string[] parts = typed.Split(PlusMinus, 2, StringSplitOptions.TrimEntries);
        (Measured? value, string? trouble) = ReadOne(name, parts[0]);
        if (value is null) return (null, trouble);
        value = value with { Name = name, Typed = typed.Trim() };
        if (parts.Length == 1) return (new TrialResult(value), null);
        (Measured? within, trouble) = name == FinalPh ? ReadOne("doubt of the pH", parts[1]) : ReadOne(name, parts[1]);
        return within is null ? (null, trouble) : (new TrialResult(value, within.SiValue), null);
    }

    private static (Measured? Value, string? Trouble) ReadOne(string name, string typed)
    {
        if (name == FinalPh)
        {
            TypedAmount ph = TypedAmount.PhOf(typed, "strip");
            return (ph.Value is { } read ? read with { Instrument = null } : null, ph.Trouble);
        }
        if (name == Yield)
        {
            TypedAmount amount = TypedAmount.Amount(typed.Length > 0 && char.IsAsciiDigit(typed[^1]) ? typed + " g" : typed);
            return amount.Value is { SiUnit: Measured.Kilogram } mass ? (mass, null) : (null, amount.Trouble?.Replace("Amount:", "Yield:", StringComparison.Ordinal) ?? $"Yield: '{typed}' is a volume, and a weight is needed. Write it like 2.4 g.");
        }
        return QuantityReader.ReadNumber(typed, AnyNumber) switch
        {
            Parsed<double>.Understood number => (new Measured(name, typed, number.Value, "1"), null),
            Parsed<double>.TwoReadings two => (null, ReadingWords.Trouble(Label(name), two)),
            Parsed<double>.NotUnderstood not => (null, ReadingWords.Trouble(Label(name), not)),
            _ => (null, $"{Label(name)}: '{typed}' could not be read."),
        };
    }
}
