using System.Globalization;
using Alumroot.Quantities.Tables;
using Alumroot.Trials.Analysis;

namespace Alumroot.App.Trials;

/// <summary>A trial's results from a table: which columns were set, which were measured.</summary>
/// <param name="Data">What was set.</param>
/// <param name="Responses">What was measured, by name.</param>
public sealed record TrialTable(TrialData Data, IReadOnlyList<Response> Responses)
{
    private const int MostRows = 20_000;
    private static readonly string[] Beside = ["order", "jar", "run", "replicate", "note", "lake", "salt_g", "alkali_g", "alkali_low_g", "alkali_high_g", "alkali_ml", "vessel_l"];
    private static readonly string[] BlockNames = ["block", "day"];
    private static readonly string[] Measured = ["l", "a", "b", "chroma", "hue", "yield", "yield_g", "de", "fading", "class", "hours", "filter_hours", "ph_end", "cost"];

    /// <summary>Reads a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="named">Columns that were measured, beside those whose names say so.</param>
    /// <exception cref="TableException">A row or column is wrong.</exception>
    public static TrialTable Read(Table table, IReadOnlyCollection<string> named)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(named);
        if (named.FirstOrDefault(n => !table.Columns.Contains(n, StringComparer.OrdinalIgnoreCase)) is { } missing) throw new TableException(table.Name, 1, missing, "is named with --response and is not in the file");
        if (table.Rows.Count is 0 or > MostRows) throw new TableException(table.Name, 1, null, table.Rows.Count == 0 ? "has no rows" : $"has {table.Rows.Count} rows; at most {MostRows} are read");
        string[] measured = [.. table.Columns.Where(c => Measured.Contains(c.ToLowerInvariant()) || named.Contains(c, StringComparer.OrdinalIgnoreCase))];
        string? block = table.Columns.FirstOrDefault(c => BlockNames.Contains(c.ToLowerInvariant()));
        FactorColumn[] factors = [.. table.Columns.Where(c => !measured.Contains(c) && c != block && !Beside.Contains(c.ToLowerInvariant())).Select(c => Column(table, c))];
        if (factors.Length == 0) throw new TableException(table.Name, 1, null, "has no column of a factor: what was set in each jar");
        if (measured.Length == 0) throw new TableException(table.Name, 1, null, $"has no column that was measured. Such are {string.Join(", ", Measured)}; any other is named with --response");
        var responses = measured.Select(m => new Response(m, [.. table.Rows.Select(r => r[m].Trim().Length == 0 ? double.NaN : r.Number(m))], m.Equals("hue", StringComparison.OrdinalIgnoreCase))).ToList();
        AddPolar(responses);
        string[]? blocks = block is null ? null : [.. table.Rows.Select(r => r[block].Trim())];
        return new TrialTable(new TrialData(factors, blocks?.Distinct().Count() > 1 ? blocks : null), responses);
    }

    /// <summary>A response by its name; null when it was not measured.</summary>
    public Response? Find(string name) => Responses.FirstOrDefault(r => r.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The one response of that name with a unit behind it, such as <c>yield_g</c> for "yield"; null when there is none or more than one.</summary>
    public Response? WithUnit(string name) => Responses.Where(r => r.Name.StartsWith(name + "_", StringComparison.OrdinalIgnoreCase)).Take(2).ToArray() is [var only] ? only : null;

    private static FactorColumn Column(Table table, string name)
    {
        string[] texts = [.. table.Rows.Select(r => r[name].Trim())];
        if (Array.FindIndex(texts, t => t.Length == 0) is >= 0 and var empty) throw table.Rows[empty].Wrong(name, "is empty. Write what was set, or leave the jar out");
        double[] numbers = [.. texts.Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : double.NaN)];
        return new FactorColumn(name, numbers.All(double.IsFinite) ? numbers : null, texts);
    }

    /// <summary>Adds chroma and hue where a and b are there: they follow from those (CIE 15).</summary>
    internal static void AddPolar(List<Response> responses)
    {
        Response? a = responses.Find(r => r.Name.Equals("a", StringComparison.OrdinalIgnoreCase)), b = responses.Find(r => r.Name.Equals("b", StringComparison.OrdinalIgnoreCase));
        if (a is null || b is null) return;
        var labs = a.Values.Zip(b.Values, (x, y) => new Alumroot.Colour.Colorimetry.Lab(50, x, y)).ToArray();
        if (responses.TrueForAll(r => !r.Name.Equals("chroma", StringComparison.OrdinalIgnoreCase))) responses.Add(new Response("chroma", [.. labs.Select(l => l.Chroma)]));
        if (responses.TrueForAll(r => !r.Name.Equals("hue", StringComparison.OrdinalIgnoreCase))) responses.Add(new Response("hue", [.. labs.Select(l => double.IsFinite(l.A + l.B) ? l.HueDegrees : double.NaN)], IsAngle: true));
    }
}
