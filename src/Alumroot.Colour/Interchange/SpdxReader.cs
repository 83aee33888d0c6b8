using System.Xml.Linq;
using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Interchange;

/// <summary>Reads the spectrum of a lamp (ANSI/IES TM-27; names of elements as read in an open reader).</summary>
internal static class SpdxReader
{
    internal static ColourDocument Read(XElement root)
    {
        XNamespace ns = root.Name.Namespace;
        XElement? header = root.Element(ns + "Header"), distribution = root.Element(ns + "SpectralDistribution");
        string id = (string?)header?.Element(ns + "Description") is { Length: > 0 } description ? description : "1";
        var points = new List<(double Nanometres, double Power)>();
        foreach (XElement e in distribution?.Elements(ns + "SpectralData") ?? [])
        {
            int line = XmlColours.LineOf(e);
            string at = (string?)e.Attribute("wavelength") ?? "";
            double nanometres = SpectrumRules.Number(at) ?? throw new FaultException(new(FaultKind.NotANumber, line) { Sample = id, Field = "wavelength", Found = at });
            double power = SpectrumRules.Number(e.Value) ?? throw new FaultException(new(FaultKind.NotANumber, line) { Sample = id, Field = at, Found = e.Value });
            SpectrumRules.CheckValue(SpectrumKind.Emission, power, power, line, id, at);
            points.Add((nanometres, power));
        }
        if (points.Count == 0) throw new FaultException(new(FaultKind.NoSamples, XmlColours.LineOf(root)));
        SpectrumRules.CheckWavelengths([.. points.Select(p => p.Nanometres)], XmlColours.LineOf(distribution!));
        var sample = new ColourSample(id) { Kind = SpectrumKind.Emission, Spectrum = Spectrum.Of(points.Select(p => p.Nanometres), points.Select(p => p.Power)) };
        Dictionary<string, string> keywords = (header?.Elements() ?? []).GroupBy(e => e.Name.LocalName).ToDictionary(g => g.Key, g => g.First().Value);
        return new ColourDocument(ColourFormat.Spdx, [new ColourTable([sample])]) { Keywords = keywords };
    }
}
