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

    /// <summary>What a document took from lots of the shelf.</summary>
    internal IReadOnlyList<LotUse> TakenFromShelf => this switch
    {
        BatchStep step => step.Uses,
        PaintMade paint => paint.Uses,
        _ => [],
    };

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

    /// <summary>The dyestuff in plain words; null for the white ground alone.</summary>
    public string? Dyestuff { get; init; }

    /// <summary>The salt in plain words; null when not told.</summary>
    public string? Salt { get; init; }

    /// <summary>The lots on the shelf that the plan means, by what they are for.</summary>
    public IReadOnlyList<LotChoice> Lots { get; init; } = [];

    /// <summary>Another batch that this one repeats or was split from; null when it stands alone.</summary>
    public string? FromBatch { get; init; }

    /// <summary>How it comes from the other batch.</summary>
    public BatchOrigin Origin { get; init; }

    /// <summary>Of a batch that was split from another: its part of the wet cake.</summary>
    public Measured? WetCake { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 2);
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

    /// <summary>Which act of the step, as the bench names it, such as <c>alkali-portion</c>; null when not told.</summary>
    public string? Act { get; init; }

    /// <summary>Whether the step is done with this.</summary>
    public bool Ended { get; init; }

    /// <summary>When the maker is to look again; null when nothing has to be waited for.</summary>
    public DateTimeOffset? ReadyAt { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 2);
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

    /// <summary>What it is, as the plan names it: a salt or alkali with its purity or hydrate, such as <c>potash-alum@98%</c>, or the key of a dyestuff; null when not told.</summary>
    public string? PlanName { get; init; }

    /// <summary>Of soda baked at home: the powder before baking.</summary>
    public Measured? BakedFrom { get; init; }

    /// <summary>Of soda baked at home: the powder after baking.</summary>
    public Measured? BakedTo { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 2);
}

/// <summary>What is left of a lot was weighed; from then on only later uses are taken off.</summary>
/// <param name="Left">What is left.</param>
public sealed record LotCounted(Measured Left) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "lot-counted";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>The pigment of a batch is used up.</summary>
public sealed record BatchUsedUp : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "batch-used-up";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>Words of the maker's own to find a batch or lot by. The latest entry says all of them.</summary>
/// <param name="Tags">The words.</param>
public sealed record Tagged(IReadOnlyList<string> Tags) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "tagged";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>An empty bowl was weighed, so that its weight can be taken off.</summary>
/// <param name="Bowl">What the maker calls it.</param>
/// <param name="Empty">Its weight.</param>
public sealed record BowlWeighed(string Bowl, Measured Empty) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "bowl-weighed";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>How the studio likes to work. The latest entry says all of it; what is null is as usual.</summary>
public sealed record StudioSet : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "studio-set";

    /// <summary><c>metric</c> or <c>kitchen</c>.</summary>
    public string? Units { get; init; }

    /// <summary>Fields that every new plan begins with, by the plan's own names: the scale's step, the strips, the vessel, the hardness.</summary>
    public IReadOnlyDictionary<string, string> PlanFields { get; init; } = new Dictionary<string, string>();

    /// <summary>Who makes the paint, as labels say it; null when not told.</summary>
    public string? Maker { get; init; }

    /// <summary>The maker's address and telephone, as labels say them; null when not told.</summary>
    public string? MakerAddress { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 2);
}

/// <summary>The entry that this one corrects is undone and nothing takes its place.</summary>
public sealed record Withdrawn : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "withdrawn";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
