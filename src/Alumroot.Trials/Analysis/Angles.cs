namespace Alumroot.Trials.Analysis;

/// <summary>Angles in degrees on a circle.</summary>
public static class Angles
{
    /// <summary>The direction of the mean of unit vectors, 0 to 360 (Mardia and Jupp 2000, Directional statistics; from memory).</summary>
    public static double Mean(IEnumerable<double> degrees)
    {
        double x = 0, y = 0;
        foreach (double d in degrees ?? throw new ArgumentNullException(nameof(degrees)))
        {
            x += Math.Cos(d * Math.PI / 180);
            y += Math.Sin(d * Math.PI / 180);
        }
        return Positive(Math.Atan2(y, x) * 180 / Math.PI);
    }

    /// <summary>The same difference from -180 to 180.</summary>
    public static double Turned(double degrees) => degrees - 360 * Math.Floor((degrees + 180) / 360);

    /// <summary>The same angle from 0 to 360.</summary>
    public static double Positive(double degrees) => degrees - 360 * Math.Floor(degrees / 360);
}
