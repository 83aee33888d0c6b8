using System.Globalization;

namespace Alumroot.Chemistry.Constants;

/// <summary>Counts the elements of a formula: brackets, hydrates (<c>:2H2O</c>), oxidation states (<c>Fe(II)</c>) and whole ligands (<c>Acetate</c>) are understood.</summary>
/// <remarks>A ligand counts as one element of its own, since nothing here takes it apart; Fe(II) and Fe(III) are different elements, since there is no redox.</remarks>
public static class ChemicalFormula
{
    private const double MostAtoms = 1e6;

    /// <summary>Element (or ligand) to count.</summary>
    /// <exception cref="FormatException">The formula holds a sign that is not understood or a bracket is not closed.</exception>
    public static IReadOnlyDictionary<string, double> Count(string formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var counts = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (string part in formula.Split([':', '.', '·'], StringSplitOptions.RemoveEmptyEntries))
        {
            int i = 0;
            double factor = Number(part, ref i);
            Group(part, ref i, factor, counts, depth: 0);
            if (i != part.Length) throw new FormatException($"\"{formula}\": the sign '{part[i]}' is not understood");
        }
        return counts;
    }

    private static void Group(string s, ref int i, double factor, Dictionary<string, double> counts, int depth)
    {
        if (depth > 8) throw new FormatException($"\"{s}\" nests brackets too deeply");
        while (i < s.Length)
        {
            if (s[i] == '(')
            {
                i++;
                var inner = new Dictionary<string, double>(StringComparer.Ordinal);
                Group(s, ref i, 1, inner, depth + 1);
                if (i >= s.Length || s[i] != ')') throw new FormatException($"\"{s}\": a bracket is not closed");
                i++;
                double times = Number(s, ref i) * factor;
                foreach ((string e, double n) in inner) Add(counts, e, n * times);
            }
            else if (char.IsAsciiLetterUpper(s[i]))
            {
                string element = Symbol(s, ref i);
                Add(counts, element, Number(s, ref i) * factor);
            }
            else
            {
                return;
            }
        }
    }

    private static string Symbol(string s, ref int i)
    {
        int start = i++;
        while (i < s.Length && char.IsAsciiLetterLower(s[i])) i++;
        string symbol = s[start..i];
        foreach (string state in (ReadOnlySpan<string>)["(III)", "(II)"])
        {
            if (!s.AsSpan(i).StartsWith(state, StringComparison.Ordinal)) continue;
            i += state.Length;
            return symbol + state.Trim('(', ')');
        }
        foreach (string state in (ReadOnlySpan<string>)["III", "II"])
        {
            if (!s.AsSpan(i).StartsWith(state, StringComparison.Ordinal)) continue;
            i += state.Length;
            return symbol + state;
        }
        return symbol;
    }

    private static double Number(string s, ref int i)
    {
        int start = i;
        while (i < s.Length && (char.IsAsciiDigit(s[i]) || s[i] == '.')) i++;
        if (i == start) return 1;
        return double.TryParse(s.AsSpan(start, i - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double n) && n <= MostAtoms
            ? n
            : throw new FormatException($"\"{s}\": {s[start..i]} is no number of atoms");
    }

    private static void Add(Dictionary<string, double> counts, string element, double n) =>
        counts[element] = counts.GetValueOrDefault(element) + n;
}
