using Alumroot.Colour.Colorimetry;
using Alumroot.Numerics;
using Alumroot.Trials.Ladder;

namespace Alumroot.App.Trials;

/// <summary>A colour of the ladder with how far it may be off.</summary>
/// <param name="Ph">The pH.</param>
/// <param name="Colour">Lab for D50.</param>
/// <param name="Within">Nine times in ten the truth is no farther, CIEDE2000.</param>
/// <param name="IsInside">Whether jars stand on both sides of this pH.</param>
public sealed record LadderColour(double Ph, Lab Colour, double Within, bool IsInside);

/// <summary>Colours from a fitted ladder.</summary>
/// <param name="Table">From which it was fitted.</param>
/// <param name="Found">The fit.</param>
public sealed record LadderReading(LadderTable Table, LadderFound Found)
{
    // The eye reads a colour of a glass no better than this from jar to jar (CIEDE2000; our judgement).
    private const double Same = 1, StepPh = 0.05;

    /// <summary>The colour at a pH.</summary>
    public LadderColour At(double ph)
    {
        Lab middle = Table.ColourOf(Found.At(ph));
        double[] off = [.. Found.DrawsAt(ph).Select(w => Ciede2000.Of(middle, Table.ColourOf(w)).DeltaE).Order()];
        return new LadderColour(ph, middle, Distributions.SortedQuantile(off, 0.9), ph >= Found.Range.Least && ph <= Found.Range.Most);
    }

    /// <summary>The pH at which the liquor comes nearest a colour, how near, and the range of pH that does about as well.</summary>
    public (LadderColour Nearest, double DeltaE2000, (double Least, double Most) AsWell) Toward(Lab aim)
    {
        (double Ph, double DeltaE)[] all = [.. Enumerable.Range(0, (int)Math.Round((Found.Range.Most - Found.Range.Least) / StepPh) + 1).Select(i => Found.Range.Least + i * StepPh)
            .Select(ph => (ph, Ciede2000.Of(Table.ColourOf(Found.At(ph)), aim).DeltaE))];
        (double best, double deltaE) = all.MinBy(p => p.DeltaE);
        (double Ph, double DeltaE)[] asWell = [.. all.Where(p => p.DeltaE <= deltaE + Same)];
        return (At(Math.Round(best, 2)), deltaE, (asWell[0].Ph, asWell[^1].Ph));
    }
}
