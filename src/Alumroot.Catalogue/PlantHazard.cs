using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>What may harm the gatherer, the maker or the plant's own kind.</summary>
/// <remarks>Immutable. "None known" is not a proof of safety.</remarks>
public sealed class PlantHazard
{
    private PlantHazard(Fields row)
    {
        Key = row.Key();
        Name = row.Required("name");
        DyestuffKey = row.Text("dyestuff_key");
        Species = row.Text("species");
        Part = row.Text("part");
        Kind = row.Required("kind");
        Severity = row.Enum<Severity>("severity");
        Fact = row.Text("fact");
        Advice = row.Text("advice");
        Gathering = row.Text("gathering");
        CautionKeys = row.List("caution_keys");
        Citation = row.Citation();
    }

    /// <summary>The row's short name.</summary>
    public string Key { get; }

    /// <summary>The plant, insect, fungus or lichen.</summary>
    public string Name { get; }

    /// <summary>The dyestuff it belongs to; empty for plants that are listed only because they are met.</summary>
    public string DyestuffKey { get; }

    /// <summary>The species.</summary>
    public string Species { get; }

    /// <summary>The part that harms.</summary>
    public string Part { get; }

    /// <summary>The kind of harm in a few words.</summary>
    public string Kind { get; }

    /// <summary>How grave it is.</summary>
    public Severity Severity { get; }

    /// <summary>What is known; empty when nothing more is.</summary>
    public string Fact { get; }

    /// <summary>What to do.</summary>
    public string Advice { get; }

    /// <summary>Protection, scarcity and rules of gathering or trade; empty when none are known.</summary>
    public string Gathering { get; }

    /// <summary>Keys of the cautions to show.</summary>
    public IReadOnlyList<string> CautionKeys { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    internal static PlantHazard Read(Fields row) => new(row);
}
