using System.Text;

namespace Alumroot.Catalogue.Finding;

/// <summary>Text without case, accents and punctuation, so that it can be compared as a maker types it.</summary>
public static class FoldedText
{
    private const string Accented = "àáâãäåāăąçćčďđðèéêëēėęěğģìíîïīįıķłļľñńņňòóôõöøōőŕřśşšșťțþùúûüūůűųýÿźżž";
    private const string Plain = "aaaaaaaaacccdddeeeeeeeeggiiiiiiiklllnnnnoooooooorrssssttpuuuuuuuuyyzzz";

    /// <summary>Words of letters and digits, small and without accents, parted by single blanks.</summary>
    /// <remarks>Greek, Cyrillic and other letters stay as they are; æ, œ and ß become two letters.</remarks>
    public static string Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var folded = new StringBuilder(text.Length);
        bool gap = false;
        foreach (char raw in text)
        {
            if (raw is '\'' or '’') continue;
            if (!char.IsLetterOrDigit(raw))
            {
                gap = true;
                continue;
            }
            if (gap && folded.Length > 0) folded.Append(' ');
            gap = false;
            AppendPlain(folded, char.ToLowerInvariant(raw));
        }
        return folded.ToString();
    }

    /// <summary>As <see cref="Words"/>, without the blanks: "potash-alum", "Potash alum" and "potashalum" are one.</summary>
    public static string Letters(string text) => Words(text).Replace(" ", "", StringComparison.Ordinal);

    private static void AppendPlain(StringBuilder folded, char letter)
    {
        int accented = letter < 128 ? -1 : Accented.IndexOf(letter, StringComparison.Ordinal);
        switch (letter)
        {
            case 'æ': folded.Append("ae"); break;
            case 'œ': folded.Append("oe"); break;
            case 'ß': folded.Append("ss"); break;
            default: folded.Append(accented < 0 ? letter : Plain[accented]); break;
        }
    }
}
