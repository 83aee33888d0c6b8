using Alumroot.Colour.Film;

namespace Alumroot.App.Words;

/// <summary>What a drawdown does not tell, as words.</summary>
public static class FilmWords
{
    /// <summary>The words for what was found; empty when all is known.</summary>
    public static string Of(FilmFound found) => found switch
    {
        FilmFound.Known => "",
        FilmFound.Hides => "the film hides the ground, so only K/S is known; a thinner drawdown tells K and S",
        FilmFound.Clear => "no scattering can be seen, so only K is known",
        FilmFound.Nothing { Trouble: var trouble } => Of(trouble),
        _ => throw new ArgumentException($"There are no words for {found}.", nameof(found)),
    };

    /// <summary>The words for a trouble.</summary>
    public static string Of(DrawdownTrouble trouble) => trouble switch
    {
        DrawdownTrouble.OutOfRange => "a reading is not between 0 and 1 once the surface is taken off; look at k1 and at the scale",
        DrawdownTrouble.GroundsAlike => "the black ground is not darker than the white one, so nothing follows; look at the columns r_black and r_white",
        DrawdownTrouble.Exchanged => "the film is darker over white than over black; the two columns may be exchanged",
        DrawdownTrouble.MoreThanTheGrounds => "the film differs over the grounds by more than they do themselves; look at the readings of the bare grounds",
        DrawdownTrouble.BrighterThanPossible => "the film gives back more than one that absorbs nothing could; look at the grounds and the surface",
        DrawdownTrouble.DarkerThanPossible => "over black the film is darker than a clear film could be; look at the reading of the black ground",
        _ => throw new ArgumentException($"There are no words for {trouble}.", nameof(trouble)),
    };
}
