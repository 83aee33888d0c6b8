namespace Alumroot.Colour.Colorimetry;

/// <summary>How a second colour differs from a first, in the same light and for the same observer.</summary>
/// <param name="DeltaE2000">CIEDE2000 with all factors 1 (ISO/CIE 11664-6).</param>
/// <param name="DeltaE76">The straight distance in CIELAB.</param>
/// <param name="DeltaE94">CIE94 for paint and print (kL = 1, K1 = 0.045, K2 = 0.015), the first colour being the reference.</param>
/// <param name="DeltaL">Lighter when positive.</param>
/// <param name="DeltaA">Change of a*.</param>
/// <param name="DeltaB">Change of b*.</param>
/// <param name="DeltaChroma">Stronger when positive.</param>
/// <param name="DeltaHue">The difference in hue as a distance in CIELAB; positive towards larger hue angles.</param>
/// <param name="LightnessPart">Weighted lightness difference of CIEDE2000.</param>
/// <param name="ChromaPart">Weighted chroma difference of CIEDE2000.</param>
/// <param name="HuePart">Weighted hue difference of CIEDE2000.</param>
/// <param name="RotationPart">What the turning term adds under the root of CIEDE2000.</param>
public readonly record struct ColourDifference(
    double DeltaE2000, double DeltaE76, double DeltaE94, double DeltaL, double DeltaA, double DeltaB, double DeltaChroma, double DeltaHue,
    double LightnessPart, double ChromaPart, double HuePart, double RotationPart)
{
    /// <summary>All measures of a difference.</summary>
    /// <param name="first">The reference.</param>
    /// <param name="second">What is compared with it.</param>
    public static ColourDifference Between(Lab first, Lab second)
    {
        Ciede2000 d = Ciede2000.Of(first, second);
        double dl = second.L - first.L, da = second.A - first.A, db = second.B - first.B, dc = second.Chroma - first.Chroma;
        double straight = dl * dl + da * da + db * db;
        double hue2 = Math.Max(0, da * da + db * db - dc * dc);
        double sc = 1 + 0.045 * first.Chroma, sh = 1 + 0.015 * first.Chroma;
        double turn = first.A * second.B - first.B * second.A;
        return new(d.DeltaE, Math.Sqrt(straight), Math.Sqrt(dl * dl + dc * dc / (sc * sc) + hue2 / (sh * sh)), dl, da, db, dc, Math.Sqrt(hue2) * (turn < 0 ? -1 : 1), d.Lightness, d.Chroma, d.Hue, d.Rotation);
    }
}

/// <summary>CIEDE2000 and its parts (Sharma, Wu and Dalal 2005, Color Res. Appl. 30, 21).</summary>
/// <param name="DeltaE">The difference.</param>
/// <param name="Lightness">Weighted lightness difference.</param>
/// <param name="Chroma">Weighted chroma difference.</param>
/// <param name="Hue">Weighted hue difference.</param>
/// <param name="Rotation">The turning term under the root.</param>
public readonly record struct Ciede2000(double DeltaE, double Lightness, double Chroma, double Hue, double Rotation)
{
    private const double Pow25To7 = 6103515625;

    // Hues exactly opposite each other count as such in spite of rounding.
    private const double OppositeWithinDegrees = 1e-9;

    /// <summary>The difference of two colours; the same in both directions.</summary>
    public static Ciede2000 Of(Lab first, Lab second)
    {
        double g = Stretch((first.Chroma + second.Chroma) / 2);
        var one = new Lab(first.L, g * first.A, first.B);
        var two = new Lab(second.L, g * second.A, second.B);
        double c1 = one.Chroma, c2 = two.Chroma, h1 = one.HueDegrees, h2 = two.HueDegrees, turn = h2 - h1;
        bool grey = c1 * c2 == 0;
        if (grey) turn = 0;
        else if (turn > 180 + OppositeWithinDegrees) turn -= 360;
        else if (turn < -180 - OppositeWithinDegrees) turn += 360;
        double meanHue = grey ? h1 + h2 : Math.Abs(h1 - h2) <= 180 + OppositeWithinDegrees ? (h1 + h2) / 2 : h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
        double meanL = (first.L + second.L) / 2, meanC = (c1 + c2) / 2;
        (double sl, double sc, double sh) = Weights(meanL, meanC, meanHue);
        double lightness = (second.L - first.L) / sl, chroma = (c2 - c1) / sc, hue = 2 * Math.Sqrt(c1 * c2) * Sin(turn / 2) / sh;
        double bend = (meanHue - 275) / 25;
        double rotation = -2 * Math.Sqrt(Seventh(meanC)) * Sin(60 * Math.Exp(-bend * bend)) * chroma * hue;
        return new(Math.Sqrt(Math.Max(0, lightness * lightness + chroma * chroma + hue * hue + rotation)), lightness, chroma, hue, rotation);
    }

    /// <summary>By how much a difference in lightness, chroma and hue counts less than in CIELAB.</summary>
    internal static (double Lightness, double Chroma, double Hue) Weights(double l, double chroma, double hueDegrees)
    {
        double t = 1 - 0.17 * Cos(hueDegrees - 30) + 0.24 * Cos(2 * hueDegrees) + 0.32 * Cos(3 * hueDegrees + 6) - 0.2 * Cos(4 * hueDegrees - 63);
        double away = (l - 50) * (l - 50);
        return (1 + 0.015 * away / Math.Sqrt(20 + away), 1 + 0.045 * chroma, 1 + 0.015 * chroma * t);
    }

    /// <summary>By how much a* is stretched for colours of this chroma.</summary>
    internal static double Stretch(double chroma) => 1.5 - 0.5 * Math.Sqrt(Seventh(chroma));

    private static double Seventh(double chroma)
    {
        double p = Math.Pow(chroma, 7);
        return p / (p + Pow25To7);
    }

    private static double Cos(double degrees) => Math.Cos(degrees * (Math.PI / 180));

    private static double Sin(double degrees) => Math.Sin(degrees * (Math.PI / 180));
}
