using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Quantities;

namespace Alumroot.Colour.Matching;

/// <summary>A pigment on the shelf, by its constants.</summary>
/// <param name="Key">What it is called.</param>
/// <param name="Bands">K and S at each wavelength of the ask, of the same amount for every pigment.</param>
public sealed record ShelfPigment(string Key, IReadOnlyList<Layer> Bands)
{
    /// <summary>The same pigment drawn again and again within the doubt of its constants, as <see cref="Bands"/> each; empty when they are taken as known.</summary>
    public IReadOnlyList<IReadOnlyList<Layer>> Drawn { get; init; } = [];
}

/// <summary>A colour that is wanted, seen under one condition.</summary>
/// <param name="Condition">Light and observer.</param>
/// <param name="Lab">The colour.</param>
public sealed record ColourAim(ViewingCondition Condition, Lab Lab);

/// <summary>Which mixture is sought.</summary>
public sealed record MixtureAsk
{
    /// <summary>The wavelengths of the pigments' constants, rising.</summary>
    public required IReadOnlyList<double> Nanometres { get; init; }

    /// <summary>The pigments that may be used.</summary>
    public required IReadOnlyList<ShelfPigment> Pigments { get; init; }

    /// <summary>The colour, under one condition or several at once.</summary>
    public required IReadOnlyList<ColourAim> Aims { get; init; }

    /// <summary>The most pigments in a mixture, 1 to 5.</summary>
    public int MostPigments { get; init; } = 3;

    /// <summary>How many mixtures are wanted, best first.</summary>
    public int Answers { get; init; } = 5;

    /// <summary>The surface of the film.</summary>
    public Surface Surface { get; init; }

    /// <summary>Thickness of the film in the unit of the constants; null for a film that hides.</summary>
    public double? Thickness { get; init; }

    /// <summary>What an instrument shows of the ground under a film that does not hide.</summary>
    public double GroundReflectance { get; init; } = 0.8;

    /// <summary>How well the aim is known: nine times in ten the truth is no farther, by CIEDE2000; a bench instrument repeats to about half (our judgement, no source).</summary>
    public double AimWithinDeltaE { get; init; } = 0.5;

    /// <summary>Seed of the draws of the aim, where pigments are in doubt.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>An aim by its spectrum: the same in daylight, filament light and the light of a fluorescent lamp.</summary>
    public static IReadOnlyList<ColourAim> AimsOf(Spectrum aim)
    {
        ArgumentNullException.ThrowIfNull(aim);
        return [.. new[] { Illuminant.D65, Illuminant.A, Illuminant.Find("F11")! }.Select(light => new ViewingCondition(light, Observer.TenDegrees))
            .Select(seen => new ColourAim(seen, SpectralWeights.For(seen, aim).LabOf(aim.ValueSpan)))];
    }
}

/// <summary>A pigment's part in a mixture.</summary>
/// <param name="Key">Which pigment.</param>
/// <param name="Fraction">Its share of the pigment; the span is what the aim and, where they are drawn, the pigments leave open.</param>
public sealed record MixturePart(string Key, Estimate Fraction);

/// <summary>A mixture and how near it comes.</summary>
/// <param name="Parts">The pigments, the largest first; the shares add to 1.</param>
/// <param name="Labs">Its colour under the condition of each aim.</param>
/// <param name="WorstDeltaE2000">The largest distance from an aim.</param>
public sealed record MixtureFound(IReadOnlyList<MixturePart> Parts, IReadOnlyList<Lab> Labs, double WorstDeltaE2000)
{
    /// <summary>Nine times in ten these shares come out so near to <see cref="Labs"/>, by the doubt of the pigments; null when they are taken as known.</summary>
    public double? WithinDeltaE2000 { get; init; }
}
