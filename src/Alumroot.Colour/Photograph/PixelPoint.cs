namespace Alumroot.Colour.Photograph;

/// <summary>A place in a picture, in pixels from its upper left corner; whole numbers are the middles of pixels.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct PixelPoint(double X, double Y)
{
    /// <summary>The point between two others at a share of the way.</summary>
    internal static PixelPoint Between(PixelPoint a, PixelPoint b, double share) => new(a.X + share * (b.X - a.X), a.Y + share * (b.Y - a.Y));

    internal double DistanceTo(PixelPoint other) => Math.Sqrt((X - other.X) * (X - other.X) + (Y - other.Y) * (Y - other.Y));
}
