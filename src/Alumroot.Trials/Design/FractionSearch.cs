using System.Numerics;

namespace Alumroot.Trials.Design;

/// <summary>Finds the generators of a two-level fraction of least aberration: highest resolution, then fewest words of that length, then of the next.</summary>
/// <remarks>Fries and Hunter 1980, Minimum aberration 2^(k-p) designs, Technometrics 22. All choices of generators are tried where there are few enough, which holds for all sizes admitted here.</remarks>
internal static class FractionSearch
{
    /// <summary>The most choices of generators that are tried.</summary>
    public const long MostChoices = 400_000;

    /// <summary>How many choices there are for so many factors in so many base factors.</summary>
    public static double Choices(int factors, int basis)
    {
        double candidates = (1 << basis) - basis - 1, choices = 1;
        for (int i = 0; i < factors - basis; i++) choices *= (candidates - i) / (i + 1);
        return choices;
    }

    /// <summary>For each added factor the base factors whose product sets it, as bits; null when there are not enough products.</summary>
    public static uint[]? Generators(int factors, int basis)
    {
        int added = factors - basis;
        // Long products first: they give long words.
        uint[] candidates = [.. Enumerable.Range(1, (1 << basis) - 1).Select(b => (uint)b).Where(b => BitOperations.PopCount(b) > 1).OrderByDescending(BitOperations.PopCount).ThenBy(b => b)];
        if (added > candidates.Length) return null;
        if (added == 0) return [];
        int[] choice = [.. Enumerable.Range(0, added)], best = [.. choice];
        int[]? bestLengths = null;
        do
        {
            int[] lengths = WordLengths([.. choice.Select(c => candidates[c])], basis);
            if (bestLengths is null || IsLess(lengths, bestLengths)) (best, bestLengths) = ([.. choice], lengths);
        }
        while (Next(choice, candidates.Length));
        return [.. best.Select(c => candidates[c])];
    }

    /// <summary>All words of the defining relation but the empty one, each as bits over all factors.</summary>
    public static uint[] Words(uint[] generators, int basis)
    {
        uint[] first = [.. generators.Select((g, i) => g | 1u << (basis + i))];
        var words = new uint[(1 << first.Length) - 1];
        for (int s = 1; s <= words.Length; s++)
        {
            uint word = 0;
            for (int i = 0; i < first.Length; i++) if ((s >> i & 1) != 0) word ^= first[i];
            words[s - 1] = word;
        }
        return words;
    }

    /// <summary>How many words there are of each length.</summary>
    public static int[] WordLengths(uint[] generators, int basis)
    {
        var count = new int[basis + generators.Length + 1];
        foreach (uint word in Words(generators, basis)) count[BitOperations.PopCount(word)]++;
        return count;
    }

    private static bool IsLess(int[] a, int[] b)
    {
        for (int i = 0; i < a.Length; i++) if (a[i] != b[i]) return a[i] < b[i];
        return false;
    }

    private static bool Next(int[] choice, int of)
    {
        int i = choice.Length - 1;
        while (i >= 0 && choice[i] == of - choice.Length + i) i--;
        if (i < 0) return false;
        choice[i]++;
        for (int j = i + 1; j < choice.Length; j++) choice[j] = choice[j - 1] + 1;
        return true;
    }
}
