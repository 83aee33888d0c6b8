using System.Globalization;
using System.Text;

namespace Alumroot.Quantities.Tables;

/// <summary>A table of text read from RFC 4180 comma-separated text: one header line, then rows. Lines that start with <c>#</c> are comments.</summary>
/// <remarks>Immutable. Every row knows its line in the file, so that a message can point at it.</remarks>
public sealed class Table
{
    private readonly Dictionary<string, int> _columns;

    private Table(string name, string[] header, List<TableRow> rows)
    {
        Name = name;
        Columns = header;
        _columns = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i < header.Length; i++)
            if (!_columns.TryAdd(header[i], i))
                throw new TableException(name, 1, header[i], "the column is named twice");
        Rows = rows;
    }

    /// <summary>What the table is called in messages, usually its file name.</summary>
    public string Name { get; }

    /// <summary>Column names in the order of the file.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>The rows below the header.</summary>
    public IReadOnlyList<TableRow> Rows { get; }

    /// <summary>Whether the table has this column.</summary>
    public bool Has(string column) => _columns.ContainsKey(column);

    internal int IndexOf(string column, int line) =>
        _columns.TryGetValue(column, out int i) ? i : throw new TableException(Name, line, column, $"the column is missing; the file has {string.Join(", ", Columns)}");

    /// <summary>Reads a table from text.</summary>
    /// <param name="name">What to call the table in messages.</param>
    /// <param name="text">The whole file.</param>
    /// <param name="separator">What parts the fields; some programs write semicolons or tabs.</param>
    /// <exception cref="TableException">A quote is not closed, a row has too many fields, or there is no header.</exception>
    public static Table Parse(string name, string text, char separator = ',')
    {
        ArgumentNullException.ThrowIfNull(text);
        string[]? header = null;
        var rows = new List<TableRow>();
        Table? table = null;
        foreach ((int line, string[] fields) in Records(name, text, separator))
        {
            if (header is null)
            {
                header = fields.Select(f => f.Trim()).ToArray();
                table = new Table(name, header, rows);
                continue;
            }
            if (fields.Length > header.Length)
                throw new TableException(name, line, null, $"the row has {fields.Length} fields but the header names {header.Length}; put quotes around text that holds a {(separator == ',' ? "comma" : "separator")}");
            rows.Add(new TableRow(table!, line, fields));
        }
        return table ?? throw new TableException(name, 1, null, "the file is empty; a first line with column names was expected");
    }

    private static IEnumerable<(int Line, string[] Fields)> Records(string name, string text, char separator)
    {
        int i = text.Length > 0 && text[0] == '\uFEFF' ? 1 : 0;
        int line = 1;
        var fields = new List<string>();
        var field = new StringBuilder();
        while (i < text.Length)
        {
            int startLine = line;
            if (text[i] == '#')
            {
                while (i < text.Length && text[i] != '\n') i++;
                i++;
                line++;
                continue;
            }
            fields.Clear();
            bool more = true;
            while (more)
            {
                field.Clear();
                if (i < text.Length && text[i] == '"')
                {
                    i++;
                    while (true)
                    {
                        if (i >= text.Length) throw new TableException(name, startLine, null, "a quote is opened and never closed");
                        char c = text[i++];
                        if (c == '\n') line++;
                        if (c != '"') { field.Append(c); continue; }
                        if (i < text.Length && text[i] == '"') { field.Append('"'); i++; continue; }
                        break;
                    }
                }
                while (i < text.Length && text[i] != separator && text[i] is not ('\n' or '\r')) field.Append(text[i++]);
                fields.Add(field.ToString());
                more = i < text.Length && text[i] == separator;
                if (more) i++;
            }
            if (i < text.Length && text[i] == '\r') i++;
            if (i < text.Length && text[i] == '\n') i++;
            line++;
            if (fields.Count == 1 && string.IsNullOrWhiteSpace(fields[0])) continue;
            yield return (startLine, fields.ToArray());
        }
    }
}

/// <summary>One row of a <see cref="Table"/>.</summary>
public sealed class TableRow
{
    private readonly Table _table;
    private readonly string[] _fields;

    internal TableRow(Table table, int line, string[] fields) => (_table, Line, _fields) = (table, line, fields);

    /// <summary>The line in the file where the row starts, from 1.</summary>
    public int Line { get; }

    /// <summary>The field as text without outer blanks; empty when the row is shorter than the header.</summary>
    /// <exception cref="TableException">The column does not exist.</exception>
    public string this[string column]
    {
        get
        {
            int i = _table.IndexOf(column, Line);
            return i < _fields.Length ? _fields[i].Trim() : "";
        }
    }

    /// <summary>The field as a number written with a point.</summary>
    /// <exception cref="TableException">The field is empty or not a finite number.</exception>
    public double Number(string column) =>
        OptionalNumber(column) ?? throw Wrong(column, "a number is missing");

    /// <summary>The field as a number, or null when it is empty.</summary>
    /// <exception cref="TableException">The field is not a finite number.</exception>
    public double? OptionalNumber(string column)
    {
        string s = this[column];
        if (s.Length == 0) return null;
        return double.TryParse(s, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x)
            ? x
            : throw Wrong(column, $"\"{s}\" is not a number; write it like -5.0");
    }

    /// <summary>A message that points at a field of this row.</summary>
    public TableException Wrong(string column, string what) => new(_table.Name, Line, column, what);
}

/// <summary>A table could not be read. The message names file, line and column.</summary>
public sealed class TableException : FormatException
{
    /// <summary>Makes the message from the place and what is wrong there.</summary>
    public TableException(string table, int line, string? column, string what)
        : base($"{table} line {line}{(column is null ? "" : $", column {column}")}: {what}.") => (Table, Line, Column) = (table, line, column);

    /// <summary>The file.</summary>
    public string Table { get; }

    /// <summary>The line, from 1.</summary>
    public int Line { get; }

    /// <summary>The column, where one is to blame.</summary>
    public string? Column { get; }
}
