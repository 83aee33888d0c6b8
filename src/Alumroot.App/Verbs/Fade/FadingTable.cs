using Alumroot.Permanence.Fading;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs.Fade;

/// <summary>Reads fading series from a table with the columns series, replicate, dose_mlxh, de.</summary>
internal static class FadingTable
{
    private const int MostRows = 100_000;
    private const double MostDose = 1e6, MostDeltaE = 200;
    private static readonly string[] Needed = ["series", "dose_mlxh", "de"];

    /// <exception cref="TableException">A row is wrong.</exception>
    internal static IReadOnlyList<FadingSeries> Read(Table table)
    {
        foreach (string column in Needed)
            if (!table.Has(column)) throw new TableException(table.Name, 1, column, "is missing. A file of fading has the columns series, replicate, dose_mlxh, de");
        if (table.Rows.Count > MostRows) throw new TableException(table.Name, table.Rows[MostRows].Line, null, $"is the {MostRows + 1}th row; at most {MostRows} are read");
        bool replicates = table.Has("replicate");
        var order = new List<string>();
        var strips = new Dictionary<string, Dictionary<string, List<FadingPoint>>>(StringComparer.OrdinalIgnoreCase);
        foreach (TableRow row in table.Rows)
        {
            string series = row["series"].Trim(), replicate = replicates ? row["replicate"].Trim() : "1";
            if (series.Length == 0) throw row.Wrong("series", "is empty");
            double dose = row.Number("dose_mlxh"), de = row.Number("de");
            if (dose is not (>= 0 and <= MostDose)) throw row.Wrong("dose_mlxh", $"must lie between 0 and {MostDose:0} megalux hours");
            // Readings with a sign occur: a projection on the way of fading scatters about nothing.
            if (Math.Abs(de) > MostDeltaE) throw row.Wrong("de", $"must lie between {-MostDeltaE:0} and {MostDeltaE:0}");
            if (!strips.TryGetValue(series, out Dictionary<string, List<FadingPoint>>? own))
            {
                strips.Add(series, own = new(StringComparer.OrdinalIgnoreCase));
                order.Add(series);
            }
            if (!own.TryGetValue(replicate, out List<FadingPoint>? points)) own.Add(replicate, points = []);
            points.Add(new FadingPoint(dose, de));
        }
        return order.ConvertAll(name => new FadingSeries(name, [.. strips[name].Select(r => new FadingStrip(r.Key, [.. r.Value.OrderBy(p => p.DoseMegaluxHours)]))]));
    }
}
