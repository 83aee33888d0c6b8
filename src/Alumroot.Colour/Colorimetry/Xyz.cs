namespace Alumroot.Colour.Colorimetry;

/// <summary>Tristimulus values of an observer under an illuminant; the perfect diffuser has Y = 100.</summary>
/// <param name="X">Tristimulus value X.</param>
/// <param name="Y">Tristimulus value Y, the luminance factor in percent.</param>
/// <param name="Z">Tristimulus value Z.</param>
public readonly record struct Xyz(double X, double Y, double Z)
{
    /// <summary>The same colour at another brightness.</summary>
    public Xyz Times(double factor) => new(X * factor, Y * factor, Z * factor);
}
