using System.Numerics;
using Alumroot.Numerics;

namespace Alumroot.Trials.Design;

/// <summary>Designs trials. Pure and reproducible: the same request gives the same jars in the same order.</summary>
/// <remarks>Formulas, sources and limits: docs/models/trials.md.</remarks>
public static class Designer
{
    /// <summary>Limits of what is designed: more is work for nobody's kitchen.</summary>
    public const int MostFactors = 12, MostLevels = 12, MostJars = 512;

    private const int MostCandidates = 20_000;

    /// <summary>The trial, or why there is none.</summary>
    public static DesignOutcome Design(TrialRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (request.Factors.Count is 0 or > MostFactors) return new DesignOutcome.Refused(DesignRefusal.FactorCount, MostFactors);
        if (request.Factors.Any(f => f.LevelCount is < 2 or > MostLevels)) return new DesignOutcome.Refused(DesignRefusal.LevelCount, MostLevels);
        if (request.Forbidden.Count > 0 && request.Kind is TrialKind.Fraction or TrialKind.LatinSquare) return new DesignOutcome.Refused(DesignRefusal.ForbiddenNotHere);
        return request.Kind switch
        {
            TrialKind.Full => Full(request),
            TrialKind.Fraction => Fraction(request),
            TrialKind.LatinSquare => Square(request),
            _ => Best(request),
        };
    }

    private static DesignOutcome Full(TrialRequest request)
    {
        double all = request.Factors.Aggregate(1.0, (n, f) => n * f.LevelCount);
        if (all * request.Replicates > MostJars) return new DesignOutcome.Refused(DesignRefusal.TooManyJars, MostJars);
        int[][] jars = [.. Combinations(request.Factors).Where(levels => !IsForbidden(request, levels))];
        return jars.Length < 2 ? new DesignOutcome.Refused(DesignRefusal.ForbiddenLeavesTooLittle) : InBlocks(request, jars, new TrialDesign(request, []));
    }

    private static DesignOutcome Fraction(TrialRequest request)
    {
        int k = request.Factors.Count;
        if (request.Factors.Any(f => f.LevelCount != 2)) return new DesignOutcome.Refused(DesignRefusal.NeedsTwoLevels);
        int most = request.Jars ?? 1 << Math.Max(2, (k + 1) / 2 + 1), basis = Math.Min(k, BitOperations.Log2((uint)Math.Clamp(most, 1, MostJars)));
        // So many jars can hold so many factors: one fewer than there are jars.
        if ((1 << basis) - 1 < k) return new DesignOutcome.Refused(DesignRefusal.TooFewJars, (int)BitOperations.RoundUpToPowerOf2((uint)k + 1));
        while (basis < k && FractionSearch.Choices(k, basis) > FractionSearch.MostChoices) basis--;
        if ((1 << basis) * request.Replicates > MostJars) return new DesignOutcome.Refused(DesignRefusal.TooManyJars, MostJars);
        if (FractionSearch.Generators(k, basis) is not { } generators) return new DesignOutcome.Refused(DesignRefusal.TooFewJars, (int)BitOperations.RoundUpToPowerOf2((uint)k + 1));
        int[][] jars = [.. Enumerable.Range(0, 1 << basis).Select(run => Enumerable.Range(0, k).Select(f => f < basis ? run >> f & 1 : Product(run, generators[f - basis])).ToArray())];
        uint[] words = FractionSearch.Words(generators, basis);
        return InBlocks(request, jars, new TrialDesign(request, [])
        {
            Resolution = words.Length == 0 ? null : words.Min(BitOperations.PopCount),
            Generators = [.. generators.Select((g, i) => (basis + i, (IReadOnlyList<int>)Bits(g)))],
            Aliases = AliasGroups(k, words),
        });
    }

    private static DesignOutcome Square(TrialRequest request)
    {
        int n = request.Factors[0].LevelCount;
        if (request.Factors.Count != 3 || request.Factors.Any(f => f.LevelCount != n)) return new DesignOutcome.Refused(DesignRefusal.NeedsSquare, 3);
        if (n * n * request.Replicates > MostJars) return new DesignOutcome.Refused(DesignRefusal.TooManyJars, MostJars);
        var random = new SeededRandom(request.Seed);
        int[] rows = Shuffled(n, random), columns = Shuffled(n, random), names = Shuffled(n, random);
        int[][] jars = [.. Enumerable.Range(0, n * n).Select(i => new[] { i / n, i % n, names[(rows[i / n] + columns[i % n]) % n] })];
        return InBlocks(request, jars, new TrialDesign(request, []));
    }

    private static DesignOutcome Best(TrialRequest request)
    {
        double all = request.Factors.Aggregate(1.0, (n, f) => n * f.LevelCount);
        if (all > MostCandidates) return new DesignOutcome.Refused(DesignRefusal.TooManyJars, MostCandidates);
        int[][] candidates = [.. Combinations(request.Factors).Where(levels => !IsForbidden(request, levels))];
        if (candidates.Length == 0) return new DesignOutcome.Refused(DesignRefusal.ForbiddenLeavesTooLittle);
        double[][] rows = [.. candidates.Select(c => ModelColumns.Row(request.Factors, c, request.Interactions))];
        int effects = rows[0].Length, jars = request.Jars ?? Math.Min(MostJars, effects + Math.Max(2, effects / 3));
        if (jars > MostJars) return new DesignOutcome.Refused(DesignRefusal.TooManyJars, MostJars);
        if (jars < effects) return new DesignOutcome.Refused(DesignRefusal.TooFewJars, effects);
        if (new BestSearch(rows, jars, request.Seed).Run() is not { } found) return new DesignOutcome.Refused(DesignRefusal.ForbiddenLeavesTooLittle);
        return InBlocks(request, [.. found.Chosen.Order().Select(c => candidates[c])], new TrialDesign(request, []) { EfficiencyRatio = Math.Min(1, Math.Exp(found.LogDet / effects) / jars) });
    }

    /// <summary>Repeats the jars, spreads them over blocks and draws the order within each block.</summary>
    private static DesignOutcome InBlocks(TrialRequest request, int[][] jars, TrialDesign design)
    {
        int blocks = request.Blocks, replicates = request.Replicates;
        if (blocks < 1 || replicates < 1) return new DesignOutcome.Refused(DesignRefusal.BlocksDoNotFit, 1);
        int[] blockOf = new int[jars.Length];
        if (blocks > 1 && replicates % blocks != 0)
        {
            if (Blocking.Of(request, jars, blocks) is not { } split) return new DesignOutcome.Refused(DesignRefusal.BlocksDoNotFit, blocks);
            (blockOf, design) = (split.BlockOf, design with { HiddenByBlocks = split.Hidden });
        }
        bool byReplicate = blocks > 1 && replicates % blocks == 0;
        var random = new SeededRandom(request.Seed + 17);
        (int Block, ulong Lot, int Replicate, int[] Levels)[] drawn =
        [
            .. Enumerable.Range(0, replicates).SelectMany(r => jars.Select((levels, i) => (byReplicate ? r % blocks : blockOf[i], random.NextBits(), r + 1, levels)))
                .OrderBy(j => j.Item1).ThenBy(j => j.Item2),
        ];
        return new DesignOutcome.Made(design with { Jars = [.. drawn.Select((j, i) => new Jar(i + 1, j.Block + 1, j.Replicate, j.Levels))] });
    }

    private static IEnumerable<int[]> Combinations(IReadOnlyList<Factor> factors)
    {
        int[] levels = new int[factors.Count];
        while (true)
        {
            yield return [.. levels];
            int i = 0;
            while (i < levels.Length && ++levels[i] == factors[i].LevelCount) levels[i++] = 0;
            if (i == levels.Length) yield break;
        }
    }

    private static bool IsForbidden(TrialRequest request, int[] levels) =>
        request.Forbidden.Any(f => levels[f.Factor] == f.Level && levels[f.OtherFactor] == f.OtherLevel);

    // The sign of a product of factors that are -1 at level 0 and +1 at level 1.
    private static int Product(int run, uint of)
    {
        int low = BitOperations.PopCount(of) - BitOperations.PopCount(of & (uint)run);
        return low % 2 == 0 ? 1 : 0;
    }

    private static int[] Bits(uint word) => [.. Enumerable.Range(0, 32).Where(i => (word >> i & 1) != 0)];

    private static IReadOnlyList<IReadOnlyList<IReadOnlyList<int>>> AliasGroups(int factors, uint[] words)
    {
        var effects = new List<uint>();
        for (int i = 0; i < factors; i++) effects.Add(1u << i);
        for (int i = 0; i < factors; i++)
            for (int j = i + 1; j < factors; j++) effects.Add(1u << i | 1u << j);
        var groups = new List<IReadOnlyList<IReadOnlyList<int>>>();
        var seen = new HashSet<uint>();
        foreach (uint effect in effects)
        {
            if (!seen.Add(effect)) continue;
            uint[] same = [.. words.Select(w => w ^ effect).Where(e => BitOperations.PopCount(e) is 1 or 2)];
            foreach (uint s in same) seen.Add(s);
            if (same.Length > 0) groups.Add([Bits(effect), .. same.OrderBy(BitOperations.PopCount).ThenBy(s => s).Select(s => (IReadOnlyList<int>)Bits(s))]);
        }
        return groups;
    }

    private static int[] Shuffled(int n, SeededRandom random)
    {
        int[] order = [.. Enumerable.Range(0, n)];
        for (int i = n - 1; i > 0; i--)
        {
            int j = random.NextBelow(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }
        return order;
    }
}
