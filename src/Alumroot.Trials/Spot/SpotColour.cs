namespace Alumroot.Trials.Spot;

/// <summary>From what a photograph tells of a drop to what it shows, by absorbance in broad bands (Beer's law), each less that of the bare tile.</summary>
public static class SpotColour
{
    // Less colour than this share of the liquor's own is none, up to the next it is some; and a solid with less is pale. Our judgement.
    private const double NoneShare = 0.15, SomeShare = 0.5, PaleShare = 0.15;

    /// <summary>The share of the liquor's colour that is left in a drop.</summary>
    /// <param name="drop">Absorbance of the drop's clear part by band.</param>
    /// <param name="liquor">That of the liquor with soda alone.</param>
    public static double LeftShare(IReadOnlyList<double> drop, IReadOnlyList<double> liquor)
    {
        ArgumentNullException.ThrowIfNull(drop);
        ArgumentNullException.ThrowIfNull(liquor);
        double strength = liquor.Sum(a => a * a);
        // The part of the drop's absorbance that has the liquor's hue; another hue is the solid's, or a turn of the dye.
        return strength > 0 ? Math.Max(0, drop.Zip(liquor, (d, l) => d * l).Sum() / strength) : 0;
    }

    /// <summary>What a drop shows.</summary>
    /// <param name="solid">Absorbance of the solid; null when none is seen.</param>
    /// <param name="drop">Absorbance of the drop's clear part.</param>
    /// <param name="liquor">Absorbance of the liquor with soda alone.</param>
    public static SpotSight Of(IReadOnlyList<double>? solid, IReadOnlyList<double> drop, IReadOnlyList<double> liquor)
    {
        ArgumentNullException.ThrowIfNull(liquor);
        double left = LeftShare(drop, liquor);
        if (solid is null) return SpotSight.Nothing;
        if (Size(solid) < PaleShare * Size(liquor)) return SpotSight.Pale;
        return left < NoneShare ? SpotSight.NoneLeft : left < SomeShare ? SpotSight.SomeLeft : SpotSight.MostLeft;
    }

    private static double Size(IReadOnlyList<double> absorbance) => Math.Sqrt(absorbance.Sum(a => a * a));
}
