namespace Alumroot.Catalogue.Finding;

/// <summary>How many slips of the finger part two words.</summary>
/// <remarks>A slip is a letter left out, put in, changed, or two neighbours swapped (optimal string alignment distance).</remarks>
public static class TypingDistance
{
    private const int LongestOnStack = 128;

    /// <summary>The number of slips between two texts, or <paramref name="most"/> + 1 when there are more.</summary>
    /// <param name="a">One text.</param>
    /// <param name="b">The other.</param>
    /// <param name="most">The number of slips beyond which counting stops; zero or more.</param>
    public static int Between(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int most)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        if (Math.Abs(a.Length - b.Length) > most) return most + 1;
        int width = b.Length + 1;
        Span<int> cells = width <= LongestOnStack ? stackalloc int[3 * width] : new int[3 * width];
        Span<int> before = cells[..width];
        Span<int> above = cells.Slice(width, width);
        Span<int> current = cells.Slice(2 * width, width);
        for (int j = 0; j < width; j++) above[j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            int least = i;
            for (int j = 1; j < width; j++)
            {
                int change = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int slips = Math.Min(change, Math.Min(above[j], current[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    slips = Math.Min(slips, before[j - 2] + 1);
                current[j] = slips;
                least = Math.Min(least, slips);
            }
            if (least > most) return most + 1;
            Span<int> spare = before;
            before = above;
            above = current;
            current = spare;
        }
        return Math.Min(above[^1], most + 1);
    }

    /// <summary>How many slips are forgiven in a word of this length: none below four letters, one below eight, then two.</summary>
    public static int Forgiven(int length) => length switch { < 4 => 0, < 8 => 1, _ => 2 };
}
