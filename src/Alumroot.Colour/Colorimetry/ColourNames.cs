using Alumroot.Colour.Reading;

namespace Alumroot.Colour.Colorimetry;

/// <summary>A plain name for a colour.</summary>
/// <param name="Number">Number of the block, 1 to 267.</param>
/// <param name="Name">The name in the spelling of its source, such as deep red.</param>
/// <param name="Centre">Middle of the block, Lab for D50 and the 2 degree observer.</param>
public sealed record NamedColour(int Number, string Name, Lab Centre);

/// <summary>Names by the ISCC-NBS system at level 3 (Kelly and Judd, NBS Circular 553; centroids of Kelly 1958): the nearest middle of a block.</summary>
/// <remarks>The true borders between blocks run in Munsell space and are not tabulated here, so a colour near a border may bear its neighbour's name.</remarks>
public static class ColourNames
{
    private static readonly Lazy<IReadOnlyList<NamedColour>> Table = new(() =>
        [.. EmbeddedTables.Read("colour_names.csv").Rows.Select(r => new NamedColour((int)r.Number("number"), r["name"], new Lab(r.Number("l"), r.Number("a"), r.Number("b"))))]);

    private static readonly Lazy<Xyz> D50White = new(() => SpectralWeights.For(ViewingCondition.Graphic, Spectrum.Regular(360, 10, Enumerable.Repeat(1.0, 43))).White);

    /// <summary>All names with the middles of their blocks.</summary>
    public static IReadOnlyList<NamedColour> All => Table.Value;

    /// <summary>The white that the middles are seen against.</summary>
    public static Xyz White => D50White.Value;

    /// <summary>The name whose middle is nearest by CIEDE2000, and how far it is.</summary>
    /// <param name="d50">Lab for D50 and the 2 degree observer.</param>
    public static (NamedColour Colour, double DeltaE2000) Nearest(Lab d50)
    {
        NamedColour best = All[0];
        double least = double.PositiveInfinity;
        foreach (NamedColour c in All)
        {
            double d = Ciede2000.Of(c.Centre, d50).DeltaE;
            if (d < least) (best, least) = (c, d);
        }
        return (best, least);
    }

    /// <summary>The name of a colour seen against another white, after Bradford adaptation.</summary>
    public static (NamedColour Colour, double DeltaE2000) Nearest(Xyz colour, Xyz white) =>
        Nearest(Lab.From(ChromaticAdaptation.Bradford.Adapt(colour, white, White), White));
}
