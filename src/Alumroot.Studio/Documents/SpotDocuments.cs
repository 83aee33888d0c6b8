using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>What a drop of liquor with a salt showed after the soda.</summary>
public enum SpotSeen
{
    /// <summary>Nothing fell.</summary>
    Nothing,

    /// <summary>A pale solid fell and the drop kept its colour.</summary>
    Pale,

    /// <summary>A coloured solid fell and most of the colour stayed in the drop.</summary>
    MostLeft,

    /// <summary>A coloured solid fell and some colour stayed.</summary>
    SomeLeft,

    /// <summary>A coloured solid fell and the drop cleared.</summary>
    NoneLeft,
}

/// <summary>One drop of a spot test.</summary>
/// <param name="Salt">The salt by its key in the handbook; <c>none</c> for soda alone.</param>
/// <param name="Seen">What it showed.</param>
public sealed record SpotDrop(string Salt, SpotSeen Seen)
{
    /// <summary>The word for soda alone.</summary>
    public const string SodaAlone = "none";

    /// <summary>The share of the liquor's colour that was left, as a photograph told; null when it was judged by eye.</summary>
    public double? LeftShare { get; init; }

    /// <summary>The colour of the solid as a photograph told; null when it was judged by eye.</summary>
    public LabText? Solid { get; init; }
}

/// <summary>A row of drops of a lot's liquor was tried with salts and soda.</summary>
/// <param name="Drops">The drops.</param>
public sealed record SpotTested(IReadOnlyList<SpotDrop> Drops) : StudioDocument
{
    /// <summary>The document's name.</summary>
    public const string Name = "spot-test";

    /// <inheritdoc/>
    public override DocumentKind Kind => new(Name, 1);
}
