namespace Alumroot.Colour.Photograph;

/// <summary>Proposes what could be measured in a picture: even areas that are neither the target nor its ground.</summary>
public static class ThingFinder
{
    private const float EdgeStep = 0.04f;

    // Share of the picture that a thing worth measuring takes up at least.
    private const double LeastShare = 0.0006;

    // What is read is well inside the area; a strip of card may be twelve times as long as wide.
    private const double InsideShare = 0.72, MostElongation = 150;

    /// <summary>The largest even areas, in reading order: from the top, and from the left in lines.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="target">Where the target is, if there is one.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<Quad> Find(Raster picture, Quad? target, int most)
    {
        ArgumentNullException.ThrowIfNull(picture);
        SmallPicture small = SmallPicture.Of(picture);
        Quad? taken = target?.Scaled(1.12);
        double least = LeastShare * small.Width * small.Height;
        EvenArea[] areas =
        [
            .. EvenArea.Of(small, EdgeStep, MostElongation)
                .Where(a => a.PixelCount > least && taken?.Holds(Whole(a.Middle.X), Whole(a.Middle.Y)) != true)
                .OrderByDescending(a => a.PixelCount)
                .Take(most),
        ];
        if (areas.Length == 0) return [];
        double line = areas.Average(a => Math.Sqrt(a.PixelCount));
        return [.. areas.OrderBy(a => Math.Round(a.Middle.Y / line)).ThenBy(a => a.Middle.X).Select(Inside)];

        Quad Inside(EvenArea a)
        {
            double x = InsideShare * a.WidthPixels / 2, y = InsideShare * a.HeightPixels / 2;
            (double left, double right, double top, double bottom) = (Whole(a.Middle.X - x), Whole(a.Middle.X + x), Whole(a.Middle.Y - y), Whole(a.Middle.Y + y));
            return new Quad(new(left, top), new(right, top), new(right, bottom), new(left, bottom));
        }

        double Whole(double at) => (at + 0.5) * small.Scale - 0.5;
    }
}
