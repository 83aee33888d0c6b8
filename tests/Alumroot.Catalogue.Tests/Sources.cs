using System.Text.RegularExpressions;

namespace Alumroot.Catalogue.Tests;

/// <summary>Keys of docs/sources.bib, found by walking up from the test program.</summary>
internal static partial class Sources
{
    internal static IReadOnlyList<string> Keys { get; } =
        [.. Entry().Matches(File.ReadAllText(Find())).Select(m => m.Groups[1].Value)];

    private static string Find()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string path = Path.Combine(folder.FullName, "docs", "sources.bib");
            if (File.Exists(path)) return path;
        }
        throw new FileNotFoundException("docs/sources.bib");
    }

    [GeneratedRegex(@"^@\w+\{([a-z0-9_]+),", RegexOptions.Multiline)]
    private static partial Regex Entry();
}
