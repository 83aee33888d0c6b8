namespace Alumroot.Colour.Photograph;

/// <summary>Light that a camera saw, over that of the surround, with what is not known of channels that the file cuts off below nothing.</summary>
/// <param name="Light">The light; for a channel that is cut off, what it would be likely to be.</param>
/// <param name="Doubt">Standard deviation of each channel for being cut off; nothing where it is not.</param>
internal readonly record struct SeenColour(LinearRgb Light, LinearRgb Doubt)
{
    // How far below nothing the channels of strong colours lie, as a share of their brightest channel, and the deviation, in simulated photographs: cyans and greens far, yellows and reds hardly.
    private static readonly LinearRgb Depth = new(0.115, 0.03, 0.017), DepthDeviation = new(0.045, 0.02, 0.011);

    /// <summary>From the light that the file states and the share of pixels that it cuts off.</summary>
    internal static SeenColour Of(LinearRgb stated, LinearRgb cutShare)
    {
        double brightest = Math.Max(stated.R, Math.Max(stated.G, stated.B));
        (double r, double dr) = Channel(stated.R, cutShare.R, Depth.R * brightest, DepthDeviation.R * brightest);
        (double g, double dg) = Channel(stated.G, cutShare.G, Depth.G * brightest, DepthDeviation.G * brightest);
        (double b, double db) = Channel(stated.B, cutShare.B, Depth.B * brightest, DepthDeviation.B * brightest);
        return new(new(r, g, b), new(dr, dg, db));
    }

    private static (double Light, double Doubt) Channel(double stated, double cutShare, double depth, double deviation) =>
        PatchReading.IsWhollyCut(cutShare) ? (-depth, deviation) : (stated, 0);
}
