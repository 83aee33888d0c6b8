using Alumroot.App.Output;
using Alumroot.App.Verbs.Colour;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Interchange;
using Alumroot.Colour.Photograph;

namespace Alumroot.App.Photographs;

/// <summary>What came of measuring a photograph.</summary>
/// <param name="Target">Corners of the target; null when the picture was read without one.</param>
/// <param name="Answer">What it told.</param>
internal sealed record Measured(Quad? Target, PhotoAnswer Answer);

/// <summary>From a request to the colours of a photograph.</summary>
internal static class Measuring
{
    /// <summary>Measures; what is wrong is said on the channel of messages.</summary>
    internal static (Measured? Measured, int Code) Of(MeasureRequest request, Channels channels)
    {
        IReadOnlyList<Lab>? truths = null;
        if (request.Reference is { } reference)
        {
            if (ColourFiles.Read(reference, false, channels) is not { } document) return (null, ExitCode.InputWrong);
            ColourCard?[] cards = [.. document.Samples.Select(s => ColourCard.Of(s, Path.GetFileName(reference), ViewingCondition.Graphic))];
            truths = [.. cards.Where(c => c is not null).Select(c => c!.Lab)];
            if (truths.Count < PhotoMeasurement.LeastPatches) return Said(ExitCode.InputWrong, $"{Path.GetFileName(reference)} holds {truths.Count} colours. A target has at least {PhotoMeasurement.LeastPatches}.");
            if (request.Grid is { } g && g.Columns * g.Rows != truths.Count) return Said(ExitCode.InputWrong, $"target.layout has {g.Columns} x {g.Rows} patches, but {Path.GetFileName(reference)} holds {truths.Count} colours.");
        }
        (Raster? picture, string? mistake) = PhotoReader.Read(request.Photo);
        if (picture is null) return Said(ExitCode.InputWrong, mistake!);
        if (truths is null) return (new Measured(null, CardMeasurement.Measure(picture, request.Card, request.CardReflectance, request.Swatches)), ExitCode.Done);
        if (request.Corners is { } given) return Told(PhotoMeasurement.Measure(new PhotoAsk(picture, truths, given, request.Grid, request.Swatches, request.Card)), given);
        if (TargetFinder.Find(picture, truths, request.Grid) is not { } found) return Said(ExitCode.CannotBeMet, PhotoWords.NotFound);
        return Told(PhotoMeasurement.Measure(new PhotoAsk(picture, truths, found.Corners, found.Grid, request.Swatches, request.Card)), found.Corners);

        (Measured?, int) Said(int code, string sentence)
        {
            channels.Messages.WriteLine(sentence);
            return (null, code);
        }

        (Measured?, int) Told((PhotoAnswer? Answer, PhotoTrouble? Trouble) told, Quad corners) =>
            told.Answer is { } answer ? (new Measured(corners, answer), ExitCode.Done) : Said(told.Trouble == PhotoTrouble.CornersUnfit ? ExitCode.InputWrong : ExitCode.CannotBeMet, PhotoWords.Of(told.Trouble!.Value));
    }
}
