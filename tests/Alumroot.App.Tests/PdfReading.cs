using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Alumroot.App.Tests;

/// <summary>Reads PDF files back with a program of its own (PdfPig), and the codes drawn in them with another (ZXing).</summary>
internal static class PdfReading
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>The words of all pages.</summary>
    public static string Text(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return string.Join(' ', document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    /// <summary>Size of the first page in millimetres, and how many pages there are.</summary>
    public static (double Width, double Height, int Pages) Size(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        Page page = document.GetPage(1);
        return (page.Width / PointsPerMillimetre, page.Height / PointsPerMillimetre, document.NumberOfPages);
    }

    /// <summary>Whether every letter is within the paper, and each font is embedded.</summary>
    public static bool KeepsWithinThePaper(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return document.GetPages().All(p => p.Letters.All(l => l.BoundingBox.Left >= 0 && l.BoundingBox.Bottom >= 0 && l.BoundingBox.Right <= p.Width && l.BoundingBox.Top <= p.Height));
    }

    /// <summary>The boxes that are drawn as outlines on the first page, in millimetres from its upper left corner.</summary>
    public static IReadOnlyList<(double Left, double Top, double Width, double Height)> Outlines(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        Page page = document.GetPage(1);
        return [.. page.Paths.Where(p => p is { IsStroked: true, IsFilled: false } && p.GetBoundingRectangle() is { Height: > 1 }).Select(p => p.GetBoundingRectangle()!.Value)
            .Select(r => (r.Left / PointsPerMillimetre, (page.Height - r.Top) / PointsPerMillimetre, r.Width / PointsPerMillimetre, r.Height / PointsPerMillimetre))];
    }

    /// <summary>What the QR code says that is drawn in an area of the first page; null when none reads.</summary>
    public static string? Code(byte[] pdf, double left = 0, double top = 0, double width = 1000, double height = 1000)
    {
        const int dotsPerMillimetre = 8;
        using PdfDocument document = PdfDocument.Open(pdf);
        Page page = document.GetPage(1);
        PdfRectangle[] dark = [.. page.Paths.Where(p => p.IsFilled).Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>()];
        int across = (int)(Math.Min(width, page.Width / PointsPerMillimetre - left) * dotsPerMillimetre), down = (int)(Math.Min(height, page.Height / PointsPerMillimetre - top) * dotsPerMillimetre);
        byte[] grey = new byte[across * down];
        Array.Fill(grey, byte.MaxValue);
        foreach (PdfRectangle r in dark)
            for (int y = Dot((page.Height - r.Top) / PointsPerMillimetre - top); y < Dot((page.Height - r.Bottom) / PointsPerMillimetre - top); y++)
                for (int x = Dot(r.Left / PointsPerMillimetre - left); x < Dot(r.Right / PointsPerMillimetre - left); x++)
                    if (x >= 0 && x < across && y >= 0 && y < down) grey[y * across + x] = 0;
        var bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(grey, across, down, RGBLuminanceSource.BitmapFormat.Gray8)));
        return new QRCodeReader().decode(bitmap, new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true })?.Text;

        static int Dot(double millimetres) => (int)Math.Round(millimetres * dotsPerMillimetre, MidpointRounding.AwayFromZero);
    }
}
