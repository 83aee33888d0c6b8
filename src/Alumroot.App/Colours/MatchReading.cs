using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Colours;

/// <summary>Pigments for a mixture, by their three bands.</summary>
/// <param name="Pigments">Which.</param>
/// <param name="Drawn">True when they come from drawdowns over black and white, false when scattering is a guess.</param>
/// <param name="LeftOut">Names of those that tell too little.</param>
internal sealed record MatchShelf(IReadOnlyList<ShelfPigment> Pigments, bool Drawn, IReadOnlyList<string> LeftOut);

/// <summary>What a page that looks for a mixture has to go on.</summary>
internal static class MatchReading
{
    /// <summary>More pigments make more sets than a page should wait for.</summary>
    internal const int MostPigments = 20;

    // A photograph's or an instrument's doubt as a reflectance; our judgement, no source.
    private const double ReadingShare = 0.005;

    // A colour whose reading is not bounded may be as far off as an uncorrected photograph; our judgement, no source.
    private const double UnboundedDeltaE = 8;

    /// <summary>The lakes of the record by their last colour as pigment: dry, ground or painted, never wet, never of a paint and never a coat over black.</summary>
    /// <param name="colours">All colours.</param>
    /// <param name="white">A white beside them; null for none.</param>
    internal static MatchShelf OfLakes(IReadOnlyList<LakeColour> colours, StandInWhite? white)
    {
        IEnumerable<LakeColour> last = colours.Where(c => c.Read is { State: not SwatchState.Wet, Ground: not SwatchGround.Black } && c.Medium is null)
            .GroupBy(c => c.Subject).Select(g => g.MaxBy(c => (c.Read.State, c.At))!).OrderByDescending(c => c.At).Take(MostPigments);
        IEnumerable<ShelfPigment> pigments = last.Select((c, i) => ThreeBandPigments.OfHidingLayer($"{c.Subject} {c.Dyestuff}", c.Lab, c.Read.WithinDeltaE2000 ?? UnboundedDeltaE, ThreeBandPigments.ScatteringOfLakes, Surface.None, Seed(i)));
        if (white is not null) pigments = pigments.Append(ThreeBandPigments.OfHidingLayer(white.Name, white.Colour, white.WithinDeltaE, white.ScatteringRatio, Surface.None, Seed(MostPigments)));
        return new MatchShelf([.. pigments], false, []);
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
            if (ThreeBandPigments.OfDrawdown(name, new ColourDrawdown(dark, black, light, white), Surface.None, ReadingShare, Seed(i)) is { } pigment) pigments.Add(pigment);
            else left.Add(name);
        }
        return (new MatchShelf(pigments, true, left), 0);
    }

    /// <summary>What a drawdown of the record says in each band.</summary>
    internal static IReadOnlyList<FilmMeasurement> Measured(ColourDrawdown read) => ThreeBand.Measure(read, Surface.None, ReadingShare);

    /// <summary>Drawdowns of the record, each over its own cards; where all their thicknesses are known, as if they were alike.</summary>
    internal static MatchShelf OfKept(IReadOnlyList<KeptDrawdown> drawdowns)
    {
        (List<ShelfPigment> pigments, List<string> left) = ([], []);
        KeptDrawdown[] whole = [.. drawdowns.Where(d => d.Read is not null).DistinctBy(d => d.OverWhite.Subject).Take(MostPigments)];
        bool alike = Array.TrueForAll(whole, d => d.WetMicrometres is > 0);
        foreach ((KeptDrawdown drawn, int i) in whole.Select((d, i) => (d, i)))
        {
            string name = $"{drawn.OverWhite.Subject} {drawn.OverWhite.Dyestuff}";
            if (ThreeBandPigments.OfDrawdown(name, drawn.Read!, Surface.None, ReadingShare, Seed(i)) is { } pigment) pigments.Add(alike ? Thick(pigment, CommonMicrometres / drawn.WetMicrometres!.Value) : pigment);
            else left.Add(name);
        }
        return new MatchShelf(pigments, true, left);
    }

    private static ShelfPigment Thick(ShelfPigment pigment, double times) =>
        pigment with { Bands = [.. pigment.Bands.Select(b => b.Times(times))], Drawn = [.. pigment.Drawn.Select(d => (IReadOnlyList<Layer>)[.. d.Select(b => b.Times(times))])] };

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

    private static ulong Seed(int place) => 20261127UL + (ulong)place;
}
