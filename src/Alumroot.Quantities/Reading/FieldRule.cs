using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Reading;

/// <summary>What a field accepts, and what is usual in it. Usual values settle a doubt between two readings; they never refuse one.</summary>
/// <param name="Least">Less than this is refused.</param>
/// <param name="SensibleLow">The low end of what is usual.</param>
/// <param name="SensibleHigh">The high end of what is usual.</param>
/// <param name="Most">More than this is refused.</param>
public sealed record FieldRule<T>(T Least, T SensibleLow, T SensibleHigh, T Most) where T : struct
{
    /// <summary>Whether nothing at all is an answer.</summary>
    public bool ZeroAllowed { get; init; }

    /// <summary>Whose cups and pints are meant when the text does not say.</summary>
    public KitchenMeasures Kitchen { get; init; }

    /// <summary>For a mass: accept spoons and cups of a powder this heavy. Null refuses them.</summary>
    public PowderDensity? Powder { get; init; }
}

/// <summary>How heavy a loosely filled millilitre of a powder is, as the span of what is found.</summary>
/// <remarks>Immutable. The span of a spoonful is wider still: see <see cref="FillingLow"/>.</remarks>
public sealed record PowderDensity
{
    /// <summary>A level spoon may hold this part of its name: the project's own assumption, no source.</summary>
    public const double FillingLow = 0.8;

    /// <summary>A rounded spoon may hold this many times its name: the project's own assumption, no source.</summary>
    public const double FillingHigh = 1.25;

    /// <summary>A span of bulk densities in grams per millilitre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0.01 and 20, or the low end above the high.</exception>
    public PowderDensity(double lowGramsPerMillilitre, double highGramsPerMillilitre)
    {
        HighGramsPerMillilitre = Within.Range(highGramsPerMillilitre, 0.01, 20);
        LowGramsPerMillilitre = Within.Range(lowGramsPerMillilitre, 0.01, highGramsPerMillilitre);
    }

    /// <summary>The lightest it is found, in grams per millilitre.</summary>
    public double LowGramsPerMillilitre { get; }

    /// <summary>The heaviest it is found, in grams per millilitre.</summary>
    public double HighGramsPerMillilitre { get; }
}
