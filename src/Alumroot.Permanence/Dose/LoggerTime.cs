using System.Globalization;
using System.Text.RegularExpressions;

namespace Alumroot.Permanence.Dose;

/// <summary>Reads a time as loggers write it.</summary>
internal static partial class LoggerTime
{
    private const int Century = 2000, MostYears = 100, NoonHours = 12;

    /// <summary>A time of the clock, or hours from a start.</summary>
    internal readonly record struct Moment(DateTime? Clock, double Hours);

    /// <summary>The time; null when it is none.</summary>
    /// <param name="text">A date with a time, or a number.</param>
    /// <param name="dayFirst">Whether a date of three numbers that does not begin with the year begins with the day.</param>
    /// <param name="unitHours">What a bare number counts.</param>
    internal static Moment? Read(string text, bool dayFirst, double unitHours)
    {
        if (Dated().Match(text) is { Success: true } m)
        {
            int a = Number(m, 1), b = Number(m, 2), c = Number(m, 3);
            bool yearFirst = m.Groups[1].Length == 4;
            // With points the day comes first wherever they are used.
            bool day = dayFirst || m.Value.Contains('.', StringComparison.Ordinal) && !m.Value.Contains('/', StringComparison.Ordinal);
            (int year, int month, int date) = yearFirst ? (a, b, c) : day ? (c, b, a) : (c, a, b);
            if (year < MostYears) year += Century;
            int hour = m.Groups[4].Success ? Number(m, 4) : 0, minute = m.Groups[5].Success ? Number(m, 5) : 0;
            double second = m.Groups[6].Success ? double.Parse(m.Groups[6].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : 0;
            if (m.Groups[7].Success)
            {
                if (hour is < 1 or > NoonHours) return null;
                hour = hour % NoonHours + (m.Groups[7].Value[0] is 'p' or 'P' ? NoonHours : 0);
            }
            if (month is < 1 or > 12 || date < 1 || year is < 1900 or > 2200 || date > DateTime.DaysInMonth(year, month) || hour > 23 || minute > 59 || second >= 60) return null;
            return new Moment(new DateTime(year, month, date, hour, minute, 0, DateTimeKind.Unspecified).AddSeconds(second) - Offset(m.Groups[8].Value), 0);
        }
        return LoggerNumber.Read(text) is { } hours ? new Moment(null, hours * unitHours) : null;
    }

    /// <summary>Whether the day comes first, from numbers above twelve; null when no line tells.</summary>
    internal static bool? DayFirst(IEnumerable<string> times)
    {
        bool any = false;
        foreach (string text in times)
        {
            if (Dated().Match(text) is not { Success: true } m || m.Groups[1].Length == 4 || m.Value.Contains('.', StringComparison.Ordinal) && !m.Value.Contains('/', StringComparison.Ordinal)) continue;
            any = true;
            if (Number(m, 1) > 12) return true;
            if (Number(m, 2) > 12) return false;
        }
        return any ? null : true;
    }

    // A zone behind the time: all times of a file are brought to one.
    private static TimeSpan Offset(string zone) => zone.Length < 3 ? TimeSpan.Zero
        : (zone[0] == '-' ? -1 : 1) * new TimeSpan(int.Parse(zone.AsSpan(1, 2), CultureInfo.InvariantCulture), zone.Length >= 5 ? int.Parse(zone.AsSpan(zone.Length - 2), CultureInfo.InvariantCulture) : 0, 0);

    private static int Number(Match m, int group) => int.Parse(m.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\A\s*([0-9]{1,4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,4})(?:[T ,]+([0-9]{1,2})[:.h]([0-9]{2})(?:[:.]([0-9]{2}(?:[.,][0-9]+)?))?\s*([AaPp])?\.?[Mm]?\.?)?\s*(?:Z|([+-][0-9]{2}:?(?:[0-9]{2})?))?\s*\z")]
    private static partial Regex Dated();
}
