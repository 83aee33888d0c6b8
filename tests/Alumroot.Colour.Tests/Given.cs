using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities.Tables;

namespace Alumroot.Colour.Tests;

/// <summary>The tables and files that the tests compare with.</summary>
internal static class Given
{
    public static Table Table(string file) => Quantities.Tables.Table.Parse(file, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", file)));

    public static byte[] Bytes(string file) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Data", "files", file));

    /// <summary>The thirty reflectances at every so many nanometres.</summary>
    public static IReadOnlyList<(string Id, Spectrum Spectrum)> Reflectances(int stepNanometres)
    {
        Table table = Table("reflectances.csv");
        return [.. table.Rows.Select(r => (r["id"], Spectrum.Regular(380, stepNanometres, Enumerable.Range(0, 400 / stepNanometres + 1).Select(i => r.Number($"R{380 + i * stepNanometres}")))))];
    }
}
