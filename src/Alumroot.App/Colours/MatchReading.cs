using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Colours;

/// <summary>Pigments for a mixture, by their three bands.</summary>
/// <param name="Pigments">Which.</param>
/// <param name="WithinDeltaE2000">Nine mixtures in ten come out so near.</param>
/// <param name="Drawn">True when they come from drawdowns over black and white, false when scattering is taken as alike.</param>
/// <param name="LeftOut">Names of those that tell too little.</param>
internal sealed record MatchShelf(IReadOnlyList<ShelfPigment> Pigments, double WithinDeltaE2000, bool Drawn, IReadOnlyList<string> LeftOut);

/// <summary>What a page that looks for a mixture has to go on.</summary>
internal static class MatchReading
{
    /// <summary>More pigments make more sets than a page should wait for.</summary>
    internal const int MostPigments = 20;

    // A photograph's or an instrument's doubt as a reflectance; our judgement, no source.
    private const double ReadingShare = 0.005;

    /// <summary>The lakes of the record by their last colour as pigment: dry, ground or painted, never wet and never a coat over black.</summary>
    internal static MatchShelf OfLakes(IReadOnlyList<LakeColour> colours)
    {
        IEnumerable<LakeColour> last = colours.Where(c => c.Read is { State: not SwatchState.Wet, Ground: not SwatchGround.Black })
            .GroupBy(c => c.Lake).Select(g => g.MaxBy(c => (c.Read.State, c.At))!).OrderByDescending(c => c.At).Take(MostPigments);
        return new MatchShelf([.. last.Select(c => new ShelfPigment($"{c.Lake} {c.Dyestuff}", [.. ThreeBand.AbsorptionRatios(c.Lab, Surface.None).Select(r => new Layer(r, 1))]))], ThreeBand.AlikeWithinDeltaE2000, false, []);
    }

    /// <summary>Drawdowns as they are typed: a name, the colour over black, the colour over white, one pigment a line.</summary>
    /// <param name="typed">The lines.</param>
    /// <param name="black">The bare black ground.</param>
    /// <param name="white">The bare white ground.</param>
    /// <returns>The pigments, or the line that cannot be read, from 1.</returns>
    internal static (MatchShelf? Shelf, int BadLine) OfDrawdowns(string typed, Lab black, Lab white)
    {
        (List<ShelfPigment> pigments, List<string> left) = ([], []);
        string[] lines = typed.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i])) continue;
            if (lines[i].Split(';', StringSplitOptions.TrimEntries) is not [{ Length: > 0 } name, var overBlack, var overWhite]
                || LabReading.Of(overBlack) is not { } dark || LabReading.Of(overWhite) is not { } light || pigments.Count == MostPigments || pigments.Exists(p => p.Key == name))
                return (null, i + 1);
            FilmFound[] found = [.. ThreeBand.Measure(new ColourDrawdown(dark, black, light, white), Surface.None, ReadingShare).Select(m => m.Found)];
            if (Array.TrueForAll(found, f => f is FilmFound.Known)) pigments.Add(new ShelfPigment(name, [.. found.Select(f => ((FilmFound.Known)f).Film)]));
            else left.Add(name);
        }
        return (new MatchShelf(pigments, ThreeBand.MixtureWithinDeltaE2000, true, left), 0);
    }

    /// <summary>What a drawdown of the record says in each band.</summary>
    internal static IReadOnlyList<FilmMeasurement> Measured(ColourDrawdown read) => ThreeBand.Measure(read, Surface.None, ReadingShare);

    /// <summary>Drawdowns of the record, each over its own cards; where all their thicknesses are known, as if they were alike.</summary>
    internal static MatchShelf OfKept(IReadOnlyList<KeptDrawdown> drawdowns)
    {
        (List<ShelfPigment> pigments, List<string> left) = ([], []);
        KeptDrawdown[] whole = [.. drawdowns.Where(d => d.Read is not null).DistinctBy(d => d.OverWhite.Subject).Take(MostPigments)];
        bool alike = Array.TrueForAll(whole, d => d.WetMicrometres is > 0);
        foreach (KeptDrawdown drawn in whole)
        {
            FilmFound[] found = [.. Measured(drawn.Read!).Select(m => m.Found)];
            string name = $"{drawn.OverWhite.Subject} {drawn.OverWhite.Dyestuff}";
            if (Array.TrueForAll(found, f => f is FilmFound.Known)) pigments.Add(new ShelfPigment(name, [.. found.Select(f => ((FilmFound.Known)f).Film.Times(alike ? CommonMicrometres / drawn.WetMicrometres!.Value : 1))]));
            else left.Add(name);
        }
        return new MatchShelf(pigments, ThreeBand.MixtureWithinDeltaE2000, true, left);
    }

    private const double CommonMicrometres = 100;

    /// <summary>The mixtures that come nearest, best first.</summary>
    internal static IReadOnlyList<MixtureFound> Find(Lab aim, MatchShelf shelf, int most, int answers) => shelf.Pigments.Count == 0 ? [] : MixtureSearch.Find(new MixtureAsk
    {
        Nanometres = ThreeBand.Nanometres,
        Pigments = shelf.Pigments,
        Aims = [new ColourAim(ViewingCondition.Graphic, aim)],
        MostPigments = Math.Min(most, shelf.Pigments.Count),
        Answers = answers,
        Surface = Surface.None,
    });
}
