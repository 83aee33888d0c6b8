using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>A correction with its weight in the mean.</summary>
/// <param name="Fit">The correction.</param>
/// <param name="Tone">The tone curve it was fitted behind.</param>
/// <param name="Weight">How much it counts.</param>
internal readonly record struct WeighedFit(ColourFit Fit, ToneCurve Tone, double Weight);

/// <summary>Several corrections averaged by their weights: no one of them is the right one, and their errors are only partly the same.</summary>
internal sealed class CorrectionMean
{
    private readonly WeighedFit[] _fits;
    private readonly LinearRgb _meanOfPicture;

    internal CorrectionMean(IReadOnlyList<WeighedFit> fits, IReadOnlyList<SeenPatch> patches, LinearRgb meanOfPicture)
    {
        double sum = fits.Sum(f => f.Weight);
        _fits = [.. fits.Select(f => f with { Weight = f.Weight / sum }).OrderByDescending(f => f.Weight)];
        _meanOfPicture = meanOfPicture;
        LeftOut = [.. patches.Select((p, k) => p.Reading.IsCut ? (Lab?)null : Mean(_fits.Select(f => (f.Weight, f.Fit.LeftOut[k]))))];
        double[] off = [.. patches.Zip(LeftOut).Where(p => p.Second is not null).Select(p => Ciede2000.Of(p.First.Truth, p.Second!.Value).DeltaE)];
        (LeftOutMean, LeftOutMost) = (off.Average(), off.Max());
    }

    /// <summary>The kind that weighs most.</summary>
    internal CorrectionKind Kind => _fits.GroupBy(f => f.Fit.Shape.Kind).MaxBy(g => g.Sum(f => f.Weight))!.Key;

    /// <summary>Whether tones are straightened in more than half of the weight.</summary>
    internal bool StraightensTones => _fits.Where(f => !f.Tone.IsPlain).Sum(f => f.Weight) > 0.5;

    /// <summary>The colour of each patch as told from the others; null where a channel is cut off.</summary>
    internal IReadOnlyList<Lab?> LeftOut { get; }

    /// <summary>Mean distance of the patches, each told from the others.</summary>
    internal double LeftOutMean { get; }

    /// <summary>The largest such distance.</summary>
    internal double LeftOutMost { get; }

    /// <summary>The colour that stands behind what the camera saw, and the standard deviation of its error in each of three directions.</summary>
    internal (Lab Colour, double Deviation) At(SeenPatch seen, double noise)
    {
        (double Weight, Lab Colour, double Deviation)[] told = [.. _fits.Select(f => (f.Weight, f.Fit.At(seen.Relative(f.Tone, _meanOfPicture), noise))).Select(t => (t.Weight, t.Item2.Colour, t.Item2.Deviation))];
        Lab mean = Mean(told.Select(t => (t.Weight, t.Colour)));
        return (mean, Math.Sqrt(told.Sum(t => t.Weight * t.Deviation * t.Deviation)));
    }

    private static Lab Mean(IEnumerable<(double Weight, Lab Colour)> told)
    {
        double l = 0, a = 0, b = 0;
        foreach ((double weight, Lab colour) in told) (l, a, b) = (l + weight * colour.L, a + weight * colour.A, b + weight * colour.B);
        return new Lab(l, a, b);
    }
}
