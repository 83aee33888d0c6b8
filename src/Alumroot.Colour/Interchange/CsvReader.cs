using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Interchange;

/// <summary>Reads plain tables: samples down with a column for each wavelength or for L, a, b; or wavelengths down with a column for each sample.</summary>
internal sealed class CsvReader
{
    private static readonly string[] TallHeads = ["wavelength_nm", "wavelength", "wavelengths", "nm", "lambda", "lambda_nm"];
    private static readonly string[][] LabHeads = [["L", "a", "b"], ["LAB_L", "LAB_A", "LAB_B"], ["L*", "a*", "b*"]], XyzHeads = [["X", "Y", "Z"], ["XYZ_X", "XYZ_Y", "XYZ_Z"]];

    private readonly Table _table;
    private readonly char _separator;
    private readonly bool _percent;

    private CsvReader(string text, bool percent)
    {
        _separator = Separator(text);
        _table = Table.Parse("table", text, _separator);
        _percent = percent;
    }

    internal static ColourDocument Read(string text, bool percent)
    {
        var reader = new CsvReader(text, percent);
        bool tall = TallHeads.Contains(reader._table.Columns[0].Replace(' ', '_'), StringComparer.OrdinalIgnoreCase);
        return new ColourDocument(ColourFormat.Csv, [new ColourTable(tall ? reader.Tall() : reader.Wide())]);
    }

    private static char Separator(string text)
    {
        ReadOnlySpan<char> head = default;
        foreach (ReadOnlySpan<char> line in text.AsSpan().EnumerateLines())
        {
            head = line.Trim();
            if (head.Length > 0 && head[0] != '#') break;
        }
        int tabs = head.Count('\t'), semicolons = head.Count(';'), commas = head.Count(',');
        return tabs > 0 && tabs >= semicolons && tabs >= commas ? '\t' : semicolons > 0 && semicolons >= commas ? ';' : ',';
    }

    private List<ColourSample> Wide()
    {
        string first = _table.Columns[0];
        (string Column, double Nanometres)[] bands = [.. _table.Columns.Skip(1).Select(c => (c, SpectrumRules.WavelengthNanometres(c))).Where(c => c.Item2 is not null).Select(c => (c.c, c.Item2!.Value))];
        string[]? lab = Heads(LabHeads), xyz = Heads(XyzHeads);
        if (bands.Length == 0 && lab is null && xyz is null) throw new FaultException(new(FaultKind.NoFormat, 1) { Found = string.Join(", ", _table.Columns.Take(8)) });
        if (bands.Length > 0) SpectrumRules.CheckWavelengths([.. bands.Select(b => b.Nanometres)], 1);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var samples = new List<ColourSample>();
        foreach (TableRow row in _table.Rows)
        {
            string id = row[first];
            if (id.Length == 0) id = (samples.Count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
            if (!seen.Add(id)) throw new FaultException(new(FaultKind.SameId, row.Line) { Sample = id });
            samples.Add(new ColourSample(id)
            {
                Spectrum = bands.Length == 0 ? null : Spectrum.Of(bands.Select(b => b.Nanometres), bands.Select(b => Value(row, b.Column, id, b.Column))),
                Lab = lab is null ? null : SpectrumRules.Checked(new Lab(Number(row, lab[0], id), Number(row, lab[1], id), Number(row, lab[2], id)), row.Line, id),
                Xyz = xyz is null ? null : SpectrumRules.Checked(new Xyz(Number(row, xyz[0], id), Number(row, xyz[1], id), Number(row, xyz[2], id)), row.Line, id),
            });
        }
        return samples;
    }

    private List<ColourSample> Tall()
    {
        string first = _table.Columns[0];
        var nanometres = new List<double>();
        foreach (TableRow row in _table.Rows)
        {
            nanometres.Add(Number(row, first, first));
            if (nanometres.Count > 1 && nanometres[^1] <= nanometres[^2])
                throw new FaultException(new(FaultKind.WavelengthOrder, row.Line) { Found = SpectrumRules.Text(nanometres[^1]), Expected = SpectrumRules.Text(nanometres[^2]) });
        }
        SpectrumRules.CheckWavelengths(nanometres, _table.Rows.Count > 0 ? _table.Rows[^1].Line : 1);
        return [.. _table.Columns.Skip(1).Where(c => c.Length > 0).Select(c => new ColourSample(c)
        {
            Spectrum = Spectrum.Of(nanometres, _table.Rows.Select(r => Value(r, c, c, $"{r[first]} nm"))),
        })];
    }

    private string[]? Heads(string[][] known) =>
        known.Select(set => set.Select(h => _table.Columns.FirstOrDefault(c => string.Equals(c, h, StringComparison.OrdinalIgnoreCase))).OfType<string>().ToArray())
            .FirstOrDefault(found => found.Length == 3 && !found.Contains(_table.Columns[0]));

    private double Value(TableRow row, string column, string sample, string field)
    {
        double written = Number(row, column, sample), value = _percent ? written / 100 : written;
        SpectrumRules.CheckValue(SpectrumKind.Reflectance, value, written, row.Line, sample, field);
        return value;
    }

    private double Number(TableRow row, string column, string sample)
    {
        string text = row[column];
        bool commas = _separator != ',' && text.Contains(',', StringComparison.Ordinal) && !text.Contains('.', StringComparison.Ordinal);
        return SpectrumRules.Number(commas ? text.Replace(',', '.') : text) ?? throw new FaultException(new(
            SpectrumRules.Number(text.Replace(',', '.')) is null ? FaultKind.NotANumber : FaultKind.DecimalComma, row.Line)
        { Sample = sample, Field = column, Found = text });
    }
}
