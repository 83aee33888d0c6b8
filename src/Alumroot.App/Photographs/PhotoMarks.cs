using Alumroot.Colour.Photograph;

namespace Alumroot.App.Photographs;

/// <summary>What a person showed in a photograph: the corners of the target and of areas that were not found.</summary>
/// <param name="Target">Corners of the target in its own order; null to have it looked for.</param>
/// <param name="Areas">Areas besides those that are found.</param>
internal sealed record PhotoMarks(Quad? Target, IReadOnlyList<Quad> Areas)
{
    /// <summary>An address is no longer than some browsers take.</summary>
    internal const int MostAreas = 12;

    /// <summary>Nothing was shown.</summary>
    internal static PhotoMarks None { get; } = new(null, []);

    /// <summary>The marks of an address; what is no outline is left out.</summary>
    internal static PhotoMarks Read(string? corners, string? areas) =>
        new(Outline(PixelText.Points(corners)), [.. (areas ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries).Take(MostAreas).Select(a => Outline(PixelText.Points(a))).OfType<Quad>()]);

    /// <summary>Four points as an outline; null when they are not four, cross over, or lie on a line.</summary>
    internal static Quad? Outline(IReadOnlyList<PixelPoint> points) => points is [var a, var b, var c, var d] && new Quad(a, b, c, d) is { IsConvex: true } quad ? quad : null;

    /// <summary>The target's corners for an address; null when there are none.</summary>
    internal string? CornersText => Target is { } t ? PixelText.Of(t.Corners) : null;

    /// <summary>The areas for an address; null when there are none.</summary>
    internal string? AreasText => Areas.Count == 0 ? null : string.Join(';', Areas.Select(a => PixelText.Of(a.Corners)));
}
