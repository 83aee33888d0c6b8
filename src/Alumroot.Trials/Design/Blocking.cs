using System.Numerics;

namespace Alumroot.Trials.Design;

/// <summary>Spreads the jars of one replicate over days or pots so that only products of many factors are hidden by them.</summary>
/// <remarks>Two-level designs: blocks by the signs of products of factors, chosen so that neither single factors nor, where it can be helped, products of two are hidden (Box, Hunter and Hunter 1978, Statistics for Experimenters; from memory).</remarks>
internal static class Blocking
{
    /// <summary>The block of each jar and the effects that differ between blocks; null when the blocks do not fit.</summary>
    public static (int[] BlockOf, IReadOnlyList<IReadOnlyList<int>> Hidden)? Of(TrialRequest request, int[][] jars, int blocks)
    {
        int k = request.Factors.Count;
        if (request.Kind == TrialKind.LatinSquare || request.Factors.Any(f => f.LevelCount != 2) || !BitOperations.IsPow2(blocks) || jars.Length % blocks != 0) return null;
        int q = BitOperations.Log2((uint)blocks);
        // In a fraction a product equals others; one that is constant over the jars splits nothing.
        uint[] candidates = [.. Enumerable.Range(1, (1 << k) - 1).Select(i => (uint)i).Where(w => BitOperations.PopCount(w) > 1 && jars.Select(j => Sign(j, w)).Distinct().Count() == 2).OrderByDescending(BitOperations.PopCount)];
        (int[] BlockOf, uint[] Hidden, int Score)? best = null;
        foreach (uint[] choice in Choices(candidates, q))
        {
            int[] blockOf = [.. jars.Select(j => choice.Select((w, i) => Sign(j, w) << i).Sum())];
            if (Enumerable.Range(0, blocks).Any(b => blockOf.Count(x => x == b) != jars.Length / blocks)) continue;
            uint[] hidden = [.. Effects(k, 2).Where(e => IsHidden(jars, blockOf, blocks, e))];
            if (hidden.Any(h => BitOperations.PopCount(h) == 1)) continue;
            if (best is null || hidden.Length < best.Value.Score) best = (blockOf, hidden, hidden.Length);
            if (hidden.Length == 0) break;
        }
        return best is { } found ? (found.BlockOf, [.. found.Hidden.Select(h => (IReadOnlyList<int>)[.. Enumerable.Range(0, k).Where(i => (h >> i & 1) != 0)])]) : null;
    }

    private static IEnumerable<uint> Effects(int factors, int most)
    {
        for (uint e = 1; e < 1u << factors; e++) if (BitOperations.PopCount(e) <= most) yield return e;
    }

    private static IEnumerable<uint[]> Choices(uint[] candidates, int count)
    {
        if (count == 0) yield return [];
        else
            for (int i = 0; i < Math.Min(candidates.Length, 40); i++)
                foreach (uint[] rest in Choices(candidates[(i + 1)..], count - 1)) yield return [candidates[i], .. rest];
    }

    // Hidden wholly: the same sign in every jar of a block.
    private static bool IsHidden(int[][] jars, int[] blockOf, int blocks, uint effect) =>
        Enumerable.Range(0, blocks).All(b => jars.Where((_, i) => blockOf[i] == b).Select(j => Sign(j, effect)).Distinct().Count() == 1);

    private static int Sign(int[] levels, uint effect)
    {
        int ones = 0;
        for (int i = 0; i < levels.Length; i++) if ((effect >> i & 1) != 0 && levels[i] == 0) ones++;
        return ones & 1;
    }
}
