using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities;

namespace Alumroot.Colour.Film;

/// <summary>The colour of a film that was not made, and how far it may be off.</summary>
/// <param name="Colour">Tristimulus values.</param>
/// <param name="White">The white they are seen against.</param>
/// <param name="WithinDeltaE2000">The distance at the ends of the spans of all wavelengths at once.</param>
public sealed record PredictedColour(Xyz Colour, Xyz White, double WithinDeltaE2000);

/// <summary>A drawdown over all its wavelengths. Spans of the whole take the readings of all wavelengths to err alike, which is the worst they can do.</summary>
public sealed class DrawdownSeries
{
    // What is seen: a colour needs it covered, with gaps no wider than this; our judgement.
    private const double FromNanometres = 400, ToNanometres = 700, GapNanometres = 20;

    private readonly Surface _surface;
    private readonly double _reading;

    /// <summary>A drawdown.</summary>
    /// <param name="readings">Wavelengths, rising, and what the instrument showed at each.</param>
    /// <param name="surface">The surface that film and grounds share.</param>
    /// <param name="readingHalfWidthShare">Nine readings in ten lie so near the truth, as a reflectance.</param>
    /// <param name="thickness">The film's thickness in any unit, above 0.</param>
    public DrawdownSeries(IReadOnlyList<(double Nanometres, Drawdown Read)> readings, Surface surface, double readingHalfWidthShare, double thickness)
    {
        ArgumentNullException.ThrowIfNull(readings);
        (_surface, _reading, Thickness) = (surface, readingHalfWidthShare, thickness);
        Bands = [.. readings.Select(r => new DrawdownBand(r.Nanometres, r.Read, surface, readingHalfWidthShare, thickness))];
    }

    /// <summary>Its wavelengths.</summary>
    public IReadOnlyList<DrawdownBand> Bands { get; }

    /// <summary>The film's thickness, in the unit of whoever measured it.</summary>
    public double Thickness { get; }

    private bool CoversVision => Bands.Count > 1 && Bands[0].Nanometres <= FromNanometres && Bands[^1].Nanometres >= ToNanometres && Bands.Zip(Bands.Skip(1)).All(p => p.Second.Nanometres - p.First.Nanometres <= GapNanometres);

    /// <summary>Y over black over Y over white, as measured (in the sense of ISO 6504-3); null when the wavelengths do not cover what is seen.</summary>
    public Estimate? ContrastRatio(ViewingCondition condition)
    {
        if (!CoversVision) return null;
        double white = Y(b => b.Read.OverWhite, condition), ratio = Y(b => b.Read.OverBlack, condition) / white, half = 100 * _reading * Math.Sqrt(1 + ratio * ratio) / white;
        return new Estimate(ratio, Math.Max(0, ratio - half), ratio + half);
    }

    /// <summary>The thickness in which the paint reaches a contrast ratio by Y over the drawdown's own grounds; null when a constant is missing, the paint is too clear, or the readings leave it open.</summary>
    /// <param name="ratio">Such as 0.98.</param>
    /// <param name="condition">Light and observer.</param>
    public Estimate? HidingThickness(double ratio, ViewingCondition condition)
    {
        if (Hiding(ratio, condition) is not { } value) return null;
        if (_reading == 0) return Estimate.Exact(value);
        double below = 0, above = 0;
        foreach ((double black, double white) in (ReadOnlySpan<(double, double)>)[(1, 0), (-1, 0), (0, 1), (0, -1)])
        {
            if (Shifted(black * _reading, white * _reading).Hiding(ratio, condition) is not { } shifted) return null;
            double off = shifted - value;
            below += off < 0 ? off * off : 0;
            above += off > 0 ? off * off : 0;
        }
        return new Estimate(value, Math.Max(0, value - Math.Sqrt(below)), value + Math.Sqrt(above));
    }

    /// <summary>The colour of another film of the same paint; null when a constant is missing or the wavelengths do not cover what is seen.</summary>
    /// <param name="thickness">In the unit of the drawdown's own.</param>
    /// <param name="ground">What an instrument shows of the ground, at every wavelength.</param>
    /// <param name="condition">Light and observer.</param>
    public PredictedColour? Predicted(double thickness, double ground, ViewingCondition condition)
    {
        Estimate[] bands = [.. Bands.Select(b => b.Over(thickness, ground)).OfType<Estimate>()];
        if (!CoversVision || bands.Length < Bands.Count) return null;
        Spectrum spectrum = Spectrum.Of(Bands.Select(b => b.Nanometres), bands.Select(b => b.Value));
        SpectralWeights weights = SpectralWeights.For(condition, spectrum);
        Xyz colour = weights.Of(spectrum.ValueSpan);
        Lab lab = Lab.From(colour, weights.White);
        double within = Math.Max(Far([.. bands.Select(b => b.Low)]), Far([.. bands.Select(b => b.High)]));
        return new PredictedColour(colour, weights.White, within);

        double Far(double[] end) => Ciede2000.Of(lab, weights.LabOf(end)).DeltaE;
    }

    private double Y(Func<DrawdownBand, double> of, ViewingCondition condition)
    {
        Spectrum spectrum = Spectrum.Of(Bands.Select(b => b.Nanometres), Bands.Select(of));
        return SpectralWeights.For(condition, spectrum).Of(spectrum.ValueSpan).Y;
    }

    private double? Hiding(double ratio, ViewingCondition condition)
    {
        Layer[] layers = [.. Bands.Select(b => b.Measured.Found).OfType<FilmFound.Known>().Select(k => k.Film.Times(1 / Thickness))];
        return CoversVision && layers.Length == Bands.Count
            ? new FilmSpectrum([.. Bands.Select(b => b.Nanometres)], layers, _surface).ThicknessFor(ratio, [.. Bands.Select(b => b.Read.Black)], [.. Bands.Select(b => b.Read.White)], condition)
            : null;
    }

    private DrawdownSeries Shifted(double black, double white) =>
        new([.. Bands.Select(b => (b.Nanometres, b.Read with { OverBlack = b.Read.OverBlack + black, OverWhite = b.Read.OverWhite + white }))], _surface, 0, Thickness);
}
