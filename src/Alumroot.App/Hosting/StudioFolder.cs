namespace Alumroot.App.Hosting;

/// <summary>Looks whether a folder can hold a studio.</summary>
public static class StudioFolder
{
    /// <summary>Makes the folder when missing and tries to write in it.</summary>
    /// <param name="path">The folder as typed; null means that none was named.</param>
    /// <returns>Why it cannot be used, in one or two sentences; null when it can.</returns>
    public static string? WhyNotUsable(string? path)
    {
        if (path is null) return null;
        try
        {
            Directory.CreateDirectory(path);
            string trial = Path.Combine(path, $".writable-{Guid.NewGuid():N}");
            File.WriteAllBytes(trial, []);
            File.Delete(trial);
            return null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return $"The studio folder '{path}' cannot be written. Choose another folder with --studio, or change who may write there.";
        }
    }
}
