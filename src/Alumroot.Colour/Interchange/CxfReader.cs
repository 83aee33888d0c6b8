using System.Globalization;
using System.Xml.Linq;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Interchange;

/// <summary>Reads CxF3 (ISO 17972-1:2015): objects with spectra, CIELAB or tristimulus values. Names of elements by the published core schema as seen in open readers.</summary>
internal sealed class CxfReader(XElement root, bool percent)
{
    internal const string Namespace = "http://colorexchangeformat.com/CxF3-core";

    private static readonly XNamespace Core = Namespace;

    private readonly Dictionary<string, XElement> _specifications = root.Descendants(Core + "ColorSpecification").GroupBy(s => (string?)s.Attribute("Id") ?? "").ToDictionary(g => g.Key, g => g.First());
    private bool _assumed;

    internal ColourDocument Read()
    {
        XElement[] objects = [.. root.Descendants(Core + "ObjectCollection").Elements(Core + "Object")];
        double scale = Scale(objects);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var samples = new List<ColourSample>();
        foreach (XElement o in objects)
        {
            string id = (string?)o.Attribute("Id") ?? (string?)o.Attribute("Name") ?? (samples.Count + 1).ToString(CultureInfo.InvariantCulture);
            if (!seen.Add(id)) throw new FaultException(new(FaultKind.SameId, XmlColours.LineOf(o)) { Sample = id });
            XElement? values = o.Element(Core + "ColorValues");
            XElement? reflectance = values?.Element(Core + "ReflectanceSpectrum"), transmittance = values?.Element(Core + "TransmittanceSpectrum"), emission = values?.Element(Core + "EmissiveSpectrum");
            SpectrumKind kind = reflectance is not null ? SpectrumKind.Reflectance : transmittance is not null ? SpectrumKind.Transmittance : emission is not null ? SpectrumKind.Emission : SpectrumKind.Unstated;
            samples.Add(new ColourSample(id)
            {
                Name = (string?)o.Attribute("Name"),
                Kind = kind,
                Spectrum = (reflectance ?? transmittance ?? emission) is { } spectrum ? SpectrumOf(spectrum, kind, id, kind == SpectrumKind.Emission ? 1 : scale) : null,
                Lab = values?.Element(Core + "ColorCIELab") is { } lab ? SpectrumRules.Checked(new Lab(Number(lab, "L", id), Number(lab, "A", id), Number(lab, "B", id)), XmlColours.LineOf(lab), id) : null,
                Xyz = values?.Element(Core + "ColorCIEXYZ") is { } xyz ? SpectrumRules.Checked(new Xyz(Number(xyz, "X", id), Number(xyz, "Y", id), Number(xyz, "Z", id)), XmlColours.LineOf(xyz), id) : null,
            });
        }
        Dictionary<string, string> keywords = root.Elements(Core + "FileInformation").Elements().Where(e => !e.HasElements).GroupBy(e => e.Name.LocalName).ToDictionary(g => g.Key, g => g.First().Value);
        return new ColourDocument(ColourFormat.Cxf3, [new ColourTable(samples)]) { Keywords = keywords, PercentAssumed = _assumed };
    }

    /// <summary>The schema says that 1 is the perfect diffuser; some programs write percent all the same.</summary>
    private double Scale(XElement[] objects)
    {
        if (percent) return 0.01;
        _assumed = SpectrumRules.LooksLikePercent(objects.Elements(Core + "ColorValues").Elements().Where(e => e.Name.LocalName is "ReflectanceSpectrum" or "TransmittanceSpectrum")
            .SelectMany(e => Words(e)).Select(w => SpectrumRules.Number(w) ?? 0));
        return _assumed ? 0.01 : 1;
    }

    private Spectrum SpectrumOf(XElement element, SpectrumKind kind, string id, double scale)
    {
        int line = XmlColours.LineOf(element);
        XElement? range = null;
        if ((string?)element.Attribute("ColorSpecification") is { } named)
        {
            if (!_specifications.TryGetValue(named, out XElement? specification)) throw new FaultException(new(FaultKind.UnknownSpecification, line) { Sample = id, Found = named });
            range = specification.Descendants(Core + "WavelengthRange").FirstOrDefault();
        }
        double? start = Attribute(element, "StartWL") ?? Attribute(range, "StartWL"), increment = Attribute(element, "Increment") ?? Attribute(range, "Increment");
        if (start is null || increment is not > 0) throw new FaultException(new(FaultKind.NoStart, line) { Sample = id, Expected = start is null ? "StartWL" : "Increment" });
        var written = new List<double>();
        foreach (string word in Words(element))
            written.Add(SpectrumRules.Number(word) ?? throw new FaultException(new(FaultKind.NotANumber, line) { Sample = id, Field = Wavelength(written.Count), Found = word }));
        double[] nanometres = [.. Enumerable.Range(0, written.Count).Select(i => start.Value + i * increment.Value)];
        SpectrumRules.CheckWavelengths(nanometres, line);
        for (int i = 0; i < nanometres.Length; i++) SpectrumRules.CheckValue(kind, written[i] * scale, written[i], line, id, Wavelength(i));
        return Spectrum.Of(nanometres, written.Select(v => v * scale));

        string Wavelength(int i) => $"{SpectrumRules.Text(start.Value + i * increment.Value)} nm";
    }

    private static string[] Words(XElement element) => element.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static double? Attribute(XElement? element, string name) => (string?)element?.Attribute(name) is { } text ? SpectrumRules.Number(text) : null;

    private static double Number(XElement parent, string name, string id)
    {
        string text = parent.Element(Core + name)?.Value ?? "";
        return SpectrumRules.Number(text) ?? throw new FaultException(new(FaultKind.NotANumber, XmlColours.LineOf(parent)) { Sample = id, Field = name, Found = text });
    }
}
