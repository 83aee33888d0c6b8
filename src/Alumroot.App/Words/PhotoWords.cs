using System.Globalization;
using Alumroot.Colour.Photograph;

namespace Alumroot.App.Words;

/// <summary>What a photograph told and did not tell, as words.</summary>
public static class PhotoWords
{
    /// <summary>When no target was found.</summary>
    public const string NotFound = "No target with these colours was found in the picture. Take it whole, flat, sharp and free of gleams, or give its four corners.";

    private const double FarFromPatches = 18, VeryUneven = 35;

    /// <summary>The words for a trouble.</summary>
    public static string Of(PhotoTrouble trouble) => trouble switch
    {
        PhotoTrouble.CornersUnfit => "The corners of the target do not lie in the picture. They are counted in pixels from the upper left, in the target's own order: its first patch is nearest the first corner.",
        PhotoTrouble.TooFewPatches => "Fewer than half of the target's patches can be read: they are too small, too bright or too dark, or the corners are off. Take the picture nearer, or with less light.",
        PhotoTrouble.NotThisTarget => "What lies between the corners does not look like the target of the reference. Check that it is this target, and that the first corner is the one nearest its first patch.",
        _ => throw new ArgumentException($"There are no words for {trouble}.", nameof(trouble)),
    };

    /// <summary>The correction in a few words; with a target it is the mean of several kinds, of which the heaviest is named.</summary>
    public static string Of(CorrectionKind kind, bool toneStraightened) => (kind switch
    {
        CorrectionKind.None => "none: colours as the camera wrote them",
        CorrectionKind.Card => "a gain for each channel from the card",
        CorrectionKind.WhiteBalance => "mostly a gain for each channel",
        CorrectionKind.Matrix => "mostly a matrix of nine factors",
        CorrectionKind.RootPolynomial => "mostly a root polynomial of second degree",
        CorrectionKind.SmoothRest => "mostly a root polynomial of second degree and a smooth rest",
        _ => throw new ArgumentException($"There are no words for {kind}.", nameof(kind)),
    }) + (toneStraightened ? ", after stray light and the camera's contrast were undone" : "");

    /// <summary>What to mind, one sentence each.</summary>
    internal static IEnumerable<string> Notes(PhotoAnswer answer)
    {
        foreach (string id in answer.Unread) yield return $"{id}: lies outside the picture or has too few pixels, so it was not read.";
        foreach (PhotoColour c in answer.Colours.Where(c => c.IsClipped))
            yield return c.ClippedLow
                ? $"{c.Id}: a channel of the picture is cut off at nothing, as with strong yellows, oranges and blue-greens. {(answer.Kind > CorrectionKind.Card ? "How far beyond it lies is reckoned from what is usual, and its span is wider for it" : "The true colour may be stronger")}. More light, a picture kept in a wider colour space (Display P3), or an instrument tells more."
                : $"{c.Id}: a channel of the camera stands at the upper end of its scale, so the true colour may be lighter or stronger. Take the picture with less light.";
        foreach (PhotoColour c in answer.Colours.Where(c => c.DistanceFromPatches > FarFromPatches)) yield return $"{c.Id}: no patch of the target is near this colour ({Round(c.DistanceFromPatches)} in CIEDE2000), so it is told from farther ones.";
        foreach (PhotoColour c in answer.Colours.Where(c => c.LeftOutShare > 0.2)) yield return $"{c.Id}: {Round(100 * c.LeftOutShare)} % of its pixels were left out as dust, gleam or edge. A rough or shiny thing has no single colour.";
        if (answer.PatchesClipped > 0) yield return $"{(answer.PatchesClipped == 1 ? "One patch of the target was" : $"{answer.PatchesClipped} patches of the target were")} left out: a channel of the camera stands at the upper end of its scale there.";
        if (answer.LightUnevenPercent is > VeryUneven) yield return $"The light falls off by {Round(answer.LightUnevenPercent.Value)} % between the things that were read. It was taken out as well as it goes; lamps from both sides would do better.";
        if (answer.Kind is CorrectionKind.Card) yield return "A card tells how bright and how warm the light is, and nothing of how this camera sees colours. Differences between alike colours hold better than the colours themselves; a target of many patches tells them.";
        if (answer.Kind is CorrectionKind.None) yield return "Without a card or a target nothing is known of the light or the camera. Only differences between things in this one picture mean anything, and those roughly. Lay a plain grey or white card beside them, or better a target of known colours.";
        if (answer.LightUnevenPercent is null && answer.Kind > CorrectionKind.Card) yield return "No even surround was found to tell how the light falls off over the picture. Lay target and swatches on one plain grey or white sheet.";
    }

    private static string Round(double x) => Math.Round(x).ToString(CultureInfo.InvariantCulture);
}
