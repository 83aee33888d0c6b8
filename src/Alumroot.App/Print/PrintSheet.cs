namespace Alumroot.App.Print;

/// <summary>A sheet to print: a description only. <see cref="Pdf.PdfSheet"/> and the page draw it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Blocks">Its parts from top to bottom.</param>
public sealed record PrintSheet(string Name, IReadOnlyList<PrintBlock> Blocks)
{
    /// <summary>What its QR code says, such as the number of a record; null for none.</summary>
    public string? Code { get; init; }

    /// <summary>The paper.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>The line at the foot of each page.</summary>
    public string Foot { get; init; } = "";
}
