namespace Alumroot.Permanence.Dose;

/// <summary>Which field of a line is the time and which the level.</summary>
internal sealed record LoggerColumns
{
    // Lines before the heading tell of the instrument; no logger writes more.
    private const int MostBefore = 60;

    private const double MinuteHours = 1.0 / 60, SecondHours = 1.0 / 3600;

    private static readonly string[] TimeWords = ["time", "date", "datum", "zeit", "uhrzeit", "heure", "fecha", "hora", "hour", "minute", "second", "elapsed", "stamp"];
    private static readonly string[] LuxWords = ["lux", "lx", "illuminance", "light", "beleuchtung", "helligkeit", "luz", "lumi"];

    /// <summary>Number of the field with the level; null when no heading told.</summary>
    internal int? Lux { get; private init; }

    /// <summary>Numbers of the fields that make up the time, in their order.</summary>
    private int[] Times { get; init; } = [0];

    /// <summary>Whether the level is in thousands of lux.</summary>
    internal bool IsKilo { get; private init; }

    /// <summary>What a bare number in the time field counts, in hours.</summary>
    internal double TimeUnitHours { get; private init; } = 1;

    private int HeadingFields { get; init; }

    /// <summary>The columns and how many lines come before the readings.</summary>
    internal static (LoggerColumns Columns, int First) Find(IReadOnlyList<LoggerLine> lines)
    {
        for (int i = 0; i < Math.Min(lines.Count, MostBefore); i++)
        {
            IReadOnlyList<string> fields = lines[i].Fields;
            int lux = IndexOf(fields, LuxWords), time = IndexOf(fields, TimeWords);
            if (fields.Count > 1 && lux >= 0 && time >= 0 && LoggerNumber.Read(fields[lux]) is null)
            {
                int[] times = [.. Enumerable.Range(0, fields.Count).Where(n => n != lux && Holds(fields[n], TimeWords))];
                string unit = fields[times[0]].ToLowerInvariant();
                return (new LoggerColumns
                {
                    Lux = lux,
                    Times = times.Length > 2 ? times[..1] : times,
                    IsKilo = fields[lux].Contains("klx", StringComparison.OrdinalIgnoreCase) || fields[lux].Contains("klux", StringComparison.OrdinalIgnoreCase),
                    TimeUnitHours = unit.Contains("min", StringComparison.Ordinal) ? MinuteHours : unit.Contains("sec", StringComparison.Ordinal) || unit.EndsWith("_s", StringComparison.Ordinal) || unit.Contains("(s)", StringComparison.Ordinal) ? SecondHours : 1,
                    HeadingFields = fields.Count,
                }, i + 1);
            }
            if (fields.Count > 1 && LoggerTime.Read(fields[0], true, 1) is not null && LoggerNumber.Read(fields[1]) is not null) return (new LoggerColumns(), i);
        }
        return (new LoggerColumns(), 0);
    }

    internal string Time(LoggerLine line) => string.Join(' ', Times.Where(t => t < line.Fields.Count).Select(t => line.Fields[t]));

    /// <summary>The level. When it is the last column and a line has one field more than the heading, its decimal comma parted it.</summary>
    internal string Level(LoggerLine line)
    {
        int at = Lux ?? 1;
        if (at >= line.Fields.Count) return "";
        return Lux == HeadingFields - 1 && line.Fields.Count == HeadingFields + 1 && line.Text.Contains(',', StringComparison.Ordinal) ? $"{line.Fields[at]},{line.Fields[at + 1]}" : line.Fields[at];
    }

    private static int IndexOf(IReadOnlyList<string> fields, string[] words)
    {
        for (int i = 0; i < fields.Count; i++)
            if (Holds(fields[i], words)) return i;
        return -1;
    }

    private static bool Holds(string field, string[] words) => words.Any(w => field.Contains(w, StringComparison.OrdinalIgnoreCase));
}
