namespace Alumroot.Docs.Tests;

/// <summary>The documents of the repository.</summary>
internal static class Documents
{
    public static string Root { get; } = FindRoot();

    /// <summary>All documents written for people, relative to the root.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. Directory.EnumerateFiles(Root, "*.md").Concat(Directory.EnumerateFiles(Path.Combine(Root, "docs"), "*.md", SearchOption.AllDirectories))
            .Select(f => Path.GetRelativePath(Root, f).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];

    public static IEnumerable<string> In(string folder) => All.Where(f => f.StartsWith(folder + "/", StringComparison.Ordinal));

    public static string Text(string document) => File.ReadAllText(Path.Combine(Root, document)).ReplaceLineEndings("\n");

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Alumroot.slnx"))) return folder.FullName;
        throw new DirectoryNotFoundException("the folder with Alumroot.slnx");
    }
}
