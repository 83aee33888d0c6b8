using System.Globalization;

namespace Alumroot.App.Words;

/// <summary>Times in words, in the zone in which they were kept.</summary>
public static class TimeWords
{
    /// <summary>"14:35" today, "tomorrow 14:35", "yesterday 14:35", else "14 Nov 14:35", with the year when it is another.</summary>
    public static string Of(DateTimeOffset at, DateTimeOffset now)
    {
        DateTimeOffset there = at.ToOffset(now.Offset);
        int days = (there.Date - now.Date).Days;
        string clock = there.ToString("HH:mm", CultureInfo.InvariantCulture);
        return days switch
        {
            0 => clock,
            1 => $"tomorrow {clock}",
            -1 => $"yesterday {clock}",
            _ => there.ToString(there.Year == now.Year ? "d MMM" : "d MMM yyyy", CultureInfo.InvariantCulture) + " " + clock,
        };
    }

    /// <summary>"14 Nov 2026".</summary>
    public static string Day(DateTimeOffset at) => at.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"14 Nov 14:02:31", as an entry shows it.</summary>
    public static string Entry(DateTimeOffset at) => at.ToString("d MMM HH:mm:ss", CultureInfo.InvariantCulture);
}
