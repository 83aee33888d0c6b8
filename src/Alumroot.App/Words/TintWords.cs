using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;

namespace Alumroot.App.Words;

/// <summary>What is said of the colours that tints are expected to have.</summary>
internal static class TintWords
{
    /// <summary>When nothing is known of the pigment's colour.</summary>
    internal const string NothingKnown = "The colours of these tints cannot be told yet. Rub the dry powder, or the first stick, on paper until it hides it, and measure that patch: the full colour gives a first idea. One tint beside it, such as number 4, makes the rest sure. Or brush it with a little gum thinly over a black and a white card, weigh what lies on a known area, and measure both.";

    private const string Alike = "Chalk and pigment are taken to scatter alike, gram for gram, within a factor of 3.";

    /// <summary>What the colours were reckoned from.</summary>
    internal static string Of(TintBasis basis, TintRow row, LakeColour? own, KeptDrawdown? kept, bool chalkAssumed)
    {
        string from = own is null ? "as typed" : $"of {own.Lake} {SwatchWords.Of(own.Read.State)}";
        string coat = kept is null ? "the drawdown" : $"the coat of {DrawdownWords.Name(kept)}";
        string said = basis switch
        {
            TintBasis.FullAndTint both => string.Create(CultureInfo.InvariantCulture, $"Reckoned from the full colour ({from}) and the tint of {100 * both.PigmentFraction:0.##} %; the row passes it within {row.MissedDeltaE2000:0.0}."),
            TintBasis.Full => $"Reckoned from the full colour alone ({from}). {Alike}",
            TintBasis.Drawn when row.Trouble is { } trouble => $"The colours cannot be told from {(kept is null ? "this drawdown" : coat)}: {FilmWords.Of(trouble)}. A {(trouble is FilmFound.Clear ? "thicker" : "thinner")} coat, or the full colour and one tint, would tell them.",
            TintBasis.Drawn when row.IsScatteringTold => string.Create(CultureInfo.InvariantCulture, $"Reckoned from {coat}: gram for gram the pigment scatters {row.ScatteringRatio:0.##} of what chalk does, chalk taken as 0.1 m²/g (0.04 to 0.25, from memory)."),
            _ => $"Reckoned from {coat}, which tells absorption against scattering only. {Alike}",
        };
        return row.Trouble is null && chalkAssumed ? $"{said} Chalk is a stand-in of L* 96, a* 0, b* 1.5, from memory; measure yours." : said;
    }

    /// <summary>What would tell them better; null when nothing simple would.</summary>
    internal static string? Better(TintBasis basis, TintRow row) => basis switch
    {
        TintBasis.FullAndTint => null,
        TintBasis.Drawn { GramsPerSquareMetre: null } when row.Trouble is null => "Weigh the dry coat and measure its area: grams on a square metre make the spans narrower. The full colour and one tint, measured, make them narrowest.",
        _ when row.Trouble is null => "Make one tint, such as number 4, measure it and write it below: the spans shrink to a fifth or so.",
        _ => null,
    };

    /// <summary>"L* 61 (58 to 64), a* 20 (16 to 24), b* 9 (6 to 12)".</summary>
    internal static string Numbers(ExpectedTint tint) => $"L* {One(tint, c => c.L)}, a* {One(tint, c => c.A)}, b* {One(tint, c => c.B)}";

    /// <summary>A colour as it is typed: "46.2 23 13.5".</summary>
    internal static string Typed(Lab lab) => string.Create(CultureInfo.InvariantCulture, $"{lab.L:0.##} {lab.A:0.##} {lab.B:0.##}");

    private static string One(ExpectedTint tint, Func<Lab, double> of) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(of(tint.Colour)) + 0.0} ({Math.Floor(of(tint.Low)) + 0.0} to {Math.Ceiling(of(tint.High)) + 0.0})");
}
