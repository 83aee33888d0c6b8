using Alumroot.Colour.Photograph;

namespace Alumroot.App.Photographs;

/// <summary>What is asked of a photograph, as it stands in a request.</summary>
/// <param name="Photo">Path of the picture.</param>
/// <param name="Reference">Path of the file with the colours of the target; null when no target is shown.</param>
/// <param name="Corners">Corners of the target; null to find it.</param>
/// <param name="Grid">Where its patches are; null to find them.</param>
/// <param name="Card">Corners of a plain white or grey card, if one is shown.</param>
/// <param name="CardReflectance">What share of light the card gives back; null when it is not stated.</param>
/// <param name="Swatches">What is to be measured.</param>
internal sealed record MeasureRequest(string Photo, string? Reference, Quad? Corners, TargetGrid? Grid, Quad? Card, double? CardReflectance, IReadOnlyList<PhotoSwatch> Swatches);
