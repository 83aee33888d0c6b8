using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>How the light on an exposure is known.</summary>
public enum LightWay
{
    /// <summary>A meter, read now and then.</summary>
    Readings,

    /// <summary>A lamp at a level for hours of each day.</summary>
    Lamp,

    /// <summary>A window by its latitude and where it looks.</summary>
    Window,

    /// <summary>Only by the blue wool references that lie beside the samples.</summary>
    References,
}

/// <summary>The light of an exposure, as far as it was told.</summary>
/// <param name="Way">How it is known.</param>
public sealed record ExposureLight(LightWay Way)
{
    /// <summary>Hours of light in a day; null when not told.</summary>
    public double? HoursADay { get; init; }

    /// <summary>Level of a lamp at the strips in lux; null when it is none.</summary>
    public double? Lux { get; init; }

    /// <summary>Latitude of a window in degrees, south negative; null when it is none.</summary>
    public double? LatitudeDegrees { get; init; }

    /// <summary>Where the window looks: <c>equator</c>, <c>east-or-west</c> or <c>pole</c>; null when it is none.</summary>
    public string? Facing { get; init; }

    /// <summary>Whether the light comes without its ultraviolet.</summary>
    public bool WithoutUltraviolet { get; init; }
}

/// <summary>Something that lies in the light.</summary>
/// <param name="Name">What it is called; <c>BW1</c> to <c>BW8</c> are the blue wool references.</param>
/// <param name="Strips">How many strips of it.</param>
public sealed record ExposedSample(string Name, int Strips)
{
    /// <summary>The lake or paint it is of, such as <c>26-014</c> or <c>P-07</c>; null when it is of none here.</summary>
    public string? Of { get; init; }

    /// <summary>The key of <see cref="Of"/>; null when there is none or the text is none.</summary>
    internal SubjectKey? Key => SubjectKey.TryRead(Of) is { Class: SubjectClass.Batch or SubjectClass.Paint } key ? key : null;
}

/// <summary>Strips were laid in the light, half of each covered.</summary>
/// <param name="Title">What the maker calls it.</param>
/// <param name="Light">The light.</param>
/// <param name="Samples">What lies there, references too.</param>
public sealed record ExposureBegun(string Title, ExposureLight Light, IReadOnlyList<ExposedSample> Samples) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "exposure-begun";

    /// <summary>Where it lies, in words; null when not told.</summary>
    public string? Where { get; init; }

    /// <summary>When the maker is to read the strips; null when not told.</summary>
    public DateTimeOffset? ReadyAt { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>The level of the light at the strips, by a meter.</summary>
/// <param name="Level">The level; its unit is <c>lx</c>.</param>
public sealed record LightRead(Measured Level) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "light-read";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A light logger lay beside the strips; its file was summed.</summary>
/// <param name="From">Time of its first reading.</param>
/// <param name="Dose">Its dose.</param>
/// <param name="Steps">Hours since its first reading, and the dose in megalux hours up to then; rising, the last is the whole.</param>
public sealed record LightLogged(DateTimeOffset From, DoseSpan Dose, IReadOnlyList<DoseStep> Steps) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "light-logged";

    /// <summary>The file's own name; null when not told.</summary>
    public string? File { get; init; }

    /// <summary>How many readings it held.</summary>
    public int Readings { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>A dose in megalux hours with its span, nine in ten.</summary>
/// <param name="MegaluxHours">The dose.</param>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
public sealed record DoseSpan(double MegaluxHours, double Low, double High);

/// <summary>The dose up to a time.</summary>
/// <param name="Hours">Hours since the first reading.</param>
/// <param name="MegaluxHours">The dose.</param>
public sealed record DoseStep(double Hours, double MegaluxHours);

/// <summary>The colour of one strip.</summary>
/// <param name="Sample">Name of the sample.</param>
/// <param name="Strip">Which of its strips, from 1.</param>
/// <param name="Exposed">The half in the light.</param>
public sealed record StripRead(string Sample, int Strip, LabText Exposed)
{
    /// <summary>The covered half, read at the same time; null when only the half in the light was read.</summary>
    public LabText? Covered { get; init; }

    /// <summary>Nine times in ten neither colour is farther from the truth, in CIEDE2000; null when nothing bounds it.</summary>
    public double? WithinDeltaE2000 { get; init; }

    /// <summary>Numbers of the areas of a photograph that were the covered and the exposed half; null when typed.</summary>
    public IReadOnlyList<int>? Areas { get; init; }
}

/// <summary>Strips were read.</summary>
/// <param name="Strips">The colours.</param>
public sealed record ExposureRead(IReadOnlyList<StripRead> Strips) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "exposure-read";

    /// <summary>How they were read, in words; null when not told.</summary>
    public string? How { get; init; }

    /// <summary>When the maker is to read them again; null when not told.</summary>
    public DateTimeOffset? ReadyAt { get; init; }

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>The strips were taken out of the light.</summary>
public sealed record ExposureEnded : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "exposure-ended";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}

/// <summary>One of the other tests was done on a lake or a paint.</summary>
/// <param name="Test">Key of the test, such as <c>bleed-water</c>.</param>
/// <param name="Result">The result in the test's own unit.</param>
/// <param name="Unit">The unit.</param>
public sealed record TestDone(string Test, double Result, string Unit) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "test-done";

    /// <summary>What was weighed and read, by the names of the test's fields.</summary>
    public IReadOnlyList<Measured> Values { get; init; } = [];

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
