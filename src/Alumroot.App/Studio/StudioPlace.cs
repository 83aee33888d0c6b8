namespace Alumroot.App.Studio;

/// <summary>Where a studio is when no folder is named.</summary>
public static class StudioPlace
{
    private const string FolderName = "Alumroot";

    /// <summary>The folder named, or the usual one: in the documents on Windows and macOS, in the data of the user elsewhere.</summary>
    /// <param name="named">What stands after <c>--studio</c>, or null.</param>
    public static string Of(string? named) => string.IsNullOrWhiteSpace(named) ? Usual : Path.GetFullPath(named);

    private static string Usual => OperatingSystem.IsWindows() || OperatingSystem.IsMacOS()
        ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.MyDocuments), FolderName)
        : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), FolderName.ToLowerInvariant());
}
