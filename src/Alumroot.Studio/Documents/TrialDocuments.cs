using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>Something that a trial sets on purpose.</summary>
/// <param name="Name">What is set, such as <c>to-ph</c>.</param>
/// <param name="Unit">Its unit as written; empty when it has none.</param>
/// <param name="Settings">Its settings as written, in the order of their levels.</param>
/// <param name="Measured">Whether the settings are numbers along a range.</param>
public sealed record TrialFactor(string Name, string Unit, IReadOnlyList<string> Settings, bool Measured);

/// <summary>An amount that was reckoned for a jar, with the span that holds it nine times in ten.</summary>
/// <param name="What">What it is of, such as <c>salt</c>.</param>
/// <param name="SiValue">The value in the unit beside it.</param>
/// <param name="SiLow">Its least.</param>
/// <param name="SiHigh">Its most.</param>
/// <param name="SiUnit">The SI unit: <c>kg</c> or <c>m3</c>.</param>
public sealed record TrialAmount(string What, double SiValue, double SiLow, double SiHigh, string SiUnit);

/// <summary>A jar of a trial as it is to be made.</summary>
/// <param name="Order">When it is made, from 1.</param>
/// <param name="Block">The day or pot, from 1.</param>
/// <param name="Levels">The level of each factor, from 0.</param>
public sealed record TrialJar(int Order, int Block, IReadOnlyList<int> Levels)
{
    /// <summary>What goes into it; empty when no amounts were reckoned.</summary>
    public IReadOnlyList<TrialAmount> Amounts { get; init; } = [];
}

/// <summary>A trial begins with its design: what is set in which jar, in which order. It is kept as it was laid out, so that it reads the same after every change of the program that lays out.</summary>
/// <param name="Title">What the maker calls it.</param>
/// <param name="DesignAddress">The design's address as it was typed.</param>
/// <param name="Seed">The number of the lot by which the order was drawn.</param>
/// <param name="ProgramVersion">The version that laid it out.</param>
public sealed record TrialBegun(string Title, string DesignAddress, long Seed, string ProgramVersion) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "trial-begun";

    /// <summary>What is set.</summary>
    public IReadOnlyList<TrialFactor> Factors { get; init; } = [];

    /// <summary>The jars in the order of making.</summary>
    public IReadOnlyList<TrialJar> Jars { get; init; } = [];

    /// <summary>What is to be read of each jar beside its colour, by name.</summary>
    public IReadOnlyList<string> Results { get; init; } = [];

    /// <summary>When the jars are to be looked at; null when nothing is waited for.</summary>
    public DateTimeOffset? ReadyAt { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A result of a jar.</summary>
/// <param name="Value">What was read, under its name.</param>
/// <param name="WithinSi">Nine times in ten the truth is no farther, in the unit of the value; null when it is not told.</param>
public sealed record TrialResult(Measured Value, double? WithinSi = null);

/// <summary>A jar was read.</summary>
/// <param name="Jar">Its place in the order of making, from 1.</param>
public sealed record TrialJarRead(int Jar) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "trial-jar-read";

    /// <summary>What was measured.</summary>
    public IReadOnlyList<TrialResult> Results { get; init; } = [];

    /// <summary>The colour of its swatch; null when it was not read.</summary>
    public LabText? Colour { get; init; }

    /// <summary>Nine times in ten the true colour is no farther, in CIEDE2000; null when it is not told.</summary>
    public double? WithinDeltaE2000 { get; init; }

    /// <summary>How the colour was read, in words; null when not told.</summary>
    public string? How { get; init; }

    /// <summary>When this jar is to be looked at again; null when nothing is waited for.</summary>
    public DateTimeOffset? ReadyAt { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A trial is over; what it taught stands in its note.</summary>
public sealed record TrialEnded : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "trial-ended";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
