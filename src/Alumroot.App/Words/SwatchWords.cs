using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Words;

/// <summary>Colours of lakes as words.</summary>
public static class SwatchWords
{
    /// <summary>What it was read of.</summary>
    public static string Of(SwatchState state) => state switch
    {
        SwatchState.Wet => "wet paste",
        SwatchState.Dry => "dry",
        SwatchState.Ground => "ground",
        SwatchState.Painted => "painted",
        _ => throw new ArgumentException($"There are no words for {state}.", nameof(state)),
    };

    /// <summary>What it was read of, with the medium of a paint and the pH of the lake: "painted in watercolour, lake of pH 6.5".</summary>
    public static string Made(LakeColour colour)
    {
        ArgumentNullException.ThrowIfNull(colour);
        string medium = colour.Medium is { } key ? $" in {ColourQuery.MediumName(key)}" : "";
        string ph = colour.Ph is { } p ? string.Create(CultureInfo.InvariantCulture, $", lake of pH {p.Ph:0.#}{(p.Read ? "" : " by plan")}") : "";
        return $"{Of(colour.Read.State)}{medium}{ph}";
    }

    /// <summary>Made, and what it lies on: "painted in watercolour, on a black card, 100 µm wet".</summary>
    public static string MadeOn(LakeColour colour)
    {
        ArgumentNullException.ThrowIfNull(colour);
        return DrawdownWords.Lies(colour.Read) is { Length: > 0 } lies ? $"{Made(colour)}, {lies}" : Made(colour);
    }

    /// <summary>One line to choose it by: "26-014 Madder, painted, on a black card, 3 Nov 2026: dark red".</summary>
    public static string Line(LakeColour colour)
    {
        ArgumentNullException.ThrowIfNull(colour);
        string lies = DrawdownWords.Lies(colour.Read);
        return $"{colour.Subject} {colour.Dyestuff}, {Of(colour.Read.State)}{(lies.Length > 0 ? $", {lies}" : "")}, {TimeWords.Day(colour.At)}: {colour.Name}";
    }

    /// <summary>"L* 46, a* 23, b* 13".</summary>
    public static string Numbers(Lab lab) => string.Create(CultureInfo.InvariantCulture, $"L* {Whole(lab.L)}, a* {Whole(lab.A)}, b* {Whole(lab.B)}");

    /// <summary>"true colour within 1.4, nine times in ten".</summary>
    public static string Within(double? units) => units is { } u ? string.Create(CultureInfo.InvariantCulture, $"true colour within {u:0.0}, nine times in ten") : "not bounded";

    /// <summary>"within 1.4".</summary>
    public static string WithinShort(double? units) => units is { } u ? string.Create(CultureInfo.InvariantCulture, $"within {u:0.0}") : "not bounded";

    /// <summary>How big a difference is to the eye; the bands were published for CIELAB and are used for CIEDE2000 by convention.</summary>
    /// <param name="deltaE2000">The difference.</param>
    /// <param name="within">How far both colours together may be off; null when it is not known.</param>
    public static string Size(double deltaE2000, double? within) => deltaE2000 switch
    {
        _ when within is null || deltaE2000 < within => "cannot tell",
        < 1 => "not seen",
        < 2 => "seen by a trained eye side by side",
        < 3.5 => "seen side by side",
        < 5 => "plain",
        _ => "another colour",
    };

    /// <summary>The doubt of a difference: that of both colours, as squares.</summary>
    public static double? Both(double? one, double? other) => one is { } a && other is { } b ? Math.Sqrt(a * a + b * b) : null;

    /// <summary>The difference as a number and words: "3.2, darker, redder: seen side by side".</summary>
    public static string Difference(Lab first, Lab second, double? within)
    {
        ColourDifference d = ColourDifference.Between(first, second);
        return string.Create(CultureInfo.InvariantCulture, $"{d.DeltaE2000:0.0}, {ColourWords.Of(first, d)}: {Size(d.DeltaE2000, within)}");
    }

    /// <summary>A difference in a picture whose light and camera are not known, without a judgement of its size: "12, lighter, redder".</summary>
    public static string Beside(Lab first, Lab second)
    {
        ColourDifference d = ColourDifference.Between(first, second);
        return string.Create(CultureInfo.InvariantCulture, $"{d.DeltaE2000:0}, {ColourWords.Of(first, d)}");
    }

    // Minus nothing is nothing.
    private static double Whole(double x) => Math.Round(x) + 0.0;
}
