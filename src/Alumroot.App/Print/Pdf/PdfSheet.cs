using Alumroot.App.Sharing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Alumroot.App.Print.Pdf;

/// <summary>Draws a sheet as PDF: parts one below the other, on as many pages as they need.</summary>
public sealed class PdfSheet
{
    private const double Margin = 14, CodeSide = 22, LeadingPerPoint = 0.47, Gap = 2.2;
    private readonly PrintSheet _sheet;
    private readonly PdfPaper _pdf;
    private double _y;

    private PdfSheet(PrintSheet sheet, PdfPaper pdf) => (_sheet, _pdf) = (sheet, pdf);

    private bool IsCard => _sheet.Paper.WidthMillimetres < 150;

    private double Edge => IsCard ? 8 : Margin;

    private double Scale => IsCard ? 0.8 : 1;

    private double Width => _sheet.Paper.WidthMillimetres - 2 * Edge;

    private double Bottom => _sheet.Paper.HeightMillimetres - Edge - 5;

    /// <summary>The sheet as a PDF file.</summary>
    public static byte[] Of(PrintSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        using var pdf = new PdfPaper(sheet.Name, sheet.Paper);
        var drawn = new PdfSheet(sheet, pdf);
        drawn.Draw();
        return pdf.Bytes();
    }

    private void Draw()
    {
        NextPage();
        if (_sheet.Code is { } code)
        {
            var picture = new QrPicture(code);
            double left = _sheet.Paper.WidthMillimetres - Edge - CodeSide, top = Edge - 2;
            _pdf.Unread(() => _pdf.Code(picture, left, top, CodeSide));
        }
        Lines(_sheet.Name, 17 * Scale, strong: true, PdfBlockLevelElementTag.Heading1, 0, Width - (_sheet.Code is null ? 0 : CodeSide + 3));
        double begun = _y;
        foreach (PrintBlock block in _sheet.Blocks)
        {
            // Words beside the code keep clear of it.
            if (_sheet.Code is not null && _pdf.PageCount == 1 && _y < Edge + CodeSide && block is not PrintBlock.Words) _y = Math.Max(_y, Edge + CodeSide - 2);
            Block(block);
            _y += Gap;
        }
        if (begun == _y) _y += Gap;
    }

    private void Block(PrintBlock block)
    {
        switch (block)
        {
            case PrintBlock.Heading heading:
                Room(14);
                _y += 1.5;
                Lines(heading.Text, 12.5 * Scale, strong: true, PdfBlockLevelElementTag.Heading2, 0, Width);
                break;
            case PrintBlock.Words words:
                double points = (words.Tone switch { PrintTone.Lead => 12.5, PrintTone.Small => 8.5, _ => 10 }) * Scale;
                double beside = _sheet.Code is not null && _pdf.PageCount == 1 && _y < Edge + CodeSide ? CodeSide + 3 : 0;
                Lines(words.Text, points, strong: false, PdfBlockLevelElementTag.Paragraph, 0, Width - beside);
                break;
            case PrintBlock.Items items:
                _pdf.Tagged(PdfBlockLevelElementTag.List, () =>
                {
                    for (int i = 0; i < items.Lines.Count; i++) Item(items.Numbered ? $"{i + 1}." : "–", items.Lines[i]);
                });
                break;
            case PrintBlock.Mind mind:
                double from = _y + 1;
                int page = _pdf.PageCount;
                Lines($"Mind: {mind.Text}", 9.5 * Scale, strong: false, PdfBlockLevelElementTag.Paragraph, 3.5, Width - 3.5);
                if (page == _pdf.PageCount) _pdf.Unread(() => _pdf.Line(Edge + 0.8, from, Edge + 0.8, _y, 1.0));
                break;
            case PrintBlock.Grid grid:
                Grid(grid);
                break;
            case PrintBlock.Boxes boxes:
                Captioned(boxes.Name, [.. boxes.Captions.Select(c => (IReadOnlyList<string>)[c])], boxes.InARow, boxes.HeightMillimetres, null);
                break;
            case PrintBlock.Patches patches:
                Captioned(patches.Name, [.. patches.Colours.Select(c => c.Lines)], patches.InARow, patches.HeightMillimetres, patches.Colours);
                break;
        }
    }

    private void Item(string mark, string text)
    {
        double points = 10 * Scale;
        Room(Leading(points) + 1);
        double foot = _y + points * 0.353;
        _pdf.Tagged(PdfBlockLevelElementTag.ListItem, () =>
        {
            _pdf.Tagged(PdfBlockLevelElementTag.Label, () => _pdf.Text(mark, Edge, foot, points));
            Lines(text, points, strong: false, PdfBlockLevelElementTag.ListBody, 6, Width - 6);
        });
        _y += 0.8;
    }

    private void Grid(PrintBlock.Grid grid)
    {
        double points = 9.5 * Scale, total = grid.Shares.Sum();
        double[] widths = [.. grid.Shares.Select(s => Width * s / total)];
        Room(18);
        _pdf.Tagged(PdfBlockLevelElementTag.Paragraph, () => _pdf.Text(grid.Name, Edge, _y + 3, 8.5 * Scale));
        _y += 4.5;
        _pdf.Tagged(PdfBlockLevelElementTag.Table, () =>
        {
            Row(grid.Heads, header: true);
            foreach (IReadOnlyList<string> row in grid.Rows) Row(row, header: false);
        });

        void Row(IReadOnlyList<string> cells, bool header)
        {
            IReadOnlyList<string>[] lines = [.. cells.Select((c, i) => TextMeasure.Lines(c, points, header || i == 0, widths[i] - 2))];
            bool blank = !header && cells.Any(c => c.Length == 0);
            double height = Math.Max(lines.Max(l => l.Count) * Leading(points) + 1.6, blank ? 9 : 0);
            if (_y + height > Bottom) NextPage();
            _pdf.Tagged(PdfBlockLevelElementTag.TableRow, () =>
            {
                double left = Edge;
                for (int i = 0; i < cells.Count; i++)
                {
                    double x = left;
                    IReadOnlyList<string> cell = lines[i];
                    bool strong = header || i == 0;
                    if (strong) _pdf.HeadCell(header, Cell);
                    else _pdf.Tagged(PdfBlockLevelElementTag.TableDataCell, Cell);

                    void Cell()
                    {
                        for (int n = 0; n < cell.Count; n++) _pdf.Text(cell[n], x + 1, _y + 0.8 + (n + 0.8) * Leading(points), points, strong);
                    }
                    left += widths[i];
                }
            });
            _y += height;
            double at = _y;
            _pdf.Unread(() =>
            {
                _pdf.Line(Edge, at, Edge + Width, at, header ? 0.4 : 0.15);
                if (!blank) return;
                double left = Edge;
                for (int i = 0; i < cells.Count; i++)
                {
                    if (cells[i].Length == 0) _pdf.Box(left, at - height, widths[i], height, 0.15);
                    left += widths[i];
                }
            });
        }
    }

    /// <summary>Boxes in rows with words below each; with colours, the left half of each box is filled.</summary>
    private void Captioned(string name, IReadOnlyList<IReadOnlyList<string>> captions, int inARow, double height, IReadOnlyList<PrintPatch>? colours)
    {
        double points = 8 * Scale, side = (Width - (inARow - 1) * 3) / inARow;
        IReadOnlyList<string>[] words = [.. captions.Select(c => (IReadOnlyList<string>)[.. c.SelectMany(line => TextMeasure.Lines(line, points, false, side))])];
        Room(height + 12);
        _pdf.Tagged(PdfBlockLevelElementTag.Paragraph, () => _pdf.Text(name, Edge, _y + 3, 8.5 * Scale));
        _y += 4.5;
        for (int first = 0; first < words.Length; first += inARow)
        {
            int count = Math.Min(inARow, words.Length - first);
            double below = words.Skip(first).Take(count).Max(w => w.Count) * Leading(points) + 3;
            Room(height + below);
            for (int i = 0; i < count; i++)
            {
                (double x, double y, int at) = (Edge + i * (side + 3), _y, first + i);
                _pdf.Unread(() =>
                {
                    if (colours is not null) _pdf.Patch(colours[at].Hex, x, y, side / 2, height);
                    _pdf.Box(x, y, side, height);
                });
                _pdf.Tagged(PdfBlockLevelElementTag.Paragraph, () =>
                {
                    for (int n = 0; n < words[at].Count; n++) _pdf.Text(words[at][n], x, y + height + (n + 0.9) * Leading(points), points);
                });
            }
            _y += height + below;
        }
    }

    private void Lines(string text, double points, bool strong, PdfBlockLevelElementTag tag, double indent, double width)
    {
        IReadOnlyList<string> lines = TextMeasure.Lines(text, points, strong, width);
        for (int next = 0; next < lines.Count;)
        {
            Room(Leading(points));
            // As many lines as the page still takes are one element, so that they are read as one.
            int last = Math.Min(lines.Count, next + Math.Max(1, (int)((Bottom - _y) / Leading(points))));
            int from = next;
            _pdf.Tagged(tag, () =>
            {
                for (int i = from; i < last; i++, _y += Leading(points)) _pdf.Text(lines[i], Edge + indent, _y + points * 0.353, points, strong);
            });
            next = last;
        }
    }

    private static double Leading(double points) => points * LeadingPerPoint;

    private void Room(double millimetres)
    {
        if (_y + millimetres > Bottom) NextPage();
    }

    private void NextPage()
    {
        _pdf.NextPage();
        _y = Edge;
        string foot = $"{_sheet.Foot}{(_pdf.PageCount > 1 ? $"  {_sheet.Name}, page {_pdf.PageCount}" : "")}".Trim();
        if (foot.Length > 0) _pdf.Unread(() => _pdf.Text(foot, Edge, _sheet.Paper.HeightMillimetres - Edge + 2, 7.5 * Scale));
    }
}
