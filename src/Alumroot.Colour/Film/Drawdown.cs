using Alumroot.Quantities;

namespace Alumroot.Colour.Film;

/// <summary>A film of one thickness measured over a black and a white ground, at one wavelength; what the instrument showed.</summary>
/// <param name="OverBlack">Reflectance of the film over black.</param>
/// <param name="Black">Reflectance of the black ground.</param>
/// <param name="OverWhite">Reflectance of the film over white.</param>
/// <param name="White">Reflectance of the white ground.</param>
public readonly record struct Drawdown(double OverBlack, double Black, double OverWhite, double White);

/// <summary>Why a drawdown tells nothing.</summary>
public enum DrawdownTrouble
{
    /// <summary>A reading is not between 0 and 1 once the surface is taken off.</summary>
    OutOfRange,

    /// <summary>The black ground is not darker than the white one.</summary>
    GroundsAlike,

    /// <summary>The film is darker over white than over black: the columns may be exchanged.</summary>
    Exchanged,

    /// <summary>The film differs over the two grounds by more than the grounds do themselves.</summary>
    MoreThanTheGrounds,

    /// <summary>The film gives back more than a film that absorbs nothing could.</summary>
    BrighterThanPossible,

    /// <summary>The film over black is darker than the black ground and a clear film allow.</summary>
    DarkerThanPossible,
}

/// <summary>What a drawdown says of its film. Closed: nobody adds another kind.</summary>
public abstract record FilmFound
{
    private FilmFound() { }

    /// <summary>Both constants are known.</summary>
    /// <param name="Film">K X and S X.</param>
    public sealed record Known(Layer Film) : FilmFound;

    /// <summary>The grounds cannot be told through the film: only K/S is known.</summary>
    /// <param name="AbsorptionRatio">K/S.</param>
    public sealed record Hides(Estimate AbsorptionRatio) : FilmFound;

    /// <summary>No scattering can be seen: only K X is known.</summary>
    /// <param name="AbsorbedUnits">K X.</param>
    public sealed record Clear(Estimate AbsorbedUnits) : FilmFound;

    /// <summary>No film answers to these readings.</summary>
    /// <param name="Trouble">Why.</param>
    public sealed record Nothing(DrawdownTrouble Trouble) : FilmFound;
}
