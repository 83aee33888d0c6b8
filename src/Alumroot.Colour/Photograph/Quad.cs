namespace Alumroot.Colour.Photograph;

/// <summary>Four corners of a flat thing in a picture, in the thing's own order: its upper left, upper right, lower right, lower left.</summary>
/// <param name="TopLeft">Its first corner, wherever that lies in the picture.</param>
/// <param name="TopRight">Its second.</param>
/// <param name="BottomRight">Its third.</param>
/// <param name="BottomLeft">Its fourth.</param>
public readonly record struct Quad(PixelPoint TopLeft, PixelPoint TopRight, PixelPoint BottomRight, PixelPoint BottomLeft)
{
    /// <summary>Area in square pixels; negative when the corners run against the clock as the picture is seen.</summary>
    public double AreaPixels => 0.5 * ((BottomRight.X - TopLeft.X) * (BottomLeft.Y - TopRight.Y) - (BottomLeft.X - TopRight.X) * (BottomRight.Y - TopLeft.Y));

    /// <summary>Width over height, from the mean lengths of opposite sides.</summary>
    public double Aspect => (TopLeft.DistanceTo(TopRight) + BottomLeft.DistanceTo(BottomRight)) / (TopLeft.DistanceTo(BottomLeft) + TopRight.DistanceTo(BottomRight));

    /// <summary>The corners in order.</summary>
    public IReadOnlyList<PixelPoint> Corners => [TopLeft, TopRight, BottomRight, BottomLeft];

    /// <summary>The mean of the corners.</summary>
    internal PixelPoint Middle => new((TopLeft.X + TopRight.X + BottomRight.X + BottomLeft.X) / 4, (TopLeft.Y + TopRight.Y + BottomRight.Y + BottomLeft.Y) / 4);

    /// <summary>True when every corner turns the same way and the thing has an area worth the name.</summary>
    public bool IsConvex
    {
        get
        {
            PixelPoint[] c = [TopLeft, TopRight, BottomRight, BottomLeft];
            double least = double.PositiveInfinity, most = double.NegativeInfinity;
            for (int i = 0; i < 4; i++)
            {
                PixelPoint a = c[i], b = c[(i + 1) % 4], d = c[(i + 2) % 4];
                double turn = (b.X - a.X) * (d.Y - b.Y) - (b.Y - a.Y) * (d.X - b.X);
                (least, most) = (Math.Min(least, turn), Math.Max(most, turn));
            }
            return least > 0 || most < 0;
        }
    }

    /// <summary>The quad with its sides moved outwards from the middle.</summary>
    /// <param name="share">1 keeps it, 1.1 makes it a tenth wider.</param>
    internal Quad Scaled(double share)
    {
        PixelPoint m = Middle;
        return new(PixelPoint.Between(m, TopLeft, share), PixelPoint.Between(m, TopRight, share), PixelPoint.Between(m, BottomRight, share), PixelPoint.Between(m, BottomLeft, share));
    }

    /// <summary>True when a point lies inside or on the border.</summary>
    internal bool Holds(double x, double y)
    {
        double sign = AreaPixels < 0 ? -1 : 1;
        return Side(TopLeft, TopRight) && Side(TopRight, BottomRight) && Side(BottomRight, BottomLeft) && Side(BottomLeft, TopLeft);

        bool Side(PixelPoint a, PixelPoint b) => sign * ((b.X - a.X) * (y - a.Y) - (b.Y - a.Y) * (x - a.X)) >= 0;
    }
}
