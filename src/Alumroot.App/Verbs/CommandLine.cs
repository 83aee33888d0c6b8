using System.CommandLine;
using System.Reflection;
using Alumroot.App.Output;

namespace Alumroot.App.Verbs;

/// <summary>Reads the words typed, finds the verb and runs it.</summary>
public static class CommandLine
{
    /// <summary>The word that holds remarks back.</summary>
    public const string Quiet = "--quiet";

    // The plan has a meaning of its own for it, and the pages must say their address.
    private static readonly string[] SpeaksForItself = ["plan", ServeVerb.Name, Quiet];
    private static readonly string[] HelpWords = ["--help", "-h", "-?", "help"];

    /// <summary>The version as <c>--version</c> prints it.</summary>
    public static string Version { get; } =
        typeof(CommandLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";

    /// <summary>Runs one command line.</summary>
    /// <param name="args">The words after <c>alumroot</c>.</param>
    /// <param name="channels">Where to write.</param>
    /// <param name="cancellation">Ends a running verb in order.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Channels channels, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(channels);
        if (args.Count > 0 && args.Contains(Quiet) && !SpeaksForItself.Contains(args[0]))
        {
            // Remarks are held back, and said only when the answer is that it did not go.
            using var held = new StringWriter();
            int code = await RunAsync([.. args.Where(a => a != Quiet)], channels with { Messages = held }, cancellation).ConfigureAwait(false);
            if (code != ExitCode.Done) await channels.Messages.WriteAsync(held.ToString()).ConfigureAwait(false);
            return code;
        }
        IReadOnlyList<Verb> verbs = AllVerbs.Build(channels);
        string first = args.Count > 0 ? args[0] : AllVerbs.Default;

        if (HelpWords.Contains(first, StringComparer.Ordinal))
            return await HelpAsync(verbs, args, channels).ConfigureAwait(false);
        if (first == "--version")
        {
            await channels.Data.WriteLineAsync($"alumroot {Version}").ConfigureAwait(false);
            return ExitCode.Done;
        }

        bool verbLeftOut = args.Count == 0 || first.StartsWith('-');
        string name = verbLeftOut ? AllVerbs.Default : first;
        Verb? verb = verbs.FirstOrDefault(v => v.Name == name);
        if (verb is null)
            return channels.End(ExitCode.InputWrong, UsageWords.UnknownVerb(name, [.. verbs.Select(v => v.Name)]));

        string[] rest = [.. verbLeftOut ? args : args.Skip(1)];
        if (rest.Any(word => HelpWords.Take(3).Contains(word, StringComparer.Ordinal)))
        {
            await channels.Data.WriteAsync(HelpText.Of(verb)).ConfigureAwait(false);
            return ExitCode.Done;
        }

        ParseResult parsed = verb.Parse(rest, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
        if (UsageWords.FirstMistake(verb, parsed) is { } mistake)
            return channels.End(ExitCode.InputWrong, mistake);

        var run = new InvocationConfiguration
        {
            Output = channels.Data,
            Error = channels.Messages,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        return await parsed.InvokeAsync(run, cancellation).ConfigureAwait(false);
    }

    private static async Task<int> HelpAsync(IReadOnlyList<Verb> verbs, IReadOnlyList<string> args, Channels channels)
    {
        if (args.Count < 2)
        {
            await channels.Data.WriteAsync(HelpText.Of(verbs)).ConfigureAwait(false);
            return ExitCode.Done;
        }
        Verb? verb = verbs.FirstOrDefault(v => v.Name == args[1]);
        if (verb is null)
            return channels.End(ExitCode.InputWrong, UsageWords.UnknownVerb(args[1], [.. verbs.Select(v => v.Name)]));
        await channels.Data.WriteAsync(HelpText.Of(verb)).ConfigureAwait(false);
        return ExitCode.Done;
    }
}
