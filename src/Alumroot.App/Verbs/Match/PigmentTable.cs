using Alumroot.Colour.Matching;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs.Match;

/// <summary>Pigments of a file: sample, wavelength, K and S, as <c>film</c> writes them.</summary>
/// <param name="Nanometres">The wavelengths that all of them have.</param>
/// <param name="Pigments">In the order of the file, each with the draws that its spans allow.</param>
/// <param name="SpansTold">True when the file tells a span beside each K and S.</param>
internal sealed record PigmentTable(IReadOnlyList<double> Nanometres, IReadOnlyList<ShelfPigment> Pigments, bool SpansTold)
{
    private const int LeastWavelengths = 3;
    private const double LowestEnd = 440, HighestStart = 600;
    private static readonly string[] Needed = ["sample", "wavelength_nm", "k", "s"];

    /// <exception cref="TableException">A row is wrong, or pigments do not go together.</exception>
    internal static PigmentTable Read(Table table)
    {
        foreach (string column in Needed)
            if (!table.Has(column)) throw new TableException(table.Name, 1, column, $"is missing. A file of pigments has the columns {string.Join(", ", Needed)}; 'alumroot film' writes one");
        var bands = new Dictionary<string, SortedDictionary<double, (Estimate K, Estimate S)>>(StringComparer.Ordinal);
        var order = new List<string>();
        bool told = true;
        foreach (TableRow row in table.Rows)
        {
            string name = row["sample"];
            if (name.Length == 0) throw row.Wrong("sample", "is empty");
            double at = row.Number("wavelength_nm"), k = row.Number("k"), s = row.Number("s");
            if (at is not (>= 300 and <= 900)) throw row.Wrong("wavelength_nm", "must lie between 300 and 900");
            if (!(k >= 0)) throw row.Wrong("k", "must be 0 or more. Where 'film' leaves it empty, a thinner drawdown tells it");
            if (!(s > 0)) throw row.Wrong("s", "must be more than 0: a pigment that scatters nothing does not hide in any mixture without white");
            if (!bands.TryGetValue(name, out SortedDictionary<double, (Estimate K, Estimate S)>? own))
            {
                bands.Add(name, own = []);
                order.Add(name);
            }
            (Estimate K, Estimate S, bool Told) spans = Spans(row, table, k, s);
            told &= spans.Told;
            if (!own.TryAdd(at, (spans.K, spans.S))) throw row.Wrong("wavelength_nm", $"{name} has {at} nm twice");
        }
        if (order.Count == 0) throw new TableException(table.Name, 1, null, "has no rows, so there is no pigment to mix");
        double[] wavelengths = [.. bands[order[0]].Keys];
        foreach (string name in order)
            if (!bands[name].Keys.SequenceEqual(wavelengths)) throw new TableException(table.Name, 1, "wavelength_nm", $"{name} has other wavelengths than {order[0]}; measure all pigments at the same ones");
        if (wavelengths.Length < LeastWavelengths || wavelengths[0] > LowestEnd || wavelengths[^1] < HighestStart)
            throw new TableException(table.Name, 1, "wavelength_nm", $"runs from {wavelengths[0]} to {wavelengths[^1]} nm in {wavelengths.Length} steps. A colour needs {LeastWavelengths} at least, from below {LowestEnd} to above {HighestStart} nm");
        return new PigmentTable(wavelengths, [.. order.Select((name, i) => BandPigments.Of(name, [.. bands[name].Values], (ulong)i + 1))], told);
    }

    /// <summary>The spans of the row, or the usual ones where it tells none.</summary>
    private static (Estimate K, Estimate S, bool Told) Spans(TableRow row, Table table, double k, double s)
    {
        (Estimate? ks, Estimate? ss) = (Span(row, table, "k", k), Span(row, table, "s", s));
        return (ks ?? Usual(k), ss ?? Usual(s), ks is not null && ss is not null);

        static Estimate Usual(double x) => new(x, x * (1 - BandPigments.UntoldHalfWidthShare), x * (1 + BandPigments.UntoldHalfWidthShare));
    }

    private static Estimate? Span(TableRow row, Table table, string column, double value)
    {
        (string low, string high) = ($"{column}_low", $"{column}_high");
        if (!table.Has(low) || !table.Has(high) || row.OptionalNumber(low) is not { } below || row.OptionalNumber(high) is not { } above) return null;
        if (!(below >= 0 && below <= value)) throw row.Wrong(low, $"must lie between 0 and {column}");
        return above >= value ? new Estimate(value, below, above) : throw row.Wrong(high, $"must be {column} or more");
    }
}
