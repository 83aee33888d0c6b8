using System.Text;

namespace Alumroot.App.Words;

/// <summary>Formulas as they are printed.</summary>
public static class FormulaWords
{
    private const string Low = "\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089";

    /// <summary>Counts set low and a raised point before the water of crystals: KAl(SO4)2.12H2O becomes KAl(SO₄)₂·12H₂O.</summary>
    public static string Printed(string formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var printed = new StringBuilder(formula.Length);
        bool counting = false;
        for (int i = 0; i < formula.Length; i++)
        {
            char c = formula[i];
            bool point = c == '.' && !(i > 0 && char.IsDigit(formula[i - 1]) && !counting);
            if (point) printed.Append('\u00B7');
            else printed.Append(counting && char.IsAsciiDigit(c) ? Low[c - '0'] : c);
            counting = char.IsAsciiLetter(c) || c is ')' or ']' || (counting && char.IsAsciiDigit(c));
        }
        return printed.ToString();
    }
}
