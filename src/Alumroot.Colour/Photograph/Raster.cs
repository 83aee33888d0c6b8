namespace Alumroot.Colour.Photograph;

/// <summary>How the numbers of a picture stand for light: one curve for all channels, and the colours of the three lights.</summary>
/// <param name="LinearOfByte">256 values: the share of full light that each number of a channel stands for, rising.</param>
/// <param name="RedX">Tristimulus X of full red, on the scale where white has Y = 1, seen against D50; and so on.</param>
/// <param name="GreenX">X of full green.</param>
/// <param name="BlueX">X of full blue.</param>
/// <param name="RedY">Y of full red.</param>
/// <param name="GreenY">Y of full green.</param>
/// <param name="BlueY">Y of full blue.</param>
/// <param name="RedZ">Z of full red.</param>
/// <param name="GreenZ">Z of full green.</param>
/// <param name="BlueZ">Z of full blue.</param>
public sealed record PixelColours(IReadOnlyList<double> LinearOfByte, double RedX, double GreenX, double BlueX, double RedY, double GreenY, double BlueY, double RedZ, double GreenZ, double BlueZ)
{
    /// <summary>sRGB (IEC 61966-2-1), its white brought to D50 by Bradford as ICC profiles do; figures of the matrix from memory.</summary>
    public static PixelColours Srgb { get; } = new(
        [.. Enumerable.Range(0, 256).Select(i => i / 255.0).Select(v => v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4))],
        0.43607, 0.38515, 0.14307, 0.22249, 0.71687, 0.06061, 0.01392, 0.09708, 0.71410);
}

/// <summary>A decoded picture, upright: eight bits for each of red, green, blue.</summary>
public sealed class Raster
{
    private const int Channels = 3;
    private readonly byte[] _rgb;
    private readonly float[] _linear;

    /// <summary>Takes over the bytes of a picture.</summary>
    /// <param name="width">In pixels.</param>
    /// <param name="height">In pixels.</param>
    /// <param name="rgb">Red, green, blue of each pixel, row by row.</param>
    /// <param name="colours">What the numbers stand for.</param>
    public Raster(int width, int height, byte[] rgb, PixelColours colours)
    {
        ArgumentNullException.ThrowIfNull(rgb);
        ArgumentNullException.ThrowIfNull(colours);
        if (width < 1 || height < 1 || rgb.Length != (long)width * height * Channels) throw new ArgumentException("The bytes do not fill the picture.", nameof(rgb));
        if (colours.LinearOfByte.Count != 256) throw new ArgumentException("A curve has 256 values.", nameof(colours));
        (Width, Height, Colours, _rgb) = (width, height, colours, rgb);
        _linear = [.. colours.LinearOfByte.Select(v => (float)v)];
    }

    /// <summary>Width in pixels.</summary>
    public int Width { get; }

    /// <summary>Height in pixels.</summary>
    public int Height { get; }

    /// <summary>What the numbers stand for.</summary>
    public PixelColours Colours { get; }

    /// <summary>The bytes of one row.</summary>
    internal ReadOnlySpan<byte> Row(int y) => _rgb.AsSpan(y * Width * Channels, Width * Channels);

    /// <summary>The three bytes of a pixel.</summary>
    internal ReadOnlySpan<byte> Bytes(int x, int y) => _rgb.AsSpan((y * Width + x) * Channels, Channels);

    /// <summary>The light that a number of a channel stands for.</summary>
    internal double Linear(byte value) => _linear[value];

    /// <summary>The light of one pixel.</summary>
    internal LinearRgb At(int x, int y)
    {
        ReadOnlySpan<byte> b = Bytes(x, y);
        return new(_linear[b[0]], _linear[b[1]], _linear[b[2]]);
    }
}

/// <summary>Red, green and blue light as shares of the camera's full scale.</summary>
/// <param name="R">Red.</param>
/// <param name="G">Green.</param>
/// <param name="B">Blue.</param>
internal readonly record struct LinearRgb(double R, double G, double B)
{
    public static LinearRgb operator +(LinearRgb a, LinearRgb b) => new(a.R + b.R, a.G + b.G, a.B + b.B);

    public static LinearRgb operator -(LinearRgb a, LinearRgb b) => new(a.R - b.R, a.G - b.G, a.B - b.B);

    public static LinearRgb operator *(LinearRgb a, double f) => new(a.R * f, a.G * f, a.B * f);

    /// <summary>Channel by channel.</summary>
    public static LinearRgb operator /(LinearRgb a, LinearRgb b) => new(a.R / b.R, a.G / b.G, a.B / b.B);

    internal LinearRgb Map(Func<double, double> f) => new(f(R), f(G), f(B));
}
