using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Constants;

/// <summary>Debye-Hueckel A (log10) and B (per angstrom) of water against temperature.</summary>
/// <remarks>Values at the tabulated temperatures are returned as they stand; between them the polynomial through all rows is used (four to twenty rows, smooth in temperature).</remarks>
public sealed class DebyeHueckelTable
{
    private readonly double[] _celsius;
    private readonly double[] _a;
    private readonly double[] _b;

    /// <summary>Reads the columns temperature_c, A_log10, B_per_angstrom.</summary>
    /// <exception cref="TableException">A field is not a number, a temperature stands twice, or there is no row.</exception>
    public DebyeHueckelTable(Table table)
    {
        ArgumentNullException.ThrowIfNull(table);
        TableRow[] rows = table.Rows.OrderBy(r => r.Number("temperature_c")).ToArray();
        if (rows.Length == 0) throw new TableException(table.Name, 1, "temperature_c", "there is no row");
        for (int i = 1; i < rows.Length; i++)
            if (rows[i].Number("temperature_c") == rows[i - 1].Number("temperature_c")) throw rows[i].Wrong("temperature_c", "this temperature stands twice");
        _celsius = rows.Select(r => r.Number("temperature_c")).ToArray();
        _a = rows.Select(r => r.Number("A_log10")).ToArray();
        _b = rows.Select(r => r.Number("B_per_angstrom")).ToArray();
    }

    /// <summary>Lowest tabulated temperature.</summary>
    public double LowestCelsius => _celsius[0];

    /// <summary>Highest tabulated temperature.</summary>
    public double HighestCelsius => _celsius[^1];

    /// <summary>A and B at a temperature.</summary>
    public (double A, double B) At(double celsius) => (Interpolate(_a, celsius), Interpolate(_b, celsius));

    /// <summary>Change of A and B per degree, from the same polynomial (central difference over 0.02 degrees).</summary>
    public (double A, double B) SlopeAt(double celsius)
    {
        const double h = 0.01;
        return ((Interpolate(_a, celsius + h) - Interpolate(_a, celsius - h)) / (2 * h), (Interpolate(_b, celsius + h) - Interpolate(_b, celsius - h)) / (2 * h));
    }

    private double Interpolate(double[] y, double x)
    {
        // Four nearest rows: enough for 1e-6 in A, and stable with many rows.
        int first = 0;
        while (first + 4 < _celsius.Length && _celsius[first + 2] <= x) first++;
        int last = Math.Min(first + 4, _celsius.Length);
        double sum = 0;
        for (int i = first; i < last; i++)
        {
            if (_celsius[i] == x) return y[i];
            double w = 1;
            for (int j = first; j < last; j++)
                if (j != i) w *= (x - _celsius[j]) / (_celsius[i] - _celsius[j]);
            sum += w * y[i];
        }
        return sum;
    }
}
