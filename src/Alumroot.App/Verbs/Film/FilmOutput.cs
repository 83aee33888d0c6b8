using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs.Film;

/// <summary>The answers of <c>film</c>.</summary>
internal static class FilmOutput
{
    private const int Digits = 10;

    internal static void WriteCsv(IReadOnlyList<FilmSample> samples, FilmRequest request, TextWriter to)
    {
        to.Write(Csv.Line("sample", "wavelength_nm", "k", "k_low", "k_high", "s", "s_low", "s_high", "k_over_s", "k_over_s_low", "k_over_s_high", "contrast_ratio",
            "r_predicted", "r_predicted_low", "r_predicted_high", "contrast_ratio_y", "contrast_ratio_y_low", "contrast_ratio_y_high",
            "hiding_thickness", "hiding_thickness_low", "hiding_thickness_high", "known"));
        foreach (FilmSample s in samples)
        {
            object?[] whole = [.. Cells(s.ContrastRatioY(request)), .. Cells(s.HidingThickness(request))];
            foreach (FilmBand b in s.Bands)
                to.Write(Csv.Line([s.Name, b.Nanometres, .. Cells(b.K), .. Cells(b.S), .. Cells(b.Ratio), R(b.Measured.ContrastRatio.Value), .. Cells(b.Predicted(request)), .. whole, FilmWords.Of(b.Measured.Found)]));
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
            Thickness = s.ThicknessKnown ? s.Thickness : (double?)null,
            ContrastRatioY = R(s.ContrastRatioY(request)),
            HidingThickness = R(s.HidingThickness(request)),
            Predicted = Prediction(s, request),
            Bands = s.Bands.Select(b => new
            {
                WavelengthNm = b.Nanometres,
                K = R(b.K),
                S = R(b.S),
                KOverS = R(b.Ratio),
                ContrastRatio = R(b.Measured.ContrastRatio),
                RPredicted = R(b.Predicted(request)),
                Known = FilmWords.Of(b.Measured.Found),
            }),
        }),
    }));

    private static object? Prediction(FilmSample sample, FilmRequest request)
    {
        if (sample.Predicted(request) is not { } spectrum) return null;
        SpectralWeights weights = SpectralWeights.For(ViewingCondition.Paint, spectrum);
        Xyz xyz = weights.Of(spectrum.ValueSpan);
        Lab lab = Lab.From(xyz, weights.White);
        Srgb screen = Srgb.From(xyz, weights.White);
        // The ends of the span at all wavelengths at once, which is the worst that readings erring alike can do.
        double within = new[] { Ends(e => e.Low), Ends(e => e.High) }.Max(end => Ciede2000.Of(lab, weights.LabOf(end)).DeltaE);
        return new { request.Thickness, request.Over, Illuminant = ViewingCondition.Paint.Light.Key, ObserverDegrees = ViewingCondition.Paint.Eye.Degrees, Lab = new[] { Math.Round(lab.L, 4), Math.Round(lab.A, 4), Math.Round(lab.B, 4) }, IntervalDe00 = Math.Round(within, 3), SrgbHex = screen.Hex, screen.InGamut, Name = ColourNames.Nearest(xyz, weights.White).Colour.Name };

        double[] Ends(Func<Estimate, double> end) => [.. sample.Bands.Select(b => b.Predicted(request) is { } e ? end(e) : 0)];
    }

    private static object?[] Cells(Estimate? e) => e is { } x ? [R(x.Value), R(x.Low), R(x.High)] : [null, null, null];

    private static Estimate? R(Estimate? e) => e is { } x ? new Estimate(R(x.Value), R(x.Low), R(x.High)) : null;

    private static double R(double x) => Math.Round(x, Digits) + 0.0;
}
