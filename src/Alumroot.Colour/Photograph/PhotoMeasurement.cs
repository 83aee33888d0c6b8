using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>A thing in a picture whose colour is wanted.</summary>
/// <param name="Id">What the asker calls it.</param>
/// <param name="Corners">Where it is.</param>
public sealed record PhotoSwatch(string Id, Quad Corners);

/// <summary>What is asked of a picture that shows a target.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Truths">Colours of the target's patches, D50 and 2 degrees, row by row from its first corner.</param>
/// <param name="Target">The target's corners.</param>
/// <param name="Grid">Where its patches are; null to find them from their edges.</param>
/// <param name="Swatches">What is to be measured.</param>
/// <param name="Card">An even grey or white card, if there is one.</param>
public sealed record PhotoAsk(Raster Picture, IReadOnlyList<Lab> Truths, Quad Target, TargetGrid? Grid, IReadOnlyList<PhotoSwatch> Swatches, Quad? Card = null);

/// <summary>The colour of one thing.</summary>
/// <param name="Id">What the asker called it.</param>
/// <param name="Colour">D50 and 2 degrees.</param>
/// <param name="IntervalDeltaE2000">Nine times in ten the truth is no farther than this; null when nothing bounds it.</param>
/// <param name="IsClipped">True when a channel of the camera stood at an end of its scale, so that the colour is at least this strong.</param>
/// <param name="LeftOutShare">Share of its pixels that were left out as dust, glare or edge.</param>
/// <param name="DistanceFromPatches">How far it is from the nearest patch of the target in CIEDE2000.</param>
public sealed record PhotoColour(string Id, Lab Colour, double? IntervalDeltaE2000, bool IsClipped, double LeftOutShare, double DistanceFromPatches)
{
    /// <summary>True when it is the dark end that clips.</summary>
    public bool ClippedLow { get; init; }
}

/// <summary>What a picture told.</summary>
/// <param name="Colours">One for each thing that could be read.</param>
/// <param name="Unread">Names of the things that lie outside the picture or are too small.</param>
/// <param name="Kind">The kind of correction that weighs most in the mean of all.</param>
/// <param name="ToneStraightened">True when stray light or a camera's contrast was undone.</param>
/// <param name="LeftOutMeanDeltaE2000">Mean distance of the target's patches, each told from the others; null without a target.</param>
/// <param name="LeftOutMostDeltaE2000">The largest such distance.</param>
/// <param name="LightUnevenPercent">By how much the light differs between the places that count; null when there was no surround to tell.</param>
/// <param name="PatchesClipped">Patches of the target that were left out because a channel stood at the upper end of its scale.</param>
public sealed record PhotoAnswer(
    IReadOnlyList<PhotoColour> Colours, IReadOnlyList<string> Unread, CorrectionKind Kind, bool ToneStraightened,
    double? LeftOutMeanDeltaE2000, double? LeftOutMostDeltaE2000, double? LightUnevenPercent, int PatchesClipped)
{
    /// <summary>The grid of patches that was used; null without a target.</summary>
    public required TargetGrid? Grid { get; init; }

    /// <summary>The colour of each patch of the target as told from the others, in the order of the reference; null where a patch was left out or a channel is cut off.</summary>
    public required IReadOnlyList<Lab?> PatchesToldFromOthers { get; init; }
}

/// <summary>Why a picture told nothing.</summary>
public enum PhotoTrouble
{
    /// <summary>The corners of the target are out of order, span no area, or lie outside the picture.</summary>
    CornersUnfit,

    /// <summary>Fewer than half of the patches can be read: too small, outside, or clipped.</summary>
    TooFewPatches,

    /// <summary>The patches do not look like the reference in any way that a camera could cause.</summary>
    NotThisTarget,
}

/// <summary>Colour from a picture that shows a target of known colours.</summary>
public static class PhotoMeasurement
{
    /// <summary>Share of each side of a patch that is read.</summary>
    internal const double InnerShare = 0.62;

    // A plain matrix leaves the right target 1 to 5 off in the mean, a turned or wrong one 12 to 30 (simulated photographs).
    private const double MostMatrixOff = 9;

    /// <summary>The fewest patches that a target may have.</summary>
    public const int LeastPatches = 6;

    /// <summary>Measures; null with the reason when the picture tells nothing.</summary>
    public static (PhotoAnswer? Answer, PhotoTrouble? Trouble) Measure(PhotoAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        if (!ask.Target.IsConvex || ask.Target.Corners.Any(c => c.X < -1 || c.Y < -1 || c.X > ask.Picture.Width || c.Y > ask.Picture.Height)) return (null, PhotoTrouble.CornersUnfit);
        (int columns, int rows) = TargetGrid.Likely(ask.Truths.Count, ask.Target.Aspect);
        TargetGrid grid = ask.Grid ?? GridFinder.Find(ask.Picture, ask.Target, columns, rows);
        Quad[] taken = [ask.Target.Scaled(1.06), .. ask.Swatches.Select(s => s.Corners.Scaled(1.25)), .. ask.Card is { } c ? [c.Scaled(1.2)] : (Quad[])[]];
        List<SurroundCell> cells = SurroundCell.Of(ask.Picture, taken, out LinearRgb mean);
        LightField field = LightField.From(cells, ask.Picture.Width, ask.Picture.Height);
        var read = new List<SeenPatch>();
        var places = new List<int>();
        int clipped = 0;
        for (int i = 0; i < ask.Truths.Count && i < grid.Columns * grid.Rows; i++)
        {
            if (PatchReading.Of(ask.Picture, grid.Patch(ask.Target, i), InnerShare) is not { } reading) continue;
            if (!reading.CanTeach) clipped++;
            else
            {
                read.Add(new SeenPatch(reading, field.At(reading.Middle), ask.Truths[i], PhotoNoise.Of(reading)));
                places.Add(i);
            }
        }
        int whole = read.Count(p => !p.Reading.IsCut);
        if (whole < LeastPatches || 2 * whole < ask.Truths.Count) return (null, PhotoTrouble.TooFewPatches);
        Xyz white = ColourNames.White;
        if (CorrectionSearch.MatrixOff(read, mean, ask.Picture.Colours, white) > MostMatrixOff || CorrectionSearch.Find(read, mean, ask.Picture.Colours, white) is not { } best) return (null, PhotoTrouble.NotThisTarget);
        var colours = new List<PhotoColour>();
        var unread = new List<string>();
        List<PixelPoint> lit = [.. read.Select(p => p.Reading.Middle)];
        foreach (PhotoSwatch swatch in ask.Swatches)
        {
            if (PatchReading.Of(ask.Picture, swatch.Corners, InnerShare) is { } reading)
            {
                colours.Add(Colour(swatch.Id, reading, ask.Truths));
                lit.Add(reading.Middle);
            }
            else unread.Add(swatch.Id);
        }
        var told = new Lab?[ask.Truths.Count];
        for (int k = 0; k < places.Count; k++) told[places[k]] = best.LeftOut[k];
        double? uneven = field.IsEven ? null : field.UnevenPercent(lit);
        return (new PhotoAnswer(colours, unread, best.Kind, best.StraightensTones, best.LeftOutMean, best.LeftOutMost, uneven, clipped) { Grid = grid, PatchesToldFromOthers = told }, null);

        PhotoColour Colour(string id, PatchReading reading, IReadOnlyList<Lab> truths)
        {
            var seen = new SeenPatch(reading, field.At(reading.Middle), default, 0);
            (Lab lab, double deviation) = best.At(seen, PhotoNoise.Of(reading));
            return new PhotoColour(id, lab, PhotoNoise.Interval(deviation, reading, field), reading.IsClipped, reading.LeftOutShare, truths.Min(t => Ciede2000.Of(t, lab).DeltaE)) { ClippedLow = reading.ClippedLow };
        }
    }
}
