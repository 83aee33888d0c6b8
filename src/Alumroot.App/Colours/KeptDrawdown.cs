using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Colours;

/// <summary>One coat over black and over white, as the record has it.</summary>
/// <param name="OverBlack">The swatch on the black card.</param>
/// <param name="OverWhite">The swatch on the white card.</param>
/// <param name="Black">The bare black card; null when none was ever read.</param>
/// <param name="White">The bare white card; null when none was ever read.</param>
public sealed record KeptDrawdown(LakeColour OverBlack, LakeColour OverWhite, Lab? Black, Lab? White)
{
    // A colour of the record that nothing bounds is taken to be so far off; our judgement, no source.
    private const double UnboundedUnits = 4;

    /// <summary>By what it is chosen in a list.</summary>
    public string Key => OverWhite.Id.Text;

    /// <summary>How thick it was laid, wet, in micrometres; null when not told.</summary>
    public double? WetMicrometres => OverWhite.Read.WetMicrometres;

    /// <summary>Nine times in ten each of its colours is no farther off, in CIEDE2000.</summary>
    public double WithinDeltaE2000 => Math.Max(OverBlack.Read.WithinDeltaE2000 ?? UnboundedUnits, OverWhite.Read.WithinDeltaE2000 ?? UnboundedUnits);

    /// <summary>The four colours; null when a bare card is missing.</summary>
    public ColourDrawdown? Read => Black is { } black && White is { } white ? new ColourDrawdown(OverBlack.Lab, black, OverWhite.Lab, white) : null;

    /// <summary>The drawdowns among swatches: the same lake or paint in the same state and thickness over both cards, of each the latest. A bare card that was not read beside its swatch is the one read last.</summary>
    /// <param name="colours">Swatches.</param>
    /// <param name="cards">Swatches that may tell a bare card; the same when left out.</param>
    public static IReadOnlyList<KeptDrawdown> Of(IReadOnlyList<LakeColour> colours, IReadOnlyList<LakeColour>? cards = null)
    {
        ArgumentNullException.ThrowIfNull(colours);
        return
        [
            .. colours.Where(c => c.Read.State != SwatchState.Wet && c.Read.Ground is SwatchGround.Black or SwatchGround.White)
                .GroupBy(c => (c.Subject, c.Read.State, c.Read.WetMicrometres))
                .Select(g => (Black: Latest(g, SwatchGround.Black), White: Latest(g, SwatchGround.White)))
                .Where(p => p is { Black: not null, White: not null })
                .Select(p => new KeptDrawdown(p.Black!, p.White!, Bare(p.Black!, cards ?? colours), Bare(p.White!, cards ?? colours)))
                .OrderByDescending(d => d.OverWhite.At),
        ];
    }

    private static LakeColour? Latest(IEnumerable<LakeColour> colours, SwatchGround ground) => colours.Where(c => c.Read.Ground == ground).MaxBy(c => c.At);

    private static Lab? Bare(LakeColour swatch, IReadOnlyList<LakeColour> all)
    {
        LabText? bare = swatch.Read.GroundColour ?? all.Where(c => c.Read.Ground == swatch.Read.Ground && c.Read.GroundColour is not null).MaxBy(c => c.At)?.Read.GroundColour;
        return bare is null ? null : new Lab(bare.LabL, bare.LabA, bare.LabB);
    }
}
