using System.Globalization;
using System.Text;

namespace Alumroot.Colour.Interchange;

/// <summary>How the ordinates of a JCAMP-DX table are written.</summary>
public enum JcampPacking
{
    /// <summary>Free numbers parted by blanks.</summary>
    Free,

    /// <summary>The sign parts the numbers.</summary>
    Packed,

    /// <summary>The first digit holds the sign.</summary>
    Squeezed,

    /// <summary>Differences, with a check at the begin of each line.</summary>
    Differences,

    /// <summary>Differences and counts of repeats.</summary>
    DifferencesRepeated,
}

/// <summary>Writes one evenly spaced spectrum as JCAMP-DX 4.24.</summary>
public static class JcampWriter
{
    private const int LineLength = 72, Digits = 7;
    private const string SqueezedPlus = "@ABCDEFGHI", SqueezedMinus = "@abcdefghi", DifferencePlus = "%JKLMNOPQR", DifferenceMinus = "%jklmnopqr", Repeats = " STUVWXYZs";

    /// <summary>The file as text. Ordinates are kept to seven digits of the largest.</summary>
    /// <exception cref="ArgumentException">There is no evenly spaced spectrum.</exception>
    public static string Write(ColourSample sample, JcampPacking packing)
    {
        ArgumentNullException.ThrowIfNull(sample);
        if (sample.Spectrum is not { StepNanometres: { } step } spectrum) throw new ArgumentException("JCAMP-DX needs an evenly spaced spectrum.", nameof(sample));
        double largest = spectrum.Values.Max(Math.Abs);
        double factor = largest > 0 ? Math.Pow(10, Math.Ceiling(Math.Log10(largest)) - Digits) : 1;
        long[] ordinates = [.. spectrum.Values.Select(v => (long)Math.Round(v / factor))];
        var text = new StringBuilder();
        Label("TITLE", ColourWriters.OneLine(sample.Name ?? sample.Id).Replace("$$", " ", StringComparison.Ordinal).Trim());
        Label("JCAMP-DX", "4.24");
        Label("DATA TYPE", "UV/VIS SPECTRUM");
        Label("ORIGIN", "Alumroot");
        Label("OWNER", "");
        Label("XUNITS", "NANOMETERS");
        Label("YUNITS", sample.Kind switch { SpectrumKind.Absorbance => "ABSORBANCE", SpectrumKind.Transmittance => "TRANSMITTANCE", SpectrumKind.Reflectance => "REFLECTANCE", _ => "ARBITRARY UNITS" });
        Label("XFACTOR", "1");
        Label("YFACTOR", ColourWriters.Text(factor));
        Label("FIRSTX", ColourWriters.Text(spectrum.Nanometres[0]));
        Label("LASTX", ColourWriters.Text(spectrum.Nanometres[^1]));
        Label("NPOINTS", spectrum.Count.ToString(CultureInfo.InvariantCulture));
        Label("FIRSTY", ColourWriters.Text(ordinates[0] * factor));
        Label("DELTAX", ColourWriters.Text(step));
        Label("XYDATA", "(X++(Y..Y))");
        Table(ordinates, i => ColourWriters.Text(spectrum.Nanometres[i]), packing, text);
        Label("END", "");
        return text.ToString();

        void Label(string name, string value) => text.Append("##").Append(name).Append('=').Append(value).Append('\n');
    }

    private static void Table(long[] y, Func<int, string> x, JcampPacking packing, StringBuilder text)
    {
        bool differences = packing is JcampPacking.Differences or JcampPacking.DifferencesRepeated;
        int i = 0;
        while (i < y.Length)
        {
            var line = new StringBuilder(x(i)).Append(First(y[i], packing));
            int next = i + 1;
            while (next < y.Length && line.Length < LineLength - 12)
            {
                line.Append(differences ? Packed(y[next] - y[next - 1], DifferencePlus, DifferenceMinus) : First(y[next], packing));
                int same = 1;
                if (packing == JcampPacking.DifferencesRepeated)
                    while (next + 1 < y.Length && y[next + 1] - y[next] == y[next] - y[next - 1]) (next, same) = (next + 1, same + 1);
                if (same > 1) line.Append(Repeated(same));
                next++;
            }
            text.Append(line).Append('\n');
            // With differences the last ordinate of a line is the first of the next, as a check.
            if (differences && next == y.Length && next > i + 1) text.Append(x(next - 1)).Append(First(y[^1], packing)).Append('\n');
            i = differences && next > i + 1 && next < y.Length ? next - 1 : next;
        }
    }

    private static string First(long y, JcampPacking packing) => packing switch
    {
        JcampPacking.Free => " " + y.ToString(CultureInfo.InvariantCulture),
        JcampPacking.Packed => (y < 0 ? "" : "+") + y.ToString(CultureInfo.InvariantCulture),
        _ => Packed(y, SqueezedPlus, SqueezedMinus),
    };

    private static string Packed(long y, string plus, string minus)
    {
        string digits = Math.Abs(y).ToString(CultureInfo.InvariantCulture);
        return (y < 0 ? minus : plus)[digits[0] - '0'] + digits[1..];
    }

    private static string Repeated(int times)
    {
        string digits = times.ToString(CultureInfo.InvariantCulture);
        return Repeats[digits[0] - '0'] + digits[1..];
    }
}
