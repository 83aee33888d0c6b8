using System.Text.RegularExpressions;

namespace Alumroot.App.Words;

/// <summary>Reads the part of CommonMark that the model pages are written in: headings, paragraphs, lists, tables, formulas; strong, emphasis, code and links inside.</summary>
public static partial class Prose
{
    /// <summary>The blocks of a text, in order.</summary>
    public static IReadOnlyList<ProseBlock> Blocks(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        var blocks = new List<ProseBlock>();
        for (int i = 0; i < lines.Length;)
        {
            if (string.IsNullOrWhiteSpace(lines[i])) i++;
            else blocks.Add(Next(lines, ref i));
        }
        return blocks;
    }

    /// <summary>The pieces of a line: plain words, or words under one mark.</summary>
    public static IEnumerable<(ProseMark Mark, string Text)> Pieces(string line)
    {
        int from = 0;
        foreach (Match match in Inline().Matches(line))
        {
            if (match.Index > from) yield return (ProseMark.None, line[from..match.Index]);
            from = match.Index + match.Length;
            if (match.Groups["code"].Success) yield return (ProseMark.Code, match.Groups["code"].Value);
            else if (match.Groups["strong"].Success) yield return (ProseMark.Strong, match.Groups["strong"].Value);
            else if (match.Groups["stress"].Success) yield return (ProseMark.Stress, match.Groups["stress"].Value);
            else yield return (ProseMark.None, match.Groups["link"].Value);
        }
        if (from < line.Length) yield return (ProseMark.None, line[from..]);
    }

    private static ProseBlock Next(string[] lines, ref int i)
    {
        string line = lines[i];
        if (Heading().Match(line) is { Success: true } heading)
        {
            i++;
            return new ProseBlock.Heading(heading.Groups[1].Length, heading.Groups[2].Value.Trim());
        }
        if (line.StartsWith("```", StringComparison.Ordinal))
        {
            i++;
            string[] fenced = Take(lines, ref i, l => !l.StartsWith("```", StringComparison.Ordinal));
            i++;
            return new ProseBlock.Formula(string.Join('\n', fenced));
        }
        if (line.StartsWith("    ", StringComparison.Ordinal))
            return new ProseBlock.Formula(string.Join('\n', Take(lines, ref i, l => l.StartsWith("    ", StringComparison.Ordinal)).Select(l => l[4..])));
        if (line.StartsWith('|'))
        {
            IReadOnlyList<string>[] rows = [.. Take(lines, ref i, l => l.StartsWith('|')).Select(Cells)];
            return new ProseBlock.Table(rows[0], [.. rows.Skip(1).Where(cells => !cells.All(c => c.Trim('-', ':').Length == 0))]);
        }
        if (Item().Match(line) is { Success: true } first)
        {
            var texts = new List<string>();
            foreach (string l in Take(lines, ref i, l => Item().IsMatch(l) || l.StartsWith("  ", StringComparison.Ordinal)))
            {
                if (Item().Match(l) is { Success: true } item) texts.Add(item.Groups[2].Value);
                else texts[^1] += " " + l.Trim();
            }
            return new ProseBlock.Items(texts, char.IsAsciiDigit(first.Groups[1].Value[0]));
        }
        return new ProseBlock.Paragraph(string.Join(' ', Take(lines, ref i, l => l.Length > 0 && !l.StartsWith('|') && !Heading().IsMatch(l) && !Item().IsMatch(l)).Select(l => l.Trim())));
    }

    private static string[] Take(string[] lines, ref int i, Func<string, bool> more)
    {
        int from = i++;
        if (!more(lines[from])) return [lines[from]];
        while (i < lines.Length && more(lines[i])) i++;
        return lines[from..i];
    }

    private static IReadOnlyList<string> Cells(string row) => [.. row.Trim().Trim('|').Split('|', StringSplitOptions.TrimEntries)];

    [GeneratedRegex(@"^(#{1,4}) (.+)$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"^(-|\*|\d+\.) +(.+)$")]
    private static partial Regex Item();

    [GeneratedRegex(@"`(?<code>[^`]+)`|\*\*(?<strong>[^*]+)\*\*|(?<![\w*])\*(?<stress>[^*\s][^*]*)\*|\[(?<link>[^\]]+)\]\([^)]*\)")]
    private static partial Regex Inline();
}
