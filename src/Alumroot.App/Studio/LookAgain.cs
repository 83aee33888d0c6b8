using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.App.Bench;

namespace Alumroot.App.Studio;

/// <summary>When to look again, as people type it: a day, or a time from now.</summary>
public static partial class LookAgain
{
    private const int MostDays = 3660, Morning = 9, DaysOfAWeek = 7;
    private static readonly string[] Forms = ["yyyy-MM-dd", "d MMM yyyy", "d.M.yyyy"];

    /// <summary>A day; null when the text is none.</summary>
    public static DateOnly? Day(string typed) => DateOnly.TryParseExact(typed, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    /// <summary>"2026-12-24" is its morning, "28 days" and "4 weeks" count from now; or the sentence that says what is wrong.</summary>
    /// <param name="typed">What was typed; null or blank for nothing.</param>
    /// <param name="now">The time here.</param>
    public static (DateTimeOffset? At, string? Trouble) Read(string? typed, DateTimeOffset now)
    {
        if (string.IsNullOrWhiteSpace(typed)) return (null, null);
        string text = typed.Trim();
        if (Bare().IsMatch(text)) return (null, $"Look again: {text} of what? Write it like {text} days, or a day such as 2026-11-14.");
        DateTimeOffset? at = Day(text) is { } day ? new DateTimeOffset(day.ToDateTime(new TimeOnly(Morning, 0)), now.Offset) : Wait(text) is { } wait && wait.TotalDays <= MostDays ? now + wait : null;
        if (at is null) return (null, $"Look again: '{text}' is neither a day nor a time from now. Write it like 2026-11-14 or 4 weeks.");
        if (at.Value.Date < now.Date) return (null, $"Look again: '{text}' is past. Write a day that comes, such as {now.AddDays(1):yyyy-MM-dd}.");
        return (at - now).Value.TotalDays > MostDays + 1 ? (null, $"Look again: '{text}' is more than ten years away. Write a nearer day.") : (at, null);
    }

    private static TimeSpan? Wait(string text) => Weeks().Match(text) is { Success: true } weeks
        ? TimeSpan.FromDays(DaysOfAWeek * double.Parse(weeks.Groups[1].Value.Replace(',', '.'), CultureInfo.InvariantCulture))
        : WaitText.Read(text);

    // A day such as 14.11.2026 has two points and is none.
    [GeneratedRegex(@"\A[0-9]+([.,][0-9]+)?\z")]
    private static partial Regex Bare();

    [GeneratedRegex(@"\A([0-9]{1,4}(?:[.,][0-9]{1,3})?)\s*weeks?\z", RegexOptions.IgnoreCase)]
    private static partial Regex Weeks();
}
