using Alumroot.App.Output;

namespace Alumroot.App.Sharing;

/// <summary>Where the passphrase of a shared studio comes from: a file, the environment, what was kept before, or the person at the terminal.</summary>
internal static class PassphraseSource
{
    /// <summary>The variable of the environment.</summary>
    public const string Variable = "ALUMROOT_PASSPHRASE";

    /// <summary>The passphrase to share with; null when there is none, which was then said.</summary>
    /// <param name="studioFolder">Where it is kept.</param>
    /// <param name="file">A file whose first line it is, or null.</param>
    /// <param name="typed">Reads a line from the person at the terminal; null when there is nobody.</param>
    /// <param name="channels">Where it is asked and said.</param>
    public static Passphrase? Find(string studioFolder, string? file, Func<string?>? typed, Channels channels)
    {
        try
        {
            return Read(studioFolder, file, typed, channels);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            channels.Messages.WriteLine($"The passphrase could not be read or kept ({e.Message}). Look at the file after --passphrase-file, and at who may write in '{studioFolder}'.");
            return null;
        }
    }

    private static Passphrase? Read(string studioFolder, string? file, Func<string?>? typed, Channels channels)
    {
        string? given = file is not null ? File.ReadLines(file).FirstOrDefault() ?? "" : Environment.GetEnvironmentVariable(Variable);
        Passphrase? before = ShareFile.TryRead(studioFolder);
        if (string.IsNullOrEmpty(given) && file is null)
        {
            if (before is not null) return before;
            if (typed is null)
            {
                channels.Messages.WriteLine($"Sharing needs a passphrase of at least {Passphrase.LeastCharacters} characters. Start once in a terminal to choose it, or give it with --passphrase-file FILE or {Variable}.");
                return null;
            }
            channels.Messages.Write($"Choose a passphrase for those who may enter, at least {Passphrase.LeastCharacters} characters, such as four plain words: ");
            given = typed();
        }
        if (!Passphrase.IsUsable(given))
        {
            channels.Messages.WriteLine($"A passphrase has {Passphrase.LeastCharacters} to {Passphrase.MostCharacters} characters; this one has {given?.Trim().Length ?? 0}. Take three or four plain words.");
            return null;
        }
        if (before?.Matches(given) == true) return before;
        Passphrase chosen = Passphrase.Of(given!);
        ShareFile.Write(studioFolder, chosen);
        return chosen;
    }
}
