using System.Globalization;
using Alumroot.Colour.Photograph;

namespace Alumroot.App.Photographs;

/// <summary>Places in a picture as text: "120.5,340 812,338" in an address, "120,5 340" as people type it.</summary>
internal static class PixelText
{
    private const double Far = 100_000;

    /// <summary>The points in a form that an address can carry.</summary>
    internal static string Of(IEnumerable<PixelPoint> points) => string.Join(' ', points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(p.X, 1)},{Math.Round(p.Y, 1)}")));

    /// <summary>The points of an address; empty when there are none or when they cannot be read.</summary>
    internal static IReadOnlyList<PixelPoint> Points(string? text)
    {
        PixelPoint?[] read = [.. (text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(',') is [var x, var y] ? Point(x, y) : null)];
        return Array.Exists(read, p => p is null) ? [] : [.. read.Select(p => p!.Value)];
    }

    /// <summary>One point as a person types it: two numbers; a comma is a decimal sign when a blank or a semicolon parts them.</summary>
    internal static PixelPoint? Typed(string? text)
    {
        string plain = (text ?? "").Trim().Replace(';', ' ').Replace("px", " ", StringComparison.OrdinalIgnoreCase).Trim();
        if (plain.Replace(", ", " ", StringComparison.Ordinal) is var parted && parted.Contains(' ', StringComparison.Ordinal)) plain = parted.Replace(',', '.');
        else plain = plain.Replace(',', ' ');
        return plain.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var x, var y] ? Point(x, y) : null;
    }

    private static PixelPoint? Point(string x, string y) =>
        double.TryParse(x, NumberStyles.Float, CultureInfo.InvariantCulture, out double across) && double.TryParse(y, NumberStyles.Float, CultureInfo.InvariantCulture, out double down) && Math.Abs(across) < Far && Math.Abs(down) < Far
            ? new PixelPoint(across, down) : null;
}
