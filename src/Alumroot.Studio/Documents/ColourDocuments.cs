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

/// <summary>What a swatch lies on.</summary>
public enum SwatchGround
{
    /// <summary>A white card.</summary>
    White,

    /// <summary>A black card.</summary>
    Black,

    /// <summary>Paper, canvas or what else is painted on.</summary>
    Paper,
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

    /// <summary>What it lies on; null when not told.</summary>
    public SwatchGround? Ground { get; init; }

    /// <summary>The colour of the bare ground beside it; null when it was not read.</summary>
    public LabText? GroundColour { get; init; }

    /// <summary>How thick it was laid, wet, in micrometres; null when not told.</summary>
    public double? WetMicrometres { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 2);
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
