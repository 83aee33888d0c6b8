namespace Alumroot.Colour.Photograph;

/// <summary>From what a camera scatters to how far a colour may be off.</summary>
internal static class PhotoNoise
{
    // Neighbouring pixels share their noise (mosaic, JPEG): so many count as one. Judgement.
    private const double PixelsSharing = 9;

    // CIELAB answers to a cube root: 116/3 of it for lightness, and some more for hue; darker than this the curve is straight.
    private const double UnitsPerSignal = 50, Darkest = 0.008;

    // Three directions of equal deviation: nine tenths of distances lie below this many deviations (chi with 3 degrees of freedom, NIST/SEMATECH e-Handbook 1.3.6.7.4: root of 6.251).
    private const double Chi3At90 = 2.5003;

    // From simulated photographs with other cameras and lights: see docs/models/photograph.md.
    private const double Calibration = 1.27, EvenLightUnits = 1.0, ClippedFactor = 1.6, ClippedUnits = 1.0;

    /// <summary>Standard deviation of the mean of an area, in units of CIEDE2000.</summary>
    internal static double Of(PatchReading reading)
    {
        double worst = Math.Max(Signal(reading.Scatter.R, reading.Mean.R), Math.Max(Signal(reading.Scatter.G, reading.Mean.G), Signal(reading.Scatter.B, reading.Mean.B)));
        return UnitsPerSignal * worst / Math.Sqrt(Math.Max(1, reading.PixelCount / PixelsSharing));

        static double Signal(double scatter, double mean) => scatter / Math.Pow(Math.Max(mean, Darkest), 2.0 / 3);
    }

    /// <summary>The distance within which the truth lies nine times in ten.</summary>
    internal static double Interval(double deviation, PatchReading reading, LightField field)
    {
        double light = field.IsEven ? EvenLightUnits : 0;
        double plain = Calibration * Chi3At90 * Math.Sqrt(deviation * deviation + light * light);
        // What is cut off below has its doubt in the deviation already; what is cut off above may be anything.
        return reading.IsClipped && !reading.ClippedLow ? ClippedFactor * plain + ClippedUnits : plain;
    }
}
