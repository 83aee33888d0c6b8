using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Alumroot.App.Print.Pdf;

/// <summary>The typeface of PDF files: Source Sans 3, built into the program under the Open Font License.</summary>
internal sealed class PrintFonts : IFontResolver
{
    private const string Family = "Source Sans 3";

    // The library keeps one resolver for the whole process.
    static PrintFonts() => GlobalFontSettings.FontResolver = new PrintFonts();

    private PrintFonts()
    {
    }

    /// <summary>A font of a size.</summary>
    /// <param name="points">Its size.</param>
    /// <param name="strong">Whether it is the heavier weight.</param>
    public static XFont Of(double points, bool strong = false) => new(Family, points, strong ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? "SourceSans3-Semibold.ttf" : "SourceSans3-Regular.ttf");

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName)
    {
        using Stream stream = typeof(PrintFonts).Assembly.GetManifestResourceStream($"print/{faceName}") ?? throw new InvalidOperationException($"{faceName} was not built in");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
