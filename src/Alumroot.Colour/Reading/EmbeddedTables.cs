using System.Reflection;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Reading;

/// <summary>The CSV files built into this room.</summary>
internal static class EmbeddedTables
{
    internal static Table Read(string file)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(file)
            ?? throw new TableException(file, 1, null, "the file is not built into the program");
        using var reader = new StreamReader(stream);
        return Table.Parse(file, reader.ReadToEnd());
    }
}
