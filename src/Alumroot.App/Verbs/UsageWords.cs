using System.CommandLine;
using System.CommandLine.Parsing;

namespace Alumroot.App.Verbs;

/// <summary>The sentences for a command line that was not understood. Each points at the word that is to blame.</summary>
public static class UsageWords
{
    /// <summary>A first word that is no verb.</summary>
    public static string UnknownVerb(string typed, IReadOnlyList<string> known)
    {
        string all = string.Join(", ", known);
        return Nearest.To(typed, known) is { } near
            ? $"There is no verb '{typed}'. The nearest is '{near}'; all verbs: {all}."
            : $"There is no verb '{typed}'. The verbs are {all}; 'alumroot --help' tells what each does.";
    }

    /// <summary>What is wrong with a parsed line, or null when it can be run.</summary>
    /// <param name="verb">The verb that was named.</param>
    /// <param name="parsed">What the words after it were read as.</param>
    public static string? FirstMistake(Verb verb, ParseResult parsed)
    {
        ArgumentNullException.ThrowIfNull(verb);
        ArgumentNullException.ThrowIfNull(parsed);
        if (parsed.UnmatchedTokens is [var stray, ..])
            return Stray(verb, stray);
        foreach (Option option in verb.Options)
            if (parsed.GetResult(option) is { Implicit: false } given && given.Tokens.Count < option.Arity.MinimumNumberOfValues)
                return $"'{option.Name}' needs a value after it: {option.HelpName ?? "VALUE"} is {option.Description}.";
        return parsed.Errors is [var error, ..] ? Told(verb, error) : null;
    }

    private static string Stray(Verb verb, string word)
    {
        string help = $"'alumroot {verb.Name} --help' lists what it knows.";
        if (!word.StartsWith('-')) return $"'{word}' was not expected after '{verb.Name}'. {help}";
        return Nearest.To(word, verb.Options.Select(o => o.Name)) is { } near
            ? $"'{verb.Name}' has no option '{word}'. The nearest is '{near}'; {help}"
            : $"'{verb.Name}' has no option '{word}'. {help}";
    }

    private static string Told(Verb verb, ParseError error) => error.SymbolResult switch
    {
        OptionResult { Option: var option, Tokens: [var token, ..] } when !error.Message.StartsWith('\'') =>
            $"'{token.Value}' cannot be read as the value of '{option.Name}': {option.HelpName ?? "VALUE"} is {option.Description}.",
        ArgumentResult { Argument: var argument, Tokens: [] } =>
            $"'{verb.Name}' needs {argument.HelpName ?? argument.Name.ToUpperInvariant()} after it: {argument.Description}.",
        CommandResult when verb.Arguments.FirstOrDefault(a => a.Arity.MinimumNumberOfValues > 0) is { } missing =>
            $"'{verb.Name}' needs {missing.HelpName ?? missing.Name.ToUpperInvariant()} after it: {missing.Description}.",
        _ => error.Message,
    };
}
