using System.Globalization;
using System.Text.RegularExpressions;

namespace Alumroot.Quantities.Reading;

/// <summary>Reads and writes numbers as people type them, apart from any unit.</summary>
internal static partial class NumberText
{
    /// <summary>The number that starts at a place of cleaned text.</summary>
    /// <param name="text">Text from <see cref="PlainText"/>.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="end">Behind the number; the same as start when there is none.</param>
    /// <returns>Its meanings, decimal first: none when it cannot be read, two when a separator leaves a doubt.</returns>
    public static IReadOnlyList<double> Scan(string text, int start, out int end)
    {
        Match mixed = MixedFraction().Match(text, start);
        if (mixed.Success && Whole(mixed.Groups[2]) < Whole(mixed.Groups[3]))
        {
            end = start + mixed.Length;
            return Finite(Whole(mixed.Groups[1]) + Whole(mixed.Groups[2]) / Whole(mixed.Groups[3]));
        }
        Match simple = SimpleFraction().Match(text, start);
        if (simple.Success)
        {
            end = start + simple.Length;
            return Finite(Whole(simple.Groups[1]) / Whole(simple.Groups[2]));
        }
        Match dec = Decimal().Match(text, start);
        end = start + dec.Length;
        bool goesOn = end < text.Length && (text[end] is '.' or ',' or '\'' || char.IsAsciiDigit(text[end]) || (text[end] == '/' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1])));
        return !dec.Success || goesOn ? [] : Meanings(dec.Groups["body"].Value, dec.Groups["power"].Value);
    }

    /// <summary>The shortest text that gives the number back and has one reading only.</summary>
    public static string Write(double number)
    {
        string text = number.ToString("0.###############", CultureInfo.InvariantCulture);
        if (double.Parse(text, CultureInfo.InvariantCulture) != number) text = number.ToString("R", CultureInfo.InvariantCulture);
        int point = text.IndexOf('.', StringComparison.Ordinal);
        bool threeDecimals = point >= 0 && text.Length - point == 4;
        return threeDecimals ? text + "0" : text;
    }

    private static IReadOnlyList<double> Meanings(string body, string power)
    {
        string compact = body.TrimEnd('.', ',');
        char[] marks = [.. compact.Where(c => !char.IsAsciiDigit(c))];
        if (marks.Length == 0) return Value(compact, power);
        char last = marks[^1];
        if (last is '.' or ',' && !marks.AsSpan(0, marks.Length - 1).Contains(last))
        {
            int at = compact.LastIndexOf(last);
            string whole = compact[..at], rest = compact[(at + 1)..];
            bool grouped = marks.Length > 1;
            if (grouped && !IsGrouped(whole)) return [];
            IReadOnlyList<double> asDecimal = Value(Digits(whole) + "." + rest, power);
            bool doubtful = !grouped && power.Length == 0 && IsGrouped(compact);
            return doubtful ? [.. asDecimal, .. Value(Digits(compact), power)] : asDecimal;
        }
        return IsGrouped(compact) ? Value(Digits(compact), power) : [];
    }

    /// <summary>One to three digits that do not start with a zero, then groups of three behind one and the same mark.</summary>
    private static bool IsGrouped(string text) => Groups().IsMatch(text);

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));

    private static IReadOnlyList<double> Value(string plain, string power) =>
        double.TryParse((plain.StartsWith('.') ? "0" : "") + plain + power, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) ? Finite(x) : [];

    private static IReadOnlyList<double> Finite(double x) => double.IsFinite(x) ? [x] : [];

    private static double Whole(Group digits) => double.Parse(digits.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\G([0-9]{1,6})(?: +| ?- ?)([0-9]{1,4}) ?/ ?([0-9]{1,4})(?![0-9/])", RegexOptions.CultureInvariant)]
    private static partial Regex MixedFraction();

    [GeneratedRegex(@"\G([0-9]{1,6}) ?/ ?([0-9]{1,6})(?![0-9/.,])", RegexOptions.CultureInvariant)]
    private static partial Regex SimpleFraction();

    [GeneratedRegex(@"\G(?<body>[0-9]+(?:[.,'][0-9]+| [0-9]{3}(?![0-9]))*[.,]?|[.,][0-9]+)(?<power>[eE][+-]?[0-9]{1,3}(?![0-9\p{L}]))?", RegexOptions.CultureInvariant)]
    private static partial Regex Decimal();

    [GeneratedRegex(@"^[1-9][0-9]{0,2}(?:([.,' ])[0-9]{3})(?:\1[0-9]{3})*$", RegexOptions.CultureInvariant)]
    private static partial Regex Groups();
}
