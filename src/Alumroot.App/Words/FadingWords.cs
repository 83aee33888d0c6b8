using System.Globalization;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>What a light test says, as words.</summary>
public static class FadingWords
{
    // Yearly doses in megalux hours; the museum's are limits of CIE 157, the others common practice, no source.
    private static readonly (string Place, double MegaluxHoursAYear)[] Places = [("in an album or a museum's dim case (15 klx h a year)", 0.015), ("on a dim wall at home (0.1 Mlx h a year)", 0.1), ("in an ordinary room by day (0.5)", 0.5), ("on a bright wall (2)", 2), ("in a window without sun (12)", 12)];

    // A lamp is no window and a room is no other: what the dose in a place does differs by about this factor either way; judgement.
    private const double PlaceFactor = 2;

    /// <summary>The name of a form.</summary>
    public static string Of(FadingFormKind kind) => kind switch
    {
        FadingFormKind.FirstOrder => "first order",
        FadingFormKind.ZeroOrder => "even rate up to an end",
        FadingFormKind.TwoPopulations => "two populations",
        FadingFormKind.FirstOrderAndLine => "first order and a line",
        FadingFormKind.Power => "power of the dose",
        FadingFormKind.Weibull => "first order with a bend at the start",
        FadingFormKind.Tint => "tint in white",
        FadingFormKind.Glaze => "glaze over white",
        _ => throw new ArgumentException($"There are no words for {kind}.", nameof(kind)),
    };

    /// <summary>Why this form, and how much that matters.</summary>
    public static string Why(SampleFound sample)
    {
        ArgumentNullException.ThrowIfNull(sample);
        return sample.Model is null ? $"{Count(sample.ReadingCount, "reading")} after light are too few for any form. Read the strips at three doses at least."
            : string.Create(CultureInfo.InvariantCulture, $"has {100 * sample.ModelWeight:0} % of the weight by the criterion of Akaike among eight published forms; the answers are averaged over all of them");
    }

    /// <summary>"4.1 (3.9 to 4.4)", or the bound.</summary>
    public static string Class(CriterionFound found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found switch
        {
            { Class: { } c } => string.Create(CultureInfo.InvariantCulture, $"like reference {c.Value:0.0} ({c.Low:0.0} to {c.High:0.0})"),
            { Bound: ClassBound.Below } => "less lightfast than the least lightfast reference exposed",
            { Bound: ClassBound.Above, Reached: false } => "not reached yet; at least as lightfast as what was exposed as long",
            { Bound: ClassBound.Above } => "more lightfast than the most lightfast reference exposed",
            _ => "no references were exposed beside it",
        };
    }

    /// <summary>The dose to a criterion, or how long to go on.</summary>
    public static string Dose(CriterionFound found, double mostDoseMegaluxHours)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found.DoseMegaluxHours is { } d ? $"{Figure(d.Value)} Mlx h ({Figure(d.Low)} to {Figure(d.High)})"
            : $"not reached in {Figure(mostDoseMegaluxHours)} Mlx h; expose to twice that and read again";
    }

    /// <summary>Years until a difference, place by place.</summary>
    public static IEnumerable<string> Years(Estimate doseMegaluxHours) =>
        Places.Select(p => $"{p.Place}: {Span(doseMegaluxHours.Value / p.MegaluxHoursAYear, doseMegaluxHours.Low / p.MegaluxHoursAYear / PlaceFactor, doseMegaluxHours.High / p.MegaluxHoursAYear * PlaceFactor)}");

    /// <summary>The category by ASTM D4303 in words.</summary>
    public static string Category(FadingCategory? category) => category switch
    {
        null => "not known",
        { Number: { } n } => $"{Roman(n)} by the limits of ASTM D4303, an indication: the standard's own exposure was not run",
        { AtBest: 1 } => string.Create(CultureInfo.InvariantCulture, $"not known: ASTM D4303 asks for about {FadingCategory.DoseMegaluxHours:0} Mlx h of daylight"),
        { AtBest: var best } => $"{Roman(best)} at best by the limits of ASTM D4303; the exposure was shorter than the standard's",
    };

    /// <summary>The category as one word for tables: a Roman number, or empty.</summary>
    public static string? CategoryNumber(FadingCategory? category) => category?.Number is { } n ? Roman(n) : null;

    private static string Span(double years, double low, double high) =>
        high < 1 ? $"{Figure(12 * years)} months ({Figure(12 * low)} to {Figure(12 * high)})" : $"{Figure(years)} years ({Figure(low)} to {Figure(high)})";

    private static string Roman(int number) => number switch { 1 => "I", 2 => "II", 3 => "III", 4 => "IV", _ => "V" };

    private static string Figure(double x) => x >= 100 ? Math.Round(x).ToString("0", CultureInfo.InvariantCulture) : x >= 10 ? x.ToString("0.0", CultureInfo.InvariantCulture) : x.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Count(int n, string what) => n == 1 ? $"one {what}" : $"{n} {what}s";
}
