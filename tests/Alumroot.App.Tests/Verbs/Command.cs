using Alumroot.App.Output;
using Alumroot.App.Verbs;

namespace Alumroot.App.Tests.Verbs;

/// <summary>What one command line said and how it ended.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Data">Standard output.</param>
/// <param name="Messages">Standard error.</param>
internal sealed record Command(int Code, string Data, string Messages)
{
    /// <summary>Runs the words of a line parted by blanks; quotes keep words together.</summary>
    public static Task<Command> Of(string line) => Of(Words(line));

    public static async Task<Command> Of(IReadOnlyList<string> words)
    {
        using var data = new StringWriter();
        using var messages = new StringWriter();
        int code = await CommandLine.RunAsync(words, new Channels(data, messages), TestContext.Current.CancellationToken);
        return new Command(code, data.ToString(), messages.ToString());
    }

    private static List<string> Words(string line) => [.. line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
}
