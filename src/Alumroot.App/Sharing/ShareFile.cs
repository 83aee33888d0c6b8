using System.Text.Json;

namespace Alumroot.App.Sharing;

/// <summary>The file in the studio's folder that holds the stretched passphrase. Only its owner may read it; it is in no copy and no export.</summary>
internal static class ShareFile
{
    public const string Name = "share.json";

    private const string Algorithm = "PBKDF2-SHA256";

    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    /// <summary>What is kept, or null when there is no such file or it is not understood; a new passphrase is then asked for.</summary>
    /// <param name="folder">The studio's folder.</param>
    public static Passphrase? TryRead(string folder)
    {
        string file = Path.Combine(folder, Name);
        if (!File.Exists(file)) return null;
        try
        {
            return JsonSerializer.Deserialize<Kept>(File.ReadAllText(file), Form) is { Algorithm: Algorithm, Iterations: >= Passphrase.UsualIterations, Salt.Length: > 0, Hash.Length: > 0 } kept
                ? new Passphrase(kept.Iterations, kept.Salt, kept.Hash)
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Keeps it. On Windows the rights of the studio's folder count.</summary>
    public static void Write(string folder, Passphrase passphrase)
    {
        string file = Path.Combine(folder, Name), part = $"{file}.{Guid.NewGuid():N}";
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using (var stream = new FileStream(part, options))
        {
            JsonSerializer.Serialize(stream, new Kept(Algorithm, passphrase.Iterations, passphrase.Salt, passphrase.Hash), Form);
            stream.Flush(flushToDisk: true);
        }
        File.Move(part, file, overwrite: true);
    }

    private sealed record Kept(string Algorithm, int Iterations, byte[] Salt, byte[] Hash);
}
