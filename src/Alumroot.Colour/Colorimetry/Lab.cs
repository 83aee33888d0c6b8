namespace Alumroot.Colour.Colorimetry;

/// <summary>CIELAB coordinates relative to the white of the same illuminant and observer (ISO/CIE 11664-4).</summary>
/// <param name="L">Lightness L*, 0 to 100.</param>
/// <param name="A">a*, towards red when positive.</param>
/// <param name="B">b*, towards yellow when positive.</param>
public readonly record struct Lab(double L, double A, double B)
{
    private const double Bend = 6.0 / 29, Steep = 841.0 / 108, Foot = 4.0 / 29;

    /// <summary>Chroma C*: the distance from grey.</summary>
    public double Chroma => Math.Sqrt(A * A + B * B);

    /// <summary>Hue angle in degrees, 0 to 360; 0 for a grey.</summary>
    public double HueDegrees
    {
        get
        {
            if (A == 0 && B == 0) return 0;
            double h = Math.Atan2(B, A) * (180 / Math.PI);
            return h < 0 ? h + 360 : h;
        }
    }

    /// <summary>From tristimulus values and the white they are seen against.</summary>
    /// <param name="colour">The colour.</param>
    /// <param name="white">The perfect diffuser by the same sum; a rounded constant would tint greys.</param>
    public static Lab From(Xyz colour, Xyz white)
    {
        double x = Compressed(colour.X / white.X), y = Compressed(colour.Y / white.Y), z = Compressed(colour.Z / white.Z);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>From lightness, chroma and hue angle.</summary>
    public static Lab FromLch(double l, double chroma, double hueDegrees)
    {
        (double sin, double cos) = Math.SinCos(hueDegrees * (Math.PI / 180));
        return new Lab(l, chroma * cos, chroma * sin);
    }

    /// <summary>The tristimulus values against a white.</summary>
    public Xyz ToXyz(Xyz white)
    {
        double y = (L + 16) / 116;
        return new Xyz(white.X * Expanded(y + A / 500), white.Y * Expanded(y), white.Z * Expanded(y - B / 200));
    }

    /// <summary>How fast L*, a* and b* grow with the cube-root signals of X, Y, Z: the slope of the signal at a ratio to the white.</summary>
    internal static double SignalSlope(double ratio) => ratio > Bend * Bend * Bend ? 1 / (3 * Math.Cbrt(ratio) * Math.Cbrt(ratio)) : Steep;

    /// <summary>The signal that lightness counts by: a cube root, and a straight line near nothing.</summary>
    internal static double Compressed(double t) => t > Bend * Bend * Bend ? Math.Cbrt(t) : Steep * t + Foot;

    /// <summary>The ratio to the white behind a signal.</summary>
    internal static double Expanded(double f) => f > Bend ? f * f * f : (f - Foot) / Steep;
}
