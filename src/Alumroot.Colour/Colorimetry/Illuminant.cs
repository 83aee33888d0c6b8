using Alumroot.Colour.Reading;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Colorimetry;

/// <summary>A light by its relative spectral power: one of the tabulated ones (ISO/CIE 11664-2, CIE 015:2018) or a measured lamp.</summary>
public sealed class Illuminant
{
    private static readonly Lazy<IReadOnlyList<Illuminant>> Tabulated = new(Load);

    private readonly Spectrum _power;

    private Illuminant(string key, Spectrum power) => (Key, _power) = (key, power);

    /// <summary>Its name, such as D50.</summary>
    public string Key { get; }

    /// <summary>The first wavelength that is tabulated.</summary>
    public double FirstNanometres => _power.Nanometres[0];

    /// <summary>The last wavelength that is tabulated.</summary>
    public double LastNanometres => _power.Nanometres[^1];

    /// <summary>All tabulated illuminants.</summary>
    public static IReadOnlyList<Illuminant> All => Tabulated.Value;

    /// <summary>Daylight of 5003 K, the light of the graphic trade.</summary>
    public static Illuminant D50 => Find("D50")!;

    /// <summary>Daylight of 6504 K.</summary>
    public static Illuminant D65 => Find("D65")!;

    /// <summary>Filament light of 2856 K.</summary>
    public static Illuminant A => Find("A")!;

    /// <summary>The tabulated illuminant of this name, in capitals or not, or null.</summary>
    public static Illuminant? Find(string key) => Tabulated.Value.FirstOrDefault(i => string.Equals(i.Key, key, StringComparison.OrdinalIgnoreCase));

    /// <summary>A measured lamp.</summary>
    /// <param name="key">What to call it.</param>
    /// <param name="power">Its relative spectral power.</param>
    public static Illuminant Measured(string key, Spectrum power) => new(key, power);

    /// <summary>Relative power at a wavelength, on straight lines between the tabulated points.</summary>
    public double PowerAt(double nanometres) => _power.LinearAt(nanometres);

    private static List<Illuminant> Load()
    {
        Table table = EmbeddedTables.Read("illuminants.csv");
        return [.. table.Columns.Skip(1).Select(key =>
        {
            TableRow[] rows = [.. table.Rows.Where(r => r.OptionalNumber(key) is not null)];
            return new Illuminant(key, Spectrum.Of(rows.Select(r => r.Number(table.Columns[0])), rows.Select(r => r.Number(key))));
        })];
    }
}
