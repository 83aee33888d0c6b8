namespace Alumroot.Quantities.Units;

/// <summary>One row of units.csv: a unit, what it is in the quantity's own unit, and who says so.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Symbol">How it is written, such as mL; unique within its kind.</param>
/// <param name="Name">Its name in words.</param>
/// <param name="System">Whose kitchen it belongs to, or null where the word means one thing everywhere.</param>
/// <param name="ToBase">One of it in the kind's own unit.</param>
/// <param name="Offset">Added after the factor; only temperatures have one.</param>
/// <param name="IsExact">True by definition; false where a molar mass or a custom enters.</param>
/// <param name="Source">Key of the source in docs/sources.bib.</param>
/// <param name="Where">Page, table or section there.</param>
public sealed record Unit(QuantityKind Kind, string Symbol, string Name, KitchenMeasures? System, double ToBase, double Offset, bool IsExact, string Source, string Where)
{
    /// <summary>A number of this unit in the kind's own unit.</summary>
    public double InBase(double number) => number * ToBase + Offset;

    /// <summary>A number of the kind's own unit in this unit.</summary>
    public double FromBase(double number) => (number - Offset) / ToBase;
}
