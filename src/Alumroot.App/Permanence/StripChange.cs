using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Permanence;

/// <summary>How far the exposed half of a strip has moved from its covered half.</summary>
/// <param name="Reading">Which reading of the exposure, from 0.</param>
/// <param name="Sample">Name of the sample.</param>
/// <param name="Strip">Which strip, from 1.</param>
/// <param name="Before">The colour it had, as far as it is known.</param>
/// <param name="After">The colour it has.</param>
/// <param name="DeltaE">CIE 1976 difference, the formula of the grey scale.</param>
public sealed record StripChange(int Reading, string Sample, int Strip, Lab Before, Lab After, double DeltaE)
{
    /// <summary>Whether it is what the halves differed by before any light told; such a change is no fading.</summary>
    public bool IsFirst { get; private init; }

    /// <summary>How far either colour may be off, in CIEDE2000; null when nothing bounds it.</summary>
    public double? WithinDeltaE2000 { get; private init; }

    // A reading within an hour of the beginning shows how the halves differed before any light told.
    private const double AtFirstHours = 1;

    /// <summary>The changes of all strips at all readings, by time. Where the halves differed before the exposure, that is taken off; a strip without a covered half is held against its own first reading.</summary>
    internal static IReadOnlyList<StripChange> Of(ExposureState exposure)
    {
        var first = new Dictionary<(string, int), StripRead>();
        var changes = new List<StripChange>();
        for (int i = 0; i < exposure.Readings.Count; i++)
        {
            ExposureEntry<ExposureRead> reading = exposure.Readings[i];
            bool atFirst = (reading.At - exposure.At).TotalHours <= AtFirstHours;
            foreach (StripRead strip in reading.Said.Strips)
            {
                (string, int) key = (strip.Sample, strip.Strip);
                bool known = first.TryGetValue(key, out StripRead? before);
                Lab after = Of(strip.Exposed);
                bool isFirst = !known && atFirst;
                if (strip.Covered is { } covered)
                {
                    Lab moved = known && before!.Covered is { } c0 ? Plus(Of(covered), Of(before.Exposed), Of(c0)) : Of(covered);
                    changes.Add(new StripChange(i, strip.Sample, strip.Strip, moved, after, ColourDifference.Between(moved, after).DeltaE76) { WithinDeltaE2000 = strip.WithinDeltaE2000, IsFirst = isFirst });
                }
                else if (known) changes.Add(new StripChange(i, strip.Sample, strip.Strip, Of(before!.Exposed), after, ColourDifference.Between(Of(before.Exposed), after).DeltaE76) { WithinDeltaE2000 = strip.WithinDeltaE2000 });
                if (!known && (atFirst || strip.Covered is null)) first[key] = strip;
            }
        }
        return changes;
    }

    /// <summary>The covered half, moved by as much as the two halves differed at first.</summary>
    private static Lab Plus(Lab covered, Lab exposedAtFirst, Lab coveredAtFirst) =>
        new(covered.L + exposedAtFirst.L - coveredAtFirst.L, covered.A + exposedAtFirst.A - coveredAtFirst.A, covered.B + exposedAtFirst.B - coveredAtFirst.B);

    private static Lab Of(LabText text) => new(text.LabL, text.LabA, text.LabB);
}
