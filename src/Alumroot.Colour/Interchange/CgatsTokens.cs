using System.Text;

namespace Alumroot.Colour.Interchange;

/// <summary>One word of a CGATS file.</summary>
/// <param name="Text">Without its quotes.</param>
/// <param name="Line">From 1.</param>
/// <param name="Quoted">Whether it stood in quotes.</param>
internal readonly record struct CgatsToken(string Text, int Line, bool Quoted);

/// <summary>Splits CGATS text into words: parted by blanks, kept together by double quotes (doubled inside), a number sign before a word starts a comment.</summary>
internal static class CgatsTokens
{
    internal static List<CgatsToken> Split(string text)
    {
        var tokens = new List<CgatsToken>();
        int line = 1, i = 0;
        while (i < text.Length)
        {
            char c = text[i];
            if (c == '\n' || (c == '\r' && (i + 1 >= text.Length || text[i + 1] != '\n'))) line++;
            if (char.IsWhiteSpace(c)) i++;
            else if (c == '#')
                while (i < text.Length && text[i] is not ('\n' or '\r')) i++;
            else if (c == '"') tokens.Add(new CgatsToken(Quoted(text, ref i, line), line, true));
            else
            {
                int start = i;
                while (i < text.Length && !char.IsWhiteSpace(text[i])) i++;
                tokens.Add(new CgatsToken(text[start..i], line, false));
            }
        }
        return tokens;
    }

    private static string Quoted(string text, ref int i, int line)
    {
        var word = new StringBuilder();
        for (i++; i < text.Length && text[i] is not ('\n' or '\r'); i++)
        {
            if (text[i] != '"') word.Append(text[i]);
            else if (i + 1 < text.Length && text[i + 1] == '"') word.Append(text[i++]);
            else
            {
                i++;
                return word.ToString();
            }
        }
        throw new FaultException(new(FaultKind.OpenQuote, line));
    }
}
