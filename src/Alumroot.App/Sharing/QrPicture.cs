using System.Collections;
using System.Globalization;
using System.Text;
using QRCoder;

namespace Alumroot.App.Sharing;

/// <summary>An address as a QR code (ISO/IEC 18004), drawn as one path or as characters of a terminal.</summary>
public sealed class QrPicture
{
    private readonly List<BitArray> _rows;

    /// <summary>Draws a text, with the quiet zone around it.</summary>
    public QrPicture(string text)
    {
        using QRCodeData data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        _rows = [.. data.ModuleMatrix.Select(r => new BitArray(r))];
    }

    /// <summary>Squares on a side.</summary>
    public int Side => _rows.Count;

    /// <summary>The dark squares as the path of an SVG whose view box is <see cref="Side"/> by <see cref="Side"/>.</summary>
    public string Path()
    {
        var path = new StringBuilder();
        foreach ((int x, int y, int length) in Runs()) path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h{length}v1h{-length}z");
        return path.ToString();
    }

    /// <summary>The dark squares as runs along the rows: column, row, length.</summary>
    public IEnumerable<(int Column, int Row, int Length)> Runs()
    {
        for (int y = 0; y < Side; y++)
            for (int x = 0; x < Side; x++)
            {
                if (!_rows[y][x]) continue;
                int from = x;
                while (x < Side && _rows[y][x]) x++;
                yield return (from, y, x - from);
            }
    }

    /// <summary>Two rows of squares to a line of text; what is light is drawn, as most terminals are dark.</summary>
    public string Text()
    {
        var text = new StringBuilder();
        for (int y = 0; y < Side; y += 2)
        {
            for (int x = 0; x < Side; x++) text.Append((_rows[y][x], y + 1 < Side && _rows[y + 1][x]) switch { (false, false) => '█', (false, true) => '▀', (true, false) => '▄', _ => ' ' });
            text.AppendLine();
        }
        return text.ToString();
    }
}
