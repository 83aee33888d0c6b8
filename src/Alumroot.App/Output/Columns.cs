using System.Text;

namespace Alumroot.App.Output;

/// <summary>Plain text for a terminal: words wrapped to a width, and a first column of labels.</summary>
public static class Columns
{
    /// <summary>The widest line written for people.</summary>
    public const int Width = 80;

    /// <summary>A label at the left and its text beside it, wrapped and indented under itself.</summary>
    /// <param name="label">The first column.</param>
    /// <param name="text">What stands beside it.</param>
    /// <param name="labelWidth">Width of the first column, in characters.</param>
    public static string Beside(string label, string text, int labelWidth)
    {
        ArgumentNullException.ThrowIfNull(label);
        var written = new StringBuilder(label.PadRight(labelWidth));
        if (label.Length >= labelWidth) written.Append('\n').Append(' ', labelWidth);
        written.AppendJoin("\n" + new string(' ', labelWidth), Wrapped(text, Width - labelWidth));
        return written.ToString();
    }

    /// <summary>The lines of a text broken between words.</summary>
    /// <param name="text">The text; its own line breaks count as blanks.</param>
    /// <param name="width">The most characters in a line; a longer word stands alone and whole.</param>
    public static IReadOnlyList<string> Wrapped(string text, int width)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (string word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }
            if (line.Length > 0) line.Append(' ');
            line.Append(word);
        }
        lines.Add(line.ToString());
        return lines;
    }
}
