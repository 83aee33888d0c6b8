using System.Text;
using System.Xml;

namespace Alumroot.Colour.Interchange;

/// <summary>Writes CxF3 (ISO 17972-1): an object for each sample; spectra need an even step.</summary>
public static class CxfWriter
{
    /// <summary>The file as text.</summary>
    /// <param name="document">Samples whose spectra are evenly spaced.</param>
    /// <param name="created">When it was made, as the format wants it: 2026-01-15T09:00:00Z.</param>
    /// <exception cref="ArgumentException">A spectrum is not evenly spaced.</exception>
    public static string Write(ColourDocument document, string created)
    {
        ArgumentNullException.ThrowIfNull(document);
        var text = new StringBuilder();
        var settings = new XmlWriterSettings { Indent = true, NewLineChars = "\n", OmitXmlDeclaration = true };
        using (var xml = XmlWriter.Create(text, settings))
        {
            Start(xml, "CxF");
            Start(xml, "FileInformation");
            Value(xml, "Creator", "Alumroot");
            Value(xml, "CreationDate", created);
            xml.WriteEndElement();
            Start(xml, "Resources");
            Start(xml, "ObjectCollection");
            foreach (ColourSample sample in document.Samples) Write(sample, created, xml);
            xml.WriteEndElement();
            Start(xml, "ColorSpecificationCollection");
            Start(xml, "ColorSpecification");
            xml.WriteAttributeString("Id", "CS1");
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteEndElement();
        }
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + text + "\n";
    }

    private static void Write(ColourSample sample, string created, XmlWriter xml)
    {
        Start(xml, "Object");
        xml.WriteAttributeString("ObjectType", "Standard");
        if (sample.Name is { } name) xml.WriteAttributeString("Name", ColourWriters.OneLine(name));
        xml.WriteAttributeString("Id", ColourWriters.OneLine(sample.Id));
        Value(xml, "CreationDate", created);
        Start(xml, "ColorValues");
        if (sample.Spectrum is { } spectrum)
        {
            Start(xml, sample.Kind switch { SpectrumKind.Transmittance => "TransmittanceSpectrum", SpectrumKind.Emission => "EmissiveSpectrum", _ => "ReflectanceSpectrum" });
            xml.WriteAttributeString("ColorSpecification", "CS1");
            xml.WriteAttributeString("StartWL", ColourWriters.Text(spectrum.Nanometres[0]));
            xml.WriteAttributeString("Increment", ColourWriters.Text(spectrum.StepNanometres ?? throw new ArgumentException("CxF3 holds evenly spaced spectra.", nameof(sample))));
            xml.WriteString(string.Join(' ', spectrum.Values.Select(ColourWriters.Text)));
            xml.WriteEndElement();
        }
        if (sample.Lab is { } lab) Triple(xml, "ColorCIELab", ("L", lab.L), ("A", lab.A), ("B", lab.B));
        if (sample.Xyz is { } xyz) Triple(xml, "ColorCIEXYZ", ("X", xyz.X), ("Y", xyz.Y), ("Z", xyz.Z));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Triple(XmlWriter xml, string name, params ReadOnlySpan<(string Name, double Value)> values)
    {
        Start(xml, name);
        xml.WriteAttributeString("ColorSpecification", "CS1");
        foreach ((string n, double v) in values) Value(xml, n, ColourWriters.Text(v));
        xml.WriteEndElement();
    }

    private static void Start(XmlWriter xml, string name) => xml.WriteStartElement("cc", name, CxfReader.Namespace);

    private static void Value(XmlWriter xml, string name, string value)
    {
        Start(xml, name);
        xml.WriteString(value);
        xml.WriteEndElement();
    }
}
