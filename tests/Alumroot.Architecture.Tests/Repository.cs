namespace Alumroot.Architecture.Tests;

/// <summary>The files of the project, found by walking up from the test's own folder to the solution.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    /// <summary>Files with one of these endings below a folder, without what builds leave behind.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings)
    {
        string start = Path.Combine(Root, folder);
        if (!Directory.Exists(start)) return [];
        return Directory.EnumerateFiles(start, "*", SearchOption.AllDirectories)
            .Where(f => endings.Any(e => f.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Where(f => !Relative(f).Split('/').Any(part => part is "bin" or "obj" or "node_modules" or "TestResults"));
    }

    /// <summary>The path as seen from the root, with slashes.</summary>
    public static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    private static string FindRoot()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "Alumroot.slnx"))) return at.FullName;
        throw new DirectoryNotFoundException($"Alumroot.slnx was not found above {AppContext.BaseDirectory}.");
    }
}
