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

/// <summary>A paper full of one label.</summary>
/// <param name="Content">What stands on each.</param>
/// <param name="Layout">How it is laid out.</param>
/// <param name="Grid">How they stand on the paper.</param>
/// <param name="Copies">How many.</param>
/// <param name="Skip">How many places of the first paper are used already.</param>
/// <param name="Outlined">Whether lines to cut along are drawn.</param>
public sealed record LabelSheet(LabelContent Content, LabelLayout Layout, LabelGrid Grid, int Copies, int Skip, bool Outlined)
{
    /// <summary>How many stand on a full paper.</summary>
    public int PerPage => Grid.Columns * Grid.Rows;

    /// <summary>How many papers it takes.</summary>
    public int Pages => (Skip + Copies + PerPage - 1) / PerPage;

    /// <summary>The places of a page that are filled.</summary>
    /// <param name="page">From 0.</param>
    public IEnumerable<int> Places(int page) => Enumerable.Range(0, PerPage).Where(p => page * PerPage + p >= Skip && page * PerPage + p < Skip + Copies);

    /// <summary>The papers as a PDF file.</summary>
    public byte[] Pdf()
    {
        using var pdf = new PdfPaper($"Labels {Content.Code}", Grid.Paper);
        var code = new QrPicture(Content.Code);
        for (int page = 0; page < Pages; page++)
        {
            pdf.NextPage();
            foreach (int place in Places(page))
            {
                (double left, double top) = Grid.At(place);
                pdf.Tagged(PdfBlockLevelElementTag.Paragraph, () =>
                {
                    foreach (LabelLine line in Layout.Lines) pdf.Text(line.Words, left + line.LeftMillimetres, top + line.FootMillimetres, line.Points, line.Strong);
                });
                foreach (LabelSign sign in Layout.Signs) pdf.Sign(sign.Sign, left + sign.LeftMillimetres, top + sign.TopMillimetres, Layout.SignMillimetres);
                pdf.Unread(() =>
                {
                    if (Outlined) pdf.Box(left, top, Grid.WidthMillimetres, Grid.HeightMillimetres, 0.1);
                    if (Layout.CodeSideMillimetres > 0) pdf.Code(code, left + Layout.CodeLeftMillimetres, top + Layout.CodeTopMillimetres, Layout.CodeSideMillimetres);
                });
            }
        }
        return pdf.Bytes();
    }
}
