using System.Globalization;
using System.Text;

namespace Alumroot.App.Charts;

/// <summary>Turns values into places on a drawing, and lines into path text.</summary>
/// <param name="size">The drawing.</param>
/// <param name="xTicks">Ticks of the horizontal axis; the first and last are its ends.</param>
/// <param name="yTicks">Ticks of the upright axis; the first is its lower end.</param>
/// <param name="yTop">The upper end of the upright axis; the last tick when left out.</param>
public sealed class Scale(ChartSize size, IReadOnlyList<double> xTicks, IReadOnlyList<double> yTicks, double? yTop = null)
{
    private const double UnseenBend = 0.3;

    /// <summary>The drawing.</summary>
    public ChartSize Size { get; } = size;

    /// <summary>Ticks of the horizontal axis.</summary>
    public IReadOnlyList<double> XTicks { get; } = xTicks;

    /// <summary>Ticks of the upright axis.</summary>
    public IReadOnlyList<double> YTicks { get; } = yTicks;

    /// <summary>Left edge of the plot: room for the widest tick word.</summary>
    public double Left { get; } = 10 + size.Text * 0.55 * yTicks.Max(y => Ticks.Text(y, StepOf(yTicks)).Length);

    /// <summary>Right edge of the plot.</summary>
    public double Right { get; } = size.Width - 14;

    /// <summary>Top edge of the plot: below the name of the upright axis.</summary>
    public double Top { get; } = size.Text * 2.1;

    /// <summary>Bottom edge of the plot: above ticks and the name of the horizontal axis.</summary>
    public double Bottom { get; } = size.Height - size.Text * 2.9;

    /// <summary>Place of a horizontal value; values outside are held at the edge.</summary>
    public double X(double value) => Left + (Right - Left) * Within(value, XTicks[0], XTicks[^1]);

    /// <summary>Place of an upright value; values outside are held at the edge.</summary>
    public double Y(double value) => Bottom - (Bottom - Top) * Within(value, YTicks[0], yTop ?? YTicks[^1]);

    /// <summary>A line as path text.</summary>
    public string Line(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var path = new StringBuilder();
        for (int i = 0; i < x.Count; i = Next(x, y, i)) path.Append(i == 0 ? 'M' : 'L').Append(Number(X(x[i]))).Append(' ').Append(Number(Y(y[i])));
        return path.ToString();
    }

    // The farthest point that a straight stroke reaches without leaving any point between by more than the eye sees.
    private int Next(IReadOnlyList<double> x, IReadOnlyList<double> y, int from)
    {
        int to = from + 1;
        while (to + 1 < x.Count && Straight(x, y, from, to + 1)) to++;
        return to;
    }

    private bool Straight(IReadOnlyList<double> x, IReadOnlyList<double> y, int from, int to)
    {
        (double x0, double y0, double width, double height) = (X(x[from]), Y(y[from]), X(x[to]) - X(x[from]), Y(y[to]) - Y(y[from]));
        double length = Math.Sqrt(width * width + height * height);
        for (int i = from + 1; i < to; i++)
            if (length == 0 || Math.Abs((X(x[i]) - x0) * height - (Y(y[i]) - y0) * width) > UnseenBend * length) return false;
        return true;
    }

    /// <summary>A band as closed path text.</summary>
    public string Area(ChartBand band)
    {
        ArgumentNullException.ThrowIfNull(band);
        string back = Line([.. band.X.Reverse()], [.. band.Low.Reverse()]);
        return Line(band.X, band.High) + "L" + back[1..] + "Z";
    }

    /// <summary>A place as text for an attribute.</summary>
    public static string Number(double value) => Math.Round(value, 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>The distance between neighbouring ticks.</summary>
    public static double StepOf(IReadOnlyList<double> ticks)
    {
        ArgumentNullException.ThrowIfNull(ticks);
        return ticks[1] - ticks[0];
    }

    private static double Within(double value, double low, double high) => Math.Clamp((value - low) / (high - low), 0, 1);
}
