using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs.Film;

/// <summary>What is asked beside the file: the surface, how far to trust a reading, and a film to predict.</summary>
internal sealed record FilmRequest(Surface Surface, double Reading, double? Thickness, double? Over);

/// <summary>One wavelength of a drawdown, solved.</summary>
internal sealed record FilmBand(double Nanometres, Drawdown Read, FilmMeasurement Measured, double Thickness)
{
    internal Estimate? K => Measured.Of(l => l.AbsorbedUnits / Thickness) is { } k ? k with { Low = Math.Max(0, k.Low) } : Measured.Found is FilmFound.Clear { AbsorbedUnits: var c } ? c.Times(1 / Thickness) : null;

    internal Estimate? S => Measured.Of(l => l.ScatteredUnits / Thickness) is { } s ? s with { Low = Math.Max(0, s.Low) } : null;

    internal Estimate? Ratio => Measured.Of(l => l.AbsorbedUnits / l.ScatteredUnits) is { } r ? r with { Low = Math.Max(0, r.Low) } : Measured.Found is FilmFound.Hides { AbsorptionRatio: var h } ? h : null;

    /// <summary>What an instrument would show of another film of the same paint.</summary>
    internal Estimate? Predicted(FilmRequest request) => request is { Thickness: { } x, Over: { } over }
        ? Measured.Of(l => request.Surface.Measured(FilmOptics.Over(l.Times(x / Thickness), request.Surface.Inside(over))))
        : null;
}

/// <summary>A film measured over black and white, at all its wavelengths.</summary>
internal sealed record FilmSample(string Name, IReadOnlyList<FilmBand> Bands, double Thickness, bool ThicknessKnown)
{
    private const double HidingRatio = 0.98;

    /// <summary>Contrast ratio by Y, D65 and 10 degrees; null when the wavelengths do not cover what is seen.</summary>
    internal Estimate? ContrastRatioY(FilmRequest request)
    {
        if (!Covers) return null;
        double white = Y(b => b.Read.OverWhite), ratio = Y(b => b.Read.OverBlack) / white, half = 100 * request.Reading * Math.Sqrt(1 + ratio * ratio) / white;
        return new Estimate(ratio, Math.Max(0, ratio - half), ratio + half);
    }

    /// <summary>Thickness for a contrast ratio of 0.98, by Y; null when a constant is missing, the film is too clear, or the readings leave it open. All wavelengths are taken to err alike.</summary>
    internal Estimate? HidingThickness(FilmRequest request)
    {
        if (Hiding(request) is not { } value) return null;
        double below = 0, above = 0;
        foreach ((double black, double white) in (ReadOnlySpan<(double, double)>)(request.Reading > 0 ? [(1, 0), (-1, 0), (0, 1), (0, -1)] : []))
        {
            if (Shifted(black * request.Reading, white * request.Reading, request).Hiding(request) is not { } shifted) return null;
            double off = shifted - value;
            below += off < 0 ? off * off : 0;
            above += off > 0 ? off * off : 0;
        }
        return new Estimate(value, Math.Max(0, value - Math.Sqrt(below)), value + Math.Sqrt(above));
    }

    /// <summary>The predicted film's spectrum, when every wavelength is known.</summary>
    internal Spectrum? Predicted(FilmRequest request) =>
        Covers && request is { Thickness: { } x, Over: { } over } && Film(request) is { } film ? film.Over(x, _ => over) : null;

    /// <summary>The samples of a table, in its order.</summary>
    /// <exception cref="TableException">A column or a number is missing or wrong.</exception>
    internal static IReadOnlyList<FilmSample> Read(Table table, FilmRequest request) =>
        [.. table.Rows.GroupBy(r => r["sample"], StringComparer.Ordinal).Select(g => Read(g.Key, [.. g], table.Has("thickness"), request))];

    private static FilmSample Read(string name, TableRow[] rows, bool thickness, FilmRequest request)
    {
        double? x = null;
        var bands = new List<FilmBand>();
        foreach (TableRow row in rows)
        {
            double? own = thickness ? row.OptionalNumber("thickness") : null;
            if (own is <= 0) throw row.Wrong("thickness", "a thickness must be more than nothing");
            if (bands.Count > 0 && own != x) throw row.Wrong("thickness", "a sample has one thickness; give another film its own name");
            x = own;
            double nanometres = row.Number("wavelength_nm");
            if (bands.Count > 0 && nanometres <= bands[^1].Nanometres) throw row.Wrong("wavelength_nm", $"{nanometres} does not rise; a sample has its wavelengths in order and each once");
            var read = new Drawdown(row.Number("r_over_black"), row.Number("r_black"), row.Number("r_over_white"), row.Number("r_white"));
            bands.Add(new FilmBand(nanometres, read, new FilmMeasurement(read, request.Surface, request.Reading), own ?? 1));
        }
        return new FilmSample(name, bands, x ?? 1, x is not null);
    }

    private double? Hiding(FilmRequest request) => Covers && Film(request) is { } film
        ? film.ThicknessFor(HidingRatio, [.. Bands.Select(b => b.Read.Black)], [.. Bands.Select(b => b.Read.White)], ViewingCondition.Paint)
        : null;

    private FilmSample Shifted(double black, double white, FilmRequest request) => this with
    {
        Bands = [.. Bands.Select(b => b.Read with { OverBlack = b.Read.OverBlack + black, OverWhite = b.Read.OverWhite + white })
            .Select((read, i) => new FilmBand(Bands[i].Nanometres, read, new FilmMeasurement(read, request.Surface, 0), Thickness))],
    };

    private bool Covers => Bands.Count > 1 && Bands[0].Nanometres <= 400 && Bands[^1].Nanometres >= 700 && Bands.Zip(Bands.Skip(1)).All(p => p.Second.Nanometres - p.First.Nanometres <= 20);

    private double Y(Func<FilmBand, double> of)
    {
        Spectrum spectrum = Spectrum.Of(Bands.Select(b => b.Nanometres), Bands.Select(of));
        return SpectralWeights.For(ViewingCondition.Paint, spectrum).Of(spectrum.ValueSpan).Y;
    }

    private FilmSpectrum? Film(FilmRequest request)
    {
        Layer[] layers = [.. Bands.Select(b => b.Measured.Found).OfType<FilmFound.Known>().Select(k => k.Film.Times(1 / Thickness))];
        return layers.Length == Bands.Count ? new FilmSpectrum([.. Bands.Select(b => b.Nanometres)], layers, request.Surface) : null;
    }
}
