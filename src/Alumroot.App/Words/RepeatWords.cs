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
    /// <param name="series">The standard and its repeats.</param>
    /// <param name="chart">What is judged.</param>
    /// <param name="colour">Whether it is the colour, which has a doubt of its own.</param>
    public static IEnumerable<string> Moved(RepeatSeries series, RepeatChart chart, bool colour)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(chart);
        foreach (RepeatPoint point in chart.Points.Where(p => p.Point.Sign != ControlSign.Within))
            yield return $"{point.Key} {Of(point.Point.Sign)}, at {TrialWords.Figure(point.Point.Value)}. {(series.Repeats.FirstOrDefault(r => r.Batch.Key == point.Key) is { } repeat ? $"Otherwise than in {series.Standard.Key}: {Of(repeat.Changes)}.{(colour ? Doubt(repeat, chart.Found) : "")}" : "It is the standard itself.")}";
    }

    // A camera can move a colour too.
    private static string Doubt(Repeat repeat, ControlFound found) => repeat.Within is not { } within ? " How far its colour may be off is not known: a photograph without a target can be the cause."
        : repeat.DeltaE2000 - within < found.Upper ? string.Create(CultureInfo.InvariantCulture, $" The doubt of the two colours, {within:0.0}, could explain it as well: measure again.") : "";
}
