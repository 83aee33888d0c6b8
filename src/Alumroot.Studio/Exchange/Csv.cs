using System.Globalization;

namespace Alumroot.Studio.Exchange;

/// <summary>Writes tables for spreadsheets (RFC 4180), with words that a spreadsheet would run as a formula made harmless by an apostrophe in front.</summary>
public static class Csv
{
    private static readonly char[] Formula = ['=', '+', '-', '@', '\t', '\r'];

    /// <summary>One line with its end.</summary>
    /// <param name="cells">Texts, numbers, or null for an empty cell.</param>
    public static string Line(params IReadOnlyList<object?> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        return string.Join(',', cells.Select(Cell)) + "\r\n";
    }

    private static string Cell(object? value) => value switch
    {
        null => "",
        string text => Quoted(text.Length > 0 && Formula.Contains(text[0]) ? "'" + text : text),
        IFormattable number => Quoted(number.ToString(null, CultureInfo.InvariantCulture)),
        _ => Quoted(value.ToString() ?? ""),
    };

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
