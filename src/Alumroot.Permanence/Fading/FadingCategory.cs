namespace Alumroot.Permanence.Fading;

/// <summary>The category that ASTM D4303 would give, as an indication: the standard's own exposure was not run.</summary>
/// <param name="Number">1 (excellent) to 5; null when the exposure has not gone far enough to say.</param>
/// <param name="AtBest">The best category that is still open when the exposure is short; 1 when nothing is ruled out.</param>
/// <param name="DeltaE">Difference at the standard's dose of daylight, where the exposure reached it; null otherwise.</param>
public sealed record FadingCategory(int? Number, int AtBest, double? DeltaE)
{
    /// <summary>The standard's dose of daylight: 1260 MJ/m2 of total solar light, which is 38.5 Mlx h at 110 lm/W (95 to 120 lm/W give 33 to 42).</summary>
    public const double DoseMegaluxHours = 38.5;

    // The efficacy of daylight is not known better, so an exposure that comes this near counts.
    private const double NearEnough = 0.85;

    // CIE 1976 differences: I up to 4, II up to 8, III up to 16 (read in a paint maker's note), IV up to 24 (from memory).
    private static readonly double[] Limits = [4, 8, 16, 24];

    /// <summary>From the true difference at the standard's dose, or at the end of a shorter exposure.</summary>
    internal static FadingCategory Of(Func<double, double> differenceAt, double mostDoseMegaluxHours)
    {
        if (mostDoseMegaluxHours < NearEnough * DoseMegaluxHours) return new FadingCategory(null, Place(differenceAt(mostDoseMegaluxHours)), null);
        double deltaE = differenceAt(Math.Min(DoseMegaluxHours, mostDoseMegaluxHours));
        return new FadingCategory(Place(deltaE), Place(deltaE), deltaE);
    }

    private static int Place(double deltaE)
    {
        int place = 1;
        foreach (double limit in Limits)
            if (deltaE > limit) place++;
        return place;
    }
}
