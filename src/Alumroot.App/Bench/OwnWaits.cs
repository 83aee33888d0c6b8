using Alumroot.App.Words;
using Alumroot.Chemistry.Process;
using Alumroot.Quantities;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>A stretch of the work whose length is learned from earlier lakes.</summary>
/// <param name="Name">"settling".</param>
/// <param name="From">The act it begins with.</param>
/// <param name="To">The act it ends with.</param>
public sealed record OwnStretch(string Name, Act From, Act To)
{
    /// <summary>Settling, washing, filtering, drying, in the order of the work.</summary>
    public static IReadOnlyList<OwnStretch> All { get; } =
    [
        new("settling", Acts.Settle, Acts.DrawnOff),
        new("washing", Acts.WashIn, Acts.WashDone),
        new("filtering", Acts.FilterOn, Acts.FilterOff),
        new("drying", Acts.DryWeighed, Acts.DryDone),
    ];
}

/// <summary>How long things took in this studio.</summary>
/// <param name="Stretch">What.</param>
/// <param name="NextHours">How long the next will take.</param>
/// <param name="Lakes">From how many lakes that is known.</param>
public sealed record OwnTime(OwnStretch Stretch, Estimate NextHours, int Lakes)
{
    /// <summary>"14 h (8 to 24), from 5 lakes of yours".</summary>
    public string Said => $"{HourWords.Of(NextHours)}, from {(Lakes == 1 ? "one lake" : $"{Lakes} lakes")} of yours";
}

/// <summary>Reads earlier lakes for how long their steps took.</summary>
public static class OwnWaits
{
    // The latest lakes tell best, and a page must not read a whole studio.
    private const int Latest = 30;

    /// <summary>The stretches that are known, in the order of the work.</summary>
    public static IReadOnlyList<OwnTime> Of(StudioStore studio)
    {
        ArgumentNullException.ThrowIfNull(studio);
        BatchState[] lakes = [.. studio.List(null, Latest, SubjectClass.Batch).Select(l => studio.Batch(l.Subject)).OfType<BatchState>()];
        return [.. OwnStretch.All.Select(stretch => Of(stretch, lakes)).OfType<OwnTime>()];
    }

    /// <summary>The stretch that begins with an act; null when it is not known.</summary>
    public static OwnTime? After(Act act, StudioStore studio) => Of(studio).FirstOrDefault(t => t.Stretch.From == act);

    private static OwnTime? Of(OwnStretch stretch, BatchState[] lakes)
    {
        double[] hours = [.. lakes.Select(l => Hours(stretch, l)).OfType<double>()];
        return OwnTimes.NextHours(hours) is { } next ? new OwnTime(stretch, next, hours.Length) : null;
    }

    private static double? Hours(OwnStretch stretch, BatchState lake)
    {
        DateTimeOffset? from = lake.Taken.Where(t => Acts.Of(t.Step) == stretch.From).Select(t => (DateTimeOffset?)t.At).FirstOrDefault();
        DateTimeOffset? to = lake.Taken.Where(t => Acts.Of(t.Step) == stretch.To).Select(t => (DateTimeOffset?)t.At).LastOrDefault();
        return from is { } a && to is { } b && b > a ? (b - a).TotalHours : null;
    }
}
