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
