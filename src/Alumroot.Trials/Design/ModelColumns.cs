namespace Alumroot.Trials.Design;

/// <summary>The effects of a trial as columns of numbers: one mean, each factor, and the products of two.</summary>
internal static class ModelColumns
{
    /// <summary>The columns of one factor at a level: its place from -1 to +1, or one column less than there are names, each against the last.</summary>
    public static double[] Of(Factor factor, int level) => factor switch
    {
        Factor.Measured measured => [measured.CodedRatio(level)],
        _ => [.. Enumerable.Range(0, factor.LevelCount - 1).Select(k => level == k ? 1.0 : level == factor.LevelCount - 1 ? -1.0 : 0.0)],
    };

    /// <summary>A jar's row: mean, factors, a bend for each measured factor of three levels and more, products of two where asked.</summary>
    public static double[] Row(IReadOnlyList<Factor> factors, IReadOnlyList<int> levels, bool interactions)
    {
        double[][] of = [.. factors.Select((f, i) => Of(f, levels[i]))];
        var row = new List<double> { 1 };
        foreach (double[] own in of) row.AddRange(own);
        for (int i = 0; i < of.Length; i++)
            if (factors[i] is Factor.Measured { LevelCount: > 2 }) row.Add(of[i][0] * of[i][0]);
        if (interactions)
            for (int i = 0; i < of.Length; i++)
                for (int j = i + 1; j < of.Length; j++)
                    foreach (double a in of[i])
                        foreach (double b in of[j]) row.Add(a * b);
        return [.. row];
    }
}
