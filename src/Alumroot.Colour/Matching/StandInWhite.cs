using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Reading;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Matching;

/// <summary>A white that may stand beside lakes in a mixture where the maker's own was not measured.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Colour">The colour of a hiding layer; Lab for D50 and 2 degrees.</param>
/// <param name="WithinDeltaE">Nine times in ten a white of this name is no farther.</param>
/// <param name="ScatteringRatio">S beside that of a lake of the same mass.</param>
public sealed record StandInWhite(string Key, string Name, Lab Colour, double WithinDeltaE, Estimate ScatteringRatio)
{
    private static readonly Lazy<IReadOnlyList<StandInWhite>> Table = new(() => [.. EmbeddedTables.Read("whites.csv").Rows.Select(Of)]);

    /// <summary>All that are offered.</summary>
    public static IReadOnlyList<StandInWhite> All => Table.Value;

    /// <summary>A white by its key; null when there is none.</summary>
    public static StandInWhite? Find(string? key) => All.FirstOrDefault(w => w.Key == key);

    /// <summary>A white of the maker's own, whose colour is known and whose scattering may be that of any white.</summary>
    /// <param name="colour">Its colour in a hiding layer.</param>
    /// <param name="withinDeltaE">How near that is known.</param>
    public static StandInWhite Own(Lab colour, double withinDeltaE)
    {
        double low = All.Min(w => w.ScatteringRatio.Low), high = All.Max(w => w.ScatteringRatio.High);
        return new("own", "your white", colour, withinDeltaE, new Estimate(Math.Sqrt(low * high), low, high));
    }

    private static StandInWhite Of(TableRow r) => new(r["key"], r["name"], new Lab(r.Number("lab_l"), r.Number("lab_a"), r.Number("lab_b")), r.Number("within"), new Estimate(r.Number("scattering"), r.Number("scattering_low"), r.Number("scattering_high")));
}
