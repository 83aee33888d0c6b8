using System.Globalization;
using Alumroot.App.Bench;

namespace Alumroot.App.Studio;

/// <summary>When to look again, as people type it: a day, or a time from now.</summary>
public static class LookAgain
{
    private const int MostDays = 3660, Morning = 9;
    private static readonly string[] Forms = ["yyyy-MM-dd", "d MMM yyyy", "d.M.yyyy"];

    /// <summary>A day; null when the text is none.</summary>
    public static DateOnly? Day(string typed) => DateOnly.TryParseExact(typed, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    /// <summary>"2026-12-24" is its morning, "28 days" counts from now; or the sentence that says what is wrong.</summary>
    /// <param name="typed">What was typed; null or blank for nothing.</param>
    /// <param name="now">The time here.</param>
    public static (DateTimeOffset? At, string? Trouble) Read(string? typed, DateTimeOffset now)
    {
        if (string.IsNullOrWhiteSpace(typed)) return (null, null);
        DateTimeOffset? at = Day(typed.Trim()) is { } day ? new DateTimeOffset(day.ToDateTime(new TimeOnly(Morning, 0)), now.Offset)
            : WaitText.Read(typed) is { } wait && wait.TotalDays <= MostDays ? now + wait : null;
        if (at is null) return (null, $"Look again: '{typed}' is neither a day nor a time from now. Write it like 2026-11-14 or 28 days.");
        if (at.Value.Date < now.Date) return (null, $"Look again: '{typed}' is past. Write a day that comes, such as {now.AddDays(1):yyyy-MM-dd}.");
        return (at - now).Value.TotalDays > MostDays + 1 ? (null, $"Look again: '{typed}' is more than ten years away. Write a nearer day.") : (at, null);
    }
}
