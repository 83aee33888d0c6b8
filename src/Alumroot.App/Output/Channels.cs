namespace Alumroot.App.Output;

/// <summary>Where a verb writes: answers on one channel, everything said about them on the other.</summary>
/// <param name="Data">Answers only (standard output), so that a script can read them.</param>
/// <param name="Messages">Cautions, progress and reasons (standard error).</param>
public sealed record Channels(TextWriter Data, TextWriter Messages)
{
    /// <summary>Says why something did not go, and gives back the exit code to return.</summary>
    /// <param name="exitCode">One of <see cref="ExitCode"/>.</param>
    /// <param name="sentence">What happened, what it means, what to do.</param>
    public int End(int exitCode, string sentence)
    {
        Messages.WriteLine(sentence);
        return exitCode;
    }
}
