namespace Alumroot.Catalogue.Finding;

/// <summary>What may be typed to find one row.</summary>
internal sealed class IndexEntry
{
    private readonly Term[] _terms;

    internal IndexEntry(FoundKind kind, string key, string title, string[] names, string[] facets, string[] texts)
    {
        (Kind, Key, Title) = (kind, key, title);
        _terms =
        [
            .. names.Prepend(key).Select(t => new Term(FoldedText.Words(t), Weight: 1)),
            .. facets.Select(t => new Term(FoldedText.Words(t), Weight: 0.7)),
            .. texts.Select(t => new Term(FoldedText.Words(t), Weight: 0.35)),
        ];
    }

    internal FoundKind Kind { get; }

    internal string Key { get; }

    internal string Title { get; }

    /// <summary>The words of names and facets, to suggest from.</summary>
    internal IEnumerable<string> Vocabulary => _terms.Where(t => t.Weight > 0.5).SelectMany(t => t.Parts);

    /// <summary>How well this row fits a query, 0 to 1000; 0 when it does not.</summary>
    internal double Score(string phrase, string[] words)
    {
        double best = _terms.Max(t => t.Weight * t.PhraseScore(phrase));
        double sum = 0;
        int met = 0;
        foreach (string word in words)
        {
            double score = _terms.Max(t => t.Weight * t.WordScore(word));
            sum += score;
            if (score > 0) met++;
        }
        double coverage = (double)met / words.Length;
        return Math.Max(best, sum / words.Length * coverage * coverage);
    }

    private sealed record Term(string Text, double Weight)
    {
        internal string[] Parts { get; } = Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

        /// <summary>The whole query against the whole term: alike 1000, a slip or two 800 and 700, the beginning up to 650.</summary>
        internal double PhraseScore(string phrase)
        {
            if (Text == phrase) return 1000;
            int forgiven = TypingDistance.Forgiven(phrase.Length);
            int slips = TypingDistance.Between(phrase, Text, forgiven);
            if (slips <= forgiven) return 900 - 100 * slips;
            bool begins = phrase.Length > 1 && Text.StartsWith(phrase, StringComparison.Ordinal);
            return begins ? 550 + 100.0 * phrase.Length / Text.Length : 0;
        }

        /// <summary>One word of the query against each word of the term: alike 500, its beginning 350, a slip 300, a part 150.</summary>
        internal double WordScore(string word)
        {
            double best = 0;
            int forgiven = TypingDistance.Forgiven(word.Length);
            foreach (string part in Parts)
            {
                if (part == word) return 500;
                if (word.Length > 1 && part.StartsWith(word, StringComparison.Ordinal)) best = Math.Max(best, 350);
                else if (TypingDistance.Between(word, part, forgiven) is int slips && slips <= forgiven) best = Math.Max(best, 340 - 40 * slips);
                else if (word.Length > 3 && part.Contains(word, StringComparison.Ordinal)) best = Math.Max(best, 150);
            }
            return best;
        }
    }
}
