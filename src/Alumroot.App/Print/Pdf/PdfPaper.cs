using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Alumroot.App.Print.Labels;
using Alumroot.App.Sharing;

namespace Alumroot.App.Print.Pdf;

/// <summary>A PDF document under way: pages measured in millimetres from the top left, with tags for what reads it aloud.</summary>
internal sealed class PdfPaper : IDisposable
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private readonly PdfDocument _document = new();
    private readonly StructureBuilder _tags;
    private readonly Paper _paper;
    private XGraphics? _graphics;

    /// <summary>Begins a document.</summary>
    /// <param name="name">Its title.</param>
    /// <param name="paper">Its paper.</param>
    public PdfPaper(string name, Paper paper)
    {
        _paper = paper;
        _document.Info.Title = name;
        _document.Info.Creator = "Alumroot";
        UAManager manager = UAManager.ForDocument(_document);
        manager.SetDocumentLanguage("en");
        _tags = manager.StructureBuilder;
    }

    /// <summary>How many pages there are.</summary>
    public int PageCount => _document.PageCount;

    /// <summary>Begins a new page.</summary>
    public void NextPage()
    {
        _graphics?.Dispose();
        PdfPage page = _document.AddPage();
        page.Width = XUnit.FromMillimeter(_paper.WidthMillimetres);
        page.Height = XUnit.FromMillimeter(_paper.HeightMillimetres);
        // Whoever steps through the page by keyboard follows the tags.
        page.Elements.SetName("/Tabs", "/S");
        _graphics = XGraphics.FromPdfPage(page);
    }

    /// <summary>Draws within a tag.</summary>
    public void Tagged(PdfBlockLevelElementTag tag, Action draw)
    {
        _tags.BeginElement(tag);
        draw();
        _tags.End();
    }

    /// <summary>Draws a head cell of a table, which says what it heads.</summary>
    /// <param name="ofColumn">Whether it heads its column; otherwise its row.</param>
    /// <param name="draw">Draws its words.</param>
    public void HeadCell(bool ofColumn, Action draw)
    {
        _tags.BeginElement(PdfBlockLevelElementTag.TableHeaderCell);
        var scope = new PdfDictionary(_document);
        scope.Elements.SetName("/O", "/Table");
        scope.Elements.SetName("/Scope", ofColumn ? "/Column" : "/Row");
        _tags.CurrentStructureElement.Elements["/A"] = scope;
        draw();
        _tags.End();
    }

    /// <summary>Draws something that is not read aloud.</summary>
    public void Unread(Action draw)
    {
        _tags.BeginArtifact();
        draw();
        _tags.End();
    }

    /// <summary>A line of text with its foot at a height.</summary>
    public void Text(string text, double leftMillimetres, double footMillimetres, double points, bool strong = false) =>
        _graphics!.DrawString(text, PrintFonts.Of(points, strong), XBrushes.Black, new XPoint(leftMillimetres * PointsPerMillimetre, footMillimetres * PointsPerMillimetre));

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, double widthMillimetres = 0.2) =>
        _graphics!.DrawLine(new XPen(XColors.Black, widthMillimetres * PointsPerMillimetre), x1 * PointsPerMillimetre, y1 * PointsPerMillimetre, x2 * PointsPerMillimetre, y2 * PointsPerMillimetre);

    /// <summary>An empty box.</summary>
    public void Box(double left, double top, double width, double height, double lineMillimetres = 0.2) =>
        _graphics!.DrawRectangle(new XPen(XColors.Black, lineMillimetres * PointsPerMillimetre), left * PointsPerMillimetre, top * PointsPerMillimetre, width * PointsPerMillimetre, height * PointsPerMillimetre);

    /// <summary>A patch of colour without an edge.</summary>
    /// <param name="hex">The colour as #rrggbb.</param>
    /// <param name="left">Its left side in millimetres.</param>
    /// <param name="top">Its upper side.</param>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    public void Patch(string hex, double left, double top, double width, double height) =>
        _graphics!.DrawRectangle(new XSolidBrush(XColor.FromArgb((int)(0xFF000000 | uint.Parse(hex.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture)))), left * PointsPerMillimetre, top * PointsPerMillimetre, width * PointsPerMillimetre, height * PointsPerMillimetre);

    /// <summary>A QR code with its quiet zone.</summary>
    public void Code(QrPicture code, double left, double top, double sideMillimetres)
    {
        double square = sideMillimetres * PointsPerMillimetre / code.Side;
        foreach ((int x, int y, int length) in code.Runs())
            _graphics!.DrawRectangle(XBrushes.Black, left * PointsPerMillimetre + x * square, top * PointsPerMillimetre + y * square, length * square, square);
    }

    /// <summary>A hazard sign, read aloud by its code and symbol.</summary>
    public void Sign(HazardSign sign, double left, double top, double sideMillimetres)
    {
        var box = new XRect(left * PointsPerMillimetre, top * PointsPerMillimetre, sideMillimetres * PointsPerMillimetre, sideMillimetres * PointsPerMillimetre);
        _tags.BeginElement(PdfIllustrationElementTag.Figure, $"{sign.Code}, {sign.Name}", box);
        foreach (SignPart part in sign.Parts)
        {
            var path = new XGraphicsPath();
            XPoint at = default;
            foreach (SignStroke stroke in HazardSign.Strokes(part))
            {
                XPoint[] points = [.. stroke.Points.Select(p => new XPoint(box.X + p.X / HazardSign.Side * box.Width, box.Y + p.Y / HazardSign.Side * box.Height))];
                switch (stroke.Letter)
                {
                    case 'M': path.StartFigure(); break;
                    case 'L': path.AddLine(at, points[0]); break;
                    case 'C': path.AddBezier(at, points[0], points[1], points[2]); break;
                    default: path.CloseFigure(); break;
                }
                if (points.Length > 0) at = points[^1];
            }
            _graphics!.DrawPath(part.Ink switch { SignInk.Red => XBrushes.Red, SignInk.White => XBrushes.White, _ => XBrushes.Black }, path);
        }
        _tags.End();
    }

    /// <summary>The file.</summary>
    public byte[] Bytes()
    {
        _graphics?.Dispose();
        _graphics = null;
        using var stream = new MemoryStream();
        _document.Save(stream, closeStream: false);
        return stream.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _graphics?.Dispose();
        _document.Dispose();
    }
}
