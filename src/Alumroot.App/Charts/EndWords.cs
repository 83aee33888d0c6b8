namespace Alumroot.App.Charts;

/// <summary>A word at the right end of a line, and how high it stands.</summary>
/// <param name="Text">The word.</param>
/// <param name="Y">The place of its base line.</param>
public sealed record EndWord(string Text, double Y)
{
    /// <summary>Sets the words of several lines above their right ends, apart from each other.</summary>
    /// <param name="lines">Each line's word and the place of its right end.</param>
    /// <param name="apart">The least distance between base lines.</param>
    /// <param name="top">The highest place allowed.</param>
    /// <param name="bottom">The lowest place allowed.</param>
    public static IReadOnlyList<EndWord> Placed(IEnumerable<(string Text, double EndY)> lines, double apart, double top, double bottom)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var placed = new List<EndWord>();
        foreach ((string text, double endY) in lines.OrderBy(line => line.EndY))
        {
            bool first = placed.Count == 0;
            double wanted = first ? endY - apart * 0.4 : endY + apart * 1.05;
            double least = first ? top + apart * 0.8 : placed[^1].Y + apart;
            placed.Add(new EndWord(text, Math.Max(wanted, least)));
        }
        double over = placed.Count == 0 ? 0 : Math.Max(0, placed[^1].Y - bottom);
        return [.. placed.Select(word => word with { Y = word.Y - over })];
    }
}
