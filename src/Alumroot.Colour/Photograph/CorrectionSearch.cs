using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>Looks for the correction: every kind is fitted, with and without straightening of the tones, and all are averaged, each the more heavily the better it tells each patch from the others.</summary>
internal sealed class CorrectionSearch
{
    // A bent tone curve has more to choose from, and must be better by this much to weigh the same.
    private const double ToneGain = 0.97;

    // The weight of a correction falls with this power of its error for each patch of the target; a whole one would be that of the likelihood of independent patches. Set on simulated photographs.
    private const double PowerPerPatch = 0.25;

    // Judgement: what cameras do, so that a bend is not taken up for a hair's gain.
    private const double UsualGlareShare = 0.02, UsualBend = 0.25, BendCost = 0.03;
    private const int LeastForRoots = 12, LeastForTone = 12;

    private readonly IReadOnlyList<SeenPatch> _patches;
    private readonly LinearRgb _meanOfPicture;
    private readonly PixelColours _colours;
    private readonly Xyz _white;

    private CorrectionSearch(IReadOnlyList<SeenPatch> patches, LinearRgb meanOfPicture, PixelColours colours, Xyz white) => (_patches, _meanOfPicture, _colours, _white) = (patches, meanOfPicture, colours, white);

    /// <summary>The mean of the corrections; null when the patches settle none.</summary>
    internal static CorrectionMean? Find(IReadOnlyList<SeenPatch> patches, LinearRgb meanOfPicture, PixelColours colours, Xyz white)
    {
        var search = new CorrectionSearch(patches, meanOfPicture, colours, white);
        var middling = new CorrectionShape(patches.Count < LeastForRoots ? CorrectionKind.Matrix : CorrectionKind.RootPolynomial, 5, patches.Count < LeastForRoots ? 0 : 0.06, 0, 1);
        ToneCurve bent = patches.Count < LeastForTone ? default : search.BestTone(middling);
        (ColourFit Fit, ToneCurve Tone, double Error)[] all = [.. (bent.IsPlain ? [default] : (ToneCurve[])[default, bent]).SelectMany(tone => search.Fitted(tone).Select(fit => (fit, tone, fit.LeftOutMean / (tone.IsPlain ? 1 : ToneGain))))];
        if (all.Length == 0) return null;
        double least = all.Min(a => a.Error);
        return new CorrectionMean([.. all.Select(a => new WeighedFit(a.Fit, a.Tone, Math.Pow(least / a.Error, PowerPerPatch * patches.Count)))], patches, meanOfPicture);
    }

    /// <summary>How far a plain matrix leaves each patch from what the others tell: what a wrong or a turned reference cannot make small.</summary>
    internal static double MatrixOff(IReadOnlyList<SeenPatch> patches, LinearRgb meanOfPicture, PixelColours colours, Xyz white)
    {
        TrainingPatch[] training = new CorrectionSearch(patches, meanOfPicture, colours, white).Training(default);
        return ColourFit.Of(training, Prior(training, colours, white), CorrectionShape.Stiff, white)?.LeftOutMean ?? double.PositiveInfinity;
    }

    private IEnumerable<ColourFit> Fitted(ToneCurve tone)
    {
        TrainingPatch[] training = Training(tone);
        double[] prior = Prior(training, _colours, _white);
        return CorrectionShape.Tried.Where(s => s.Kind < CorrectionKind.RootPolynomial || training.Length >= LeastForRoots).Select(s => ColourFit.Of(training, prior, s, _white)).OfType<ColourFit>();
    }

    private TrainingPatch[] Training(ToneCurve tone) => [.. _patches.Select(p => new TrainingPatch(p.Relative(tone, _meanOfPicture), p.Truth, p.Noise))];

    /// <summary>The file's own colours, with the gain of each channel that suits the greyest patches, or all where none is grey.</summary>
    internal static double[] Prior(TrainingPatch[] patches, PixelColours c, Xyz white)
    {
        double[] m = [c.RedX, c.GreenX, c.BlueX, c.RedY, c.GreenY, c.BlueY, c.RedZ, c.GreenZ, c.BlueZ];
        TrainingPatch[] greys = [.. patches.Where(p => p.Truth.Chroma < 6 && p.Truth.L > 20)];
        double r = 0, g = 0, b = 0, weight = 0;
        foreach (TrainingPatch p in greys.Length > 0 ? greys : patches)
        {
            // A grey of luminance Y sends Y of each channel's full light.
            double w = p.Truth.L, y = p.Truth.ToXyz(white).Y;
            r += w * y / Math.Max(p.Seen.Light.R, 1e-4);
            g += w * y / Math.Max(p.Seen.Light.G, 1e-4);
            b += w * y / Math.Max(p.Seen.Light.B, 1e-4);
            weight += w;
        }
        double[] gains = [r / weight, g / weight, b / weight];
        return [.. m.Select((v, i) => v * gains[i % 3])];
    }

    private ToneCurve BestTone(CorrectionShape shape)
    {
        ToneCurve best = default;
        double least = Cost(best, shape), step = 1;
        // A pattern search along the three directions: the surface is smooth and shallow, and sixty fits are quick.
        for (int round = 0; round < 7; round++)
        {
            bool moved = false;
            foreach ((double glare, double contrast, double lift) in (ReadOnlySpan<(double, double, double)>)[(1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1), (0, 1, 1), (0, -1, -1), (0, 1, -1), (0, -1, 1)])
            {
                var next = new ToneCurve(best.GlareShare + 0.008 * step * glare, best.Contrast + 0.1 * step * contrast, best.Lift + 0.1 * step * lift);
                if (next.GlareShare < 0) next = next with { GlareShare = 0 };
                if (next == best || !next.IsSane) continue;
                double cost = Cost(next, shape);
                if (cost < least) (least, best, moved) = (cost, next, true);
            }
            if (!moved) step /= 2;
        }
        return best;
    }

    private double Cost(ToneCurve tone, CorrectionShape shape)
    {
        TrainingPatch[] training = Training(tone);
        if (ColourFit.Of(training, Prior(training, _colours, _white), shape, _white) is not { } fit) return double.PositiveInfinity;
        double glare = tone.GlareShare / UsualGlareShare, contrast = tone.Contrast / UsualBend, lift = tone.Lift / UsualBend;
        return fit.LeftOutMean * (1 + BendCost * (glare * glare + contrast * contrast + lift * lift));
    }
}

/// <summary>A patch of the target in the picture, with what it is and with the light at its place.</summary>
/// <param name="Reading">What the camera saw.</param>
/// <param name="Field">What the surround would have sent at that place.</param>
/// <param name="Truth">Its colour.</param>
/// <param name="Noise">Standard deviation of its mean in units of CIEDE2000.</param>
internal readonly record struct SeenPatch(PatchReading Reading, LinearRgb Field, Lab Truth, double Noise)
{
    /// <summary>The light of the scene, over that of the surround at this place.</summary>
    internal SeenColour Relative(ToneCurve tone, LinearRgb meanOfPicture) => SeenColour.Of(tone.Scene(Reading.Mean, meanOfPicture) / tone.Scene(Field, meanOfPicture), Reading.CutShare);
}
