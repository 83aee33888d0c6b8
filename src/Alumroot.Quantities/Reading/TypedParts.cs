using System.Text.RegularExpressions;
using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Reading;

/// <summary>A text cut into pairs of number and unit: "1 lb 3 oz" has two.</summary>
/// <param name="Failure">Why it cannot be cut, or null.</param>
/// <param name="FailedPart">The piece to blame.</param>
/// <param name="IsNegative">Whether a minus stands in front.</param>
/// <param name="Parts">The pairs; each number with its meanings, each unit as typed and possibly empty.</param>
internal sealed partial record TypedParts(UnreadReason? Failure, string? FailedPart, bool IsNegative, IReadOnlyList<(IReadOnlyList<double> Numbers, string Unit)> Parts)
{
    /// <summary>Cuts cleaned text.</summary>
    /// <param name="text">Text from <see cref="PlainText"/>.</param>
    /// <param name="mayBeCompound">Whether several pairs may follow one another; otherwise all behind the number is its unit.</param>
    public static TypedParts Cut(string text, bool mayBeCompound)
    {
        text = About().Replace(text, "");
        bool negative = text.StartsWith('-');
        int at = negative || text.StartsWith('+') ? 1 : 0;
        var parts = new List<(IReadOnlyList<double>, string)>();
        do
        {
            while (at < text.Length && text[at] == ' ') at++;
            IReadOnlyList<double> numbers = NumberText.Scan(text, at, out int behind);
            if (behind == at) return Failed(UnreadReason.NoNumber, text);
            if (Span().IsMatch(text, behind)) return Failed(UnreadReason.SpanTyped, text);
            if (numbers.Count == 0) return Failed(UnreadReason.NumberUnreadable, text);
            int end = mayBeCompound ? EndOfUnit(text, behind) : text.Length;
            string unit = text[behind..end].Trim();
            if (unit.Length > 0 && char.IsAsciiDigit(unit[0])) return Failed(UnreadReason.NumberUnreadable, text);
            if (Span().IsMatch(text, end)) return Failed(UnreadReason.SpanTyped, text);
            parts.Add((numbers, end < text.Length ? Joint().Replace(unit, "") : unit));
            at = end;
        }
        while (at < text.Length);
        return new TypedParts(null, null, negative, parts);
    }

    private static TypedParts Failed(UnreadReason why, string part) => new(why, part, false, []);

    /// <summary>A unit ends before a digit, unless the digit belongs to it as in cm3.</summary>
    private static int EndOfUnit(string text, int start)
    {
        for (int i = start; i < text.Length; i++)
        {
            bool number = char.IsAsciiDigit(text[i]) || (text[i] is '.' or ',' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1]));
            if (!number) continue;
            string unit = SpanStart().Replace(Joint().Replace(text[start..i].Trim(), ""), "");
            if (unit.Length > 0 && UnitTable.IsKnown(unit)) return SpanStart().Match(text, start, i - start) is { Success: true } dash ? dash.Index : i;
        }
        return text.Length;
    }

    [GeneratedRegex(@"^(?:~|about |approx\.? |approximately |circa |ca\.? ?|c\. ?)+ *(?=[-+0-9.,])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex About();

    [GeneratedRegex(@"\G *(?:-|to|bis|or|±|\+ ?/ ?-|\+-) *[0-9.,]", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Span();

    [GeneratedRegex(@" *(?:-|(?<=[ .])to|±|\+ ?/ ?-|\+-) *$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SpanStart();

    [GeneratedRegex(@"(?: *[,;&+]| and| und| et) *$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Joint();
}
