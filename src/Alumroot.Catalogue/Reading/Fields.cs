using System.Globalization;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.Catalogue.Reading;

/// <summary>Reads the fields of one row into the types of the catalogue; each complaint names file, line and column.</summary>
internal readonly struct Fields(TableRow row)
{
    private const char Separator = ';';

    internal string Text(string column) => row[column];

    internal string Required(string column) =>
        row[column] is { Length: > 0 } text ? text : throw row.Wrong(column, "a text is missing");

    internal string Key()
    {
        string key = Required("key");
        bool plain = key.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
        return plain ? key : throw row.Wrong("key", $"\"{key}\" may hold small letters, digits and hyphens only");
    }

    internal double Number(string column) => row.Number(column);

    internal double? OptionalNumber(string column) => row.OptionalNumber(column);

    internal string[] List(string column) =>
        row[column].Split(Separator, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The value whose name is written in the field with hyphens for capitals: not-known is NotKnown.</summary>
    internal T Enum<T>(string column) where T : struct, Enum
    {
        string text = row[column];
        string name = text.Replace("-", "", StringComparison.Ordinal);
        T value = default;
        bool known = name.Length > 0 && char.IsAsciiLetter(name[0])
            && System.Enum.TryParse(name, ignoreCase: true, out value);
        return known
            ? value
            : throw row.Wrong(column, $"\"{text}\" is not one of {string.Join(", ", System.Enum.GetNames<T>())}");
    }

    internal Estimate? OptionalEstimate(string middleColumn, string lowColumn, string highColumn)
    {
        if (row.OptionalNumber(middleColumn) is not { } middle) return null;
        double low = row.OptionalNumber(lowColumn) ?? middle;
        double high = row.OptionalNumber(highColumn) ?? middle;
        return low <= middle && middle <= high
            ? new Estimate(middle, low, high)
            : throw row.Wrong(middleColumn, "low, middle and high are not in order");
    }

    internal Estimate? OptionalRange(string lowColumn, string highColumn)
    {
        if (row.OptionalNumber(lowColumn) is not { } low) return null;
        double high = row.Number(highColumn);
        return low <= high
            ? new Estimate((low + high) / 2, low, high)
            : throw row.Wrong(lowColumn, "low is above high");
    }

    internal IReadOnlyList<Delivery> Deliveries(string column)
    {
        var deliveries = new List<Delivery>();
        foreach (string part in List(column))
        {
            int space = part.LastIndexOf(' ');
            double moles = 0;
            bool read = space > 0
                && double.TryParse(part.AsSpan(space + 1), NumberStyles.Float, CultureInfo.InvariantCulture, out moles);
            if (!read) throw row.Wrong(column, $"\"{part}\" is not a component and a number, like \"SO4 2\"");
            deliveries.Add(new Delivery(part[..space], moles));
        }
        return deliveries;
    }

    internal Citation Citation()
    {
        string[] sources = List("source");
        if (sources.Length == 0) throw row.Wrong("source", "a row needs a source");
        return new Citation(sources, Required("where"), Enum<Confidence>("confidence"));
    }

    internal TableException Wrong(string column, string what) => row.Wrong(column, what);
}
