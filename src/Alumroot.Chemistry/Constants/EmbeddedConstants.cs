using System.Reflection;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Constants;

/// <summary>The constants that come with the program: extended Debye-Hueckel working set, every row with its source.</summary>
public static class EmbeddedConstants
{
    private static readonly Lazy<ConstantSet> Loaded = new(() => ConstantSet.Read(Table("species.csv"), Table("phases.csv"), Table("debye_hueckel.csv"), Table("reagents.csv")));

    /// <summary>Names of the embedded tables.</summary>
    public static IReadOnlyList<string> TableNames { get; } = ["species.csv", "phases.csv", "debye_hueckel.csv", "reagents.csv"];

    /// <summary>The set, read on first use.</summary>
    public static ConstantSet Set => Loaded.Value;

    /// <summary>One embedded table as text rows.</summary>
    /// <exception cref="ArgumentException">There is no such table.</exception>
    public static Table Table(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name) ?? throw new ArgumentException($"there is no table {name}", nameof(name));
        using var reader = new StreamReader(stream);
        return Quantities.Tables.Table.Parse(name, reader.ReadToEnd());
    }
}
