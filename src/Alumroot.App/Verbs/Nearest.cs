using Alumroot.Catalogue.Finding;

namespace Alumroot.App.Verbs;

/// <summary>Finds the known word closest to a mistyped one.</summary>
public static class Nearest
{
    /// <summary>The nearest of the known words, or null when none is near.</summary>
    /// <param name="typed">The word as typed.</param>
    /// <param name="known">The words that would have been understood.</param>
    public static string? To(string typed, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(known);
        int most = Math.Max(2, typed.Length / 3);
        return known
            .Select(word => (Word: word, Slips: TypingDistance.Between(typed.ToLowerInvariant(), word.ToLowerInvariant(), most)))
            .Where(pair => pair.Slips <= most)
            .OrderBy(pair => pair.Slips)
            .Select(pair => pair.Word)
            .FirstOrDefault();
    }
}
