using System.Globalization;
using System.Text;

namespace Alumroot.Quantities.Reading;

/// <summary>Brings the many signs that keyboards and phones make to the few that are read: plain digits, blank, -, /, '.</summary>
internal static class PlainText
{
    private const string Vulgar = "¼1/4 ½1/2 ¾3/4 ⅐1/7 ⅑1/9 ⅒1/10 ⅓1/3 ⅔2/3 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8";

    private static readonly Dictionary<char, string> Fractions = Vulgar.Split(' ').ToDictionary(s => s[0], s => s[1..]);

    public static string Clean(string typed)
    {
        var plain = new StringBuilder(typed.Length + 8);
        foreach (char c in typed)
        {
            if (Fractions.TryGetValue(c, out string? fraction)) plain.Append(' ').Append(fraction);
            else if (char.GetUnicodeCategory(c) is not (UnicodeCategory.Format or UnicodeCategory.Control) || char.IsWhiteSpace(c)) plain.Append(Plain(c));
        }
        return plain.ToString().Trim();
    }

    private static string Plain(char c) => c switch
    {
        '\u2212' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\uFE63' or '\uFF0D' => "-",
        '\u2044' or '\u2215' or '\u00F7' => "/",
        '\u2019' or '\u2018' or '\u02BC' or '\u2032' or '\u066C' => "'",
        '\u066B' => ".",
        '\u2103' => "°C",
        '\u2109' => "°F",
        '\u212A' => "K",
        '\u2248' or '\u223C' => "~",
        >= '\uFF01' and <= '\uFF5E' => ((char)(c - 0xFEE0)).ToString(),
        _ when char.IsWhiteSpace(c) => " ",
        _ when char.IsDigit(c) => ((char)('0' + (int)char.GetNumericValue(c))).ToString(),
        _ => c.ToString(),
    };
}
