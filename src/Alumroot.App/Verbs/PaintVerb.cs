using System.CommandLine;
using Alumroot.App.Output;
using Alumroot.App.Paints;
using Alumroot.App.Requests;
using Alumroot.App.Verbs.Paint;
using Alumroot.Paint.Recipes;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot paint ...</c>: a paint recipe for a medium.</summary>
public static class PaintVerb
{
    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var pigment = new Option<string?>("--pigment") { HelpName = "NAME", Description = "what you call it" };
        var grams = new Option<string?>("--grams") { HelpName = "G", Description = "dry pigment in hand, grams" };
        var oil = new Option<string?>("--oil-absorption") { HelpName = "OA", Description = "grams of linseed oil for 100 g, by the spatula; 60 (40 to 110) when left out" };
        var density = new Option<string?>("--density") { HelpName = "D", Description = "grams per millilitre; 2.1 (1.7 to 2.4) when left out" };
        var medium = new Option<string?>("--medium") { HelpName = "MEDIUM", Description = string.Join(", ", Medium.All.Select(m => m.Key)) };
        var fill = new Option<string?>("--fill") { HelpName = "WHAT", Description = PaintFill.Words };
        var count = new Option<string?>("--count") { HelpName = "N", Description = "so many of them, instead of --grams" };
        var cost = new Option<string?>("--cost") { HelpName = "MONEY", Description = "what the pigment cost in all" };
        var honey = new Option<bool>("--no-honey") { Description = "watercolour without honey, for a damp climate" };
        var colour = new Option<string?>("--colour") { HelpName = "NAME", Description = "a dyestuff or kind of colour: says how the medium bears it" };
        var cake = new Option<string?>("--cake-water") { HelpName = "%", Description = "--grams are wet cake with so much water" };
        var loss = new Option<string?>("--loss") { HelpName = "%", Description = "what stays on slab and muller; 5 (2 to 12) when left out" };
        var preservative = new Option<string?>("--preservative") { HelpName = "NAME", Description = $"{string.Join(", ", Alumroot.Paint.Keeping.Preservative.All.Select(p => p.Key))}, none; the first that works when left out" };
        var strip = new Option<string?>("--paste-ph") { HelpName = "PH", Description = "the paste's pH by a strip; what films of the medium have when left out" };
        Option<string?>[] tints = [.. TintReading.Fields.Select(f => new Option<string?>($"--{f}") { HelpName = f is TintReading.TintShare ? "%" : f is TintReading.Coverage ? "G" : "LAB", Description = $"for the tints of pastel: {PaintFields.Label(f).ToLowerInvariant()}" })];
        var cases = new Option<string?>("--cases") { HelpName = "FILE.csv", Description = "instead of a recipe: the arithmetic of paint, one case a line (columns id, kind, inputs)" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var verb = new Verb(
            "paint",
            "Reckons a paint recipe, and the pans it fills.",
            "alumroot paint --pigment \"madder lake\" --grams 20 --oil-absorption 65 --density 2.2 --medium watercolour --fill half-pan",
            "alumroot paint --medium oil --fill tube-15ml --count 4 --json",
            "alumroot paint --cases paints.csv");
        foreach (Option option in (Option[])[pigment, grams, oil, density, medium, fill, count, cost, honey, colour, cake, loss, preservative, strip, .. tints, cases, json]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(cases) is { } file) return CaseFile.Answer(file, PaintCases.Of, channels);
            Option<string?>[] texts = [pigment, grams, oil, density, medium, fill, count, cost, colour, cake, loss, preservative, strip, .. tints];
            var request = new PaintRequest(
                field => field == PaintRequest.NoHoney ? (parsed.GetValue(honey) ? "yes" : null) : texts.FirstOrDefault(o => o.Name == Option(field)) is { } option ? parsed.GetValue(option) : null,
                Option);
            if (request.Refusal is { } refusal) return channels.End(ExitCode.CannotBeMet, refusal);
            if (request.Answer is not { } answer) return channels.End(ExitCode.InputWrong, request.Troubles[0].Sentence);
            if (parsed.GetValue(json)) PaintOutput.WriteJson(answer, channels.Data);
            else PaintOutput.WriteText(answer, channels.Data);
            return ExitCode.Done;
        });
        return verb;
    }

    private static string Option(string field) => $"--{field}";
}
