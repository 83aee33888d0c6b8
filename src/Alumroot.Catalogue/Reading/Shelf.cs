using System.Collections.Frozen;
using Alumroot.Quantities.Tables;

namespace Alumroot.Catalogue.Reading;

/// <summary>The rows of one table in the order of the file, and by key.</summary>
internal sealed class Shelf<T> where T : class
{
    private readonly FrozenDictionary<string, T> _byKey;

    private Shelf(IReadOnlyList<T> rows, FrozenDictionary<string, T> byKey) => (Rows, _byKey) = (rows, byKey);

    internal IReadOnlyList<T> Rows { get; }

    internal T? Find(string key) => _byKey.GetValueOrDefault(key);

    internal static Shelf<T> Read(string file, Func<Fields, T> read, Func<T, string> keyOf)
    {
        Table table = EmbeddedTables.Read(file);
        var rows = new List<T>();
        var byKey = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (TableRow row in table.Rows)
        {
            T item = read(new Fields(row));
            rows.Add(item);
            if (!byKey.TryAdd(keyOf(item), item)) throw row.Wrong("key", $"{keyOf(item)} stands twice");
        }
        return new Shelf<T>(rows.AsReadOnly(), byKey.ToFrozenDictionary(StringComparer.Ordinal));
    }
}
