using System.Globalization;

namespace Alumroot.App.Colours;

/// <summary>Bands of a number that a list is narrowed by; what lies on an edge belongs to the band above it.</summary>
/// <param name="edges">The edges, rising.</param>
internal sealed class Bands(params double[] edges)
{
    /// <summary>Each band by its key, in words.</summary>
    internal IReadOnlyList<(string Key, string Words)> All { get; } = [.. Enumerable.Range(0, edges.Length + 1).Select(i => (Key(i), Words(edges, i)))];

    /// <summary>The key of the band that holds a number.</summary>
    internal string Of(double x) => Key(edges.Count(e => x >= e));

    /// <summary>A band in words; null when there is none with this key.</summary>
    internal string? In(string? key) => All.FirstOrDefault(b => b.Key == key).Words;

    private static string Key(int i) => i.ToString(CultureInfo.InvariantCulture);

    private static string Words(double[] edges, int i) => i == 0 ? $"below {Number(edges[0])}" : i == edges.Length ? $"{Number(edges[^1])} and above" : $"{Number(edges[i - 1])} to below {Number(edges[i])}";

    private static string Number(double x) => x.ToString(CultureInfo.InvariantCulture);
}
