using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>Two things that must not meet, or only with care.</summary>
/// <remarks>Immutable.</remarks>
public sealed class Incompatibility
{
    private Incompatibility(Fields row)
    {
        Key = row.Key();
        First = row.Required("first");
        Second = row.Required("second");
        FirstReagentKeys = row.List("first_reagents");
        SecondReagentKeys = row.List("second_reagents");
        WhatHappens = row.Required("what_happens");
        Why = row.Text("why");
        Severity = row.Enum<Severity>("severity");
        Advice = row.Required("advice");
        Step = row.Required("step");
        CautionKey = row.Text("caution_key");
        Citation = row.Citation();
    }

    /// <summary>The row's short name.</summary>
    public string Key { get; }

    /// <summary>One side, in words.</summary>
    public string First { get; }

    /// <summary>The other side, in words.</summary>
    public string Second { get; }

    /// <summary>Reagents of the first side; empty when it is not a reagent of the catalogue.</summary>
    public IReadOnlyList<string> FirstReagentKeys { get; }

    /// <summary>Reagents of the second side; empty when it is not a reagent of the catalogue.</summary>
    public IReadOnlyList<string> SecondReagentKeys { get; }

    /// <summary>What happens when they meet.</summary>
    public string WhatHappens { get; }

    /// <summary>The chemistry behind it.</summary>
    public string Why { get; }

    /// <summary>How grave it is.</summary>
    public Severity Severity { get; }

    /// <summary>What to do.</summary>
    public string Advice { get; }

    /// <summary>The step where it bites.</summary>
    public string Step { get; }

    /// <summary>The caution to show; empty when none exists.</summary>
    public string CautionKey { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Whether two reagents, in either order, are the two sides of this row.</summary>
    public bool Concerns(string reagentKey, string otherReagentKey) =>
        (FirstReagentKeys.Contains(reagentKey) && SecondReagentKeys.Contains(otherReagentKey))
        || (FirstReagentKeys.Contains(otherReagentKey) && SecondReagentKeys.Contains(reagentKey));

    internal static Incompatibility Read(Fields row) => new(row);
}
