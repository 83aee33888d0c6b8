using System.Globalization;

namespace Alumroot.Permanence.Dose;

/// <summary>Reads a number as loggers of different countries write it.</summary>
internal static class LoggerNumber
{
    /// <summary>The number; null when it is none. Of a point and a comma the last parts the decimals; a lone comma does so too.</summary>
    internal static double? Read(string text)
    {
        string t = text.Trim().TrimEnd('l', 'x', 'L', 'X', 'u', 'U').Trim().Replace(" ", "", StringComparison.Ordinal).Replace("\u00A0", "", StringComparison.Ordinal).Replace("'", "", StringComparison.Ordinal);
        int comma = t.LastIndexOf(','), point = t.LastIndexOf('.');
        if (comma >= 0 && point >= 0) t = comma > point ? t.Replace(".", "", StringComparison.Ordinal).Replace(',', '.') : t.Replace(",", "", StringComparison.Ordinal);
        else if (comma >= 0) t = t.Replace(',', '.');
        return double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : null;
    }
}
