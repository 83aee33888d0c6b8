using System.Xml;
using System.Xml.Linq;

namespace Alumroot.Colour.Interchange;

/// <summary>Opens the XML formats: no document types, nothing from outside.</summary>
internal static class XmlColours
{
    private const int MostDepth = 64;

    internal static ColourDocument Read(string text, bool percent)
    {
        XElement root = Root(text);
        return root.Name.LocalName switch
        {
            "CxF" when root.Name.NamespaceName == CxfReader.Namespace => new CxfReader(root, percent).Read(),
            "IESTM2714" => SpdxReader.Read(root),
            _ => throw new FaultException(new(FaultKind.WrongNamespace, LineOf(root)) { Found = root.Name.ToString(), Expected = CxfReader.Namespace }),
        };
    }

    /// <summary>The line of an element.</summary>
    internal static int LineOf(XObject place) => place is IXmlLineInfo info && info.HasLineInfo() ? info.LineNumber : 1;

    private static XElement Root(string text)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = ColourFile.MostBytes, IgnoreComments = true, IgnoreProcessingInstructions = true };
        try
        {
            using (XmlReader depth = XmlReader.Create(new StringReader(text), settings))
                while (depth.Read())
                    if (depth.Depth > MostDepth) throw new FaultException(new(FaultKind.BrokenXml, ((IXmlLineInfo)depth).LineNumber) { Found = "depth" });
            using XmlReader reader = XmlReader.Create(new StringReader(text), settings);
            return XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
        }
        catch (XmlException e)
        {
            bool type = text.Contains("<!DOCTYPE", StringComparison.OrdinalIgnoreCase);
            throw new FaultException(new(type ? FaultKind.DocumentType : FaultKind.BrokenXml, Math.Max(1, e.LineNumber)));
        }
    }
}
