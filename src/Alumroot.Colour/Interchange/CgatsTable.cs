using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Interchange;

/// <summary>One table of a CGATS file: named fields to samples.</summary>
internal sealed class CgatsTable(string[] fields, IReadOnlyDictionary<string, string> keywords, bool percent)
{
    private const string PairWavelength = "SPECTRAL_NM", PairPercent = "SPECTRAL_PCT", PairShare = "SPECTRAL_DEC";

    private readonly int _id = Array.FindIndex(fields, f => f is "SAMPLE_ID" or "SampleID" or "SAMPLE"), _name = Array.IndexOf(fields, "SAMPLE_NAME");
    private readonly (int Column, double Nanometres)[] _bands =
        [.. fields.Select((f, i) => (i, Nanometres: SpectrumRules.WavelengthNanometres(f))).Where(b => b.Nanometres is not null).Select(b => (b.i, b.Nanometres!.Value))];

    internal bool PercentAssumed { get; private set; }

    /// <summary>Fields that stand once for each wavelength.</summary>
    internal static bool IsPairField(string field) => field is PairWavelength or PairPercent or PairShare;

    internal ColourTable Read(List<List<CgatsToken>> rows)
    {
        if (_bands.Length > 0) SpectrumRules.CheckWavelengths([.. _bands.Select(b => b.Nanometres)], rows.Count > 0 ? rows[0][0].Line : 1);
        double[][] spectra = [.. rows.Select((row, r) => Array.ConvertAll(_bands, b => Number(row, r, b.Column)))];
        double scale = Scale(spectra);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var samples = new List<ColourSample>(rows.Count);
        for (int r = 0; r < rows.Count; r++)
        {
            string id = Id(rows[r], r);
            if (_id >= 0 && !seen.Add(id)) throw new FaultException(new(FaultKind.SameId, rows[r][_id].Line) { Sample = id });
            samples.Add(new ColourSample(id)
            {
                Name = _name >= 0 ? rows[r][_name].Text : null,
                Kind = Kind,
                Spectrum = _bands.Length > 0 ? Spread(rows[r], r, spectra[r], scale) : Pairs(rows[r], r),
                Lab = LabOf(rows[r], r),
                Xyz = Triple(rows[r], r, "XYZ_X", "XYZ_Y", "XYZ_Z") is { } x ? SpectrumRules.Checked(new Xyz(x[0], x[1], x[2]), rows[r][0].Line, id) : null,
            });
        }
        return new ColourTable(samples);
    }

    private SpectrumKind Kind => keywords.GetValueOrDefault("MEAS_TYPE") switch
    {
        "EMISSION" or "AMBIENT" or "PROJECTOR" => SpectrumKind.Emission,
        "TRANSMISSIVE" => SpectrumKind.Transmittance,
        _ => SpectrumKind.Reflectance,
    };

    private double Scale(double[][] spectra)
    {
        if (Kind == SpectrumKind.Emission) return 1;
        if (keywords.TryGetValue("SPECTRAL_NORM", out string? norm) && SpectrumRules.Number(norm) is { } n and > 0) return 1 / n;
        if (percent) return 0.01;
        PercentAssumed = SpectrumRules.LooksLikePercent(spectra.SelectMany(s => s));
        return PercentAssumed ? 0.01 : 1;
    }

    private Spectrum Spread(List<CgatsToken> row, int r, double[] written, double scale)
    {
        for (int i = 0; i < written.Length; i++) SpectrumRules.CheckValue(Kind, written[i] * scale, written[i], row[_bands[i].Column].Line, Id(row, r), fields[_bands[i].Column]);
        return Spectrum.Of(_bands.Select(b => b.Nanometres), written.Select(v => v * scale));
    }

    private Spectrum? Pairs(List<CgatsToken> row, int r)
    {
        var nanometres = new List<double>();
        var values = new List<double>();
        for (int i = 0; i + 1 < fields.Length; i++)
        {
            if (fields[i] != PairWavelength || fields[i + 1] is not (PairPercent or PairShare)) continue;
            double written = Number(row, r, i + 1), value = fields[i + 1] == PairPercent ? written / 100 : written;
            nanometres.Add(Number(row, r, i));
            values.Add(value);
            SpectrumRules.CheckValue(Kind, value, written, row[i].Line, Id(row, r), $"{fields[i]} {row[i].Text}");
        }
        if (nanometres.Count == 0) return null;
        SpectrumRules.CheckWavelengths(nanometres, row[0].Line);
        return Spectrum.Of(nanometres, values);
    }

    private Lab? LabOf(List<CgatsToken> row, int r)
    {
        Lab? lab = Triple(row, r, "LAB_L", "LAB_A", "LAB_B") is { } t ? new Lab(t[0], t[1], t[2])
            : Triple(row, r, "LCH_L", "LCH_C", "LCH_H") is { } p ? Lab.FromLch(p[0], p[1], p[2]) : null;
        return lab is { } found ? SpectrumRules.Checked(found, row[0].Line, Id(row, r)) : null;
    }

    private double[]? Triple(List<CgatsToken> row, int r, params ReadOnlySpan<string> names)
    {
        var values = new double[names.Length];
        for (int i = 0; i < names.Length; i++)
        {
            int column = Array.IndexOf(fields, names[i]);
            if (column < 0) return null;
            values[i] = Number(row, r, column);
        }
        return values;
    }

    private string Id(List<CgatsToken> row, int r) => _id >= 0 ? row[_id].Text : (r + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);

    private double Number(List<CgatsToken> row, int r, int column)
    {
        CgatsToken word = row[column];
        return SpectrumRules.Number(word.Text) ?? throw new FaultException(new(
            SpectrumRules.Number(word.Text.Replace(',', '.')) is null ? FaultKind.NotANumber : FaultKind.DecimalComma, word.Line)
        { Sample = Id(row, r), Field = fields[column], Found = word.Text });
    }
}
