using Alumroot.App.Photographs;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Photos;

namespace Alumroot.App.Colours;

/// <summary>A kept photograph, the even areas in it, and their colours.</summary>
/// <param name="WidthPixels">Width of the picture.</param>
/// <param name="HeightPixels">Height of the picture.</param>
/// <param name="Target">Corners of the target, if one was found.</param>
/// <param name="TargetAsked">Whether a target was looked for.</param>
/// <param name="Things">The areas, numbered from 1 in this order.</param>
/// <param name="Answer">What was read of them; their names are their numbers.</param>
/// <param name="Trouble">Why the target whose corners were shown told nothing; null otherwise.</param>
public sealed record PhotoView(int WidthPixels, int HeightPixels, Quad? Target, bool TargetAsked, IReadOnlyList<Quad> Things, PhotoAnswer Answer, PhotoTrouble? Trouble)
{
    private const int MostThings = 24;

    /// <summary>Reads a photograph; null when it cannot be read.</summary>
    /// <param name="store">Where it is kept.</param>
    /// <param name="hash">Which.</param>
    /// <param name="target">The target to look for; null for none.</param>
    /// <param name="card">Number of the area that is a plain card; null for none.</param>
    /// <param name="marks">What a person showed in it; areas that were shown come after those that were found, so that these keep their numbers.</param>
    internal static PhotoView? Of(StudioStore store, string hash, TargetKept? target, int? card, PhotoMarks marks)
    {
        if (store.Photos.TryPixels(hash, out PhotoPixels? pixels) is not null) return null;
        Raster picture = PhotoReader.Of(pixels!);
        Lab[] truths = [.. target?.Patches.Select(p => new Lab(p.LabL, p.LabA, p.LabB)) ?? []];
        bool asked = truths.Length >= PhotoMeasurement.LeastPatches;
        FoundTarget? found = asked && marks.Target is null ? TargetFinder.Find(picture, truths, null) : null;
        Quad? corners = asked ? marks.Target ?? found?.Corners : null;
        IReadOnlyList<Quad> things = [.. ThingFinder.Find(picture, corners, MostThings), .. marks.Areas];
        PhotoSwatch[] swatches = [.. things.Select((q, i) => new PhotoSwatch($"{i + 1}", q))];
        Quad? plain = card is > 0 and var n && n <= things.Count ? things[n - 1] : null;
        (PhotoAnswer? byTarget, PhotoTrouble? trouble) = corners is { } lies ? PhotoMeasurement.Measure(new PhotoAsk(picture, truths, lies, found?.Grid, swatches, plain)) : (null, null);
        PhotoAnswer answer = byTarget ?? CardMeasurement.Measure(picture, plain, null, swatches);
        return new PhotoView(picture.Width, picture.Height, byTarget is null ? null : corners, target is not null, things, answer, marks.Target is null ? null : trouble);
    }
}
