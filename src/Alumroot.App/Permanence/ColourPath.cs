using Alumroot.Numerics;

namespace Alumroot.App.Permanence;

/// <summary>The way of a sample's colour at one reading: the mean of its strips against their covered halves.</summary>
/// <param name="DoseMegaluxHours">Light until then.</param>
/// <param name="Lightness">Change of L*.</param>
/// <param name="RedGreen">Change of a*.</param>
/// <param name="YellowBlue">Change of b*.</param>
/// <param name="Strips">How many strips were read.</param>
public sealed record PathPoint(double DoseMegaluxHours, double Lightness, double RedGreen, double YellowBlue, int Strips);

/// <summary>The way of a sample's colour with the light.</summary>
/// <param name="Points">By rising dose.</param>
/// <param name="StripDeviation">Standard deviation of one strip about the mean of the strips, for each of L*, a*, b*; null for a single strip.</param>
public sealed record ColourPath(IReadOnlyList<PathPoint> Points, double? StripDeviation)
{
    /// <summary>Half width of nine in ten about the mean at a point; null for a single strip.</summary>
    public double? HalfWidth(PathPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return StripDeviation * Distributions.NormalHalfWidth90 / Math.Sqrt(point.Strips);
    }

    /// <summary>The way of a sample; without points while no dose is known.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <param name="sample">Name of the sample.</param>
    public static ColourPath Of(ExposureFound exposure, string sample)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        var points = new List<PathPoint>();
        double squares = 0;
        int freedom = 0;
        foreach (IGrouping<int, StripChange> reading in exposure.Changes.Where(c => c.Sample == sample && !c.IsFirst).GroupBy(c => c.Reading).OrderBy(g => g.Key))
        {
            if (exposure.DoseAt(exposure.State.Readings[reading.Key].At) is not { Value: > 0 } dose) continue;
            double[][] moved = [.. reading.Select(c => new[] { c.After.L - c.Before.L, c.After.A - c.Before.A, c.After.B - c.Before.B })];
            double[] mean = [.. Enumerable.Range(0, 3).Select(i => moved.Average(m => m[i]))];
            squares += moved.Sum(m => Enumerable.Range(0, 3).Sum(i => (m[i] - mean[i]) * (m[i] - mean[i])));
            freedom += 3 * (moved.Length - 1);
            points.Add(new PathPoint(dose.Value, mean[0], mean[1], mean[2], moved.Length));
        }
        return new ColourPath(points, freedom > 0 ? Math.Sqrt(squares / freedom) : null);
    }
}
