using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Verbs.Lookup;
using Alumroot.Catalogue;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot lookup WORDS</c>: the handbook on the command line.</summary>
public static class LookupVerb
{
    /// <summary>The verb with its words and options.</summary>
    /// <param name="channels">Where it writes.</param>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var words = new Argument<string[]>("words")
        {
            HelpName = "WORDS",
            Arity = ArgumentArity.ZeroOrMore,
            Description = "a plant, a salt, a word from the packet, or what went wrong",
        };
        var json = new Option<bool>("--json") { Description = "one JSON document, units in the names" };
        var cases = new Option<string?>("--cases") { HelpName = "FILE.csv", Description = "instead of words: vapours and gases in a room, one case a line (columns id, kind, inputs)" };
        var verb = new Verb(
            "lookup",
            "Looks up dyestuffs, salts, hazards and troubles.",
            "alumroot lookup madder",
            "alumroot lookup alum --json",
            "alumroot lookup --cases room.csv");
        verb.Add(words);
        verb.Add(json);
        verb.Add(cases);
        words.Validators.Add(result =>
        {
            if (result.Tokens.FirstOrDefault(t => t.Value.StartsWith('-')) is { } stray)
                result.AddError($"'lookup' has no option '{stray.Value}'. 'alumroot lookup --help' lists what it knows.");
        });
        verb.SetAction(parsed => (parsed.GetValue(cases), parsed.GetRequiredValue(words)) switch
        {
            ({ } file, { Length: 0 }) => CaseFile.Answer(file, VapourCases.Of, channels),
            ({ }, _) => channels.End(ExitCode.InputWrong, "'lookup' takes either words or a file of cases, not both."),
            (null, { Length: 0 }) => channels.End(ExitCode.InputWrong, "'lookup' needs WORDS after it: a plant, a salt, a word from the packet, or what went wrong; or --cases FILE.csv."),
            (null, var typed) => Run(string.Join(' ', typed), parsed.GetValue(json), channels),
        });
        return verb;
    }

    private static int Run(string query, bool json, Channels channels)
    {
        CatalogueData data = CatalogueData.Embedded;
        LookupAnswer answer = LookupAnswer.To(query, data);
        if (json) channels.Data.WriteLine(Json.Text(answer));
        else Write(query, answer, data, channels);
        if (answer.Hits.Count > 0 || answer.Dyestuffs.Count > 0 || answer.Reagents.Count > 0) return ExitCode.Done;
        return channels.End(ExitCode.CannotBeMet, answer.Suggestions.Count > 0
            ? $"Nothing fits '{query}'. Words that are near: {string.Join(", ", answer.Suggestions)}."
            : $"Nothing fits '{query}'. Try one word of it, or another name.");
    }

    private static void Write(string query, LookupAnswer answer, CatalogueData data, Channels channels)
    {
        IReadOnlyList<Dyestuff> dyestuffs = data.DyestuffsNamed(query);
        IReadOnlyList<Reagent> reagents = data.ReagentsNamed(query);
        foreach (Dyestuff dyestuff in dyestuffs) channels.Data.WriteLine(LookupText.Of(dyestuff));
        foreach (Reagent reagent in reagents) channels.Data.WriteLine(LookupText.Of(reagent));
        if (reagents.Count > 1) channels.Messages.WriteLine($"'{query}' names {reagents.Count} things. The test in each tells which one is in your packet.");
        if (dyestuffs.Count + reagents.Count == 0) channels.Data.Write(LookupText.Of(answer.Hits));
    }
}
