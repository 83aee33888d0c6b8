namespace Alumroot.App.Verbs;

/// <summary>Finds the known word closest to a mistyped one.</summary>
public static class Nearest
{
    /// <summary>The nearest of the known words, or null when none is near.</summary>
    /// <param name="typed">The word as typed.</param>
    /// <param name="known">The words that would have been understood.</param>
    public static string? To(string typed, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(known);
        (string Word, int Steps) best = known
            .Select(word => (Word: word, Steps: Steps(typed.ToLowerInvariant(), word.ToLowerInvariant())))
            .OrderBy(pair => pair.Steps)
            .FirstOrDefault(("", int.MaxValue));
        return best.Steps <= Math.Max(2, typed.Length / 3) ? best.Word : null;
    }

    /// <summary>How many letters must be put in, left out, changed, or swapped with their neighbour to make one word the other.</summary>
    public static int Steps(string from, string to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        int[,] steps = new int[from.Length + 1, to.Length + 1];
        for (int i = 0; i <= from.Length; i++) steps[i, 0] = i;
        for (int j = 0; j <= to.Length; j++) steps[0, j] = j;
        for (int i = 1; i <= from.Length; i++)
            for (int j = 1; j <= to.Length; j++)
            {
                int change = from[i - 1] == to[j - 1] ? 0 : 1;
                int least = Math.Min(Math.Min(steps[i - 1, j] + 1, steps[i, j - 1] + 1), steps[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                    least = Math.Min(least, steps[i - 2, j - 2] + 1);
                steps[i, j] = least;
            }
        return steps[from.Length, to.Length];
    }
}
