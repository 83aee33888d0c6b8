namespace Alumroot.Catalogue.Finding;

/// <summary>Tolerant finding over names, species, colourants, reagents, rules and troubles.</summary>
/// <remarks>Immutable. Case, accents and punctuation do not matter; one slip is forgiven from four letters, two from eight; beginnings count. Any text is accepted.</remarks>
public sealed class CatalogueSearch
{
    private const int LongestQuery = 120;
    private const int MostWords = 10;
    private const int MostSuggestions = 5;
    private const double LeastScore = 60;

    private readonly IReadOnlyList<IndexEntry> _entries;
    private readonly string[] _vocabulary;

    internal CatalogueSearch(CatalogueData data)
    {
        _entries = CatalogueIndex.Of(data);
        _vocabulary = [.. _entries.SelectMany(e => e.Vocabulary).Where(w => w.Length > 2).Distinct().Order(StringComparer.Ordinal)];
    }

    /// <summary>Finds what fits the words, best first; what fits equally well stands in the order of the tables.</summary>
    /// <param name="query">Words as typed; only the first 120 letters and ten words are read.</param>
    /// <param name="most">The greatest number of hits; zero or more.</param>
    public Found Find(string query, int most = 40)
    {
        ArgumentNullException.ThrowIfNull(query);
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        string phrase = FoldedText.Words(query.Length > LongestQuery ? query[..LongestQuery] : query);
        string[] words = [.. phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(MostWords)];
        if (words.Length == 0) return new Found(query, [], []);
        Hit[] hits =
        [
            .. _entries
                .Select(e => new Hit(e.Kind, e.Key, e.Title, e.Score(phrase, words)))
                .Where(h => h.Score >= LeastScore)
                .OrderByDescending(h => h.Score)
                .Take(most),
        ];
        return new Found(query, hits, hits.Length > 0 ? [] : Suggest(words));
    }

    private string[] Suggest(string[] words) =>
    [
        .. words
            .SelectMany(word => _vocabulary.Select(known => (known, slips: Slips(word, known))))
            .Where(pair => pair.slips < int.MaxValue)
            .OrderBy(pair => pair.slips)
            .ThenBy(pair => pair.known, StringComparer.Ordinal)
            .Select(pair => pair.known)
            .Distinct()
            .Take(MostSuggestions),
    ];

    /// <summary>Slips between a typed word and a known one when they are at most half of the typed word.</summary>
    private static int Slips(string typed, string known)
    {
        int most = typed.Length / 2;
        int slips = TypingDistance.Between(typed, known, most);
        return slips <= most ? slips : int.MaxValue;
    }
}
