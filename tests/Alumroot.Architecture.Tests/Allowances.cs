using Alumroot.Quantities.Tables;

namespace Alumroot.Architecture.Tests;

/// <summary>Exceptions from a house rule, each a row of a table with its reason.</summary>
internal static class Allowances
{
    /// <summary>The rows of an allow-list: what is allowed, and why.</summary>
    public static IReadOnlyDictionary<string, string> Read(string table, string column)
    {
        Dictionary<string, string> allowed = Rows(table).ToDictionary(r => r[column], r => r["reason"], StringComparer.Ordinal);
        Assert.All(allowed, a => Assert.True(a.Value.Length >= 10, $"{table}: {a.Key} is allowed without a reason"));
        return allowed;
    }

    public static IReadOnlyList<TableRow> Rows(string table)
    {
        using Stream stream = typeof(Allowances).Assembly.GetManifestResourceStream(table) ?? throw new FileNotFoundException(table);
        using var reader = new StreamReader(stream);
        return Table.Parse(table, reader.ReadToEnd()).Rows;
    }
}
