using System.Text;

namespace Alumroot.Permanence.Dose;

/// <summary>A line of a logger's file, cut into its fields.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Text">As it stands.</param>
/// <param name="Fields">Without outer blanks and quotes.</param>
internal sealed record LoggerLine(int Number, string Text, IReadOnlyList<string> Fields)
{
    // A tab or a semicolon is never part of a time or a number; a comma may be, so it counts last.
    private static readonly char[] Separators = ['\t', ';', '|', ','];

    internal static IEnumerable<LoggerLine> Of(string text)
    {
        int number = 0;
        foreach (string raw in text.TrimStart('\uFEFF').Split('\n'))
        {
            number++;
            string line = raw.Trim('\r', ' ');
            if (line.Trim().Length == 0 || line[0] == '#') continue;
            yield return new LoggerLine(number, line, Cut(line));
        }
    }

    private static List<string> Cut(string line)
    {
        foreach (char separator in Separators)
            if (Cut(line, separator) is { Count: > 1 } fields) return fields;
        // Blanks: the last word is the level, all before it the time.
        int last = line.TrimEnd().LastIndexOf(' ');
        return last < 0 ? [line.Trim()] : [line[..last].Trim(), line[last..].Trim()];
    }

    private static List<string> Cut(string line, char separator)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"') quoted = !quoted;
            else if (c == separator && !quoted)
            {
                fields.Add(field.ToString().Trim());
                field.Clear();
            }
            else field.Append(c);
        }
        fields.Add(field.ToString().Trim());
        while (fields.Count > 1 && fields[^1].Length == 0) fields.RemoveAt(fields.Count - 1);
        return fields;
    }
}
