using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Store;

/// <summary>The words by which an entry is found, and the question put to the index.</summary>
internal static class SearchWords
{
    private const int MostWords = 12;

    /// <summary>Subject, document and every text in the content. Percent signs of addresses are undone first.</summary>
    public static string Of(Entry entry) =>
        string.Join(' ', entry.Payload.Texts().Select(Uri.UnescapeDataString).Prepend(entry.Kind.Name).Prepend(entry.Subject.ToString()));

    /// <summary>One question for each word typed: entries that hold a word beginning so.</summary>
    public static IReadOnlyList<string> Questions(string typed) =>
        [.. typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Take(MostWords)
            .Where(w => w.Any(char.IsLetterOrDigit)).Select(w => $"\"{w.Replace("\"", "\"\"", StringComparison.Ordinal)}\"*")];
}
