using System.Globalization;
using System.Text;
using Alumroot.Chemistry.Constants;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Tests.Laws;

/// <summary>The embedded constants with log10 K of one species moved, made by writing another number into its row.</summary>
internal static class ShiftedConstants
{
    public static ConstantSet Species(string name, double log10Shift)
    {
        Table species = EmbeddedConstants.Table("species.csv"), phases = EmbeddedConstants.Table("phases.csv");
        return ConstantSet.Read(Rewritten(species, row => row["species"] == name, log10Shift),
            phases, EmbeddedConstants.Table("debye_hueckel.csv"), EmbeddedConstants.Table("reagents.csv"));
    }

    private static Table Rewritten(Table table, Func<TableRow, bool> which, double log10Shift)
    {
        var text = new StringBuilder(string.Join(',', table.Columns)).Append('\n');
        foreach (TableRow row in table.Rows)
        {
            string moved = row["temperature_data"] == "analytic" ? "a1" : "log10_k_25c";
            text.AppendJoin(',', table.Columns.Select(c => c == moved && which(row)
                ? ((row.OptionalNumber(c) ?? 0) + log10Shift).ToString("r", CultureInfo.InvariantCulture)
                : $"\"{row[c].Replace("\"", "\"\"", StringComparison.Ordinal)}\"")).Append('\n');
        }
        return Table.Parse(table.Name, text.ToString());
    }
}
