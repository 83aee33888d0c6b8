using System.Buffers;
using System.Text;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Interchange;

/// <summary>Reads a file of colours in any of the open formats; which one is seen from the file itself.</summary>
public static class ColourFile
{
    /// <summary>The most bytes that are read.</summary>
    public const int MostBytes = 32 << 20;

    private static readonly SearchValues<char> WordEnds = SearchValues.Create(" \t\r\n,;");
    private static readonly string[] CgatsWords = ["CGATS", "CTI", "SPECT", "IT8", "CAL", "NUMBER_OF_FIELDS", "BEGIN_DATA"];

    /// <summary>Reads the bytes of a file.</summary>
    /// <param name="bytes">All of them.</param>
    /// <param name="percent">True when the asker says that reflectances are in percent.</param>
    /// <returns>What it holds, or why it was refused; never an exception for what stands in a file.</returns>
    public static Import Read(ReadOnlySpan<byte> bytes, bool percent = false)
    {
        try
        {
            if (bytes.Length > MostBytes) throw new FaultException(new(FaultKind.TooLarge, 1) { Found = $"{bytes.Length >> 20}", Expected = $"{MostBytes >> 20}" });
            string text = Decoded(bytes);
            string start = text.TrimStart();
            if (start.Length == 0) throw new FaultException(new(FaultKind.Empty, 1));
            ColourDocument document = start switch
            {
                ['<', ..] => XmlColours.Read(text, percent),
                ['#', '#', ..] => JcampReader.Read(text, percent),
                _ when LooksLikeCgats(start) => CgatsReader.Read(text, percent),
                _ => CsvReader.Read(text, percent),
            };
            return document.Samples.Any() ? new Import.Done(document) : new Import.Refused(new ImportFault(FaultKind.NoSamples, 1));
        }
        catch (FaultException e)
        {
            return new Import.Refused(e.Fault);
        }
        catch (TableException e)
        {
            return new Import.Refused(new ImportFault(FaultKind.Table, e.Line) { Field = e.Column, Found = e.Message[(e.Message.IndexOf(": ", StringComparison.Ordinal) + 2)..].TrimEnd('.') });
        }
    }

    private static bool LooksLikeCgats(string start)
    {
        string first = start[..Math.Min(start.Length, start.AsSpan().IndexOfAny(WordEnds) is var end and >= 0 ? end : start.Length)];
        return Array.Exists(CgatsWords, w => first.StartsWith(w, StringComparison.Ordinal)) || start.Contains("BEGIN_DATA_FORMAT", StringComparison.Ordinal);
    }

    private static string Decoded(ReadOnlySpan<byte> bytes)
    {
        string text = bytes switch
        {
            [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes[2..]),
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes[2..]),
            [0xEF, 0xBB, 0xBF, ..] => Encoding.UTF8.GetString(bytes[3..]),
            _ => Utf8OrLatin(bytes),
        };
        int odd = text.AsSpan().IndexOfAnyInRange('\0', '\b');
        if (odd < 0) odd = text.AsSpan().IndexOfAnyInRange('\u000E', '\u001F');
        return odd < 0 || text[odd] == '\u001A' ? text.TrimEnd('\u001A') : throw new FaultException(new(FaultKind.Binary, 1 + text.AsSpan(0, odd).Count('\n')));
    }

    private static string Utf8OrLatin(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
