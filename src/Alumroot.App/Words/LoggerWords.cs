using System.Globalization;
using Alumroot.Permanence.Dose;

namespace Alumroot.App.Words;

/// <summary>Faults in the file of a light logger as sentences that say what to do.</summary>
public static class LoggerWords
{
    private const int LongestText = 40;

    /// <summary>"line 7: '31/02' is no time that could be read. ...".</summary>
    public static string Of(LoggerFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        string text = fault.Text[..Math.Min(fault.Text.Length, LongestText)], line = string.Create(CultureInfo.InvariantCulture, $"line {fault.Line}");
        return fault.Kind switch
        {
            LoggerFaultKind.TimeUnread => $"{line}: '{text}' is no time that could be read. Write it like 2026-11-14 08:30, or hours from the start.",
            LoggerFaultKind.LuxUnread => $"{line}: '{text}' is no level in lux. Write a number such as 1250.",
            LoggerFaultKind.LuxNegative => $"{line}: '{text}' lies below nothing. Look at the logger's settings.",
            LoggerFaultKind.TimeGoesBack => $"{line}: the time {text} does not come after the one before. Sort the file by time.",
            LoggerFaultKind.WhichColumn => $"{line}: several numbers stand there, and no heading says which is the light. Put a line with names first, such as time, lux.",
            LoggerFaultKind.DayOrMonth => $"{line}: '{text}' can be read with the day or the month first. Say which below and send the file again.",
            LoggerFaultKind.TooFew => $"{text} readings could be taken; two are the least. Send the file as the logger wrote it, time and lux.",
            _ => throw new ArgumentException($"There are no words for {fault.Kind}.", nameof(fault)),
        };
    }
}
