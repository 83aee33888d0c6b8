using Alumroot.App.Print.Pdf;
using Alumroot.App.Words;
using Alumroot.Paint.Labels;

namespace Alumroot.App.Print.Labels;

/// <summary>A line of text on a label.</summary>
/// <param name="LeftMillimetres">From the label's left edge.</param>
/// <param name="FootMillimetres">Its foot from the label's top edge.</param>
/// <param name="Points">Its size.</param>
/// <param name="Strong">Whether it is the heavier weight.</param>
/// <param name="Words">The words.</param>
public sealed record LabelLine(double LeftMillimetres, double FootMillimetres, double Points, bool Strong, string Words);

/// <summary>A hazard sign on a label.</summary>
/// <param name="Sign">Which.</param>
/// <param name="LeftMillimetres">From the label's left edge.</param>
/// <param name="TopMillimetres">From its top edge.</param>
public sealed record LabelSign(HazardSign Sign, double LeftMillimetres, double TopMillimetres);

/// <summary>One label laid out: where each line, the code and the signs stand. Page and PDF draw the same.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Signs">The hazard signs, each as wide and high as <see cref="SignMillimetres"/>.</param>
/// <param name="CodeLeftMillimetres">Where the QR code stands.</param>
/// <param name="CodeTopMillimetres">Where the QR code stands.</param>
/// <param name="CodeSideMillimetres">Its side with the quiet zone; 0 when there is no room for a readable one.</param>
/// <param name="Fits">Whether everything that must stand on it does.</param>
public sealed record LabelLayout(IReadOnlyList<LabelLine> Lines, IReadOnlyList<LabelSign> Signs, double CodeLeftMillimetres, double CodeTopMillimetres, double CodeSideMillimetres, bool Fits)
{
    /// <summary>Letters of so many points have an x of 1.2 mm in this typeface, the least that counts as readable in an official example of a label.</summary>
    public const double ReadablePoints = 7;

    /// <summary>Each sign from point to point.</summary>
    public double SignMillimetres { get; private init; }

    /// <summary>The side of a sign's red square.</summary>
    public double SignSideMillimetres => SignMillimetres / Math.Sqrt(2);

    // Below 10 mm a phone does not read a code of 21 squares with its quiet zone at arm's length; 4.5 points are the least that can be read. Common practice, no source.
    private const double LeastCode = 10, MostCode = 22, LeastPoints = 4.5, MostPoints = 9, Edge = 1.5, LeadingPerPoint = 0.41, AscentPerPoint = 0.3, Top = 0.5, Apart = 0.5, SmallestSide = 10, LeastColumn = 8;

    /// <summary>Lays out a label in letters that can be read, then with the largest signs, then with its code, then in the largest letters that fit, whichever way code and signs leave the room; what does not fit in the smallest is left out from the end, and <see cref="Fits"/> says so.</summary>
    /// <param name="content">What is to stand on it.</param>
    /// <param name="widthMillimetres">Its width.</param>
    /// <param name="heightMillimetres">Its height.</param>
    public static LabelLayout Of(LabelContent content, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(content);
        HazardSign[] signs = [.. content.Hazards.Select(h => HazardSign.Of(h.Pictogram)).OfType<HazardSign>().Distinct()];
        double code = Math.Min(MostCode, Math.Min(heightMillimetres - 2, widthMillimetres * 0.36));
        LabelLayout? best = null;
        (double Readable, double Sign, bool Code, double Points) bestScore = default;
        foreach (LabelLayout frame in SignSides(content, signs.Length).SelectMany(side => Frames(signs, Points(side), code < LeastCode ? 0 : code, widthMillimetres, heightMillimetres)))
        {
            double width = widthMillimetres - 2 * Edge - Math.Max(0, widthMillimetres - Leftmost(frame, widthMillimetres) - 1);
            if (width < LeastColumn) continue;
            for (double points = MostPoints; points >= LeastPoints; points -= 0.25)
            {
                IReadOnlyList<LabelLine> lines = Set(content, points, width);
                if (lines.Count > 0 && lines[^1].FootMillimetres > heightMillimetres - Edge + 0.3) continue;
                var score = (Math.Min(points, ReadablePoints), frame.SignMillimetres, frame.CodeSideMillimetres > 0, points);
                if (best is null || score.CompareTo(bestScore) > 0) (best, bestScore) = (frame with { Lines = lines, Fits = true }, score);
                break;
            }
        }
        if (best is not null) return best;
        double left = widthMillimetres - (code < LeastCode ? 0 : code);
        return new LabelLayout([.. Set(content, LeastPoints, left - 2 * Edge + (left < widthMillimetres ? 1 : 0)).TakeWhile(l => l.FootMillimetres <= heightMillimetres - 0.8)], [], left, Top, widthMillimetres - left, Fits: false);
    }

    /// <summary>Sides of signs to try, in millimetres: what the rules would like, what they ask, and what they allow on the smallest packages, which is better than none.</summary>
    private static IEnumerable<double> SignSides(LabelContent content, int signs)
    {
        if (signs == 0) return [SmallestSide];
        LabelSize? size = LabelSize.For(content.CapacityMillilitres ?? 0);
        return new[] { size?.SignWantedMillimetres ?? SmallestSide, size?.SignLeastMillimetres ?? SmallestSide, SmallestSide }.Distinct();
    }

    /// <summary>From point to point of a square on its point, up to a tenth of a millimetre.</summary>
    private static double Points(double side) => Math.Ceiling(10 * side * Math.Sqrt(2)) / 10;

    /// <summary>The ways in which code and signs may stand at the right: one below the other, the code beside a column of signs, below it a row of them, or signs alone.</summary>
    private static IEnumerable<LabelLayout> Frames(HazardSign[] signs, double sign, double code, double width, double height)
    {
        if (signs.Length == 0)
        {
            yield return new LabelLayout([], [], width - code, Top, code, Fits: false);
            yield break;
        }
        double step = sign + Apart, stack = signs.Length * step, room = height - 2 * Top;
        double under = Math.Min(code, room - stack);
        if (under >= LeastCode) yield return Framed(under, width - sign - Apart, Top + under + Apart, 0, step);
        // A code as narrow as a sign leaves the words the width that signs alone do.
        double slim = Math.Min(under, sign);
        if (slim >= LeastCode) yield return Framed(slim, width - sign - Apart, Top + slim + Apart, 0, step);
        if (code > 0 && stack <= room) yield return Framed(code, width - code - step, Top + Apart, 0, step);
        double above = Math.Min(code, room - step);
        if (above >= LeastCode && stack <= width / 2) yield return Framed(above, width - stack, Top + above + Apart, step, 0);
        if (stack <= room) yield return Framed(0, width - sign - Apart, Top + Apart, 0, step);
        if (step <= room && stack <= 0.6 * width) yield return Framed(0, width - stack, Top + Apart, step, 0);

        LabelLayout Framed(double side, double left, double top, double across, double down) =>
            new([], [.. signs.Select((s, i) => new LabelSign(s, left + i * across, top + i * down))], width - side, Top, side, Fits: false) { SignMillimetres = sign };
    }

    private static double Leftmost(LabelLayout frame, double width) => frame.Signs.Select(s => s.LeftMillimetres).Append(frame.CodeSideMillimetres > 0 ? frame.CodeLeftMillimetres : width).Min();

    private static List<LabelLine> Set(LabelContent content, double points, double width)
    {
        var lines = new List<LabelLine>();
        double y = Edge;
        Add(content.Name, points * 1.25, strong: true);
        foreach (string line in content.Lines) Add(line, points, strong: false);
        if (content.Hazards.Count > 0) Add(LabelWords.Hazards(content.Hazards), points, strong: true);
        if (content.Precautions.Count > 0) Add(LabelWords.Precautions(content.Precautions), points, strong: false);
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
