using System.Text.RegularExpressions;

namespace Alumroot.App.Words;

/// <summary>The sources by key, spelt out from <c>docs/sources.bib</c> as it was when the program was built.</summary>
public static partial class SourceList
{
    private static readonly Lazy<IReadOnlyList<Source>> Read = new(() => Parse(Text()));
    private static readonly Lazy<Dictionary<string, Source>> ByKey = new(() => Read.Value.ToDictionary(s => s.Key, StringComparer.Ordinal));

    /// <summary>All sources, by key.</summary>
    public static IReadOnlyList<Source> All => Read.Value;

    /// <summary>The source with this key spelt out, or the key itself when the list does not have it.</summary>
    public static string Spelt(string key) => ByKey.Value.TryGetValue(key, out Source? source) ? source.Spelt : key;

    /// <summary>Reads entries of the form <c>@kind{key, field = {text}, ...}</c>.</summary>
    public static IReadOnlyList<Source> Parse(string text) =>
        [.. Entry().Matches(text).Select(entry =>
        {
            Dictionary<string, string> fields = Field().Matches(entry.Groups["body"].Value)
                .ToDictionary(f => f.Groups["name"].Value.ToLowerInvariant(), f => Plain(f.Groups["text"].Value), StringComparer.Ordinal);
            return new Source(
                entry.Groups["key"].Value,
                fields.GetValueOrDefault("author", fields.GetValueOrDefault("editor", "")),
                fields.GetValueOrDefault("title", ""),
                fields.GetValueOrDefault("journal", fields.GetValueOrDefault("publisher", "")),
                fields.GetValueOrDefault("year", ""),
                fields.GetValueOrDefault("note", ""));
        }).OrderBy(s => s.Key, StringComparer.Ordinal)];

    private static string Text()
    {
        using Stream stream = typeof(SourceList).Assembly.GetManifestResourceStream("sources.bib")
            ?? throw new InvalidOperationException("sources.bib was not built into the program");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static string Plain(string text)
    {
        string composed = Accent().Replace(text, m => Composed(m.Groups["accent"].Value[0], m.Groups["letter"].Value));
        return Blanks().Replace(composed.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal).Replace("\\&", "&", StringComparison.Ordinal).Replace("--", "\u2013", StringComparison.Ordinal), " ").Trim();
    }

    // A table, since the program runs without the machine's own tables of accents.
    private static string Composed(char accent, string letter)
    {
        (string plain, string accented) = accent switch
        {
            '"' => ("aeiouAEIOU", "äëïöüÄËÏÖÜ"),
            '\'' => ("aeiouycnszAEIOU", "áéíóúýćńśźÁÉÍÓÚ"),
            '`' => ("aeiouAEIOU", "àèìòùÀÈÌÒÙ"),
            '^' => ("aeiouAEIOU", "âêîôûÂÊÎÔÛ"),
            '~' => ("anoANO", "ãñõÃÑÕ"),
            'v' => ("cdenrszCSZ", "čďěňřšžČŠŽ"),
            _ => ("csCS", "çşÇŞ"),
        };
        int at = plain.IndexOf(letter, StringComparison.Ordinal);
        return at < 0 ? letter : accented[at].ToString();
    }

    [GeneratedRegex(@"@\w+\{(?<key>[^,\s]+),(?<body>.*?)^\}", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Entry();

    [GeneratedRegex(@"^\s*(?<name>\w+)\s*=\s*\{(?<text>(?:[^{}]|\{(?:[^{}]|\{[^{}]*\})*\})*)\}", RegexOptions.Multiline)]
    private static partial Regex Field();

    [GeneratedRegex(@"\\(?<accent>[""'`^~]|[vc](?=[\s{]))\s*\{?(?<letter>[A-Za-z])\}?")]
    private static partial Regex Accent();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
