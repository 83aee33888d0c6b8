namespace Alumroot.Colour.Photograph;

/// <summary>Finds the patches inside the corners of a target from the edges between patches and frame.</summary>
internal static class GridFinder
{
    private const int Width = 480, MostHeight = 960, Steps = 40;
    private const double MostMarginShare = 0.14, MostGapOfPitch = 0.35;

    /// <summary>The grid that its edges show.</summary>
    internal static TargetGrid Find(Raster raster, Quad corners, int columns, int rows)
    {
        Homography map = Homography.FromUnitSquare(corners) ?? throw new ArgumentException("The corners span no area.", nameof(corners));
        int height = Math.Clamp((int)(Width / corners.Aspect), 16, MostHeight);
        float[] picture = Flattened(raster, map, height);
        (double margin, double patch, double gap) = Along(Profile(picture, Width, height, across: true), columns);
        (double top, double patchHeight, double rowGap) = Along(Profile(picture, Width, height, across: false), rows);
        return new TargetGrid(columns, rows, margin, patch, gap) { TopShare = top, PatchHeightShare = patchHeight, RowGapShare = rowGap };
    }

    private static float[] Flattened(Raster raster, Homography map, int height)
    {
        var picture = new float[3 * Width * height];
        for (int v = 0; v < height; v++)
            for (int u = 0; u < Width; u++)
            {
                PixelPoint p = map.At((u + 0.5) / Width, (v + 0.5) / height);
                LinearRgb light = raster.At(Math.Clamp((int)Math.Round(p.X), 0, raster.Width - 1), Math.Clamp((int)Math.Round(p.Y), 0, raster.Height - 1));
                int at = 3 * (v * Width + u);
                (picture[at], picture[at + 1], picture[at + 2]) = (MathF.Cbrt((float)light.R), MathF.Cbrt((float)light.G), MathF.Cbrt((float)light.B));
            }
        return picture;
    }

    /// <summary>How strongly the picture changes at each place along one direction; the loudest lines, such as a gleam, count no more than a good edge.</summary>
    private static double[] Profile(float[] picture, int width, int height, bool across)
    {
        const int Reach = 2;
        const double Loudest = 0.25;
        int length = across ? width : height, lines = across ? height : width;
        var profile = new double[length];
        for (int i = Reach; i < length - Reach; i++)
        {
            double sum = 0;
            for (int j = 0; j < lines; j++)
            {
                double change = 0;
                for (int c = 0; c < 3; c++) change += Math.Abs(At(i + Reach, j, c) - At(i - Reach, j, c));
                sum += Math.Min(change, Loudest);
            }
            profile[i] = sum / lines;
        }
        return profile;

        float At(int along, int line, int c) => picture[3 * (across ? line * width + along : along * width + line) + c];
    }

    /// <summary>Margin, patch and gap as shares of the length: those whose edges lie on the strongest changes and whose patches lie on the quietest.</summary>
    private static (double Margin, double Patch, double Gap) Along(double[] profile, int count)
    {
        var sums = new double[profile.Length + 1];
        for (int i = 0; i < profile.Length; i++) sums[i + 1] = sums[i] + profile[i];
        (double Margin, double Patch, double Gap) best = (0, 1.0 / count, 0);
        double most = double.NegativeInfinity;
        for (int m = 0; m <= Steps; m++)
            for (int g = 0; g <= Steps; g++)
                for (int shift = -3; shift <= 3; shift++)
                {
                    double margin = MostMarginShare * m / Steps, pitch = (1 - 2 * margin) / count, gap = MostGapOfPitch * g / Steps * pitch;
                    // Between outer margins there are count patches and count - 1 gaps.
                    double patch = (1 - 2 * margin - (count - 1) * gap) / count, start = margin + shift * 0.004;
                    double score = Score(profile, sums, count, start, patch, gap);
                    if (score > most) (most, best) = (score, (start, patch, gap));
                }
        return best;
    }

    private static double Score(double[] profile, double[] sums, int count, double margin, double patch, double gap)
    {
        double edges = 0, quiet = 0;
        int n = profile.Length;
        for (int k = 0; k < count; k++)
        {
            double left = (margin + k * (patch + gap)) * n, right = left + patch * n;
            edges += Near(left) + Near(right);
            quiet += Mean(left + 0.12 * (right - left), right - 0.12 * (right - left));
        }
        return edges / 2 - 2 * quiet;

        double Near(double at)
        {
            int i = (int)Math.Round(at - 0.5);
            return i < 0 || i >= n ? 0 : profile[i];
        }

        double Mean(double from, double to)
        {
            int a = Math.Clamp((int)from, 0, n - 1), b = Math.Clamp((int)to, a + 1, n);
            return (sums[b] - sums[a]) / (b - a);
        }
    }
}
