using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Photograph;

/// <summary>A target that was found in a picture.</summary>
/// <param name="Corners">Its corners, half a gap outside the outer patches.</param>
/// <param name="Grid">Its patches within these corners.</param>
public sealed record FoundTarget(Quad Corners, TargetGrid Grid);

/// <summary>Looks for a target of known colours: even areas in rows and columns whose colours are those of the reference, whichever way it is turned.</summary>
public static class TargetFinder
{
    private static readonly float[] EdgeSteps = [0.03f, 0.05f, 0.09f];

    // A patch that the finder did not see as even still has its place; but most must be seen.
    private const double LeastSeen = 0.55;

    // The light is not evened out yet, so the colours may be this far off; the next best way of turning it must be much worse.
    private const double MostOff = 9, ClearlyWorse = 1.3, SecondGoodEnough = 4;
    private const int MostSeeds = 90;

    /// <summary>The target, or null when none is seen, or when it could lie in two ways.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="truths">Colours of the patches, row by row.</param>
    /// <param name="grid">Its columns and rows, if they are known.</param>
    public static FoundTarget? Find(Raster picture, IReadOnlyList<Lab> truths, TargetGrid? grid)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(truths);
        SmallPicture small = SmallPicture.Of(picture);
        Candidate? best = null, second = null;
        foreach (float step in EdgeSteps)
        {
            List<EvenArea> areas = EvenArea.Of(small, step);
            var covered = new HashSet<(int, int)>();
            for (int seed = 0; seed < Math.Min(areas.Count, MostSeeds); seed++)
            {
                if (covered.Contains(Cell(areas[seed].Middle)) || PatchLattice.From(areas, seed) is not { } lattice) continue;
                foreach ((int c, int r) in lattice.Places) covered.Add(Cell(lattice.Map.At(c, r)));
                foreach ((int columns, int rows) in grid is null ? Shapes(truths.Count) : [(grid.Columns, grid.Rows)])
                    foreach (Candidate next in Candidates(small, lattice, truths, columns, rows, picture.Colours))
                        if (best is null || next.Off < best.Off) (second, best) = (best is null || best.IsSame(next) ? second : best, next);
                        else if (!best.IsSame(next) && (second is null || next.Off < second.Off)) second = next;
            }
            if (best is { Off: < SecondGoodEnough }) break;
        }
        if (best is null || best.Off > MostOff || (second is not null && second.Off < ClearlyWorse * best.Off)) return null;
        return best.Told(small.Scale);

        static (int, int) Cell(PixelPoint p) => ((int)Math.Round(p.X / 3), (int)Math.Round(p.Y / 3));
    }

    private static IEnumerable<(int Columns, int Rows)> Shapes(int patches)
    {
        for (int rows = 2; rows * rows <= patches; rows++)
            if (patches % rows == 0 && patches / rows <= 2.6 * rows) yield return (patches / rows, rows);
    }

    /// <summary>Every way in which the reference could lie on the lattice, with how far its colours are off.</summary>
    private static IEnumerable<Candidate> Candidates(SmallPicture small, PatchLattice lattice, IReadOnlyList<Lab> truths, int columns, int rows, PixelColours colours)
    {
        int left = lattice.Places.Min(p => p.Column), right = lattice.Places.Max(p => p.Column), top = lattice.Places.Min(p => p.Row), bottom = lattice.Places.Max(p => p.Row);
        var seen = lattice.Places.ToHashSet();
        // A lattice may be mirrored against the picture, a target may not; so only turns that keep the sense are tried.
        bool mirrored = lattice.Map.Rectangle(0, 0, 1, 1).AreaPixels < 0;
        for (int turn = 0; turn < 4; turn++)
        {
            (int wide, int high) = turn % 2 == 0 ? (columns, rows) : (rows, columns);
            for (int c0 = left - 1; c0 + wide - 1 <= right + 1; c0++)
                for (int r0 = top - 1; r0 + high - 1 <= bottom + 1; r0++)
                {
                    int held = 0;
                    for (int c = c0; c < c0 + wide; c++)
                        for (int r = r0; r < r0 + high; r++)
                            if (seen.Contains((c, r))) held++;
                    if (held < LeastSeen * columns * rows) continue;
                    var lie = new Lie(lattice, columns, rows, c0, r0, turn, mirrored);
                    if (lie.Off(small, truths, colours) is { } off) yield return new Candidate(lie, off);
                }
        }
    }

    private sealed record Candidate(Lie Lie, double Off)
    {
        /// <summary>True when both put the first and the last patch on the same spots.</summary>
        internal bool IsSame(Candidate other) => Lie.Near(other.Lie);

        internal FoundTarget Told(double scale) => Lie.Told(scale);
    }

    /// <summary>One way in which a target could lie on a lattice.</summary>
    private sealed record Lie(PatchLattice Lattice, int Columns, int Rows, int Left, int Top, int Turn, bool Mirrored)
    {
        internal bool Near(Lie other)
        {
            double pitch = At(0, 0).DistanceTo(At(1, 0));
            return At(0, 0).DistanceTo(other.At(0, 0)) < pitch / 2 && At(Columns - 1, Rows - 1).DistanceTo(other.At(other.Columns - 1, other.Rows - 1)) < pitch / 2;
        }

        /// <summary>Where a place of the target, counted in columns and rows from its first patch, is seen in the smaller picture.</summary>
        private PixelPoint At(double column, double row)
        {
            double c = column, r = Mirrored ? Rows - 1 - row : row;
            (double x, double y) = Turn switch
            {
                0 => (c, r),
                1 => (Rows - 1 - r, c),
                2 => (Columns - 1 - c, Rows - 1 - r),
                _ => (r, Columns - 1 - c),
            };
            return Lattice.Map.At(Left + x, Top + y);
        }

        internal double? Off(SmallPicture small, IReadOnlyList<Lab> truths, PixelColours colours)
        {
            double reach = Lattice.PatchSide * At(0, 0).DistanceTo(At(1, 0)) * 0.28;
            var patches = new List<TrainingPatch>();
            for (int i = 0; i < truths.Count; i++)
            {
                if (small.Around(At(i % Columns, i / Columns), reach) is not { } light) return null;
                if (Math.Max(light.R, Math.Max(light.G, light.B)) < 0.99) patches.Add(new(new SeenColour(light, default), truths[i], 0.5));
            }
            if (patches.Count < PhotoMeasurement.LeastPatches || 2 * patches.Count < truths.Count) return null;
            Xyz white = ColourNames.White;
            return ColourFit.Of(patches, CorrectionSearch.Prior([.. patches], colours, white), CorrectionShape.Stiff, white)?.LeftOutMean;
        }

        internal FoundTarget Told(double scale)
        {
            PixelPoint Corner(double column, double row)
            {
                PixelPoint p = At(column, row);
                return new((p.X + 0.5) * scale - 0.5, (p.Y + 0.5) * scale - 0.5);
            }

            var corners = new Quad(Corner(-0.5, -0.5), Corner(Columns - 0.5, -0.5), Corner(Columns - 0.5, Rows - 0.5), Corner(-0.5, Rows - 0.5));
            double side = Lattice.PatchSide, gap = 1 - side;
            return new FoundTarget(corners, new TargetGrid(Columns, Rows, gap / 2 / Columns, side / Columns, gap / Columns) { TopShare = gap / 2 / Rows, PatchHeightShare = side / Rows, RowGapShare = gap / Rows });
        }
    }
}
