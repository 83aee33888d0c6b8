namespace Alumroot.Trials.Analysis;

/// <summary>An effect as a weighted sum of fitted columns.</summary>
internal sealed record EffectTerm(IReadOnlyList<string> Factors, string? Setting, IReadOnlyList<(int Column, double Weight)> Weights, (string From, string To)? Ends, bool IsBend = false);

/// <summary>The columns that are fitted, the most important first: mean, blocks, factors, bends, products of two.</summary>
internal sealed class EffectColumns
{
    private readonly List<(string Name, double[] Values)> _all = [];
    private readonly List<EffectTerm> _terms = [];

    public IReadOnlyList<(string Name, double[] Values)> All => _all;

    public IReadOnlyList<EffectTerm> Terms => _terms;

    /// <summary>How many columns belong to blocks.</summary>
    public int BlockColumns { get; private set; }

    /// <summary>Products of two that were not tried, since there are not enough jars for all of them.</summary>
    public int LeftOut { get; private set; }

    public static EffectColumns Of(TrialData data, int[] rows, bool products)
    {
        var made = new EffectColumns();
        made.Add("mean", [.. rows.Select(_ => 1.0)]);
        if (data.Blocks is { } blocks)
        {
            string[] names = [.. rows.Select(i => blocks[i]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
            made.BlockColumns = names.Length - 1;
            foreach (string name in names[..^1]) made.Add("block " + name, [.. rows.Select(i => blocks[i] == name ? 1.0 : blocks[i] == names[^1] ? -1.0 : 0.0)]);
        }
        int[][] own = [.. data.Factors.Select(f => made.AddFactor(f, rows))];
        for (int i = 0; i < own.Length; i++)
            if (data.Factors[i] is { IsMeasured: true } bent && rows.Select(r => bent.Numbers![r]).Distinct().Skip(2).Any()) made.AddBend(bent, own[i][0]);
        if (products) made.AddProducts(data, own, rows.Length);
        return made;
    }

    private int Add(string name, double[] values)
    {
        _all.Add((name, values));
        return _all.Count - 1;
    }

    private int[] AddFactor(FactorColumn factor, int[] rows)
    {
        if (factor.IsMeasured)
        {
            (double least, double most) = factor.Range;
            int at = Add(factor.Name, [.. rows.Select(r => most > least ? 2 * (factor.Numbers![r] - least) / (most - least) - 1 : 0)]);
            _terms.Add(new EffectTerm([factor.Name], null, [(at, 2)], (factor.Levels[0], factor.Levels[^1])));
            return [at];
        }
        string[] levels = [.. factor.Levels];
        int[] columns = [.. levels[..^1].Select(level => Add(factor.Name, [.. rows.Select(r => factor.Names[r] == level ? 1.0 : factor.Names[r] == levels[^1] ? -1.0 : 0.0)]))];
        // Two settings: from the first to the second. More: each from the mean of all; the last is what the others leave.
        if (levels.Length == 2) _terms.Add(new EffectTerm([factor.Name], null, [(columns[0], -2)], (levels[0], levels[1])));
        else
        {
            for (int l = 0; l < columns.Length; l++) _terms.Add(new EffectTerm([factor.Name], levels[l], [(columns[l], 1)], null));
            if (levels.Length > 2) _terms.Add(new EffectTerm([factor.Name], levels[^1], [.. columns.Select(c => (c, -1.0))], null));
        }
        return columns;
    }

    // Less its mean, so that the mean of all stays the mean; the height of the middle above the ends is minus the coefficient.
    private void AddBend(FactorColumn factor, int line)
    {
        double[] square = [.. _all[line].Values.Select(v => v * v)];
        double mean = square.Average();
        int at = Add(factor.Name + " bend", [.. square.Select(s => s - mean)]);
        _terms.Add(new EffectTerm([factor.Name], null, [(at, -1)], null, IsBend: true));
    }

    private void AddProducts(TrialData data, int[][] own, int rows)
    {
        for (int i = 0; i < own.Length; i++)
            for (int j = i + 1; j < own.Length; j++)
            {
                // A product of factors with many names may take more columns than there are jars; then it is not tried.
                if (own[i].Length * own[j].Length >= rows)
                {
                    LeftOut++;
                    continue;
                }
                string name = $"{data.Factors[i].Name} × {data.Factors[j].Name}";
                bool simple = own[i].Length == 1 && own[j].Length == 1;
                foreach (int a in own[i])
                    foreach (int b in own[j])
                    {
                        int at = Add(name, [.. _all[a].Values.Zip(_all[b].Values, (x, y) => x * y)]);
                        // Half the difference between the effects of one at both ends of the other, each from its first or least setting to its second or most:
                        // the column of two names runs the other way.
                        if (simple) _terms.Add(new EffectTerm([data.Factors[i].Name, data.Factors[j].Name], null, [(at, data.Factors[i].IsMeasured == data.Factors[j].IsMeasured ? 2 : -2)], null));
                    }
            }
    }
}
