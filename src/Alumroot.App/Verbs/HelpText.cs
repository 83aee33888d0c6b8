using System.CommandLine;
using System.Globalization;
using System.Text;
using Alumroot.App.Output;

namespace Alumroot.App.Verbs;

/// <summary>Help that fits one screen: what it does, the words it knows, three examples.</summary>
public static class HelpText
{
    private const int LabelWidth = 26;

    /// <summary>Help for the whole program.</summary>
    public static string Of(IReadOnlyList<Verb> verbs)
    {
        ArgumentNullException.ThrowIfNull(verbs);
        var text = new StringBuilder();
        foreach (string line in Columns.Wrapped("Plans, weighs and explains lake pigments for a small studio. The web pages and these verbs do the same work.", Columns.Width))
            text.AppendLine(line);
        text.AppendLine().AppendLine("Use:  alumroot [VERB] [WORDS]").AppendLine().AppendLine("Verbs");
        foreach (Verb verb in verbs)
            text.AppendLine(Columns.Beside("  " + verb.Name, verb.Description ?? "", LabelWidth));
        text.AppendLine()
            .AppendLine(Columns.Beside("  --help, --version", "this text; after a verb, the help of that verb", LabelWidth))
            .AppendLine(Columns.Beside("  --quiet", "after a verb: no remarks, unless it did not go", LabelWidth))
            .AppendLine();
        Examples(text, [.. verbs.Select(v => v.Examples[0]).Concat(verbs[0].Examples.Skip(1)).Take(3)]);
        text.AppendLine("Ends with 0 done, 1 cannot be met, 2 input wrong, 3 studio folder in trouble,")
            .AppendLine("130 stopped by Ctrl-C. Answers go to standard output, remarks to standard error.");
        return text.ToString();
    }

    /// <summary>Help for one verb.</summary>
    public static string Of(Verb verb)
    {
        ArgumentNullException.ThrowIfNull(verb);
        var text = new StringBuilder();
        foreach (string line in Columns.Wrapped(verb.Description ?? "", Columns.Width)) text.AppendLine(line);
        string words = string.Concat(verb.Arguments.Select(a => " " + ArgumentWord(a)));
        text.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"Use:  alumroot {verb.Name}{words}{(verb.Options.Count > 0 ? " [OPTIONS]" : "")}").AppendLine();
        foreach (Argument argument in verb.Arguments)
            text.AppendLine(Columns.Beside("  " + ArgumentWord(argument), argument.Description ?? "", LabelWidth));
        foreach (Option option in verb.Options)
        {
            string value = option.ValueType == typeof(bool) ? "" : " " + (option.HelpName ?? "VALUE");
            text.AppendLine(Columns.Beside("  " + option.Name + value, option.Description ?? "", LabelWidth));
        }
        text.AppendLine(Columns.Beside("  --help", "this text", LabelWidth)).AppendLine();
        Examples(text, verb.Examples);
        return text.ToString();
    }

    private static string ArgumentWord(Argument argument) =>
        (argument.HelpName ?? argument.Name.ToUpperInvariant()) + (argument.Arity.MaximumNumberOfValues > 1 ? "..." : "");

    private static void Examples(StringBuilder text, IReadOnlyList<string> examples)
    {
        text.AppendLine("Examples");
        foreach (string example in examples) text.Append("  ").AppendJoin(" \\\n      ", Columns.Wrapped(example, Columns.Width - 8)).AppendLine();
        text.AppendLine();
    }
}
