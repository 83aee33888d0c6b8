using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs.Match;

/// <summary>Pigments of a file: sample, wavelength, K and S, as <c>film</c> writes them.</summary>
/// <param name="Nanometres">The wavelengths that all of them have.</param>
/// <param name="Pigments">In the order of the file.</param>
internal sealed record PigmentTable(IReadOnlyList<double> Nanometres, IReadOnlyList<ShelfPigment> Pigments)
{
    private const int LeastWavelengths = 3;
    private const double LowestEnd = 440, HighestStart = 600;
    private static readonly string[] Needed = ["sample", "wavelength_nm", "k", "s"];

    /// <exception cref="TableException">A row is wrong, or pigments do not go together.</exception>
    internal static PigmentTable Read(Table table)
    {
        foreach (string column in Needed)
            if (!table.Has(column)) throw new TableException(table.Name, 1, column, $"is missing. A file of pigments has the columns {string.Join(", ", Needed)}; 'alumroot film' writes one");
        var bands = new Dictionary<string, SortedDictionary<double, Layer>>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (TableRow row in table.Rows)
        {
            string name = row["sample"];
            if (name.Length == 0) throw row.Wrong("sample", "is empty");
            double at = row.Number("wavelength_nm"), k = row.Number("k"), s = row.Number("s");
            if (at is not (>= 300 and <= 900)) throw row.Wrong("wavelength_nm", "must lie between 300 and 900");
            if (!(k >= 0)) throw row.Wrong("k", "must be 0 or more. Where 'film' leaves it empty, a thinner drawdown tells it");
            if (!(s > 0)) throw row.Wrong("s", "must be more than 0: a pigment that scatters nothing does not hide in any mixture without white");
            if (!bands.TryGetValue(name, out SortedDictionary<double, Layer>? own))
            {
                bands.Add(name, own = []);
                order.Add(name);
            }
            if (!own.TryAdd(at, new Layer(k, s))) throw row.Wrong("wavelength_nm", $"{name} has {at} nm twice");
        }
        if (order.Count == 0) throw new TableException(table.Name, 1, null, "has no rows, so there is no pigment to mix");
        double[] wavelengths = [.. bands[order[0]].Keys];
        foreach (string name in order)
            if (!bands[name].Keys.SequenceEqual(wavelengths)) throw new TableException(table.Name, 1, "wavelength_nm", $"{name} has other wavelengths than {order[0]}; measure all pigments at the same ones");
        if (wavelengths.Length < LeastWavelengths || wavelengths[0] > LowestEnd || wavelengths[^1] < HighestStart)
            throw new TableException(table.Name, 1, "wavelength_nm", $"runs from {wavelengths[0]} to {wavelengths[^1]} nm in {wavelengths.Length} steps. A colour needs {LeastWavelengths} at least, from below {LowestEnd} to above {HighestStart} nm");
        return new PigmentTable(wavelengths, order.ConvertAll(name => new ShelfPigment(name, [.. bands[name].Values])));
    }
}
