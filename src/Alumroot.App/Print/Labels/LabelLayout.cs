using Alumroot.App.Print.Pdf;

namespace Alumroot.App.Print.Labels;

/// <summary>A line of text on a label.</summary>
/// <param name="LeftMillimetres">From the label's left edge.</param>
/// <param name="FootMillimetres">Its foot from the label's top edge.</param>
/// <param name="Points">Its size.</param>
/// <param name="Strong">Whether it is the heavier weight.</param>
/// <param name="Words">The words.</param>
public sealed record LabelLine(double LeftMillimetres, double FootMillimetres, double Points, bool Strong, string Words);

/// <summary>One label laid out: where each line and the code stand. Page and PDF draw the same.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="CodeLeftMillimetres">Where the QR code stands.</param>
/// <param name="CodeTopMillimetres">Where the QR code stands.</param>
/// <param name="CodeSideMillimetres">Its side with the quiet zone; 0 when there is no room for a readable one.</param>
/// <param name="Fits">Whether everything that must stand on it does.</param>
public sealed record LabelLayout(IReadOnlyList<LabelLine> Lines, double CodeLeftMillimetres, double CodeTopMillimetres, double CodeSideMillimetres, bool Fits)
{
    // Below 10 mm a phone does not read a code of 21 squares with its quiet zone at arm's length; 4.5 points are the least that can be read. Common practice, no source.
    private const double LeastCode = 10, MostCode = 22, LeastPoints = 4.5, MostPoints = 9, Edge = 1.5, LeadingPerPoint = 0.41, AscentPerPoint = 0.3;

    /// <summary>Lays out a label in the largest letters that fit; what does not fit in the smallest is left out from the end, and <see cref="Fits"/> says so.</summary>
    /// <param name="content">What is to stand on it.</param>
    /// <param name="widthMillimetres">Its width.</param>
    /// <param name="heightMillimetres">Its height.</param>
    public static LabelLayout Of(LabelContent content, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(content);
        double code = Math.Min(MostCode, Math.Min(heightMillimetres - 2, widthMillimetres * 0.36));
        if (code < LeastCode) code = 0;
        double width = widthMillimetres - 2 * Edge - (code > 0 ? code - 1 : 0);
        IReadOnlyList<LabelLine> lines = [];
        for (double points = MostPoints; points >= LeastPoints; points -= 0.25)
        {
            lines = Set(content, points, width);
            if (lines.Count == 0 || lines[^1].FootMillimetres <= heightMillimetres - Edge + 0.3) return new LabelLayout(lines, widthMillimetres - code, 0.5, code, Fits: true);
        }
        return new LabelLayout([.. lines.TakeWhile(l => l.FootMillimetres <= heightMillimetres - 0.8)], widthMillimetres - code, 0.5, code, Fits: false);
    }

    private static List<LabelLine> Set(LabelContent content, double points, double width)
    {
        var lines = new List<LabelLine>();
        double y = Edge;
        Add(content.Name, points * 1.25, strong: true);
        foreach (string line in content.Lines) Add(line, points, strong: false);
        if (content.Hazards.Count > 0) Add(string.Join(' ', content.Hazards.Select(h => h.Pictogram.Length > 0 ? $"{h.Statement} ({h.Code}, {h.Pictogram})" : $"{h.Statement} ({h.Code})")), points, strong: true);
        return lines;

        void Add(string words, double size, bool strong)
        {
            foreach (string line in TextMeasure.Lines(words, size, strong, width))
            {
                lines.Add(new LabelLine(Edge, y + size * AscentPerPoint, size, strong, line));
                y += size * LeadingPerPoint;
            }
        }
    }
}
