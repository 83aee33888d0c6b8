namespace Alumroot.Colour.Photograph;

/// <summary>Light that a camera saw, over that of the surround, with what is not known of channels that the file cuts off below nothing.</summary>
/// <param name="Light">The light; for a channel that is cut off, what it would be likely to be.</param>
/// <param name="Doubt">Standard deviation of each channel for being cut off; nothing where it is not.</param>
internal readonly record struct SeenColour(LinearRgb Light, LinearRgb Doubt)
{
    // How far below nothing a channel lies, as a share of the brightest channel, and the deviation, in simulated photographs: the red of blue-greens 0 to 0.17, the blue of yellows 0.005 to 0.05. No green was seen cut off: judgement.
    private static readonly LinearRgb Depth = new(0.03, 0.03, 0.015), DepthDeviation = new(0.07, 0.02, 0.012);

    /// <summary>True when a channel is cut off.</summary>
    internal bool IsCut => Doubt != default;

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
