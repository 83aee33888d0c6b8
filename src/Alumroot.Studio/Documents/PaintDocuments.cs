using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>Pigment of a lake was used.</summary>
/// <param name="Lake">The lake's key, such as <c>26-014</c>.</param>
/// <param name="Amount">How much pigment was taken; of a wet cake the dry pigment in it.</param>
public sealed record LakeUse(string Lake, Measured Amount)
{
    /// <summary>The lake's key; null when the text is none.</summary>
    internal SubjectKey? Key => SubjectKey.TryRead(Lake) is { Class: SubjectClass.Batch } key ? key : null;
}

/// <summary>Vessels of one kind were filled with a paint.</summary>
/// <param name="What">What was filled, such as <c>half-pan</c> or <c>tube-15ml</c>.</param>
/// <param name="Count">How many.</param>
public sealed record PaintFilled(string What, int Count)
{
    /// <summary>Where they are kept; null when not told.</summary>
    public string? Where { get; init; }
}

/// <summary>A paint was made.</summary>
/// <param name="Title">What the maker calls it.</param>
/// <param name="Medium">The medium by its key, such as <c>watercolour</c>.</param>
public sealed record PaintMade(string Title, string Medium) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "paint-made";

    /// <summary>The lakes it was made from.</summary>
    public IReadOnlyList<LakeUse> Lakes { get; init; } = [];

    /// <summary>What went into it, by name; the pigment first.</summary>
    public IReadOnlyList<Measured> Parts { get; init; } = [];

    /// <summary>What it was filled into.</summary>
    public IReadOnlyList<PaintFilled> Filled { get; init; } = [];

    /// <summary>What keeps it from spoiling, in words; null when nothing does.</summary>
    public string? Preservative { get; init; }

    /// <summary>How much of the preservative was weighed in; null when it was not weighed.</summary>
    public Measured? PreservativeAmount { get; init; }

    /// <summary>The wet paint as it came off the slab, before filling; null when it was not weighed.</summary>
    public Measured? CameOff { get; init; }

    /// <summary>What was taken from the shelf; each amount has the name of its part.</summary>
    public IReadOnlyList<LotUse> Uses { get; init; } = [];

    /// <summary>The recipe's address as it was typed; null when it was made without one.</summary>
    public string? RecipeAddress { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 3);
}

/// <summary>Nothing of a paint is left.</summary>
public sealed record PaintUsedUp : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "paint-used-up";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
