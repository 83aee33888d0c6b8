namespace Alumroot.Colour.Colorimetry;

/// <summary>Values at rising wavelengths: a reflectance, a transmittance, an absorbance or the power of a light.</summary>
/// <remarks>Immutable. Any range, any step, evenly spaced or not.</remarks>
public sealed class Spectrum
{
    // Wavelengths in files are rounded to about this.
    private const double EvenWithinNanometres = 0.02;

    private readonly double[] _nanometres, _values;

    private Spectrum(double[] nanometres, double[] values)
    {
        if (nanometres.Length == 0 || nanometres.Length != values.Length) throw new ArgumentException("A spectrum needs one value for each wavelength and at least one of both.", nameof(values));
        for (int i = 0; i < nanometres.Length; i++)
            if (!double.IsFinite(values[i]) || !double.IsFinite(nanometres[i]) || (i > 0 && nanometres[i] <= nanometres[i - 1]))
                throw new ArgumentException("The wavelengths of a spectrum rise, and all its numbers are finite.", nameof(nanometres));
        (_nanometres, _values) = (nanometres, values);
        StepNanometres = EvenStep(nanometres);
    }

    /// <summary>Wavelengths, strictly rising.</summary>
    public IReadOnlyList<double> Nanometres => _nanometres;

    /// <summary>The value at each wavelength.</summary>
    public IReadOnlyList<double> Values => _values;

    /// <summary>The values without copying.</summary>
    public ReadOnlySpan<double> ValueSpan => _values;

    /// <summary>The number of wavelengths.</summary>
    public int Count => _nanometres.Length;

    /// <summary>The step where the wavelengths are evenly spaced, else null.</summary>
    public double? StepNanometres { get; }

    /// <summary>A spectrum from pairs.</summary>
    /// <exception cref="ArgumentException">The lengths differ, a wavelength does not rise, or a number is not finite.</exception>
    public static Spectrum Of(IEnumerable<double> nanometres, IEnumerable<double> values) => new([.. nanometres], [.. values]);

    /// <summary>A spectrum with an even step.</summary>
    /// <param name="firstNanometres">The first wavelength.</param>
    /// <param name="stepNanometres">The step, above zero.</param>
    /// <param name="values">The values in order.</param>
    /// <exception cref="ArgumentException">There are no values, or a number is not finite.</exception>
    public static Spectrum Regular(double firstNanometres, double stepNanometres, IEnumerable<double> values)
    {
        double[] all = [.. values];
        return new([.. Enumerable.Range(0, all.Length).Select(i => firstNanometres + i * stepNanometres)], all);
    }

    /// <summary>The same wavelengths with each value changed.</summary>
    public Spectrum Map(Func<double, double> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return new(_nanometres, Array.ConvertAll(_values, v => change(v)));
    }

    /// <summary>The value at a wavelength on straight lines between the points; the ends are held.</summary>
    public double LinearAt(double nanometres)
    {
        int i = Array.BinarySearch(_nanometres, nanometres);
        if (i >= 0) return _values[i];
        i = ~i;
        if (i == 0) return _values[0];
        if (i == _nanometres.Length) return _values[^1];
        double t = (nanometres - _nanometres[i - 1]) / (_nanometres[i] - _nanometres[i - 1]);
        return _values[i - 1] + t * (_values[i] - _values[i - 1]);
    }

    private static double? EvenStep(double[] nanometres)
    {
        if (nanometres.Length < 2) return null;
        double step = (nanometres[^1] - nanometres[0]) / (nanometres.Length - 1);
        double rounded = Math.Round(step, 2);
        if (rounded > 0 && Math.Abs(rounded - step) * nanometres.Length < EvenWithinNanometres) step = rounded;
        for (int i = 1; i < nanometres.Length; i++)
            if (Math.Abs(nanometres[i] - nanometres[0] - i * step) > EvenWithinNanometres) return null;
        return step;
    }
}
