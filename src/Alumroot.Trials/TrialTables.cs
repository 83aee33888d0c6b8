using Alumroot.Quantities.Tables;

namespace Alumroot.Trials;

/// <summary>The tables that are built into the program.</summary>
internal static class TrialTables
{
    internal static IReadOnlyList<TableRow> Read(string name)
    {
        using Stream stream = typeof(TrialTables).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} was not built in");
        using var reader = new StreamReader(stream);
        return [.. Table.Parse(name, reader.ReadToEnd()).Rows];
    }
}
