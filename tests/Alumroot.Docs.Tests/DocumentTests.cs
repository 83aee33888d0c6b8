using System.Text.RegularExpressions;

namespace Alumroot.Docs.Tests;

/// <summary>Links lead somewhere, sources exist, and the two commands stand in the README.</summary>
public sealed partial class DocumentTests
{
    private static readonly HashSet<string> Keys = [.. Entry().Matches(File.ReadAllText(Path.Combine(Documents.Root, "docs", "sources.bib"))).Select(m => m.Groups[1].Value)];

    [Fact]
    public void Every_link_between_documents_resolves()
    {
        var lost = new List<string>();
        foreach (string document in Documents.All)
            foreach (Match link in Link().Matches(WithoutBlocks(Documents.Text(document))))
                if (Lost(document, link.Groups["to"].Value) is { } why) lost.Add($"{document}: {link.Groups["to"].Value} {why}");
        Assert.True(lost.Count == 0, string.Join("\n", lost));
    }

    [Fact]
    public void Every_picture_has_words_and_lies_in_docs_images()
    {
        foreach (string document in Documents.All)
            foreach (Match picture in Picture().Matches(Documents.Text(document)))
            {
                Assert.True(picture.Groups["words"].Value.Length > 20, $"{document}: {picture.Value} says too little to who cannot see it");
                Assert.Contains("docs/images/", Path.GetRelativePath(Documents.Root, Full(document, picture.Groups["to"].Value)).Replace('\\', '/'), StringComparison.Ordinal);
            }
    }

    public static TheoryData<string> Models => [.. Documents.In("docs/models")];

    [Theory]
    [MemberData(nameof(Models))]
    public void A_model_page_names_sources_that_are_listed(string page)
    {
        string[] named = [.. Source().Matches(Documents.Text(page)).Select(m => m.Groups[1].Value)];
        Assert.NotEmpty(named);
        Assert.All(named, key => Assert.Contains(key, Keys));
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void A_model_page_says_where_it_ends_and_how_it_is_tested(string page)
    {
        string text = Documents.Text(page);
        Assert.Contains("\n## How it is tested", text, StringComparison.Ordinal);
        Assert.Matches(@"(?m)^## .*Limits|^\*\*Limits|what it does not|not known", text);
    }

    [Fact]
    public void The_readme_says_the_job_first_and_both_commands_early()
    {
        string[] lines = Documents.Text("README.md").Split('\n');
        Assert.Equal("# Alumroot", lines[0]);
        Assert.True(lines[2].Length > 200, "The first paragraph tells the job.");
        string start = string.Join('\n', lines.Take(20));
        foreach (string command in (string[])["./serve", "./test"])
        {
            Assert.Contains(command, start, StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(Documents.Root, command)), command);
        }
    }

    /// <summary>Paths in code marks are true: a moved file takes its documents along.</summary>
    [Fact]
    public void Every_path_named_in_a_document_is_there()
    {
        var lost = new List<string>();
        foreach (string document in Documents.All)
            foreach (Match path in Named().Matches(Documents.Text(document)))
            {
                string named = path.Groups[1].Value;
                if (named.Contains('*', StringComparison.Ordinal) || named.Contains('<', StringComparison.Ordinal)) continue;
                string full = Path.Combine(Documents.Root, named);
                if (!File.Exists(full) && !Directory.Exists(full) && !File.Exists(full + ".cs")) lost.Add($"{document}: {named}");
            }
        Assert.True(lost.Count == 0, string.Join("\n", lost));
    }

    private static string? Lost(string document, string to)
    {
        if (to.Contains("://", StringComparison.Ordinal) || to.StartsWith("mailto:", StringComparison.Ordinal)) return null;
        string[] parts = to.Split('#', 2);
        string full = parts[0].Length == 0 ? Path.Combine(Documents.Root, document) : Full(document, parts[0]);
        // Pictures are taken of a finished release; until there are any, a link to one is a promise.
        if (parts[0].EndsWith(".png", StringComparison.Ordinal) && !Directory.Exists(Path.Combine(Documents.Root, "docs", "images"))) return null;
        if (!File.Exists(full) && !Directory.Exists(full)) return "is not there";
        return parts.Length == 1 || Anchors(File.ReadAllText(full)).Contains(parts[1]) ? null : "has no such heading";
    }

    private static string Full(string document, string to) => Path.GetFullPath(Path.Combine(Documents.Root, Path.GetDirectoryName(document)!, to));

    private static HashSet<string> Anchors(string text) =>
        [.. Heading().Matches(WithoutBlocks(text.ReplaceLineEndings("\n"))).Select(m => NotInAnchor().Replace(m.Groups[1].Value.ToLowerInvariant(), "").Replace(' ', '-'))];

    private static string WithoutBlocks(string text) => Block().Replace(text, "");

    [GeneratedRegex(@"@\w+\{([^,\s]+),")]
    private static partial Regex Entry();

    [GeneratedRegex(@"\[[^\]]+\]\((?<to>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"!\[(?<words>[^\]]*)\]\((?<to>[^)\s]+)\)")]
    private static partial Regex Picture();

    [GeneratedRegex(@"\[([a-z][a-z0-9_]*)\](?!\()")]
    private static partial Regex Source();

    [GeneratedRegex(@"`((?:src|tests|docs|data|benchmarks)/[^`\s]*)`")]
    private static partial Regex Named();

    [GeneratedRegex(@"(?m)^#{1,4} (.+)$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\p{L}\p{Nd} \-_]")]
    private static partial Regex NotInAnchor();

    [GeneratedRegex(@"(?ms)^```.*?^```$")]
    private static partial Regex Block();
}
