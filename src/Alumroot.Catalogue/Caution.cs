using Alumroot.Catalogue.Reading;

namespace Alumroot.Catalogue;

/// <summary>A caution by key, in the project's own words.</summary>
/// <remarks>Immutable. The text may hold placeholders in braces, such as {gas_l}, that the caller fills with numbers.</remarks>
public sealed class Caution
{
    private Caution(Fields row)
    {
        Key = row.Key();
        Step = row.Required("step");
        Severity = row.Enum<Severity>("severity");
        Text = row.Required("text");
        Placeholders = row.List("placeholders");
        Reason = row.Text("reason");
        Citation = row.Citation();
    }

    /// <summary>The short name, such as <c>co2-foam</c>.</summary>
    public string Key { get; }

    /// <summary>The step it belongs to: gather, extract, dissolve, precipitate, wash, dry, grind, store, paint, test, clean, dispose, sell, plan, vat or any.</summary>
    public string Step { get; }

    /// <summary>How grave it is.</summary>
    public Severity Severity { get; }

    /// <summary>The words: the harm, then what to do; at most two sentences.</summary>
    public string Text { get; }

    /// <summary>Names of the numbers that the text waits for; empty when it stands alone.</summary>
    public IReadOnlyList<string> Placeholders { get; }

    /// <summary>The fact behind it, in short.</summary>
    public string Reason { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    internal static Caution Read(Fields row) => new(row);
}
