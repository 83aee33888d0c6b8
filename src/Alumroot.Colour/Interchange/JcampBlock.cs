using System.Globalization;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;

namespace Alumroot.Colour.Interchange;

/// <summary>The records of one JCAMP-DX block, made a sample.</summary>
internal sealed class JcampBlock(JcampRecord title)
{
    private const string Even = "XYDATA", Points = "XYPOINTS", Peaks = "PEAKTABLE";
    private const int MostPoints = 1_000_000;

    private readonly Dictionary<string, JcampRecord> _records = new(StringComparer.Ordinal);

    internal static bool IsData(string label) => label is Even or Points or Peaks;

    internal void Add(JcampRecord record)
    {
        if (IsData(record.Label) && !_records.TryAdd(record.Label, record)) throw new FaultException(new(FaultKind.Duplicate, record.Line) { Field = record.Label });
        _records.TryAdd(record.Label, record);
    }

    /// <summary>The sample, or null for a block that only holds other blocks.</summary>
    internal ColourSample? Sample(bool percent, int before, ref bool assumed)
    {
        JcampRecord? data = _records.GetValueOrDefault(Even) ?? _records.GetValueOrDefault(Points) ?? _records.GetValueOrDefault(Peaks);
        if (data is null) return null;
        string id = title.Value.Length > 0 ? title.Value : (before + 1).ToString(CultureInfo.InvariantCulture);
        string xUnits = Need("XUNITS").Value.ToUpperInvariant(), yUnits = Need("YUNITS").Value.ToUpperInvariant();
        List<(double X, double Y)> points = data.Label == Even ? Evenly(data, id) : Paired(data, id);
        if (_records.TryGetValue("NPOINTS", out JcampRecord? count) && Whole("NPOINTS") is var stated && stated != points.Count)
            throw new FaultException(new(FaultKind.PointCount, count.Line) { Sample = id, Found = Text(points.Count), Expected = Text(stated) });
        (SpectrumKind kind, bool kubelka) = Kind(yUnits);
        double[] nanometres = [.. points.Select(p => Nanometres(p.X, xUnits))], values = [.. points.Select(p => p.Y)];
        if (nanometres.Length > 1 && nanometres[^1] < nanometres[0])
        {
            Array.Reverse(nanometres);
            Array.Reverse(values);
        }
        SpectrumRules.CheckWavelengths(nanometres, data.Line);
        double scale = 1;
        if (kind is SpectrumKind.Reflectance or SpectrumKind.Transmittance && !kubelka)
        {
            bool large = percent || yUnits.Contains('%', StringComparison.Ordinal) || yUnits.Contains("PERCENT", StringComparison.Ordinal);
            if (!large && SpectrumRules.LooksLikePercent(values)) assumed = large = true;
            scale = large ? 0.01 : 1;
        }
        for (int i = 0; i < values.Length; i++)
        {
            double written = values[i];
            values[i] = kubelka ? FilmOptics.OpaqueReflectance(Math.Max(0, written)) : written * scale;
            SpectrumRules.CheckValue(kind, values[i], written, data.Line, id, $"{SpectrumRules.Text(nanometres[i])} nm");
        }
        return new ColourSample(id) { Kind = kind, Spectrum = Spectrum.Of(nanometres, values) };
    }

    private List<(double X, double Y)> Evenly(JcampRecord data, string id)
    {
        if (!data.Value.Replace(" ", "", StringComparison.Ordinal).StartsWith("(X++(Y..Y))", StringComparison.OrdinalIgnoreCase))
            throw new FaultException(new(FaultKind.UnknownUnit, data.Line) { Field = data.Label, Found = data.Value, Expected = "(X++(Y..Y))" });
        double first = Number("FIRSTX"), last = Number("LASTX"), xFactor = Number("XFACTOR"), yFactor = Number("YFACTOR");
        int stated = Whole("NPOINTS");
        if (stated is < 1 or > MostPoints) throw new FaultException(new(FaultKind.PointCount, _records["NPOINTS"].Line) { Sample = id, Found = Text(stated), Expected = $"1-{MostPoints}" });
        double step = stated > 1 ? (last - first) / (stated - 1) : 0;
        var unpacked = new JcampUnpacker(id, MostPoints);
        var starts = new List<(int Line, int Index, double Abscissa)>();
        foreach ((int line, string text) in data.Lines)
        {
            int due = unpacked.DueIndex;
            starts.Add((line, due, unpacked.Line(line, text) * xFactor));
        }
        if (stated != unpacked.Ordinates.Count)
            throw new FaultException(new(FaultKind.PointCount, _records["NPOINTS"].Line) { Sample = id, Found = Text(unpacked.Ordinates.Count), Expected = Text(stated) });
        foreach ((int line, int due, double abscissa) in starts)
            if (Math.Abs(abscissa - first - due * step) > Math.Max(0.5 * Math.Abs(step), 1e-6 * Math.Abs(first)))
                throw new FaultException(new(FaultKind.Abscissa, line) { Sample = id, Found = SpectrumRules.Text(abscissa), Expected = SpectrumRules.Text(first + due * step) });
        return [.. unpacked.Ordinates.Select((y, i) => (first + i * step, y * yFactor))];
    }

    private List<(double X, double Y)> Paired(JcampRecord data, string id)
    {
        double xFactor = _records.ContainsKey("XFACTOR") ? Number("XFACTOR") : 1, yFactor = _records.ContainsKey("YFACTOR") ? Number("YFACTOR") : 1;
        var numbers = new List<double>();
        foreach ((int line, string text) in data.Lines)
        {
            foreach (string word in text.Split([' ', '\t', ',', ';'], StringSplitOptions.RemoveEmptyEntries))
                numbers.Add(SpectrumRules.Number(word) ?? throw new FaultException(new(FaultKind.NotANumber, line) { Sample = id, Field = data.Label, Found = word }));
            if (numbers.Count % 2 == 1) throw new FaultException(new(FaultKind.RowLength, line) { Sample = id, Found = Text(numbers.Count), Expected = Text(numbers.Count + 1) });
        }
        return [.. numbers.Chunk(2).Select(p => (p[0] * xFactor, p[1] * yFactor))];
    }

    private JcampRecord Need(string label) => _records.GetValueOrDefault(label) ?? throw new FaultException(new(FaultKind.MissingLabel, title.Line) { Sample = title.Value, Expected = label });

    private double Number(string label)
    {
        JcampRecord record = Need(label);
        return SpectrumRules.Number(record.Value) ?? throw new FaultException(new(FaultKind.NotANumber, record.Line) { Field = label, Found = record.Value });
    }

    private int Whole(string label) => Number(label) is var x && x == Math.Floor(x) && Math.Abs(x) < int.MaxValue
        ? (int)x
        : throw new FaultException(new(FaultKind.NotANumber, _records[label].Line) { Field = label, Found = _records[label].Value });

    private double Nanometres(double x, string units) => units switch
    {
        "NANOMETERS" or "NANOMETRES" or "NM" => x,
        "MICROMETERS" or "MICROMETRES" => 1000 * x,
        "1/CM" or "CM-1" when x > 0 => 1e7 / x,
        _ => throw new FaultException(new(FaultKind.UnknownUnit, _records["XUNITS"].Line) { Field = "XUNITS", Found = units, Expected = "NANOMETERS, MICROMETERS, 1/CM" }),
    };

    private (SpectrumKind Kind, bool Kubelka) Kind(string units) => units switch
    {
        _ when units.Contains("TRANSMI", StringComparison.Ordinal) => (SpectrumKind.Transmittance, false),
        _ when units.Contains("REFLECT", StringComparison.Ordinal) => (SpectrumKind.Reflectance, false),
        _ when units.Contains("ABSORB", StringComparison.Ordinal) => (SpectrumKind.Absorbance, false),
        _ when units.Contains("KUBELKA", StringComparison.Ordinal) => (SpectrumKind.Reflectance, true),
        _ when units.Contains("ARBITRARY", StringComparison.Ordinal) => (SpectrumKind.Unstated, false),
        _ => throw new FaultException(new(FaultKind.UnknownUnit, _records["YUNITS"].Line) { Field = "YUNITS", Found = units, Expected = "REFLECTANCE, TRANSMITTANCE, ABSORBANCE, KUBELKA-MUNK, ARBITRARY UNITS" }),
    };

    private static string Text(int n) => n.ToString(CultureInfo.InvariantCulture);
}
