using Alumroot.Colour.Colorimetry;
using Alumroot.Trials.Analysis;

namespace Alumroot.App.Trials;

/// <summary>A corner of a cube: what was set, and what came of it.</summary>
/// <param name="At">0 or 1 along each of the three factors.</param>
/// <param name="Settings">The settings as written.</param>
/// <param name="JarCount">How many jars were read there.</param>
/// <param name="Mean">Their mean; null where none was read.</param>
/// <param name="Colour">The mean of their colours; null where none was read.</param>
public sealed record CubeCorner(IReadOnlyList<int> At, IReadOnlyList<string> Settings, int JarCount, double? Mean, Lab? Colour);

/// <summary>A row of three factors with two settings each, as the eight corners of a cube.</summary>
/// <param name="Response">What is shown at the corners.</param>
/// <param name="Factors">The three factors.</param>
/// <param name="Corners">All eight.</param>
public sealed record Cube(string Response, IReadOnlyList<string> Factors, IReadOnlyList<CubeCorner> Corners)
{
    private const int Sides = 3;

    /// <summary>The cube of a response; null when the row has not three factors of two settings, or the response is an angle.</summary>
    public static Cube? Of(TrialTable table, string response)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (table.Data.Factors.Count != Sides || table.Data.Factors.Any(f => f.Levels.Count != 2) || table.Find(response) is not { IsAngle: false } read) return null;
        Response? l = table.Find("L"), a = table.Find("a"), b = table.Find("b");
        return new Cube(response, [.. table.Data.Factors.Select(f => f.Name)], [.. Enumerable.Range(0, 1 << Sides).Select(corner =>
        {
            int[] at = [.. Enumerable.Range(0, Sides).Select(f => corner >> f & 1)];
            int[] jars = [.. Enumerable.Range(0, table.Data.Count).Where(j => Enumerable.Range(0, Sides).All(f => Level(table.Data.Factors[f], j) == at[f]))];
            double[] values = [.. jars.Select(j => read.Values[j]).Where(double.IsFinite)];
            int[] coloured = l is null || a is null || b is null ? [] : [.. jars.Where(j => double.IsFinite(l.Values[j] + a.Values[j] + b.Values[j]))];
            return new CubeCorner(
                at, [.. Enumerable.Range(0, Sides).Select(f => table.Data.Factors[f].Levels[at[f]])], values.Length, values.Length > 0 ? values.Average() : null,
                coloured.Length > 0 ? new Lab(Math.Clamp(coloured.Average(j => l!.Values[j]), 0, 100), coloured.Average(j => a!.Values[j]), coloured.Average(j => b!.Values[j])) : null);
        })]);
    }

    private static int Level(FactorColumn factor, int jar) =>
        factor.Numbers is { } numbers ? (numbers[jar] == factor.Range.Least ? 0 : 1) : (factor.Names[jar] == factor.Levels[0] ? 0 : 1);
}
