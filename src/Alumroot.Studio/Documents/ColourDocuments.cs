using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>What a colour was read of, on the way from paste to paint.</summary>
public enum SwatchState
{
    /// <summary>The settled or filtered paste, wet.</summary>
    Wet,

    /// <summary>Dry in lumps.</summary>
    Dry,

    /// <summary>Ground and sieved.</summary>
    Ground,

    /// <summary>As paint, dry on its support.</summary>
    Painted,
}

/// <summary>A colour in CIELAB, D50 and 2 degrees.</summary>
/// <param name="LabL">L*.</param>
/// <param name="LabA">a*.</param>
/// <param name="LabB">b*.</param>
public sealed record LabText(double LabL, double LabA, double LabB);

/// <summary>The colour of a batch was read, from a photograph or by an instrument.</summary>
/// <param name="State">What it was read of.</param>
/// <param name="Colour">The colour.</param>
public sealed record SwatchRead(SwatchState State, LabText Colour) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "swatch-read";

    /// <summary>Nine times in ten the truth is no farther, in CIEDE2000; null when nothing bounds it.</summary>
    public double? WithinDeltaE2000 { get; init; }

    /// <summary>How it was read, in words; null when not told.</summary>
    public string? How { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A target whose colours are known came to the studio.</summary>
/// <param name="Title">What the maker calls it.</param>
/// <param name="Patches">Its colours, row by row from its first corner.</param>
public sealed record TargetKept(string Title, IReadOnlyList<LabText> Patches) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "target-kept";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
