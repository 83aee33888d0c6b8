using System.Globalization;
using System.Text.RegularExpressions;

namespace Alumroot.App.Bench;

/// <summary>A time to wait, as typed.</summary>
public static partial class WaitText
{
    /// <summary>Reads minutes, hours or days, with a point or comma; a bare number is minutes. Null when it is none of these.</summary>
    public static TimeSpan? Read(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (Shape().Match(typed.Trim().Replace(',', '.')) is not { Success: true } match) return null;
        if (!double.TryParse(match.Groups[1].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) || number > 1e6) return null;
        return match.Groups[2].Value.ToLowerInvariant() switch
        {
            "h" or "hour" or "hours" => TimeSpan.FromHours(number),
            "d" or "day" or "days" => TimeSpan.FromDays(number),
            _ => TimeSpan.FromMinutes(number),
        };
    }

    /// <summary>"42 minutes", "3 h 20 min", "2 days 4 h".</summary>
    public static string Of(TimeSpan left)
    {
        TimeSpan rounded = TimeSpan.FromMinutes(Math.Ceiling(left.TotalMinutes));
        if (rounded.TotalMinutes < 2) return "1 minute";
        if (rounded.TotalHours < 1) return string.Create(CultureInfo.InvariantCulture, $"{rounded.TotalMinutes:0} minutes");
        if (rounded.TotalDays < 1) return rounded.Minutes == 0 ? $"{rounded.Hours} h" : $"{rounded.Hours} h {rounded.Minutes} min";
        string days = rounded.Days == 1 ? "1 day" : $"{rounded.Days} days";
        return rounded.Hours == 0 ? days : $"{days} {rounded.Hours} h";
    }

    [GeneratedRegex(@"\A([0-9]+(?:\.[0-9]+)?)\s*(min|minute|minutes|m|h|hour|hours|d|day|days)?\z", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
