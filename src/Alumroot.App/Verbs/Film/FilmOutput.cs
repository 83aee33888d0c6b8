using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Quantities;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs.Film;

/// <summary>The answers of <c>film</c>.</summary>
internal static class FilmOutput
{
    private const double HidingRatio = 0.98;
    private const int Digits = 10;

    private static readonly string[] Heads =
    [
        "sample", "wavelength_nm", "k", "k_low", "k_high", "s", "s_low", "s_high", "k_over_s", "k_over_s_low", "k_over_s_high", "contrast_ratio", "r_predicted", "r_predicted_low", "r_predicted_high",
        "contrast_ratio_y", "contrast_ratio_y_low", "contrast_ratio_y_high", "hiding_thickness", "hiding_thickness_low", "hiding_thickness_high", "known",
    ];

    private static ViewingCondition Seen => ViewingCondition.Paint;

    internal static void WriteCsv(IReadOnlyList<FilmSample> samples, FilmRequest request, TextWriter to)
    {
        to.Write(Csv.Line([.. Heads]));
        foreach (FilmSample s in samples)
        {
            object?[] whole = [.. Cells(s.Series.ContrastRatio(Seen)), .. Cells(s.Series.HidingThickness(HidingRatio, Seen))];
            foreach (DrawdownBand b in s.Series.Bands)
                to.Write(Csv.Line([s.Name, b.Nanometres, .. Cells(b.Absorption), .. Cells(b.Scattering), .. Cells(b.AbsorptionRatio), R(b.Measured.ContrastRatio.Value), .. Cells(Predicted(b, request)), .. whole, FilmWords.Of(b.Measured.Found)]));
        }
    }

    internal static void WriteJson(IReadOnlyList<FilmSample> samples, FilmRequest request, TextWriter to) => to.WriteLine(Json.Text(new
    {
        K1 = request.Surface.OutsideShare,
        K2 = request.Surface.InsideShare,
        ReadingHalfWidth = request.Reading,
        Samples = samples.Select(s => new
        {
            Sample = s.Name,
            Thickness = s.ThicknessKnown ? s.Series.Thickness : (double?)null,
            ContrastRatioY = R(s.Series.ContrastRatio(Seen)),
            HidingThickness = R(s.Series.HidingThickness(HidingRatio, Seen)),
            Predicted = request is { Thickness: { } x, Over: { } over } && s.Series.Predicted(x, over, Seen) is { } predicted ? Told(predicted, x, over) : null,
            Bands = s.Series.Bands.Select(b => new
            {
                WavelengthNm = b.Nanometres,
                K = R(b.Absorption),
                S = R(b.Scattering),
                KOverS = R(b.AbsorptionRatio),
                ContrastRatio = R(b.Measured.ContrastRatio),
                RPredicted = R(Predicted(b, request)),
                Known = FilmWords.Of(b.Measured.Found),
            }),
        }),
    }));

    private static object Told(PredictedColour predicted, double thickness, double over)
    {
        Lab lab = Lab.From(predicted.Colour, predicted.White);
        Srgb screen = Srgb.From(predicted.Colour, predicted.White);
        return new
        {
            Thickness = thickness,
            Over = over,
            Illuminant = Seen.Light.Key,
            ObserverDegrees = Seen.Eye.Degrees,
            Lab = new[] { Math.Round(lab.L, 4), Math.Round(lab.A, 4), Math.Round(lab.B, 4) },
            IntervalDe00 = Math.Round(predicted.WithinDeltaE2000, 3),
            SrgbHex = screen.Hex,
            screen.InGamut,
            Name = ColourNames.Nearest(predicted.Colour, predicted.White).Colour.Name,
        };
    }

    private static Estimate? Predicted(DrawdownBand band, FilmRequest request) => request is { Thickness: { } x, Over: { } over } ? band.Over(x, over) : null;

    private static object?[] Cells(Estimate? e) => e is { } x ? [R(x.Value), R(x.Low), R(x.High)] : [null, null, null];

    private static Estimate? R(Estimate? e) => e is { } x ? new Estimate(R(x.Value), R(x.Low), R(x.High)) : null;

    private static double R(double x) => Math.Round(x, Digits) + 0.0;
}
