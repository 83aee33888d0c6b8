namespace Alumroot.Colour.Photograph;

/// <summary>Even areas that stand in rows and columns, as seen by a camera.</summary>
/// <param name="Map">From column and row to pixels.</param>
/// <param name="Places">Column and row of each area.</param>
/// <param name="PatchSide">Side of a patch as a share of the distance between neighbours.</param>
internal sealed record PatchLattice(Homography Map, IReadOnlyList<(int Column, int Row)> Places, double PatchSide)
{
    private const double Tolerance = 0.28, MostAreaRatio = 2.6;
    private const int LeastAreas = 6, Rounds = 4, Farthest = 40;

    // The test of flatness wears a pixel off each side.
    private const double Worn = 2;

    /// <summary>The lattice that grows from one area, or null when its neighbours form none.</summary>
    internal static PatchLattice? From(IReadOnlyList<EvenArea> areas, int seed)
    {
        EvenArea start = areas[seed];
        EvenArea[] near = [.. areas.Where((a, i) => i != seed && Alike(a, start)).OrderBy(a => a.Middle.DistanceTo(start.Middle)).Take(8)];
        if (near.Length < 2) return null;
        PixelPoint u = Away(start, near[0]);
        if (near.Skip(1).Select(n => Away(start, n)).Cast<PixelPoint?>().FirstOrDefault(v => Math.Abs(Sine(u, v!.Value)) > 0.75 && Length(v.Value) < 2 * Length(u)) is not { } across) return null;
        var taken = new Dictionary<(int, int), int> { [(0, 0)] = seed };
        Grow(areas, taken, seed, u, across);
        if (taken.Count < LeastAreas) return null;
        Homography? map = Fit(areas, taken);
        for (int round = 0; round < Rounds && map is not null; round++)
        {
            taken = Assign(areas, map, taken.Keys);
            if (taken.Count < LeastAreas) return null;
            map = Fit(areas, taken);
        }
        return map is null ? null : new PatchLattice(map, [.. taken.Keys], Side(areas, taken, map));
    }

    /// <summary>Steps from area to area: each looks for its four neighbours where the step that led to it says.</summary>
    private static void Grow(IReadOnlyList<EvenArea> areas, Dictionary<(int, int), int> taken, int seed, PixelPoint u, PixelPoint v)
    {
        var used = new HashSet<int> { seed };
        var open = new Queue<((int C, int R) Place, int Area, PixelPoint U, PixelPoint V)>();
        open.Enqueue(((0, 0), seed, u, v));
        while (open.TryDequeue(out var from))
            foreach ((int dc, int dr) in (ReadOnlySpan<(int, int)>)[(1, 0), (-1, 0), (0, 1), (0, -1)])
            {
                var place = (from.Place.C + dc, from.Place.R + dr);
                if (taken.ContainsKey(place) || Math.Abs(place.Item1) > Farthest || Math.Abs(place.Item2) > Farthest) continue;
                PixelPoint step = dc != 0 ? from.U : from.V, at = areas[from.Area].Middle;
                int sign = dc + dr;
                int found = Nearest(areas, new(at.X + sign * step.X, at.Y + sign * step.Y), Tolerance * Length(step), areas[from.Area], used);
                if (found < 0) continue;
                PixelPoint seen = areas[found].Middle, taught = new(sign * (seen.X - at.X), sign * (seen.Y - at.Y));
                used.Add(found);
                taken[place] = found;
                open.Enqueue((place, found, dc != 0 ? taught : from.U, dr != 0 ? taught : from.V));
            }
    }

    private static Dictionary<(int, int), int> Assign(IReadOnlyList<EvenArea> areas, Homography map, IEnumerable<(int C, int R)> known)
    {
        (int C, int R)[] places = [.. known];
        int left = places.Min(p => p.C) - 2, right = places.Max(p => p.C) + 2, top = places.Min(p => p.R) - 2, bottom = places.Max(p => p.R) + 2;
        var taken = new Dictionary<(int, int), int>();
        var used = new HashSet<int>();
        for (int c = left; c <= right; c++)
            for (int r = top; r <= bottom; r++)
            {
                PixelPoint at = map.At(c, r), next = map.At(c + 1, r);
                int found = Nearest(areas, at, Tolerance / 2 * at.DistanceTo(next), null, used);
                if (found >= 0 && used.Add(found)) taken[(c, r)] = found;
            }
        return taken;
    }

    private static int Nearest(IReadOnlyList<EvenArea> areas, PixelPoint at, double reach, EvenArea? like, HashSet<int> used)
    {
        int best = -1;
        for (int i = 0; i < areas.Count; i++)
        {
            double d = areas[i].Middle.DistanceTo(at);
            if (d >= reach || used.Contains(i) || (like is { } l && !Alike(areas[i], l))) continue;
            (best, reach) = (i, d);
        }
        return best;
    }

    private static Homography? Fit(IReadOnlyList<EvenArea> areas, Dictionary<(int C, int R), int> taken) =>
        Homography.Fit([.. taken.Keys.Select(k => new PixelPoint(k.C, k.R))], [.. taken.Values.Select(i => areas[i].Middle)]);

    private static double Side(IReadOnlyList<EvenArea> areas, Dictionary<(int C, int R), int> taken, Homography map)
    {
        double[] sides = [.. taken.Select(t => (Math.Sqrt(areas[t.Value].PixelCount) + Worn) / Math.Sqrt(Math.Abs(map.Rectangle(t.Key.C - 0.5, t.Key.R - 0.5, t.Key.C + 0.5, t.Key.R + 0.5).AreaPixels))).Order()];
        return Math.Clamp(sides[sides.Length / 2], 0.3, 0.97);
    }

    private static bool Alike(EvenArea a, EvenArea b) => a.PixelCount < MostAreaRatio * b.PixelCount && b.PixelCount < MostAreaRatio * a.PixelCount;

    private static PixelPoint Away(EvenArea from, EvenArea to) => new(to.Middle.X - from.Middle.X, to.Middle.Y - from.Middle.Y);

    private static double Length(PixelPoint v) => Math.Sqrt(v.X * v.X + v.Y * v.Y);

    private static double Sine(PixelPoint a, PixelPoint b) => (a.X * b.Y - a.Y * b.X) / (Length(a) * Length(b));
}
