namespace Alumroot.Chemistry.Constants;

/// <summary>How an equilibrium constant changes with temperature.</summary>
/// <remarks>
/// Either the analytic form log10 K = a1 + a2 T + a3/T + a4 log10 T + a5/T^2 + a6 T^2 (T in kelvin; Parkhurst and Appelo 2013 [phreeqc3],
/// which then rules over the enthalpy), or van 't Hoff with a constant enthalpy, or no temperature data at all.
/// </remarks>
public sealed class TemperatureLaw
{
    /// <summary>Molar gas constant in J/(mol K): exact product of the defined Boltzmann and Avogadro constants (SI brochure 2019).</summary>
    public const double GasConstantJoulePerMolKelvin = 1.380649e-23 * 6.02214076e23;

    private const double ReferenceKelvin = 298.15;
    private readonly double[]? _analytic;
    private readonly double _log10K25;
    private readonly double _enthalpyJoulePerMol;

    private TemperatureLaw(double log10K25, double enthalpyJoulePerMol, double[]? analytic, bool known) =>
        (_log10K25, _enthalpyJoulePerMol, _analytic, IsKnown) = (log10K25, enthalpyJoulePerMol, analytic, known);

    /// <summary>False when the source gives no temperature data: the constant is then used at every temperature and predictions away from 25 C are weaker.</summary>
    public bool IsKnown { get; }

    /// <summary>A constant that is used at every temperature because nothing else is known.</summary>
    public static TemperatureLaw Constant(double log10K25) => new(log10K25, 0, null, false);

    /// <summary>Van 't Hoff from a constant enthalpy of reaction in kJ/mol.</summary>
    public static TemperatureLaw VantHoff(double log10K25, double enthalpyKilojoulePerMol) => new(log10K25, enthalpyKilojoulePerMol * 1000, null, true);

    /// <summary>The analytic form with a1 to a6.</summary>
    public static TemperatureLaw Analytic(ReadOnlySpan<double> a) => new(0, 0, a.ToArray(), true);

    /// <summary>The same law with log10 K shifted at every temperature.</summary>
    public TemperatureLaw Shifted(double log10Shift)
    {
        if (_analytic is null) return new TemperatureLaw(_log10K25 + log10Shift, _enthalpyJoulePerMol, null, IsKnown);
        double[] a = (double[])_analytic.Clone();
        a[0] += log10Shift;
        return new TemperatureLaw(0, 0, a, true);
    }

    /// <summary>log10 of the constant at a temperature.</summary>
    public double Log10K(double kelvin)
    {
        if (_analytic is { } a)
            return a[0] + a[1] * kelvin + a[2] / kelvin + a[3] * Math.Log10(kelvin) + a[4] / (kelvin * kelvin) + a[5] * kelvin * kelvin;
        return _log10K25 - _enthalpyJoulePerMol / (GasConstantJoulePerMolKelvin * Math.Log(10)) * (1 / kelvin - 1 / ReferenceKelvin);
    }

    /// <summary>Change of log10 of the constant with temperature, per kelvin.</summary>
    public double Log10KPerKelvin(double kelvin)
    {
        if (_analytic is { } a)
            return a[1] - a[2] / (kelvin * kelvin) + a[3] / (kelvin * Math.Log(10)) - 2 * a[4] / (kelvin * kelvin * kelvin) + 2 * a[5] * kelvin;
        return _enthalpyJoulePerMol / (GasConstantJoulePerMolKelvin * Math.Log(10) * kelvin * kelvin);
    }
}
