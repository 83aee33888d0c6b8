namespace Alumroot.App.Tests;

/// <summary>Where the repository lies, and the texts kept in it to be compared with.</summary>
internal static class Folder
{
    /// <summary>The repository's root.</summary>
    public static string Repository { get; } = Find();

    /// <summary>Compares a text with the one kept; with GOLDEN=write in the environment the new one is kept instead.</summary>
    public static void AssertGolden(string name, string now)
    {
        string path = Path.Combine(Repository, "tests/Alumroot.App.Tests/Golden", name);
        if (Environment.GetEnvironmentVariable("GOLDEN") == "write") File.WriteAllText(path, now);
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), now.ReplaceLineEndings("\n"));
    }

    private static string Find()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Directory.Packages.props"))) return folder.FullName;
        throw new DirectoryNotFoundException("The repository was not found above the tests.");
    }
}
