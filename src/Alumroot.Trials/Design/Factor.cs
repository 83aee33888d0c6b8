namespace Alumroot.Trials.Design;

/// <summary>Something that is set on purpose and differs from jar to jar.</summary>
/// <param name="Name">In trade words, such as "alkali" or "final pH".</param>
public abstract record Factor(string Name)
{
    private Factor(string name, int levelCount)
        : this(name) => LevelCount = levelCount;

    /// <summary>How many settings are used.</summary>
    public int LevelCount { get; private init; }

    /// <summary>The setting of a level in words or figures, as it stands in a run list.</summary>
    /// <param name="level">From 0.</param>
    public abstract string Setting(int level);

    /// <summary>Settings with names, such as salts.</summary>
    /// <param name="Name">What is set.</param>
    /// <param name="Levels">The names; two or more, all different.</param>
    public sealed record Named(string Name, IReadOnlyList<string> Levels) : Factor(Name, Levels.Count)
    {
        /// <inheritdoc/>
        public override string Setting(int level) => Levels[level];
    }

    /// <summary>Settings along a range, such as a temperature.</summary>
    /// <param name="Name">What is set.</param>
    /// <param name="Values">The settings, ascending, in the factor's own unit; two or more.</param>
    /// <param name="Unit">The unit as written, or nothing.</param>
    public sealed record Measured(string Name, IReadOnlyList<double> Values, string Unit) : Factor(Name, Values.Count)
    {
        /// <summary>Where a setting lies between the least (-1) and the most (+1).</summary>
        /// <param name="level">From 0.</param>
        public double CodedRatio(int level) => Values[^1] == Values[0] ? 0 : 2 * (Values[level] - Values[0]) / (Values[^1] - Values[0]) - 1;

        /// <inheritdoc/>
        public override string Setting(int level) => Values[level].ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
    }
}
