using System.Globalization;

namespace Alumroot.Chemistry.Constants;

/// <summary>One of the building blocks from which every dissolved species and solid is written: an ion such as Al+3, or H+.</summary>
public sealed class Component
{
    internal const string Proton = "H+";
    internal const string Water = "H2O";

    /// <summary>Reads name, charge and elements from the name of the ion.</summary>
    public Component(string name)
    {
        Name = name;
        (string formula, Charge) = SplitCharge(name);
        Elements = ChemicalFormula.Count(formula);
        Element = Elements.Keys.FirstOrDefault(e => e is not ("H" or "O")) ?? "H";
    }

    /// <summary>Name with charge, such as SO4-2.</summary>
    public string Name { get; }

    /// <summary>Charge in elementary charges.</summary>
    public int Charge { get; }

    /// <summary>The element or ligand whose amount this component carries.</summary>
    public string Element { get; }

    /// <summary>Molar mass in g/mol; null when the table does not say.</summary>
    public double? GramsPerMole { get; init; }

    /// <summary>Elements in one ion.</summary>
    public IReadOnlyDictionary<string, double> Elements { get; }

    /// <summary>Takes the charge off the end of an ion's name: <c>Al(OH)2+</c> to (<c>Al(OH)2</c>, 1), <c>SO4-2</c> to (<c>SO4</c>, -2).</summary>
    /// <exception cref="FormatException">What follows the sign is not a whole number.</exception>
    public static (string Formula, int Charge) SplitCharge(string name)
    {
        int sign = name.LastIndexOfAny(['+', '-']);
        if (sign < 0) return (name, 0);
        string digits = name[(sign + 1)..];
        int size = 1;
        if (digits.Length > 0 && !int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out size)) throw new FormatException($"\"{name}\": {digits} is no charge");
        return (name[..sign], name[sign] == '+' ? size : -size);
    }
}
