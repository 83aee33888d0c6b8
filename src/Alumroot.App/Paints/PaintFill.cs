using System.Globalization;

namespace Alumroot.App.Paints;

/// <summary>What paint is filled into.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Millilitres">What it holds.</param>
/// <param name="Refilled">Whether it is filled again after drying.</param>
public sealed record PaintFill(string Name, double Millilitres, bool Refilled)
{
    // Sizes in trade use; common practice, no source. A stick of 10 x 60 mm.
    private static readonly (string Word, double Millilitres, bool Refilled)[] Known = [("quarter-pan", 1, true), ("half-pan", 2, true), ("pan", 4, true), ("stick", 4.712, false)];

    /// <summary>Words that are understood.</summary>
    public const string Words = "quarter-pan, half-pan, pan, stick, tube-15ml, jar-30ml or any other number of millilitres";

    /// <summary>Words that a page offers.</summary>
    public static IReadOnlyList<string> Offered { get; } = ["half-pan", "pan", "quarter-pan", "tube-15ml", "tube-37ml", "jar-30ml", "stick"];

    /// <summary>What was filled, with how many: "4 half-pans", "1 tube of 15 mL".</summary>
    /// <param name="count">How many, as it is written.</param>
    /// <param name="what">The word.</param>
    public static string Counted(string count, string what)
    {
        ArgumentNullException.ThrowIfNull(what);
        (string vessel, string size) = Parted(what);
        return $"{count} {vessel}{(count == "1" ? "" : "s")}{(size.Length > 0 ? $" of {size}" : "")}";
    }

    /// <summary>A word for a list to choose from: "half-pan, 2 mL", "tube, 15 mL".</summary>
    public static string Spoken(string what)
    {
        ArgumentNullException.ThrowIfNull(what);
        (string vessel, string size) = Parted(what);
        return size.Length > 0 ? $"{vessel}, {size}" : Of(what) is { Refilled: true, Millilitres: var ml } ? $"{vessel}, {ml.ToString("0", CultureInfo.InvariantCulture)} mL" : vessel;
    }

    private static (string Vessel, string Size) Parted(string what) =>
        what.Split('-') is [var vessel and ("tube" or "jar"), var size] && size.EndsWith("ml", StringComparison.OrdinalIgnoreCase) ? (vessel, $"{size[..^2]} mL") : (what, "");

    /// <summary>Reads a word; null when it is none.</summary>
    public static PaintFill? Of(string typed)
    {
        foreach ((string word, double millilitres, bool refilled) in Known)
            if (string.Equals(word, typed, StringComparison.OrdinalIgnoreCase)) return new PaintFill(word, millilitres, refilled);
        foreach (string prefix in (string[])["tube-", "jar-"])
            if (typed.StartsWith(prefix, StringComparison.OrdinalIgnoreCase) && typed.EndsWith("ml", StringComparison.OrdinalIgnoreCase)
                && double.TryParse(typed[prefix.Length..^2], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double ml) && ml is > 0 and <= 5000)
                return new PaintFill(typed.ToLowerInvariant(), ml, false);
        return null;
    }
}
