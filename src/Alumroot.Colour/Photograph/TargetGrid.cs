namespace Alumroot.Colour.Photograph;

/// <summary>Where the patches of a target lie inside its corners.</summary>
/// <param name="Columns">Patches from left to right.</param>
/// <param name="Rows">Patches from top to bottom.</param>
/// <param name="MarginShare">From the left edge to the first patch, as a share of the target's width.</param>
/// <param name="PatchShare">Width of a patch, as a share of the target's width.</param>
/// <param name="GapShare">Between two patches, as a share of the target's width.</param>
public sealed record TargetGrid(int Columns, int Rows, double MarginShare, double PatchShare, double GapShare)
{
    /// <summary>From the top edge to the first patch, as a share of the target's height; null when it is as wide as the left margin.</summary>
    public double? TopShare { get; init; }

    /// <summary>Height of a patch, as a share of the target's height; null when patches are square.</summary>
    public double? PatchHeightShare { get; init; }

    /// <summary>Between two rows, as a share of the target's height; null when it is as wide as between columns.</summary>
    public double? RowGapShare { get; init; }

    /// <summary>The patch of a place in the order of the reference: row by row from the first corner.</summary>
    /// <param name="corners">The target's corners in the picture.</param>
    /// <param name="index">0 for the first.</param>
    internal Quad Patch(Quad corners, int index)
    {
        Homography map = Homography.FromUnitSquare(corners) ?? throw new ArgumentException("The corners span no area.", nameof(corners));
        // Margins and gaps are as wide in both directions: shares of the width become shares of the height by what is left over for the patches.
        double height = PatchHeightShare is null ? 2 * MarginShare + Rows * PatchShare + (Rows - 1) * GapShare : 1;
        double top = TopShare ?? MarginShare / height, patch = PatchHeightShare ?? PatchShare / height, gap = RowGapShare ?? GapShare / height;
        int column = index % Columns, row = index / Columns;
        double x = MarginShare + column * (PatchShare + GapShare), y = top + row * (patch + gap);
        return map.Rectangle(x, y, x + PatchShare, y + patch);
    }

    /// <summary>The likeliest columns and rows for so many patches in a target of this shape.</summary>
    internal static (int Columns, int Rows) Likely(int patches, double aspect)
    {
        (int Columns, int Rows) best = (patches, 1);
        double least = double.PositiveInfinity;
        for (int rows = 1; rows <= patches; rows++)
        {
            if (patches % rows != 0) continue;
            double off = Math.Abs(Math.Log((double)patches / rows / rows / aspect));
            if (off < least) (least, best) = (off, (patches / rows, rows));
        }
        return best;
    }
}
