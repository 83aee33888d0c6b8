using System.Globalization;

namespace Alumroot.Colour.Colorimetry;

/// <summary>A colour of a screen (IEC 61966-2-1, from memory), with word of whether the screen can show the colour it stands for.</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
/// <param name="InGamut">False when the colour was too strong for the screen and its chroma was lowered; lightness and hue are kept.</param>
public readonly record struct Srgb(byte Red, byte Green, byte Blue, bool InGamut)
{
    // A channel that is off by less than half a step of eight bits is shown right.
    private const double HalfStep = 0.5 / 255;
    private const int Halvings = 40;

    private static readonly Matrix3 ToXyzMatrix = new(new Xyz(0.4124, 0.3576, 0.1805), new Xyz(0.2126, 0.7152, 0.0722), new Xyz(0.0193, 0.1192, 0.9505));
    private static readonly Matrix3 FromXyzMatrix = ToXyzMatrix.Inverse();

    /// <summary>The white of the screen, Y = 100: the sum of the rows of the matrix.</summary>
    public static Xyz White { get; } = ToXyzMatrix.Times(new Xyz(1, 1, 1)).Times(100);

    /// <summary>The colour as six hexadecimal digits after a number sign.</summary>
    public string Hex => string.Create(CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");

    /// <summary>The nearest colour of a screen for tristimulus values seen against a white; adapted by Bradford.</summary>
    public static Srgb From(Xyz colour, Xyz white)
    {
        Lab wanted = Lab.From(ChromaticAdaptation.Bradford.Adapt(colour, white, White), White);
        if (Fits(Encoded(wanted))) return Rounded(Encoded(wanted), true);
        double l = Math.Clamp(wanted.L, 0, 100), low = 0, high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (Fits(Encoded(new Lab(l, wanted.A * middle, wanted.B * middle)))) low = middle;
            else high = middle;
        }
        return Rounded(Encoded(new Lab(l, wanted.A * low, wanted.B * low)), false);
    }

    /// <summary>The tristimulus values of a screen colour, against <see cref="White"/>.</summary>
    public Xyz ToXyz() => ToXyzMatrix.Times(new Xyz(Decoded(Red / 255.0), Decoded(Green / 255.0), Decoded(Blue / 255.0))).Times(100);

    private static Xyz Encoded(Lab lab)
    {
        Xyz linear = FromXyzMatrix.Times(lab.ToXyz(White).Times(0.01));
        return new Xyz(Encoded(linear.X), Encoded(linear.Y), Encoded(linear.Z));
    }

    private static bool Fits(Xyz v) => Fits(v.X) && Fits(v.Y) && Fits(v.Z);

    private static bool Fits(double v) => v is >= -HalfStep and <= 1 + HalfStep;

    private static Srgb Rounded(Xyz v, bool inGamut) => new(Byte(v.X), Byte(v.Y), Byte(v.Z), inGamut);

    private static byte Byte(double v) => (byte)Math.Round(255 * Math.Clamp(v, 0, 1));

    private static double Encoded(double linear) => linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.Pow(linear, 1 / 2.4) - 0.055;

    private static double Decoded(double encoded) => encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4);
}
