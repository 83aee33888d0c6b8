using System.Globalization;

namespace Alumroot.App.Words;

/// <summary>What is said while corners are shown in a photograph.</summary>
internal static class CornerWords
{
    private static readonly string[] OfTarget =
    [
        "the target's corner nearest its first patch",
        "the target's next corner, at the end of its first row",
        "the corner across from the first, at its last patch",
        "the target's last corner, where its last row begins",
    ];

    /// <summary>Where to press next, or what to look at.</summary>
    /// <param name="shown">How many corners are shown already.</param>
    /// <param name="target">Whether they are the target's.</param>
    internal static string Next(int shown, bool target) => shown switch
    {
        >= 4 => "Four corners are shown. Look at each from near, nudge it if it is off, then measure.",
        _ when target => $"Press on corner {shown + 1} of 4: {OfTarget[shown]}.",
        _ => $"Press on corner {shown + 1} of 4 of the area, going round.",
    };

    /// <summary>When four corners are no outline.</summary>
    internal const string Crossed = "The four corners cross over or lie on one line. Go round in order, and start again if need be.";

    /// <summary>When a typed corner is no place in the picture.</summary>
    internal static string Unread(int number, string? typed, int widthPixels, int heightPixels) =>
        string.Create(CultureInfo.InvariantCulture, $"Corner {number}: '{typed}' is no place in this picture of {widthPixels} x {heightPixels} pixels. Write how far to the right and how far down, such as 120 340.");
}
