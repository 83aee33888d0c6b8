using Alumroot.Quantities.Tables;

namespace Alumroot.Permanence;

/// <summary>The tables that are built into the program.</summary>
internal static class PermanenceTables
{
    internal static IReadOnlyList<TableRow> Read(string name)
    {
        using Stream stream = typeof(PermanenceTables).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} was not built in");
        using var reader = new StreamReader(stream);
        return [.. Table.Parse(name, reader.ReadToEnd()).Rows];
    }

    internal static IReadOnlyList<string> Parts(string cell) => cell.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
