using Alumroot.Catalogue.Reading;
using Alumroot.Quantities;

namespace Alumroot.Catalogue;

/// <summary>What to do with one kind of waste.</summary>
/// <remarks>Immutable. Local rules decide; every row says whom to ask.</remarks>
public sealed class WasteAdvice
{
    private WasteAdvice(Fields row)
    {
        Key = row.Key();
        Stream = row.Required("stream");
        Contains = row.Text("contains");
        Harms = row.Text("harms");
        LeastSolublePh = row.OptionalRange("least_soluble_ph_low", "least_soluble_ph_high");
        MetalLeft = row.Text("metal_left");
        Treatment = row.Text("treatment");
        UsualRoute = row.Text("usual_route");
        Never = row.Text("never");
        AskFirst = row.Required("ask_first");
        CautionKeys = row.List("caution_keys");
        Citation = row.Citation();
    }

    /// <summary>The row's short name.</summary>
    public string Key { get; }

    /// <summary>The waste.</summary>
    public string Stream { get; }

    /// <summary>What is in it.</summary>
    public string Contains { get; }

    /// <summary>What it harms.</summary>
    public string Harms { get; }

    /// <summary>The pH range where least metal stays dissolved; null where it has no meaning.</summary>
    public Estimate? LeastSolublePh { get; }

    /// <summary>The order of metal that stays in the water, in words with mg per litre.</summary>
    public string MetalLeft { get; }

    /// <summary>What to do to it first.</summary>
    public string Treatment { get; }

    /// <summary>Where it usually goes.</summary>
    public string UsualRoute { get; }

    /// <summary>Where it never goes.</summary>
    public string Never { get; }

    /// <summary>Whom to ask before acting.</summary>
    public string AskFirst { get; }

    /// <summary>Keys of the cautions to show.</summary>
    public IReadOnlyList<string> CautionKeys { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    internal static WasteAdvice Read(Fields row) => new(row);
}
