using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Interchange;

/// <summary>The open formats that are read.</summary>
public enum ColourFormat
{
    /// <summary>CGATS.17 (ISO 28178) and its dialects of the same shape.</summary>
    Cgats,

    /// <summary>CxF3 (ISO 17972-1).</summary>
    Cxf3,

    /// <summary>JCAMP-DX 4.24 and 5, one or several spectra.</summary>
    JcampDx,

    /// <summary>A plain table, samples down or wavelengths down.</summary>
    Csv,

    /// <summary>ANSI/IES TM-27, the spectrum of a lamp.</summary>
    Spdx,
}

/// <summary>What the values of a spectrum are.</summary>
public enum SpectrumKind
{
    /// <summary>Reflectance factor; 1 is the perfect diffuser.</summary>
    Reflectance,

    /// <summary>Transmittance; 1 is clear.</summary>
    Transmittance,

    /// <summary>Absorbance, the decadic logarithm of light let in over light let through.</summary>
    Absorbance,

    /// <summary>Power of a light, in any unit.</summary>
    Emission,

    /// <summary>The file does not say.</summary>
    Unstated,
}

/// <summary>One measured colour.</summary>
/// <param name="Id">What the file calls it; its number in the table where the file has no name for it.</param>
public sealed record ColourSample(string Id)
{
    /// <summary>A longer name, where the file has one.</summary>
    public string? Name { get; init; }

    /// <summary>The spectrum, on the scale where 1 is the perfect diffuser or clear.</summary>
    public Spectrum? Spectrum { get; init; }

    /// <summary>What the spectrum is.</summary>
    public SpectrumKind Kind { get; init; }

    /// <summary>The share of light that the sample gives back or lets through; null for a lamp, and for values of unstated kind that cannot be such shares.</summary>
    public Spectrum? Shares => Kind switch
    {
        SpectrumKind.Absorbance => Spectrum?.Map(a => Math.Pow(10, -a)),
        SpectrumKind.Emission => null,
        SpectrumKind.Unstated when Spectrum is not null && !Spectrum.Values.All(SpectrumRules.CanBeShare) => null,
        _ => Spectrum,
    };

    /// <summary>CIELAB as the file states it.</summary>
    public Lab? Lab { get; init; }

    /// <summary>Tristimulus values as the file states them, Y = 100 for white.</summary>
    public Xyz? Xyz { get; init; }
}

/// <summary>Samples that stand in one table.</summary>
/// <param name="Samples">In the order of the file.</param>
public sealed record ColourTable(IReadOnlyList<ColourSample> Samples);

/// <summary>What a file holds.</summary>
/// <param name="Format">The format it was read as.</param>
/// <param name="Tables">One or more.</param>
public sealed record ColourDocument(ColourFormat Format, IReadOnlyList<ColourTable> Tables)
{
    /// <summary>Keywords of the file, as they stand.</summary>
    public IReadOnlyDictionary<string, string> Keywords { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>True when values were taken as percent because of their size, and not because the file or the asker says so.</summary>
    public bool PercentAssumed { get; init; }

    /// <summary>The samples of all tables.</summary>
    public IEnumerable<ColourSample> Samples => Tables.SelectMany(t => t.Samples);
}
