namespace Alumroot.Chemistry.Constants;

/// <summary>Activity coefficient of one species: log10 g = -A z^2 sqrt(I)/(1 + c sqrt(I)) + b I, with c = a B or 1.</summary>
/// <remarks>
/// One formula covers the three forms in use: extended Debye-Hueckel with ion size a (angstrom) and slope b; Davies (c = 1, b = 0.3 A z^2; [davies1962],
/// from memory); and neutral species (z = 0). Davies and the extended form are usable to about 0.5 mol/kg.
/// </remarks>
public readonly record struct ActivityModel
{
    private readonly double _size;
    private readonly double _slope;
    private readonly bool _davies;

    private ActivityModel(double size, double slope, bool davies) => (_size, _slope, _davies) = (size, slope, davies);

    /// <summary>Davies, for an ion of any charge.</summary>
    public static ActivityModel Davies { get; } = new(0, 0, true);

    /// <summary>Extended Debye-Hueckel.</summary>
    /// <param name="sizeAngstrom">Ion size parameter a.</param>
    /// <param name="slopeKgPerMol">Slope b.</param>
    public static ActivityModel Extended(double sizeAngstrom, double slopeKgPerMol) => new(sizeAngstrom, slopeKgPerMol, false);

    /// <summary>A neutral species: log10 g = b I.</summary>
    public static ActivityModel Neutral(double slopeKgPerMol) => new(0, slopeKgPerMol, false);

    /// <summary>The three numbers of the common formula in natural logarithms: ln g = -limit sqrt(I)/(1 + c sqrt(I)) + slope I.</summary>
    internal (double Limit, double C, double Slope) Coefficients(int charge, double a, double b)
    {
        double limit = Math.Log(10) * a * charge * charge;
        return _davies ? (limit, 1, 0.3 * limit) : (limit, _size * b, Math.Log(10) * _slope);
    }

    /// <summary>Change per kelvin of the three numbers, from the changes of A and B.</summary>
    internal (double Limit, double C, double Slope) CoefficientSlopes(int charge, double aPerKelvin, double bPerKelvin)
    {
        double limit = Math.Log(10) * aPerKelvin * charge * charge;
        return _davies ? (limit, 0, 0.3 * limit) : (limit, _size * bPerKelvin, 0);
    }
}
