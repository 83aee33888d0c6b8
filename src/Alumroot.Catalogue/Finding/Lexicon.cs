namespace Alumroot.Catalogue.Finding;

/// <summary>Every word of the index once, so that a typed word is compared with each only once.</summary>
internal sealed class Lexicon
{
    private readonly List<string> _words = [];
    private readonly List<bool> _suggested = [];
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);

    /// <summary>The numbers of the words of a folded text; new words are taken in.</summary>
    /// <param name="folded">Words parted by blanks.</param>
    /// <param name="suggest">Whether the words may be offered when nothing is found.</param>
    internal int[] NumbersOf(string folded, bool suggest)
    {
        string[] words = folded.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return Array.ConvertAll(words, word => NumberOf(word, suggest));
    }

    /// <summary>How well each word fits a typed one: alike 500, its beginning 350, a slip or two 300 and 260, a part 150, else 0.</summary>
    internal double[] FitsOf(string typed)
    {
        var fits = new double[_words.Count];
        int forgiven = TypingDistance.Forgiven(typed.Length);
        for (int i = 0; i < fits.Length; i++) fits[i] = Fit(typed, _words[i], forgiven);
        return fits;
    }

    /// <summary>The words nearest to a typed one, at most half of its letters away, nearest first.</summary>
    internal IEnumerable<(string Word, int Slips)> Near(string typed)
    {
        int most = typed.Length / 2;
        for (int i = 0; i < _words.Count; i++)
        {
            if (!_suggested[i] || _words[i].Length < 3) continue;
            int slips = TypingDistance.Between(typed, _words[i], most);
            if (slips <= most) yield return (_words[i], slips);
        }
    }

    private int NumberOf(string word, bool suggest)
    {
        if (!_numbers.TryGetValue(word, out int number))
        {
            number = _words.Count;
            _numbers.Add(word, number);
            _words.Add(word);
            _suggested.Add(suggest);
        }
        _suggested[number] |= suggest;
        return number;
    }

    private static double Fit(string typed, string word, int forgiven)
    {
        if (word == typed) return 500;
        if (typed.Length > 1 && word.StartsWith(typed, StringComparison.Ordinal)) return 350;
        int slips = TypingDistance.Between(typed, word, forgiven);
        if (slips <= forgiven) return 340 - 40 * slips;
        return typed.Length > 3 && word.Contains(typed, StringComparison.Ordinal) ? 150 : 0;
    }
}
