using Alumroot.Quantities.Tables;

namespace Alumroot.App.Trials;

/// <summary>A table pasted into a field: from a sheet with tabs, or with commas or semicolons, or columns parted by blanks.</summary>
public static class PastedTable
{
    /// <summary>The table.</summary>
    /// <exception cref="TableException">A row has more or fewer cells than the first.</exception>
    public static Table Read(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        string text = typed.Trim().Replace("\r\n", "\n", StringComparison.Ordinal), head = text.Split('\n')[0];
        char separator = head.Contains('\t', StringComparison.Ordinal) ? '\t' : head.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        if (separator == ',' && !head.Contains(',', StringComparison.Ordinal))
            text = string.Join('\n', text.Split('\n').Select(line => string.Join(',', line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))));
        return Table.Parse("what was pasted", text + "\n", separator);
    }
}
