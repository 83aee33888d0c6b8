using System.Reflection;
using System.Text.RegularExpressions;
using Alumroot.Quantities.Tables;

namespace Alumroot.Architecture.Tests;

/// <summary>Every table in every room can be read, and every source key it names stands in docs/sources.bib.</summary>
public partial class EmbeddedTableTests
{
    private static readonly HashSet<string> Keys = [.. Entry().Matches(File.ReadAllText(Path.Combine(Repository.Root, "docs", "sources.bib"))).Select(m => m.Groups[1].Value)];

    public static TheoryData<string, string> Tables
    {
        get
        {
            var tables = new TheoryData<string, string>();
            foreach (Assembly room in Rooms.All)
                foreach (string name in room.GetManifestResourceNames().Where(n => n.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)))
                    tables.Add(room.GetName().Name!, name);
            return tables;
        }
    }

    [Theory, MemberData(nameof(Tables))]
    public void A_table_reads_and_has_a_header_and_rows(string room, string name)
    {
        Table table = Read(room, name);
        Assert.DoesNotContain("", table.Columns);
        Assert.NotEmpty(table.Rows);
    }

    [Theory, MemberData(nameof(Tables))]
    public void Every_source_of_a_table_is_in_the_bibliography(string room, string name)
    {
        Table table = Read(room, name);
        if (!table.Has("source")) return;
        string[] lost = [.. table.Rows.SelectMany(r => SourceKeys(r["source"]).Select(k => (Key: k, r.Line))).Where(s => !Keys.Contains(s.Key))
            .GroupBy(s => s.Key).Select(g => $"{name}: {g.Key}, first in line {g.First().Line}, {g.Count()} times")];
        string[] silent = [.. table.Rows.Where(r => r["source"].Length == 0).Select(r => $"{name} line {r.Line}: no source")];
        Assert.True(lost.Length + silent.Length == 0, "Not in docs/sources.bib:\n" + string.Join("\n", lost.Concat(silent)));
    }

    [Fact]
    public void The_bibliography_names_each_source_once()
    {
        string[] all = [.. Entry().Matches(File.ReadAllText(Path.Combine(Repository.Root, "docs", "sources.bib"))).Select(m => m.Groups[1].Value)];
        Assert.NotEmpty(all);
        Assert.Empty(all.GroupBy(k => k).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    [Fact]
    public void The_unit_table_is_among_them() => Assert.Contains(Tables, t => t.Data is ("Alumroot.Quantities", "units.csv"));

    private static string[] SourceKeys(string field) => field.Split([';', '|', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static Table Read(string room, string name)
    {
        using Stream stream = Assembly.Load(room).GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return Table.Parse(name, reader.ReadToEnd());
    }

    [GeneratedRegex(@"^@\w+\{\s*([^,\s]+)\s*,", RegexOptions.Multiline)]
    private static partial Regex Entry();
}
