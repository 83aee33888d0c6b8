using Alumroot.App.Print.Pdf;
using Alumroot.App.Sharing;
using PdfSharp.UniversalAccessibility;

namespace Alumroot.App.Print.Labels;

/// <summary>How labels stand on their paper, all in millimetres.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="WidthMillimetres">Width of a label.</param>
/// <param name="HeightMillimetres">Height of a label.</param>
/// <param name="MarginLeftMillimetres">From the left edge of the paper to the first.</param>
/// <param name="MarginTopMillimetres">From the upper edge of the paper to the first.</param>
/// <param name="GapAcrossMillimetres">Between two beside each other.</param>
/// <param name="GapDownMillimetres">Between two below each other.</param>
public sealed record LabelGrid(Paper Paper, double WidthMillimetres, double HeightMillimetres, double MarginLeftMillimetres, double MarginTopMillimetres, double GapAcrossMillimetres, double GapDownMillimetres)
{
    /// <summary>How many stand beside each other.</summary>
    public int Columns => Many(Paper.WidthMillimetres - MarginLeftMillimetres, WidthMillimetres, GapAcrossMillimetres);

    /// <summary>How many stand below each other.</summary>
    public int Rows => Many(Paper.HeightMillimetres - MarginTopMillimetres, HeightMillimetres, GapDownMillimetres);

    /// <summary>Where the label of a place stands, counted from 0 along the rows.</summary>
    public (double LeftMillimetres, double TopMillimetres) At(int place) =>
        (MarginLeftMillimetres + place % Columns * (WidthMillimetres + GapAcrossMillimetres), MarginTopMillimetres + place / Columns * (HeightMillimetres + GapDownMillimetres));

    private static int Many(double room, double size, double gap) => Math.Max(0, (int)Math.Floor((room + gap + 1e-6) / (size + gap)));
}

/// <summary>A paper of labels: one many times, or several beside each other such as those of a row of jars.</summary>
/// <param name="Contents">What stands on each, one or more.</param>
/// <param name="Grid">How they stand on the paper.</param>
/// <param name="Copies">How many of each.</param>
/// <param name="Skip">How many places of the first paper are used already.</param>
/// <param name="Outlined">Whether lines to cut along are drawn.</param>
public sealed record LabelSheet(IReadOnlyList<LabelContent> Contents, LabelGrid Grid, int Copies, int Skip, bool Outlined)
{
    /// <summary>How each is laid out.</summary>
    public IReadOnlyList<LabelLayout> Layouts { get; } = [.. Contents.Select(c => LabelLayout.Of(c, Grid.WidthMillimetres, Grid.HeightMillimetres))];

    /// <summary>What stands on the first.</summary>
    public LabelContent Content => Contents[0];

    /// <summary>How the first is laid out.</summary>
    public LabelLayout Layout => Layouts[0];

    /// <summary>Whether everything stands on every one of them.</summary>
    public bool Fits => Layouts.All(l => l.Fits);

    /// <summary>How many labels there are in all.</summary>
    public int Total => Contents.Count * Copies;

    /// <summary>How many stand on a full paper.</summary>
    public int PerPage => Grid.Columns * Grid.Rows;

    /// <summary>How many papers it takes.</summary>
    public int Pages => (Skip + Total + PerPage - 1) / PerPage;

    /// <summary>The places of a page that are filled.</summary>
    /// <param name="page">From 0.</param>
    public IEnumerable<int> Places(int page) => Enumerable.Range(0, PerPage).Where(p => page * PerPage + p >= Skip && page * PerPage + p < Skip + Total);

    /// <summary>The papers as a PDF file.</summary>
    public byte[] Pdf()
    {
        using var pdf = new PdfPaper($"Labels {Content.Code}", Grid.Paper);
        QrPicture[] codes = [.. Contents.Select(c => new QrPicture(c.Code))];
        for (int page = 0; page < Pages; page++)
        {
            pdf.NextPage();
            foreach (int place in Places(page))
            {
                (double left, double top) = Grid.At(place);
                int which = (page * PerPage + place - Skip) / Copies;
                LabelLayout layout = Layouts[which];
                pdf.Tagged(PdfBlockLevelElementTag.Paragraph, () =>
                {
                    foreach (LabelLine line in layout.Lines) pdf.Text(line.Words, left + line.LeftMillimetres, top + line.FootMillimetres, line.Points, line.Strong);
                });
                foreach (LabelSign sign in layout.Signs) pdf.Sign(sign.Sign, left + sign.LeftMillimetres, top + sign.TopMillimetres, layout.SignMillimetres);
                pdf.Unread(() =>
                {
                    if (Outlined) pdf.Box(left, top, Grid.WidthMillimetres, Grid.HeightMillimetres, 0.1);
                    if (layout.CodeSideMillimetres > 0) pdf.Code(codes[which], left + layout.CodeLeftMillimetres, top + layout.CodeTopMillimetres, layout.CodeSideMillimetres);
                });
            }
        }
        return pdf.Bytes();
    }
}
