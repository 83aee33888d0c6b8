namespace Alumroot.App.Tests;

/// <summary>Where the repository lies.</summary>
internal static class Folder
{
    /// <summary>The repository's root.</summary>
    public static string Repository { get; } = Find();

    private static string Find()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Alumroot.slnx"))) return folder.FullName;
        throw new DirectoryNotFoundException("The repository was not found above the tests.");
    }
}
