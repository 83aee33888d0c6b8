using System.Globalization;

namespace Alumroot.Colour.Interchange;

/// <summary>Reads JCAMP-DX 4.24 and 5 (McDonald and Wilks 1988, Appl. Spectrosc. 42, 151): labelled records, one or several blocks.</summary>
internal static class JcampReader
{
    internal static ColourDocument Read(string text, bool percent)
    {
        var samples = new List<ColourSample>();
        var keywords = new Dictionary<string, string>(StringComparer.Ordinal);
        var open = new Stack<JcampBlock>();
        bool assumed = false;
        int line = 0;
        JcampRecord? record = null;
        foreach (ReadOnlySpan<char> raw in text.AsSpan().EnumerateLines())
        {
            line++;
            int comment = raw.IndexOf("$$", StringComparison.Ordinal);
            ReadOnlySpan<char> written = (comment < 0 ? raw : raw[..comment]).TrimEnd();
            int sign = written.IndexOf('=');
            if (!written.StartsWith("##", StringComparison.Ordinal) || sign < 0)
            {
                if (!written.IsWhiteSpace()) record?.Lines.Add((line, written.ToString()));
                continue;
            }
            record = new JcampRecord(Label(written[2..sign]), written[(sign + 1)..].Trim().ToString(), line);
            if (record.Label == "TITLE") open.Push(new JcampBlock(record));
            else if (record.Label == "END")
            {
                if (!open.TryPop(out JcampBlock? block)) continue;
                if (block.Sample(percent, samples.Count, ref assumed) is { } sample) samples.Add(sample);
            }
            else if (open.TryPeek(out JcampBlock? block))
            {
                block.Add(record);
                if (record.Label.Length > 0 && !JcampBlock.IsData(record.Label)) keywords[record.Label] = record.Value;
            }
            else throw new FaultException(new(FaultKind.MissingLabel, line) { Expected = "TITLE" });
        }
        if (open.Count > 0) throw new FaultException(new(FaultKind.NoEnd, line) { Expected = "##END=" });
        return new ColourDocument(ColourFormat.JcampDx, [new ColourTable(samples)]) { Keywords = keywords, PercentAssumed = assumed };
    }

    /// <summary>Labels are compared without case, blanks, dashes, slashes and underscores.</summary>
    private static string Label(ReadOnlySpan<char> written)
    {
        Span<char> kept = stackalloc char[Math.Min(written.Length, 64)];
        int n = 0;
        foreach (char c in written)
            if (c is not (' ' or '-' or '/' or '_' or '\t') && n < kept.Length) kept[n++] = char.ToUpper(c, CultureInfo.InvariantCulture);
        return kept[..n].ToString();
    }
}

/// <summary>One labelled record with the lines that follow it.</summary>
internal sealed class JcampRecord(string label, string value, int line)
{
    internal string Label { get; } = label;

    internal string Value { get; } = value;

    internal int Line { get; } = line;

    internal List<(int Line, string Text)> Lines { get; } = [];
}
