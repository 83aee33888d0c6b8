using System.Globalization;
using Alumroot.Permanence.Dose;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>What a light test says, as words.</summary>
public static class FadingWords
{
    /// <summary>The two changes that count, in the order of the criteria.</summary>
    public static IReadOnlyList<string> Changes { get; } = ["Just noticeable (grey scale 4)", "Clearly changed (grey scale 3)"];

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

    /// <summary>Years until a difference, place by place, with the place's level.</summary>
    public static IEnumerable<string> Years(Estimate doseMegaluxHours) => LightPlace.All.Select(p => $"{Place(p)}: {Years(p, doseMegaluxHours)}");

    /// <summary>Years until a difference in one place.</summary>
    public static string Years(LightPlace place, Estimate doseMegaluxHours)
    {
        ArgumentNullException.ThrowIfNull(place);
        Estimate years = place.YearsTo(doseMegaluxHours);
        return Span(years.Value, years.Low, years.High);
    }

    /// <summary>A place with its light: "on a desk with work light (500 lx for 2500 h a year)".</summary>
    public static string Place(LightPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return string.Create(CultureInfo.InvariantCulture, $"{place.Name} ({place.Lux.Value:0} lx for {place.HoursAYear:0} h a year)");
    }

    /// <summary>What makes it last longer in a place.</summary>
    public static string Extended(Extending way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return way.Way switch
        {
            ExtendingWay.HalfTheLight => "half the light, or half the hours: twice as long",
            ExtendingWay.DarkerPlace => $"{way.Place!.Name} instead: about {Times(way.Times)} times as long",
            _ => $"a filter against ultraviolet before it: about {Times(way.Times)} times as long, by the references of its class",
        };
    }

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
        years < 1 ? $"{Two(12 * years)} months ({Two(12 * low)} to {Two(12 * high)})" : $"{Two(years)} years ({Two(low)} to {Two(high)})";

    // Two figures are all that a factor of two allows.
    private static string Two(double x) => x >= 10 ? Math.Round(x, 0).ToString("0", CultureInfo.InvariantCulture) : x >= 1 ? x.ToString("0.0", CultureInfo.InvariantCulture) : x.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Times(double x) => x.ToString(x >= 3 ? "0" : "0.0", CultureInfo.InvariantCulture);

    private static string Roman(int number) => number switch { 1 => "I", 2 => "II", 3 => "III", 4 => "IV", _ => "V" };

    private static string Figure(double x) => x >= 100 ? Math.Round(x).ToString("0", CultureInfo.InvariantCulture) : x >= 10 ? x.ToString("0.0", CultureInfo.InvariantCulture) : x.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Count(int n, string what) => n == 1 ? $"one {what}" : $"{n} {what}s";
}
