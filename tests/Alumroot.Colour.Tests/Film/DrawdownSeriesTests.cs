using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Quantities;

namespace Alumroot.Colour.Tests.Film;

public class DrawdownSeriesTests
{
    private const double Black = 0.05, White = 0.8, Thickness = 0.3, Reading = 0.002;

    private static readonly Surface Gloss = new(0.04, 0.6);

    /// <summary>A red of our own making: K falls at 580 nm, S is even.</summary>
    private static Layer Film(double nanometres) => new(nanometres < 580 ? 2 : 0.3, 3);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(-1, 0)]
    [InlineData(0, 1)]
    [InlineData(0, -1)]
    public void Readings_that_err_as_much_as_said_keep_the_truth_in_the_spans(int black, int white)
    {
        FilmSpectrum truth = new([.. Wavelengths], [.. Wavelengths.Select(Film)], Gloss);
        double[] dark = [.. Wavelengths.Select(_ => Black)], light = [.. Wavelengths.Select(_ => White)];
        var series = new DrawdownSeries([.. Wavelengths.Select((n, i) => (n, new Drawdown(
            truth.Over(Thickness, _ => Black).Values[i] + 0.99 * black * Reading, Black, truth.Over(Thickness, _ => White).Values[i] + 0.99 * white * Reading, White)))], Gloss, Reading, Thickness);
        Holds(series.HidingThickness(0.98, ViewingCondition.Paint), truth.ThicknessFor(0.98, dark, light, ViewingCondition.Paint)!.Value);
        Holds(series.ContrastRatio(ViewingCondition.Paint), truth.ContrastRatio(Thickness, dark, light, ViewingCondition.Paint));
        for (int i = 0; i < series.Bands.Count; i++)
        {
            Holds(series.Bands[i].Absorption, Film(series.Bands[i].Nanometres).AbsorbedUnits);
            Holds(series.Bands[i].Scattering, Film(series.Bands[i].Nanometres).ScatteredUnits);
        }
        PredictedColour predicted = series.Predicted(0.6, 0.5, ViewingCondition.Paint)!;
        Spectrum other = truth.Over(0.6, _ => 0.5);
        Lab expected = SpectralWeights.For(ViewingCondition.Paint, other).LabOf(other.ValueSpan);
        Assert.True(Ciede2000.Of(expected, Lab.From(predicted.Colour, predicted.White)).DeltaE <= predicted.WithinDeltaE2000 * 1.5 + 1e-9);
    }

    [Fact]
    public void A_few_wavelengths_have_constants_and_no_colour()
    {
        var series = new DrawdownSeries([(450, new Drawdown(0.06, 0.02, 0.1, 0.8)), (550, new Drawdown(0.05, 0.02, 0.07, 0.8))], Surface.None, Reading, 1);
        Assert.NotNull(series.Bands[0].Absorption);
        Assert.Null(series.ContrastRatio(ViewingCondition.Paint));
        Assert.Null(series.HidingThickness(0.98, ViewingCondition.Paint));
        Assert.Null(series.Predicted(1, 0.5, ViewingCondition.Paint));
    }

    private static IEnumerable<double> Wavelengths => Enumerable.Range(0, 16).Select(i => 400 + 20.0 * i);

    private static void Holds(Estimate? span, double truth) => Assert.InRange(truth, span!.Value.Low - 1e-9, span.Value.High + 1e-9);
}
