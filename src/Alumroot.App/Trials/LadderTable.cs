using System.Globalization;
using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Trials;

/// <summary>The jars of one row: their pH and what was read of each.</summary>
/// <param name="Name">The series, such as fresh or aged; empty when there is one.</param>
/// <param name="Ph">The pH of each jar.</param>
/// <param name="Signals">Absorbances of each jar: three broad bands from Lab, or one for each wavelength.</param>
public sealed record LadderRow(string Name, IReadOnlyList<double> Ph, IReadOnlyList<double[]> Signals);

/// <summary>A pH ladder from a table with the columns ph, L, a, b, or ph and a column of absorbance for each wavelength.</summary>
/// <param name="Rows">One for each series.</param>
/// <param name="Nanometres">The wavelengths; null when Lab was given.</param>
public sealed record LadderTable(IReadOnlyList<LadderRow> Rows, IReadOnlyList<double>? Nanometres)
{
    private const int MostRows = 2000, LeastWaves = 3;
    private const double MostAbsorbance = 6, MostAb = 160;
    private static readonly string[] Beside = ["ph", "series", "l", "a", "b", "jar", "note"];

    /// <exception cref="TableException">A row or column is wrong.</exception>
    public static LadderTable Read(Table table)
    {
        ArgumentNullException.ThrowIfNull(table);
        string Name(string wanted) => table.Columns.FirstOrDefault(c => c.Equals(wanted, StringComparison.OrdinalIgnoreCase)) ?? throw new TableException(table.Name, 1, wanted, "is missing. A ladder has the columns ph, L, a, b, or ph and one of absorbance for each wavelength");
        if (table.Rows.Count > MostRows) throw new TableException(table.Name, table.Rows[MostRows].Line, null, $"is the {MostRows + 1}th jar; at most {MostRows} are read");
        string ph = Name("ph");
        (string Column, double Nanometres)[] waves = [.. table.Columns.Where(c => !Beside.Contains(c.ToLowerInvariant())).Select(c => (c, Wave(c))).Where(w => w.Item2 is not null).Select(w => (w.c, w.Item2!.Value)).OrderBy(w => w.Item2)];
        string? series = table.Columns.FirstOrDefault(c => c.Equals("series", StringComparison.OrdinalIgnoreCase));
        Func<TableRow, double[]> read = waves.Length >= LeastWaves ? row => [.. waves.Select(w => Absorbance(row, w.Column))] : Lab(Name("L"), Name("a"), Name("b"));
        LadderRow[] rows = [.. table.Rows.GroupBy(r => series is null ? "" : r[series].Trim()).Select(g => new LadderRow(g.Key, [.. g.Select(r => Ph(r, ph))], [.. g.Select(read)]))];
        return new LadderTable(rows, waves.Length >= LeastWaves ? [.. waves.Select(w => w.Nanometres)] : null);
    }

    /// <summary>The colour of signals, Lab for D50: of three bands by their own way back, of a spectrum by what the glass lets through.</summary>
    public Lab ColourOf(double[] signals)
    {
        ArgumentNullException.ThrowIfNull(signals);
        if (Nanometres is null) return BandAbsorbance.ToLab(signals);
        var through = Spectrum.Of(Nanometres, signals.Select(a => Math.Pow(10, -a)));
        return SpectralWeights.For(ViewingCondition.Graphic, through).LabOf(through.ValueSpan);
    }

    private static Func<TableRow, double[]> Lab(string l, string a, string b) => row =>
    {
        var lab = new Lab(row.Number(l), row.Number(a), row.Number(b));
        if (lab.L is not (>= 0 and <= 100)) throw row.Wrong(l, "must lie between 0 and 100");
        if (Math.Abs(lab.A) > MostAb) throw row.Wrong(a, $"must lie between {-MostAb} and {MostAb}");
        if (Math.Abs(lab.B) > MostAb) throw row.Wrong(b, $"must lie between {-MostAb} and {MostAb}");
        return BandAbsorbance.Of(lab);
    };

    private static double Ph(TableRow row, string column) => row.Number(column) is >= 0 and <= 14 and var ph ? ph : throw row.Wrong(column, "must lie between 0 and 14");

    private static double Absorbance(TableRow row, string column) => row.Number(column) is >= -0.5 and <= MostAbsorbance and var a ? a : throw row.Wrong(column, $"is an absorbance and must lie between -0.5 and {MostAbsorbance}");

    private static double? Wave(string column)
    {
        string digits = new([.. column.SkipWhile(c => !char.IsAsciiDigit(c))]);
        return double.TryParse(digits.EndsWith("nm", StringComparison.OrdinalIgnoreCase) ? digits[..^2] : digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double nm) && nm is >= 300 and <= 900 ? nm : null;
    }
}
