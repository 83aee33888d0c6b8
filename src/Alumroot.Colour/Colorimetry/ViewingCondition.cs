namespace Alumroot.Colour.Colorimetry;

/// <summary>Who looks, and in which light.</summary>
/// <param name="Light">The illuminant.</param>
/// <param name="Eye">The observer.</param>
public sealed record ViewingCondition(Illuminant Light, Observer Eye)
{
    /// <summary>D50 and the 2 degree observer, the condition of the graphic trade.</summary>
    public static ViewingCondition Graphic => new(Illuminant.D50, Observer.TwoDegrees);

    /// <summary>D65 and the 10 degree observer, the condition of the paint trade.</summary>
    public static ViewingCondition Paint => new(Illuminant.D65, Observer.TenDegrees);
}
