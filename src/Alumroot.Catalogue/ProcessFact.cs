using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>A rule of thumb or a measured habit of the trade, to stand beside what is computed.</summary>
/// <remarks>Immutable. A fact without a number is a statement.</remarks>
public sealed class ProcessFact
{
    private ProcessFact(Fields row)
    {
        Key = row.Key();
        Topic = row.Required("topic");
        Rule = row.Required("rule");
        Value = row.OptionalNumber("value");
        Low = row.OptionalNumber("low");
        High = row.OptionalNumber("high");
        Unit = row.Text("unit");
        Statement = row.Text("statement");
        AppliesTo = row.Text("applies_to");
        DyestuffKeys = row.List("dyestuff_keys");
        Why = row.Text("why");
        Citation = row.Citation();
    }

    /// <summary>The row's short name, such as <c>alum-per-dye</c>.</summary>
    public string Key { get; }

    /// <summary>The step or theme it belongs to.</summary>
    public string Topic { get; }

    /// <summary>What the figure or statement is of.</summary>
    public string Rule { get; }

    /// <summary>The usual figure in <see cref="Unit"/>; null when only a range or a statement is known.</summary>
    public double? Value { get; }

    /// <summary>The least figure met, in <see cref="Unit"/>.</summary>
    public double? Low { get; }

    /// <summary>The greatest figure met, in <see cref="Unit"/>.</summary>
    public double? High { get; }

    /// <summary>The unit of the figures, such as "g per g" or "degC"; empty for a statement.</summary>
    public string Unit { get; }

    /// <summary>The rule when it is not a number; else empty.</summary>
    public string Statement { get; }

    /// <summary>What it applies to, in words.</summary>
    public string AppliesTo { get; }

    /// <summary>Dyestuffs it applies to by name; empty when it is general.</summary>
    public IReadOnlyList<string> DyestuffKeys { get; }

    /// <summary>Why, or what it does.</summary>
    public string Why { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    internal static ProcessFact Read(Fields row) => new(row);
}
