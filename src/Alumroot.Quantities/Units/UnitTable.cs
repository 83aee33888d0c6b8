using System.Collections.Frozen;
using System.Text;
using Alumroot.Quantities.Tables;

namespace Alumroot.Quantities.Units;

/// <summary>All units the program reads and writes, from the embedded units.csv. Loaded on first use, then unchanging.</summary>
public static class UnitTable
{
    private static readonly Lazy<Loaded> Content = new(Load);

    /// <summary>Every unit, in the order of the file.</summary>
    public static IReadOnlyList<Unit> All => Content.Value.Units;

    /// <summary>The unit with this symbol.</summary>
    /// <exception cref="KeyNotFoundException">There is no such unit of this kind.</exception>
    public static Unit Get(QuantityKind kind, string symbol) =>
        Content.Value.BySymbol.TryGetValue((kind, symbol), out Unit? unit)
            ? unit
            : throw new KeyNotFoundException($"units.csv has no {kind} unit written {symbol}.");

    /// <summary>The units of this kind that a spelling may mean; none when it is unknown, several when it is ambiguous.</summary>
    public static IReadOnlyList<Unit> Find(QuantityKind kind, string spelling) =>
        Content.Value.BySpelling.TryGetValue((kind, KeyOf(spelling)), out Unit[]? units) ? units : [];

    /// <summary>Whether the spelling is a unit of any kind.</summary>
    internal static bool IsKnown(string spelling) => Enum.GetValues<QuantityKind>().Any(kind => Find(kind, spelling).Count > 0);

    /// <summary>Every spelling of a kind in its reduced form (see <see cref="KeyOf"/>) with the units it may mean.</summary>
    internal static IEnumerable<(string Key, Unit Unit)> Spellings(QuantityKind kind) =>
        from entry in Content.Value.BySpelling
        where entry.Key.Kind == kind
        from unit in entry.Value
        select (entry.Key.Key, unit);

    /// <summary>A spelling reduced to what counts: small letters, no blanks, full stops or degree signs, plain forms of mu and raised digits.</summary>
    internal static string KeyOf(string spelling)
    {
        var key = new StringBuilder(spelling.Length);
        foreach (char c in spelling)
        {
            if (char.IsWhiteSpace(c) || c is '.' or '°' or 'º' or '˚' or '_') continue;
            key.Append(c switch
            {
                'µ' or 'μ' => 'u',
                '²' or '₂' => '2',
                '³' or '₃' => '3',
                '⁺' => '+',
                '⁄' or '∕' => '/',
                _ => char.ToLowerInvariant(c),
            });
        }
        return key.Replace("degrees", "").Replace("degree", "").Replace("deg", "").Replace("per", "/").Replace("/cent", "percent").Replace("/mil", "permil").ToString();
    }

    private static Loaded Load()
    {
        const string name = "units.csv";
        using Stream stream = typeof(UnitTable).Assembly.GetManifestResourceStream(name)
            ?? throw new FileNotFoundException("The embedded table is missing.", name);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var units = new List<Unit>();
        var spellings = new Dictionary<(QuantityKind Kind, string Key), List<Unit>>();
        foreach (TableRow row in Table.Parse(name, reader.ReadToEnd()).Rows)
        {
            Unit unit = ReadUnit(row);
            units.Add(unit);
            foreach (string spelling in row["spellings"].Split('|', StringSplitOptions.RemoveEmptyEntries).Append(unit.Symbol).Append(unit.Name))
            {
                (QuantityKind, string) key = (unit.Kind, KeyOf(spelling));
                if (!spellings.TryGetValue(key, out List<Unit>? meanings)) spellings[key] = meanings = [];
                if (!meanings.Contains(unit)) meanings.Add(unit);
            }
        }
        return new Loaded(
            units,
            units.ToFrozenDictionary(u => (u.Kind, u.Symbol)),
            spellings.ToFrozenDictionary(s => s.Key, s => s.Value.ToArray()));
    }

    private static Unit ReadUnit(TableRow row)
    {
        if (!Enum.TryParse(row["quantity"], ignoreCase: true, out QuantityKind kind))
            throw row.Wrong("quantity", $"\"{row["quantity"]}\" is not a quantity; write one of {string.Join(", ", Enum.GetNames<QuantityKind>())}");
        KitchenMeasures? system = null;
        if (row["system"].Length > 0)
            system = Enum.TryParse(row["system"], ignoreCase: true, out KitchenMeasures s)
                ? s
                : throw row.Wrong("system", $"\"{row["system"]}\" is not a kitchen; write us, imperial or metric");
        double toBase = row.Number("to_base");
        if (toBase <= 0) throw row.Wrong("to_base", "a factor above zero was expected");
        return new Unit(kind, row["symbol"], row["name"], system, toBase, row.OptionalNumber("offset") ?? 0, row["exact"] == "yes", row["source"], row["where"]);
    }

    private sealed record Loaded(
        IReadOnlyList<Unit> Units,
        FrozenDictionary<(QuantityKind Kind, string Symbol), Unit> BySymbol,
        FrozenDictionary<(QuantityKind Kind, string Key), Unit[]> BySpelling);
}
