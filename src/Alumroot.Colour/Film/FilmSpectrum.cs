using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Film;

/// <summary>A film over all wavelengths: its constants for a thickness of 1, and its colour over any ground in any thickness.</summary>
public sealed class FilmSpectrum
{
    // A film that does not hide at this many of its own thickness is called clear.
    private const double MostThickness = 1e4;

    private readonly Layer[] _layers;
    private readonly Surface _surface;

    /// <summary>A film.</summary>
    /// <param name="nanometres">Wavelengths, rising.</param>
    /// <param name="perThickness">K and S at each, for a thickness of 1.</param>
    /// <param name="surface">Its surface.</param>
    public FilmSpectrum(IReadOnlyList<double> nanometres, IReadOnlyList<Layer> perThickness, Surface surface)
    {
        ArgumentNullException.ThrowIfNull(nanometres);
        ArgumentNullException.ThrowIfNull(perThickness);
        if (nanometres.Count != perThickness.Count) throw new ArgumentException("Each wavelength needs its constants.", nameof(perThickness));
        Nanometres = [.. nanometres];
        _layers = [.. perThickness];
        _surface = surface;
    }

    /// <summary>Its wavelengths.</summary>
    public IReadOnlyList<double> Nanometres { get; }

    /// <summary>K and S at each wavelength, for a thickness of 1.</summary>
    public IReadOnlyList<Layer> PerThickness => _layers;

    /// <summary>What an instrument would show.</summary>
    /// <param name="thickness">In the unit of the constants.</param>
    /// <param name="ground">What an instrument shows of the ground at each wavelength.</param>
    public Spectrum Over(double thickness, Func<int, double> ground)
    {
        ArgumentNullException.ThrowIfNull(ground);
        return Spectrum.Of(Nanometres, _layers.Select((l, i) => _surface.Measured(FilmOptics.Over(l.Times(thickness), _surface.Inside(ground(i))))));
    }

    /// <summary>Y over black divided by Y over white (in the sense of ISO 6504-3).</summary>
    /// <param name="thickness">In the unit of the constants.</param>
    /// <param name="black">The black ground at each wavelength.</param>
    /// <param name="white">The white ground at each wavelength.</param>
    /// <param name="condition">Light and observer; the paint trade takes D65 and 10 degrees.</param>
    public double ContrastRatio(double thickness, IReadOnlyList<double> black, IReadOnlyList<double> white, ViewingCondition condition)
    {
        Spectrum dark = Over(thickness, i => black[i]), light = Over(thickness, i => white[i]);
        SpectralWeights weights = SpectralWeights.For(condition, dark);
        return weights.Of(dark.ValueSpan).Y / weights.Of(light.ValueSpan).Y;
    }

    /// <summary>The thickness in which the contrast ratio of Y is reached, or null when the film is too clear for it.</summary>
    /// <param name="ratio">Such as 0.98.</param>
    /// <param name="black">The black ground at each wavelength.</param>
    /// <param name="white">The white ground at each wavelength.</param>
    /// <param name="condition">Light and observer.</param>
    public double? ThicknessFor(double ratio, IReadOnlyList<double> black, IReadOnlyList<double> white, ViewingCondition condition)
    {
        double low = 0, high = 1;
        while (ContrastRatio(high, black, white, condition) < ratio)
        {
            if (high > MostThickness) return null;
            (low, high) = (high, 2 * high);
        }
        for (int i = 0; i < 60 && high - low > 1e-9 * high; i++)
        {
            double middle = (low + high) / 2;
            if (ContrastRatio(middle, black, white, condition) < ratio) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
