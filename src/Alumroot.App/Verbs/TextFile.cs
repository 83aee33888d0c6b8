using Alumroot.App.Output;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Verbs;

/// <summary>Reads a whole text file for a verb, within a limit.</summary>
internal static class TextFile
{
    private const long LargestBytes = 32 << 20;

    /// <summary>The text; null when it could not be read, which has then been said.</summary>
    public static string? Read(string path, Channels channels)
    {
        try
        {
            var file = new FileInfo(path);
            if (file.Exists && file.Length > LargestBytes)
            {
                channels.Messages.WriteLine($"{file.Name} holds {file.Length >> 20} MiB; at most {LargestBytes >> 20} MiB are read, so split it.");
                return null;
            }
            return File.ReadAllText(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            channels.Messages.WriteLine($"'{path}' could not be read. Check the name and whether you may read it.");
            return null;
        }
    }

    /// <summary>Reads the file as a table and goes on with it; a file that cannot be read, and a row that is wrong, end the verb with the place and the reason.</summary>
    public static int WithTable(string path, Channels channels, Func<Table, int> run)
    {
        if (Read(path, channels) is not { } text) return ExitCode.InputWrong;
        if (Strange(text) is { } strange) return channels.End(ExitCode.InputWrong, $"{Path.GetFileName(path)} {strange}");
        try
        {
            return run(Table.Parse(Path.GetFileName(path), text));
        }
        catch (TableException e)
        {
            return channels.End(ExitCode.InputWrong, e.Message);
        }
    }

    /// <summary>What makes a file no table with commas at all, which its first wrong row would hide; null when nothing does.</summary>
    private static string? Strange(string text)
    {
        if (text.Contains('\0', StringComparison.Ordinal)) return "holds bytes that are no text. A table with commas was expected: save it as CSV, UTF-8, in the program that made it.";
        string heads = text.Split('\n').FirstOrDefault(l => l.Trim().Length > 0 && l[0] != '#') ?? "";
        return !heads.Contains(',', StringComparison.Ordinal) && heads.Contains(';', StringComparison.Ordinal)
            ? "has its columns parted by semicolons. Save it with commas between the columns and points in the numbers."
            : null;
    }
}
