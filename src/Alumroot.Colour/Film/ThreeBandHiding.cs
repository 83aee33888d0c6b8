using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities;

namespace Alumroot.Colour.Film;

/// <summary>How well a coat hides, from its colours over black and over white alone.</summary>
/// <param name="Read">The four colours.</param>
public sealed record ThreeBandHiding(ColourDrawdown Read)
{
    /// <summary>A coat counts as hiding from this contrast ratio on; as in ISO 6504-1, of which the scope was read.</summary>
    public const double HidingRatio = 0.98;

    private const int Halvings = 60;
    private const double MostTimes = 1000;

    /// <summary>Luminance over black by luminance over white.</summary>
    public double ContrastRatio => Luminance(Read.OverBlack) / Luminance(Read.OverWhite);

    /// <summary>How many times as thick it hides; null when it hides already or the drawdown does not tell.</summary>
    public double? TimesToHide => ContrastRatio >= HidingRatio ? null : Times(Read);

    /// <summary>The same with the span that the doubt of the two swatches leaves, each moved alone and added as squares; null as before.</summary>
    /// <param name="withinUnits">Nine times in ten L* of a swatch is no farther off.</param>
    public Estimate? TimesToHideSpan(double withinUnits)
    {
        if (TimesToHide is not { } value) return null;
        double below = 0, above = 0;
        foreach ((double black, double white) in (ReadOnlySpan<(double, double)>)[(1, 0), (-1, 0), (0, 1), (0, -1)])
        {
            // A drawdown that no film answers to at the edge of its span leaves that side at half the way.
            double? moved = Times(Moved(black * withinUnits, white * withinUnits)) ?? Times(Moved(black * withinUnits / 2, white * withinUnits / 2));
            double off = (moved ?? value) - value;
            below += off < 0 ? off * off : 0;
            above += off > 0 ? off * off : 0;
        }
        return new Estimate(value, Math.Max(1, value - Math.Sqrt(below)), value + Math.Sqrt(above));
    }

    private ColourDrawdown Moved(double black, double white) => Read with { OverBlack = Read.OverBlack with { L = Read.OverBlack.L + black }, OverWhite = Read.OverWhite with { L = Read.OverWhite.L + white } };

    private static double? Times(ColourDrawdown read)
    {
        FilmFound[] found = [.. ThreeBand.Measure(read, Surface.None, 0).Select(m => m.Found)];
        if (!Array.TrueForAll(found, f => f is FilmFound.Known)) return null;
        Layer[] bands = [.. found.Select(f => ((FilmFound.Known)f).Film)];
        double[] black = [.. ThreeBand.Reflectances(read.Black)], white = [.. ThreeBand.Reflectances(read.White)];
        double low = 0, high = 1;
        for (; Ratio(high) < HidingRatio; high *= 2)
            if (high > MostTimes) return null;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (Ratio(middle) < HidingRatio) low = middle;
            else high = middle;
        }
        return (low + high) / 2;

        double Ratio(double times) => Luminance(Over(black, times)) / Luminance(Over(white, times));

        Lab Over(double[] ground, double times) => ThreeBand.Colour([.. bands.Select((b, i) => FilmOptics.Over(b.Times(times), ground[i]))]);
    }

    private static double Luminance(Lab lab) => lab.ToXyz(ColourNames.White).Y;
}
