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
    private readonly Lexicon _lexicon = new();

    internal CatalogueSearch(CatalogueData data) => _entries = new CatalogueIndex(_lexicon).Of(data);

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
        double[][] fits = Array.ConvertAll(words, _lexicon.FitsOf);
        Hit[] hits =
        [
            .. _entries
                .Select(e => new Hit(e.Kind, e.Key, e.Title, e.Score(phrase, fits)))
                .Where(h => h.Score >= LeastScore)
                .OrderByDescending(h => h.Score)
                .Take(most),
        ];
        return new Found(query, hits, hits.Length > 0 ? [] : Suggest(words));
    }

    private string[] Suggest(string[] words) =>
    [
        .. words
            .SelectMany(_lexicon.Near)
            .OrderBy(near => near.Slips)
            .ThenBy(near => near.Word, StringComparer.Ordinal)
            .Select(near => near.Word)
            .Distinct()
            .Take(MostSuggestions),
    ];
}
