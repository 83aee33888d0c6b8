using System.Globalization;
using Alumroot.App.Trials;
using Alumroot.Trials.Repeats;

namespace Alumroot.App.Words;

/// <summary>Repeats beside their standard, in words.</summary>
public static class RepeatWords
{
    /// <summary>What the place of a value says.</summary>
    public static string Of(ControlSign sign) => sign switch
    {
        ControlSign.Above => "moved: above the upper limit",
        ControlSign.Below => "moved: below the lower limit",
        ControlSign.RunAbove => "drifted: eight in a row above the mean",
        ControlSign.RunBelow => "drifted: eight in a row below the mean",
        _ => "within the limits",
    };

    /// <summary>What was otherwise than in the standard: "alkali lot lot-9 in place of lot-6; final pH 7.0 in place of 6.5".</summary>
    public static string Of(IReadOnlyList<BatchChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return changes.Count == 0 ? "nothing that the record knows" : string.Join("; ", changes.Select(c => $"{c.What} {c.To} in place of {c.From}"));
    }

    /// <summary>What the limits are and how far they can be trusted.</summary>
    public static string Of(ControlFound found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return $"Mean {TrialWords.Figure(found.Mean)}, limits {TrialWords.Figure(found.Lower)} to {TrialWords.Figure(found.Upper)}, from the steps between {found.Points.Count} batches{(found.IsProvisional ? string.Create(CultureInfo.InvariantCulture, $"; loose still, {IndividualsChart.EnoughPoints} make them firm") : "")}.";
    }

    /// <summary>A sentence for each batch that moved, with what was changed.</summary>
    public static IEnumerable<string> Moved(RepeatSeries series, RepeatChart chart)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(chart);
        foreach (RepeatPoint point in chart.Points.Where(p => p.Point.Sign != ControlSign.Within))
            yield return $"{point.Key} {Of(point.Point.Sign)}, at {TrialWords.Figure(point.Point.Value)}. {(series.Repeats.FirstOrDefault(r => r.Batch.Key == point.Key) is { } repeat ? $"Otherwise than in {series.Standard.Key}: {Of(repeat.Changes)}." : "It is the standard itself.")}";
    }
}
