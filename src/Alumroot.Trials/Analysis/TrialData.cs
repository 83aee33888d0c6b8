namespace Alumroot.Trials.Analysis;

/// <summary>A column of settings: numbers, or names.</summary>
/// <param name="Name">The factor.</param>
/// <param name="Numbers">One for each row when all of them are numbers; otherwise null.</param>
/// <param name="Names">The settings as written, one for each row.</param>
public sealed record FactorColumn(string Name, IReadOnlyList<double>? Numbers, IReadOnlyList<string> Names)
{
    /// <summary>Whether it lies along a range.</summary>
    public bool IsMeasured => Numbers is not null;

    /// <summary>The different settings, as names ascending by text or value.</summary>
    public IReadOnlyList<string> Levels { get; } = Numbers is null
        ? [.. Names.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)]
        : [.. Numbers.Zip(Names).DistinctBy(p => p.First).OrderBy(p => p.First).Select(p => p.Second)];

    /// <summary>Least and most of a measured factor.</summary>
    public (double Least, double Most) Range => Numbers is null ? (0, 0) : (Numbers.Min(), Numbers.Max());
}

/// <summary>Something that was measured of each jar.</summary>
/// <param name="Name">What.</param>
/// <param name="Values">One for each row; NaN where it is missing.</param>
/// <param name="IsAngle">Whether it is an angle in degrees, so that 359 and 1 lie close together.</param>
public sealed record Response(string Name, IReadOnlyList<double> Values, bool IsAngle = false);

/// <summary>The jars of a trial with what was set and what came of it.</summary>
/// <param name="Factors">What was set.</param>
/// <param name="Blocks">The day or pot of each row; null when there was one.</param>
public sealed record TrialData(IReadOnlyList<FactorColumn> Factors, IReadOnlyList<string>? Blocks)
{
    /// <summary>How many jars.</summary>
    public int Count => Factors.Count == 0 ? 0 : Factors[0].Names.Count;
}
