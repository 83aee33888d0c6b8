using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>Colour from a picture that shows a plain card, or nothing known at all.</summary>
public static class CardMeasurement
{
    // A plain white card of no stated kind; common practice, no source.
    private const double UsualCard = 0.85;

    // Nine in ten simulated colours lie within 3.5 with a card alone; telephones also change tones by place and strengthen colours, so the rest is judgement (docs/models/photograph.md).
    private const double CardUnits = 6;
    private const double ClippedFactor = 1.6;

    /// <summary>Measures by the card; without one the colours are those that the file states and no interval is given.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="card">Corners of the card.</param>
    /// <param name="cardReflectance">What share of light it gives back; 0.85 when not stated.</param>
    /// <param name="swatches">What is to be measured.</param>
    public static PhotoAnswer Measure(Raster picture, Quad? card, double? cardReflectance, IReadOnlyList<PhotoSwatch> swatches)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(swatches);
        Quad[] taken = [.. swatches.Select(s => s.Corners.Scaled(1.25)), .. card is { } c ? [c.Scaled(1.2)] : (Quad[])[]];
        LightField field = LightField.From(SurroundCell.Of(picture, taken, out _), picture.Width, picture.Height);
        LinearRgb gain = new(1, 1, 1);
        PatchReading? white = card is { } corners ? PatchReading.Of(picture, corners, PhotoMeasurement.InnerShare) : null;
        bool byCard = white is { IsClipped: false };
        double reflectance = cardReflectance ?? UsualCard;
        if (byCard)
        {
            LinearRgb light = white!.Value.Mean / field.At(white.Value.Middle);
            gain = new(reflectance / light.R, reflectance / light.G, reflectance / light.B);
        }
        else field = LightField.Even;
        var colours = new List<PhotoColour>();
        var unread = new List<string>();
        foreach (PhotoSwatch swatch in swatches)
        {
            if (PatchReading.Of(picture, swatch.Corners, PhotoMeasurement.InnerShare) is not { } reading)
            {
                unread.Add(swatch.Id);
                continue;
            }
            LinearRgb seen = reading.Mean / field.At(reading.Middle);
            Lab lab = LabOf(picture.Colours, new(seen.R * gain.R, seen.G * gain.G, seen.B * gain.B));
            double? interval = byCard ? CardUnits * (reading.IsClipped ? ClippedFactor : 1) : null;
            colours.Add(new PhotoColour(swatch.Id, lab, interval, reading.IsClipped, reading.LeftOutShare, 0) { ClippedLow = reading.ClippedLow });
        }
        double? uneven = field.IsEven ? null : field.UnevenPercent(swatches.Select(s => s.Corners.Middle));
        return new PhotoAnswer(colours, unread, byCard ? CorrectionKind.Card : CorrectionKind.None, false, null, null, uneven, 0) { Grid = null, PatchesToldFromOthers = [] };
    }

    // The lights of a profile are those against D50 already.
    private static Lab LabOf(PixelColours c, LinearRgb v) => Lab.From(new Xyz(
        100 * (c.RedX * v.R + c.GreenX * v.G + c.BlueX * v.B),
        100 * (c.RedY * v.R + c.GreenY * v.G + c.BlueY * v.B),
        100 * (c.RedZ * v.R + c.GreenZ * v.G + c.BlueZ * v.B)), ColourNames.White);
}
