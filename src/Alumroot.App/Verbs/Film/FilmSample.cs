using Alumroot.Colour.Film;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs.Film;

/// <summary>What is asked beside the file: the surface, how far to trust a reading, and a film to predict.</summary>
internal sealed record FilmRequest(Surface Surface, double Reading, double? Thickness, double? Over);

/// <summary>One drawdown of a file.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Series">Its wavelengths; for a thickness of 1 where none is given.</param>
/// <param name="ThicknessKnown">Whether the file gives a thickness.</param>
internal sealed record FilmSample(string Name, DrawdownSeries Series, bool ThicknessKnown)
{
    /// <summary>The samples of a table, in its order.</summary>
    /// <exception cref="TableException">A column or a number is missing or wrong.</exception>
    internal static IReadOnlyList<FilmSample> Read(Table table, FilmRequest request) =>
        [.. table.Rows.GroupBy(r => r["sample"], StringComparer.Ordinal).Select(g => Read(g.Key, [.. g], table.Has("thickness"), request))];

    private static FilmSample Read(string name, TableRow[] rows, bool thickness, FilmRequest request)
    {
        double? x = null;
        var readings = new List<(double Nanometres, Drawdown Read)>();
        foreach (TableRow row in rows)
        {
            double? own = thickness ? row.OptionalNumber("thickness") : null;
            if (own is <= 0) throw row.Wrong("thickness", "a thickness must be more than nothing");
            if (readings.Count > 0 && own != x) throw row.Wrong("thickness", "a sample has one thickness; give another film its own name");
            x = own;
            double nanometres = row.Number("wavelength_nm");
            if (readings.Count > 0 && nanometres <= readings[^1].Nanometres) throw row.Wrong("wavelength_nm", $"{nanometres} does not rise; a sample has its wavelengths in order and each once");
            readings.Add((nanometres, new Drawdown(row.Number("r_over_black"), row.Number("r_black"), row.Number("r_over_white"), row.Number("r_white"))));
        }
        return new FilmSample(name, new DrawdownSeries(readings, request.Surface, request.Reading, x ?? 1), x is not null);
    }
}
