using System.Globalization;

namespace Alumroot.Permanence.Dose;

/// <summary>What is wrong in the file of a light logger.</summary>
public enum LoggerFaultKind
{
    /// <summary>The time cannot be read.</summary>
    TimeUnread,

    /// <summary>The level cannot be read.</summary>
    LuxUnread,

    /// <summary>The level is below nothing.</summary>
    LuxNegative,

    /// <summary>The time does not come after the one before.</summary>
    TimeGoesBack,

    /// <summary>The line has more numbers than time and level, and no heading says which is which.</summary>
    WhichColumn,

    /// <summary>Every date can be read with the day or with the month first.</summary>
    DayOrMonth,

    /// <summary>Fewer than two readings could be taken.</summary>
    TooFew,
}

/// <summary>A fault at a line.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">What stands there.</param>
public sealed record LoggerFault(int Line, LoggerFaultKind Kind, string Text);

/// <summary>What was read of a logger's file.</summary>
/// <param name="Readings">By rising time, in hours from the first.</param>
/// <param name="StartsAt">The local time of the first reading; null when the file counts hours.</param>
/// <param name="Faults">By line; their lines are left out.</param>
public sealed record LoggerReadings(IReadOnlyList<LuxReading> Readings, DateTime? StartsAt, IReadOnlyList<LoggerFault> Faults)
{
    private const double MostBadShare = 0.1;

    /// <summary>Whether the readings may be used: at least two, no doubt about the whole file, and at most one line in ten at fault.</summary>
    public bool IsUsable => Readings.Count >= 2 && !Faults.Any(f => f.Kind is LoggerFaultKind.DayOrMonth or LoggerFaultKind.TooFew) && Faults.Count <= MostBadShare * (Readings.Count + Faults.Count);
}

/// <summary>Reads the text file of a light logger: time and lux, parted by commas, semicolons, tabs or bars, with a point or a comma in the numbers.</summary>
public static class LoggerFile
{
    private const double Kilo = 1000;

    /// <summary>Reads a file.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="dayFirst">Whether dates such as 03/04 begin with the day; null to let the file tell.</param>
    public static LoggerReadings Read(string text, bool? dayFirst = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        LoggerLine[] lines = [.. LoggerLine.Of(text)];
        (LoggerColumns columns, int first) = LoggerColumns.Find(lines);
        LoggerLine[] body = [.. lines.Skip(first)];
        var faults = new List<LoggerFault>();
        bool order = dayFirst ?? true;
        if (dayFirst is null && body.Length > 0)
        {
            bool? told = LoggerTime.DayFirst(body.Select(l => columns.Time(l)));
            // Either way would do for every line: when the days then run on as a log's do in one order only, that is the one.
            if (told is null && Runs(body, columns, true) is var day && Runs(body, columns, false) is var month && day == month)
                return new LoggerReadings([], null, [new LoggerFault(body[0].Number, LoggerFaultKind.DayOrMonth, columns.Time(body[0]))]);
            order = told ?? Runs(body, columns, true);
        }
        var readings = new List<LuxReading>();
        DateTime? start = null;
        double last = double.NegativeInfinity;
        foreach (LoggerLine line in body)
        {
            if (columns.Lux is null && line.Fields.Count > 2)
            {
                faults.Add(new LoggerFault(line.Number, LoggerFaultKind.WhichColumn, line.Text));
                continue;
            }
            string time = columns.Time(line), level = columns.Level(line);
            LoggerTime.Moment? at = LoggerTime.Read(time, order, columns.TimeUnitHours);
            double? lux = LoggerNumber.Read(level) * (columns.IsKilo ? Kilo : 1);
            LoggerFaultKind? fault = at is null ? LoggerFaultKind.TimeUnread : lux is null ? LoggerFaultKind.LuxUnread : lux < 0 ? LoggerFaultKind.LuxNegative : null;
            if (fault is { } kind)
            {
                faults.Add(new LoggerFault(line.Number, kind, kind == LoggerFaultKind.TimeUnread ? time : level));
                continue;
            }
            start ??= at!.Value.Clock;
            double hours = at!.Value.Clock is { } clock && start is { } began ? (clock - began).TotalHours : at.Value.Hours;
            if (!(hours > last))
            {
                faults.Add(new LoggerFault(line.Number, LoggerFaultKind.TimeGoesBack, time));
                continue;
            }
            last = hours;
            readings.Add(new LuxReading(hours, lux!.Value));
        }
        if (readings.Count < 2) faults.Add(new LoggerFault(lines.Length == 0 ? 1 : lines[^1].Number, LoggerFaultKind.TooFew, readings.Count.ToString(CultureInfo.InvariantCulture)));
        return new LoggerReadings(readings, start, faults);
    }

    /// <summary>Whether the dates never fall back and no step is longer than a week.</summary>
    private static bool Runs(LoggerLine[] body, LoggerColumns columns, bool dayFirst)
    {
        const double LongestDays = 7;
        DateTime? before = null;
        foreach (LoggerLine line in body)
        {
            if (LoggerTime.Read(columns.Time(line), dayFirst, 1)?.Clock is not { } at) continue;
            if (before is { } b && (at < b || (at - b).TotalDays > LongestDays)) return false;
            before = at;
        }
        return true;
    }
}
