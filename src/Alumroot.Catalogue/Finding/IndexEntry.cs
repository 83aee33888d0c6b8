namespace Alumroot.Catalogue.Finding;

/// <summary>What may be typed to find one row.</summary>
internal sealed class IndexEntry
{
    private const double NameWeight = 1;
    private const double FacetWeight = 0.7;
    private const double TextWeight = 0.35;

    private readonly (string Text, double Weight)[] _terms;
    private readonly (int Word, double Weight)[] _words;

    /// <param name="lexicon">Where the words of all rows are kept once.</param>
    /// <param name="kind">Which part of the catalogue.</param>
    /// <param name="key">The row's key; it counts as a name.</param>
    /// <param name="title">What to show.</param>
    /// <param name="names">Names and aliases.</param>
    /// <param name="facets">Species, formulas, classes: weigh less than names.</param>
    /// <param name="texts">Sentences: weigh least.</param>
    internal IndexEntry(Lexicon lexicon, FoundKind kind, string key, string title, string[] names, string[] facets, string[] texts)
    {
        (Kind, Key, Title) = (kind, key, title);
        _terms =
        [
            .. names.Prepend(key).Select(t => (FoldedText.Words(t), NameWeight)),
            .. facets.Select(t => (FoldedText.Words(t), FacetWeight)),
        ];
        _words =
        [
            .. _terms
                .Concat(texts.Select(t => (Text: FoldedText.Words(t), Weight: TextWeight)))
                .SelectMany(t => lexicon.NumbersOf(t.Text, suggest: t.Weight > TextWeight).Select(w => (Word: w, t.Weight)))
                .GroupBy(w => w.Word)
                .Select(g => (g.Key, g.Max(w => w.Weight))),
        ];
    }

    internal FoundKind Kind { get; }

    internal string Key { get; }

    internal string Title { get; }

    /// <summary>How well this row fits a query, 0 to 1000; 0 when it does not.</summary>
    /// <param name="phrase">The whole query, folded.</param>
    /// <param name="wordFits">For each word of the query, how well each word of the lexicon fits it.</param>
    internal double Score(string phrase, IReadOnlyList<double[]> wordFits)
    {
        double whole = 0;
        foreach ((string text, double weight) in _terms) whole = Math.Max(whole, weight * PhraseFit(phrase, text));
        double sum = 0;
        int met = 0;
        foreach (double[] fits in wordFits)
        {
            double best = 0;
            foreach ((int word, double weight) in _words) best = Math.Max(best, weight * fits[word]);
            sum += best;
            if (best > 0) met++;
        }
        double coverage = (double)met / wordFits.Count;
        return Math.Max(whole, sum / wordFits.Count * coverage * coverage);
    }

    /// <summary>The whole query against a whole term: alike 1000, a slip or two 800 and 700, the beginning up to 650.</summary>
    private static double PhraseFit(string phrase, string text)
    {
        if (text == phrase) return 1000;
        int forgiven = TypingDistance.Forgiven(phrase.Length);
        int slips = TypingDistance.Between(phrase, text, forgiven);
        if (slips <= forgiven) return 900 - 100 * slips;
        bool begins = phrase.Length > 1 && text.StartsWith(phrase, StringComparison.Ordinal);
        return begins ? 550 + 100.0 * phrase.Length / text.Length : 0;
    }
}
