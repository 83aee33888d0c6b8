using System.Globalization;

namespace Alumroot.Catalogue.Tests;

/// <summary>Mass of a formula such as 2K2CO3·3H2O from the conventional atomic weights of IUPAC 2021 (Prohaska and others 2022).</summary>
internal static class FormulaMass
{
    private static readonly Dictionary<string, double> Weights = new(StringComparer.Ordinal)
    {
        ["H"] = 1.008,
        ["B"] = 10.81,
        ["C"] = 12.011,
        ["N"] = 14.007,
        ["O"] = 15.999,
        ["Na"] = 22.990,
        ["Mg"] = 24.305,
        ["Al"] = 26.982,
        ["S"] = 32.06,
        ["Cl"] = 35.45,
        ["K"] = 39.098,
        ["Ca"] = 40.078,
        ["Fe"] = 55.845,
        ["Cu"] = 63.546,
        ["Zn"] = 65.38,
        ["Sn"] = 118.71,
    };

    internal static double Of(string formula) => formula.Split('·').Sum(part =>
    {
        int i = 0;
        int times = Count(part, ref i);
        return times * Group(part, ref i);
    });

    private static double Group(string text, ref int i)
    {
        double sum = 0;
        while (i < text.Length && text[i] != ')')
        {
            double unit;
            if (text[i] == '(')
            {
                i++;
                unit = Group(text, ref i);
                i++;
            }
            else
            {
                int start = i++;
                while (i < text.Length && char.IsAsciiLetterLower(text[i])) i++;
                unit = Weights[text[start..i]];
            }
            sum += unit * Count(text, ref i);
        }
        return sum;
    }

    private static int Count(string text, ref int i)
    {
        int start = i;
        while (i < text.Length && char.IsAsciiDigit(text[i])) i++;
        return i == start ? 1 : int.Parse(text.AsSpan(start, i - start), CultureInfo.InvariantCulture);
    }
}
