using System.Text.Json.Serialization;
using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>What an entry says. These are the record's own documents: fields are added with a new version and never taken away, so that a record written today opens after every change of an engine.</summary>
public abstract record StudioDocument
{
    /// <summary>Name and version of the document.</summary>
    [JsonIgnore]
    public abstract DocumentKind Kind { get; }

    /// <summary>Free words, or null.</summary>
    public string? Note { get; init; }

    /// <summary>SHA-256 of the photographs that belong to it, in lower-case hexadecimal.</summary>
    public IReadOnlyList<string> Photos { get; init; } = [];
}

/// <summary>A batch begins with its plan.</summary>
/// <param name="Title">A few words to know it by.</param>
/// <param name="PlanAddress">The plan's address as it was typed; with the seed and the program's version it gives the same plan again.</param>
/// <param name="Seed">Seed of the plan's random draws.</param>
/// <param name="ProgramVersion">The version that planned.</param>
public sealed record BatchPlanned(string Title, string PlanAddress, long Seed, string ProgramVersion) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "batch-planned";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>Something was done or read at a step of a batch.</summary>
/// <param name="Step">Which step.</param>
public sealed record BatchStep(StepKind Step) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "batch-step";

    /// <summary>What was weighed, poured or read.</summary>
    public IReadOnlyList<Measured> Values { get; init; } = [];

    /// <summary>What was taken from the shelf.</summary>
    public IReadOnlyList<LotUse> Uses { get; init; } = [];

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A batch was given up.</summary>
/// <param name="Reason">Why, in the maker's words.</param>
public sealed record BatchGivenUp(string Reason) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "batch-given-up";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>Words or photographs about a batch or a lot.</summary>
public sealed record Noted : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "noted";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A lot came to the shelf.</summary>
/// <param name="Substance">What kind of thing it is.</param>
/// <param name="Title">What the packet or the maker calls it.</param>
/// <param name="Amount">How much came.</param>
public sealed record LotBought(LotClass Substance, string Title, Measured Amount) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "lot-bought";

    /// <summary>What it cost, as typed; null when not told.</summary>
    public string? Cost { get; init; }

    /// <summary>The day it came; null when not told.</summary>
    public DateOnly? CameOn { get; init; }

    /// <summary>Where it came from; null when not told.</summary>
    public string? Source { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>The entry that this one corrects is undone and nothing takes its place.</summary>
public sealed record Withdrawn : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "withdrawn";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
