using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>One cause of a trouble at the bench: what is seen, why it may be, how to tell, what to do.</summary>
/// <remarks>Immutable. A symptom has as many rows as it has likely causes, likeliest first.</remarks>
public sealed class Trouble
{
    private Trouble(Fields row)
    {
        Key = row.Key();
        Symptom = row.Required("symptom");
        Words = row.List("words");
        Step = row.Required("step");
        Cause = row.Required("cause");
        HowToTell = row.Required("how_to_tell");
        WhatToDo = row.Required("what_to_do");
        Citation = row.Citation();
    }

    /// <summary>The row's short name.</summary>
    public string Key { get; }

    /// <summary>What the maker sees.</summary>
    public string Symptom { get; }

    /// <summary>Other words for it, for finding.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>The step where it shows.</summary>
    public string Step { get; }

    /// <summary>A likely cause.</summary>
    public string Cause { get; }

    /// <summary>The small test that tells whether it is this cause.</summary>
    public string HowToTell { get; }

    /// <summary>What to do about it.</summary>
    public string WhatToDo { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    internal static Trouble Read(Fields row) => new(row);
}
