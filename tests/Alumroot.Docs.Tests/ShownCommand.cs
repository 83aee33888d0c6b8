using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Alumroot.Docs.Tests;

/// <summary>A command shown in a document: in a block fenced as console, a line "$ alumroot ..." and beneath it what it says.</summary>
/// <param name="Place">Document and line.</param>
/// <param name="Words">The words after alumroot.</param>
/// <param name="ExitCode">0, or what "# ends with 2" behind the command says.</param>
/// <param name="Output">Lines shown; "..." stands for anything, alone for any lines.</param>
internal sealed partial record ShownCommand(string Place, IReadOnlyList<string> Words, int ExitCode, IReadOnlyList<string> Output)
{
    private const string Prompt = "$ alumroot";

    public static IEnumerable<ShownCommand> Of(string document, string text)
    {
        string[] lines = text.Split('\n');
        bool inside = false;
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith("```", StringComparison.Ordinal)) inside = lines[i] == "```console";
            if (!inside || !lines[i].StartsWith(Prompt, StringComparison.Ordinal)) continue;
            int at = i;
            string typed = lines[i][Prompt.Length..];
            while (typed.EndsWith('\\')) typed = typed[..^1] + lines[++i].Trim();
            Match ends = Ending().Match(typed);
            var output = new List<string>();
            while (i + 1 < lines.Length && !lines[i + 1].StartsWith('$') && !lines[i + 1].StartsWith("```", StringComparison.Ordinal)) output.Add(lines[++i].TrimEnd());
            while (output.Count > 0 && output[^1].Length == 0) output.RemoveAt(output.Count - 1);
            int code = ends.Success ? int.Parse(ends.Groups[1].Value, CultureInfo.InvariantCulture) : 0;
            yield return new ShownCommand($"{document} line {at + 1}", Split(ends.Success ? typed[..ends.Index] : typed), code, output);
        }
    }

    /// <summary>The first shown line that the output does not hold in its place, or null.</summary>
    public string? Missing(string output)
    {
        if (Output.Count == 0) return null;
        string[] lines = [.. output.ReplaceLineEndings("\n").TrimEnd().Split('\n').Select(l => l.TrimEnd())];
        int at = 0;
        bool anywhere = false;
        foreach (string shown in Output)
        {
            if (shown == "...")
            {
                anywhere = true;
                continue;
            }
            int found = anywhere ? Array.FindIndex(lines, at, l => Fits(shown, l)) : at < lines.Length && Fits(shown, lines[at]) ? at : -1;
            if (found < 0) return shown;
            (at, anywhere) = (found + 1, false);
        }
        return anywhere || at >= lines.Length ? null : $"the end; but more is said: {lines[at]}";
    }

    private static bool Fits(string shown, string line) =>
        shown == line || (shown.Contains("...", StringComparison.Ordinal) && Regex.IsMatch(line, $"^{string.Join(".*", shown.Split("...").Select(Regex.Escape))}$", RegexOptions.None, TimeSpan.FromSeconds(1)));

    private static List<string> Split(string line)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        bool quoted = false, any = false;
        foreach (char c in line)
        {
            if (c is '"' or '\'') (quoted, any) = (!quoted, true);
            else if (c != ' ' || quoted) (word, any) = (word.Append(c), true);
            else if (any) Take();
        }
        if (any) Take();
        return words;

        void Take()
        {
            words.Add(word.ToString());
            word.Clear();
            any = false;
        }
    }

    [GeneratedRegex(@"\s+# ends with (\d+)\s*$")]
    private static partial Regex Ending();
}
