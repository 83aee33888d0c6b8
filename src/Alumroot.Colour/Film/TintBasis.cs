using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Film;

/// <summary>What is known of a pigment that is to be let down with a white powder. Closed: nobody adds another kind.</summary>
public abstract record TintBasis
{
    private TintBasis() { }

    /// <summary>A thin film of it over black and over white.</summary>
    /// <param name="Read">The four colours.</param>
    /// <param name="GramsPerSquareMetre">Pigment in the dry film; null when it was not weighed, so that only K/S is told.</param>
    public sealed record Drawn(ColourDrawdown Read, double? GramsPerSquareMetre) : TintBasis;

    /// <summary>The full colour alone, in a layer that hides.</summary>
    /// <param name="Colour">Lab for D50 and 2 degrees.</param>
    public sealed record Full(Lab Colour) : TintBasis;

    /// <summary>The full colour and one tint with the same white, both in layers that hide.</summary>
    /// <param name="Colour">The full colour.</param>
    /// <param name="Tint">The tint.</param>
    /// <param name="PigmentFraction">Share of pigment in the powder of the tint, above 0 and below 1.</param>
    public sealed record FullAndTint(Lab Colour, Lab Tint, double PigmentFraction) : TintBasis;
}

/// <summary>The white powder of tints.</summary>
/// <param name="Colour">What a layer of it shows that hides.</param>
/// <param name="ScatteringLow">Least of what 1 g on a square metre scatters.</param>
/// <param name="ScatteringTypical">What 1 g on a square metre scatters, S X.</param>
/// <param name="ScatteringHigh">Most of it.</param>
public sealed record WhitePowder(Lab Colour, double ScatteringLow, double ScatteringTypical, double ScatteringHigh)
{
    /// <summary>Chalk as a stand-in: a clean whiting, and what ground calcium carbonate scatters as a filler of paper, 100 m²/kg; both from memory.</summary>
    public static WhitePowder Chalk { get; } = new(new Lab(96, 0, 1.5), 0.04, 0.1, 0.25);
}

/// <summary>The colour to expect of a tint.</summary>
/// <param name="PigmentFraction">Share of pigment in its powder.</param>
/// <param name="Colour">Lab for D50 and 2 degrees.</param>
/// <param name="Low">Nine times in ten L*, a* and b* are each above these.</param>
/// <param name="High">And below these.</param>
/// <param name="WithinDeltaE2000">Nine times in ten the colour is no farther.</param>
public sealed record ExpectedTint(double PigmentFraction, Lab Colour, Lab Low, Lab High, double WithinDeltaE2000);
