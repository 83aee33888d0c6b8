namespace Alumroot.Colour.Photograph;

/// <summary>A small even piece of what surrounds the things that are measured.</summary>
/// <param name="Place">Its middle.</param>
/// <param name="Light">Its mean light, above nothing in each channel.</param>
internal readonly record struct SurroundCell(PixelPoint Place, LinearRgb Light)
{
    private const int CellsAlong = 88, SamplesAlong = 5;

    // A piece whose pixels differ by more than this has an edge in it.
    private const double MostSpread = 0.15, LeastLight = 0.01, MostLight = 0.985;

    /// <summary>All even pieces of a picture outside the given areas, and the mean light of the whole picture.</summary>
    /// <param name="raster">The picture.</param>
    /// <param name="taken">Areas that are no surround, with their borders.</param>
    /// <param name="mean">Receives the mean light of the picture.</param>
    internal static List<SurroundCell> Of(Raster raster, IReadOnlyList<Quad> taken, out LinearRgb mean)
    {
        int side = Math.Max(SamplesAlong, Math.Max(raster.Width, raster.Height) / CellsAlong);
        var cells = new List<SurroundCell>();
        LinearRgb whole = default;
        int count = 0;
        for (int top = 0; top + side <= raster.Height; top += side)
            for (int left = 0; left + side <= raster.Width; left += side)
            {
                LinearRgb sum = default, least = new(2, 2, 2), most = default;
                for (int i = 0; i < SamplesAlong; i++)
                    for (int j = 0; j < SamplesAlong; j++)
                    {
                        LinearRgb p = Smoothed(raster, left + (2 * i + 1) * side / (2 * SamplesAlong), top + (2 * j + 1) * side / (2 * SamplesAlong));
                        sum += p;
                        least = new(Math.Min(least.R, p.R), Math.Min(least.G, p.G), Math.Min(least.B, p.B));
                        most = new(Math.Max(most.R, p.R), Math.Max(most.G, p.G), Math.Max(most.B, p.B));
                    }
                LinearRgb light = sum * (1.0 / (SamplesAlong * SamplesAlong));
                whole += light;
                count++;
                var place = new PixelPoint(left + side / 2.0, top + side / 2.0);
                if (!taken.Any(q => q.Holds(place.X, place.Y)) && IsEven(light, least, most)) cells.Add(new(place, light));
            }
        mean = count == 0 ? default : whole * (1.0 / count);
        return cells;
    }

    // Four pixels in a square, so that a camera's mosaic and its noise count less.
    private static LinearRgb Smoothed(Raster raster, int x, int y)
    {
        int right = Math.Min(x + 1, raster.Width - 1), below = Math.Min(y + 1, raster.Height - 1);
        return (raster.At(x, y) + raster.At(right, y) + raster.At(x, below) + raster.At(right, below)) * 0.25;
    }

    private static bool IsEven(LinearRgb light, LinearRgb least, LinearRgb most) => Even(light.R, least.R, most.R) && Even(light.G, least.G, most.G) && Even(light.B, least.B, most.B);

    private static bool Even(double light, double least, double most) => light is > LeastLight and < MostLight && most - least < 2 * MostSpread * light + LeastLight;
}
