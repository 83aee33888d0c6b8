using System.Globalization;

namespace Alumroot.Chemistry.Constants;

/// <summary>A sum of components with coefficients, such as <c>+1*Al+3 +3*H2O -3*H+</c>.</summary>
public sealed class Reaction
{
    private Reaction(IReadOnlyList<(string Component, double Coefficient)> terms) => Terms = terms;

    /// <summary>Each component once, with its coefficient.</summary>
    public IReadOnlyList<(string Component, double Coefficient)> Terms { get; }

    /// <summary>A reaction from its terms.</summary>
    public static Reaction Of(IEnumerable<(string Component, double Coefficient)> terms)
    {
        var sum = new Dictionary<string, double>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach ((string component, double coefficient) in terms)
        {
            if (!sum.TryGetValue(component, out double before)) order.Add(component);
            sum[component] = before + coefficient;
        }
        return new Reaction(order.Where(c => sum[c] != 0).Select(c => (c, sum[c])).ToArray());
    }

    /// <summary>Reads terms written as sign, number, star, component, separated by blanks.</summary>
    /// <exception cref="FormatException">A term is not of that form.</exception>
    public static Reaction Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var terms = new List<(string, double)>();
        foreach (string term in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            int star = term.IndexOf('*', StringComparison.Ordinal);
            if (star < 1 || !double.TryParse(term.AsSpan(0, star), NumberStyles.Float, CultureInfo.InvariantCulture, out double c) || !double.IsFinite(c) || star == term.Length - 1)
                throw new FormatException($"\"{term}\" is not a term of a reaction; write it like +3*H2O or -1*H+");
            terms.Add((term[(star + 1)..], c));
        }
        return Of(terms);
    }

    /// <summary>The coefficient of a component, 0 when it does not take part.</summary>
    public double this[string component]
    {
        get
        {
            foreach ((string c, double v) in Terms)
                if (c == component) return v;
            return 0;
        }
    }
}
