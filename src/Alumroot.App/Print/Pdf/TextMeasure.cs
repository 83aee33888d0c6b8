using PdfSharp.Drawing;

namespace Alumroot.App.Print.Pdf;

/// <summary>Widths of words in millimetres, and lines that keep within a width.</summary>
internal static class TextMeasure
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private static readonly XGraphics Context = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    private static readonly Lock One = new();

    /// <summary>The width of a line.</summary>
    public static double WidthMillimetres(string text, double points, bool strong)
    {
        lock (One) return Context.MeasureString(text, PrintFonts.Of(points, strong)).Width * MillimetresPerPoint;
    }

    /// <summary>Breaks words into lines; a word that is too long is broken within.</summary>
    public static IReadOnlyList<string> Lines(string text, double points, bool strong, double widthMillimetres)
    {
        var lines = new List<string>();
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string rest = word;
            string longer = line.Length == 0 ? rest : $"{line} {rest}";
            if (WidthMillimetres(longer, points, strong) <= widthMillimetres)
            {
                line = longer;
                continue;
            }
            if (line.Length > 0) lines.Add(line);
            while (rest.Length > 1 && WidthMillimetres(rest, points, strong) > widthMillimetres)
            {
                int fits = rest.Length - 1;
                while (fits > 1 && WidthMillimetres(rest[..fits], points, strong) > widthMillimetres) fits--;
                lines.Add(rest[..fits]);
                rest = rest[fits..];
            }
            line = rest;
        }
        if (line.Length > 0 || lines.Count == 0) lines.Add(line);
        return lines;
    }
}
