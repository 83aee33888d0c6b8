using System.Globalization;

namespace Alumroot.Colour.Interchange;

/// <summary>Reads CGATS.17 (ISO 28178) text and dialects of the same shape, whose first word differs: keywords, then tables of named fields.</summary>
/// <remarks>Field names by ISO 28178 as read in open documentation; the standard itself was not opened.</remarks>
internal sealed class CgatsReader
{
    private const string FieldCountWord = "NUMBER_OF_FIELDS", SetCountWord = "NUMBER_OF_SETS";

    private readonly List<CgatsToken> _tokens;
    private readonly bool _percent;
    private readonly Dictionary<string, string> _keywords = new(StringComparer.Ordinal);
    private readonly List<ColourTable> _tables = [];
    private int _at;
    private bool _assumed;

    private CgatsReader(string text, bool percent) => (_tokens, _percent) = (CgatsTokens.Split(text), percent);

    internal static ColourDocument Read(string text, bool percent) => new CgatsReader(text, percent).Document();

    private ColourDocument Document()
    {
        CgatsToken? fieldCount = null, setCount = null;
        List<CgatsToken>? fields = null;
        if (_tokens.Count > 0 && !_tokens[0].Text.Contains("_OF_", StringComparison.Ordinal) && !_tokens[0].Text.StartsWith("BEGIN_", StringComparison.Ordinal)) _at++;
        while (_at < _tokens.Count)
        {
            CgatsToken word = _tokens[_at++];
            switch (word.Text)
            {
                case FieldCountWord: fieldCount = Next(word); break;
                case SetCountWord: setCount = Next(word); break;
                case "BEGIN_DATA_FORMAT":
                    fields = Until("END_DATA_FORMAT", word);
                    CheckFields(fields, fieldCount, word.Line);
                    break;
                case "BEGIN_DATA":
                    if (fields is null) throw new FaultException(new(FaultKind.NoFormat, word.Line));
                    List<List<CgatsToken>> rows = Rows(Until("END_DATA", word), fields.Count);
                    if (setCount is { } stated && Count(stated) != rows.Count) throw new FaultException(new(FaultKind.SetCount, stated.Line) { Found = Text(rows.Count), Expected = stated.Text });
                    var table = new CgatsTable([.. fields.Select(f => f.Text)], _keywords, _percent);
                    _tables.Add(table.Read(rows));
                    _assumed |= table.PercentAssumed;
                    (fieldCount, setCount, fields) = (null, null, null);
                    break;
                default: Keyword(word); break;
            }
        }
        return new ColourDocument(ColourFormat.Cgats, _tables) { Keywords = _keywords, PercentAssumed = _assumed };
    }

    private void Keyword(CgatsToken word)
    {
        if (word.Quoted || _at >= _tokens.Count || _tokens[_at].Line != word.Line) return;
        if (word.Text != "KEYWORD") _keywords[word.Text] = _tokens[_at].Text;
        while (_at < _tokens.Count && _tokens[_at].Line == word.Line) _at++;
    }

    private CgatsToken Next(CgatsToken word) => _at < _tokens.Count ? _tokens[_at++] : throw new FaultException(new(FaultKind.NoEnd, word.Line) { Expected = word.Text });

    private List<CgatsToken> Until(string end, CgatsToken begin)
    {
        int start = _at;
        while (_at < _tokens.Count && (_tokens[_at].Quoted || _tokens[_at].Text != end)) _at++;
        if (_at >= _tokens.Count) throw new FaultException(new(FaultKind.NoEnd, _tokens.Count > 0 ? _tokens[^1].Line : begin.Line) { Expected = end });
        return _tokens.GetRange(start, _at++ - start);
    }

    private static void CheckFields(List<CgatsToken> fields, CgatsToken? stated, int line)
    {
        if (fields.Count == 0) throw new FaultException(new(FaultKind.NoFormat, line));
        if (stated is { } count && Count(count) != fields.Count) throw new FaultException(new(FaultKind.FieldCount, count.Line) { Found = Text(fields.Count), Expected = count.Text });
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (CgatsToken f in fields)
            if (!CgatsTable.IsPairField(f.Text) && !seen.Add(f.Text)) throw new FaultException(new(FaultKind.Duplicate, f.Line) { Field = f.Text });
    }

    /// <summary>Rows may be broken over lines; when the words do not add up, the line that is to blame is named.</summary>
    private static List<List<CgatsToken>> Rows(List<CgatsToken> words, int fields)
    {
        List<List<CgatsToken>> lines = [.. words.GroupBy(w => w.Line).Select(g => g.ToList())];
        if (words.Count % fields != 0)
        {
            List<CgatsToken> blamed = lines.Find(l => l.Count != fields)!;
            throw new FaultException(new(FaultKind.RowLength, blamed[0].Line) { Sample = blamed[0].Text, Found = Text(blamed.Count), Expected = Text(fields) });
        }
        return lines.TrueForAll(l => l.Count == fields) ? lines : [.. words.Chunk(fields).Select(c => c.ToList())];
    }

    private static int Count(CgatsToken token) =>
        int.TryParse(token.Text, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : throw new FaultException(new(FaultKind.NotANumber, token.Line) { Field = FieldCountWord, Found = token.Text });

    private static string Text(int n) => n.ToString(CultureInfo.InvariantCulture);
}
