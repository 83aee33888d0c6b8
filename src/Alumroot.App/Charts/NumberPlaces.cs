namespace Alumroot.App.Charts;

/// <summary>Where the numbers of dots stand, so that none lies on a dot or on another number.</summary>
public static class NumberPlaces
{
    private const double DotRadius = 8.5, HalfDigit = 4.5, HalfHeight = 7;
    private const int Directions = 16;

    private static readonly double[] Distances = [17, 26, 36, 48, 62, 78];

    /// <summary>The middle of each number; null where a crowd leaves no place for it.</summary>
    /// <param name="dots">The dots.</param>
    /// <param name="digits">How many digits each number has.</param>
    /// <param name="size">The picture is a square of this side from 0 on.</param>
    /// <param name="taken">Words that are there already: their middles, half their widths and half their heights.</param>
    public static IReadOnlyList<(double X, double Y)?> Of(IReadOnlyList<(double X, double Y)> dots, IReadOnlyList<int> digits, double size, IReadOnlyList<(double X, double Y, double HalfWidth, double HalfHeight)> taken)
    {
        ArgumentNullException.ThrowIfNull(dots);
        ArgumentNullException.ThrowIfNull(digits);
        ArgumentNullException.ThrowIfNull(taken);
        var boxes = new List<(double X, double Y, double HalfWidth, double HalfHeight)>(taken);
        boxes.AddRange(dots.Select(d => (d.X, d.Y, DotRadius, DotRadius)));
        var places = new (double, double)?[dots.Count];
        for (int i = 0; i < dots.Count; i++)
        {
            double half = HalfDigit * digits[i];
            foreach ((double x, double y) in Around(dots[i], size / 2))
            {
                if (x < half || y < HalfHeight || x > size - half || y > size - HalfHeight) continue;
                if (boxes.Any(b => Math.Abs(b.X - x) < b.HalfWidth + half && Math.Abs(b.Y - y) < b.HalfHeight + HalfHeight)) continue;
                places[i] = (x, y);
                boxes.Add((x, y, half, HalfHeight));
                break;
            }
        }
        return places;
    }

    /// <summary>Near ones first, of these the ones outward from the middle of the picture first.</summary>
    private static IEnumerable<(double X, double Y)> Around((double X, double Y) dot, double middle)
    {
        double outward = Math.Atan2(dot.Y - middle, dot.X - middle);
        foreach (double distance in Distances)
        {
            for (int k = 0; k < Directions; k++)
            {
                double angle = outward + (k % 2 == 0 ? k / 2 : -(k + 1) / 2) * (2 * Math.PI / Directions);
                yield return (dot.X + distance * Math.Cos(angle), dot.Y + distance * Math.Sin(angle));
            }
        }
    }
}
