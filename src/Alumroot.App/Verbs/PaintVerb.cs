using System.CommandLine;
using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Verbs.Paint;
using Alumroot.App.Words;
using Alumroot.Paint.Recipes;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot paint ...</c>: a paint recipe for a medium.</summary>
public static class PaintVerb
{
    // Planning values for a natural alumina lake of which nothing was measured; the spans are wide because hardly any are published (docs/models/paint.md).
    private static readonly Estimate UsualOil = new(60, 40, 110), UsualDensity = new(2.1, 1.7, 2.4);

    // A rub-out repeats within a tenth, a small flask within a twentieth; from memory.
    private const double OilRepeats = 0.1, DensityRepeats = 0.05;

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var pigment = new Option<string>("--pigment") { HelpName = "NAME", DefaultValueFactory = _ => "lake pigment", Description = "what you call it" };
        var grams = new Option<string?>("--grams") { HelpName = "G", Description = "dry pigment in hand, grams" };
        var oil = new Option<string?>("--oil-absorption") { HelpName = "OA", Description = "grams of linseed oil for 100 g, by the spatula; 60 (40 to 110) when left out" };
        var density = new Option<string?>("--density") { HelpName = "D", Description = "grams per millilitre; 2.1 (1.7 to 2.4) when left out" };
        var medium = new Option<string?>("--medium") { HelpName = "MEDIUM", Description = string.Join(", ", Medium.All.Select(m => m.Key)) };
        var fill = new Option<string?>("--fill") { HelpName = "WHAT", Description = PaintFill.Words };
        var count = new Option<string?>("--count") { HelpName = "N", Description = "so many of them, instead of --grams" };
        var cost = new Option<string?>("--cost") { HelpName = "MONEY", Description = "what the pigment cost in all" };
        var honey = new Option<bool>("--no-honey") { Description = "watercolour without honey, for a damp climate" };
        var cases = new Option<string?>("--cases") { HelpName = "FILE.csv", Description = "instead of a recipe: the arithmetic of paint, one case a line (columns id, kind, inputs)" };
        var json = new Option<bool>("--json") { Description = "one JSON document instead of text" };
        var verb = new Verb(
            "paint",
            "Reckons a paint recipe, and the pans it fills.",
            "alumroot paint --pigment \"madder lake\" --grams 20 --oil-absorption 65 --density 2.2 --medium watercolour --fill half-pan",
            "alumroot paint --medium oil --fill tube-15ml --count 4 --json",
            "alumroot paint --cases paints.csv");
        foreach (Option option in (Option[])[pigment, grams, oil, density, medium, fill, count, cost, honey, cases, json]) verb.Add(option);
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(cases) is { } file) return CaseFile.Answer(file, PaintCases.Of, channels);
            string name = parsed.GetRequiredValue(pigment);
            if (PaintWords.Refusal(name) is { } refusal) return channels.End(ExitCode.CannotBeMet, refusal);
            if (parsed.GetValue(medium) is not { } typed) return channels.End(ExitCode.InputWrong, $"'--medium' is missing: {string.Join(", ", Medium.All.Select(m => m.Key))}.");
            if (Medium.Find(typed) is not { } found) return channels.End(ExitCode.InputWrong, $"There is no medium '{typed}'.{(Nearest.To(typed, Medium.All.Select(m => m.Key)) is { } near ? $" The nearest is '{near}'." : "")} There are {string.Join(", ", Medium.All.Select(m => m.Key))}.");
            var read = new PaintNumbers();
            double? g = read.Of("--grams", parsed.GetValue(grams), 1e6), n = read.Of("--count", parsed.GetValue(count), 1e5), oa = read.Of("--oil-absorption", parsed.GetValue(oil), 500), d = read.Of("--density", parsed.GetValue(density), 12), money = read.Of("--cost", parsed.GetValue(cost), 1e9);
            if (read.Mistake is { } mistake) return channels.End(ExitCode.InputWrong, mistake);
            PaintFill? into = null;
            if (parsed.GetValue(fill) is { } what && (into = PaintFill.Of(what)) is null) return channels.End(ExitCode.InputWrong, $"'--fill {what}' is not known. Write {PaintFill.Words}, such as tube-15ml.");
            if (g is null == n is null) return channels.End(ExitCode.InputWrong, "Give either the pigment in hand (--grams 20) or how many are to be filled (--fill half-pan --count 12).");
            if (n is not null && into is null) return channels.End(ExitCode.InputWrong, $"'--count' needs '--fill': {PaintFill.Words}.");
            var assumed = new List<string>();
            if (oa is null) assumed.Add("Oil absorption is taken as 60 g for 100 g, 40 to 110: hardly any are published for natural lakes. Measure it with linseed oil and a spatula, and the spans shrink.");
            if (d is null) assumed.Add("Density is taken as 2.1 g/ml, 1.7 to 2.4. A small flask and alcohol tell it.");
            var ask = new PaintAsk(found, g ?? 1, oa is { } o ? new Estimate(o, o * (1 - OilRepeats), o * (1 + OilRepeats)) : UsualOil, d is { } x ? new Estimate(x, x * (1 - DensityRepeats), x * (1 + DensityRepeats)) : UsualDensity, !parsed.GetValue(honey));
            PaintAnswer answer = Filled(name, ask, into, n, money, assumed);
            if (parsed.GetValue(json)) PaintOutput.WriteJson(answer, channels.Data);
            else PaintOutput.WriteText(answer, channels.Data);
            return ExitCode.Done;
        });
        return verb;
    }

    private static PaintAnswer Filled(string name, PaintAsk ask, PaintFill? fill, double? count, double? cost, IReadOnlyList<string> assumed)
    {
        PaintRecipe recipe = PaintRecipe.For(ask);
        if (fill is null) return new PaintAnswer(name, recipe, null, null, 1, cost, assumed);
        double shrinks = recipe.ShrinkageFraction;
        int pours = 1;
        while (fill.Refilled && 1 - Math.Pow(shrinks, pours) < 0.95 && pours < 60) pours++;
        double each = fill.Millilitres * (fill.Refilled ? (1 - Math.Pow(shrinks, pours)) / (1 - shrinks) : 1);
        // A stick is as large as it is dry.
        double has = fill.Name == "stick" ? recipe.DryMillilitres.Value : recipe.WetMillilitres.Value;
        if (count is not { } wanted) return new PaintAnswer(name, recipe, fill, has / each, pours, cost, assumed);
        return new PaintAnswer(name, PaintRecipe.For(ask with { PigmentGrams = ask.PigmentGrams * wanted * each / has }), fill, wanted, pours, cost, assumed);
    }

    /// <summary>Reads typed numbers and keeps the first mistake.</summary>
    private sealed class PaintNumbers
    {
        internal string? Mistake { get; private set; }

        internal double? Of(string option, string? typed, double most)
        {
            if (typed is null) return null;
            string text = typed.Trim();
            foreach (string unit in (string[])["g/ml", "g"])
                if (text.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) text = text[..^unit.Length].Trim();
            // 1,500 may be one and a half or fifteen hundred.
            if (text.Length > 4 && text[^4] == ',' && text.Count(c => c == ',') == 1 && !text.Contains('.', StringComparison.Ordinal) && text[0] != '0')
                Mistake ??= $"'{option} {typed}' can mean {text.Replace(',', '.')} or {text.Replace(",", "", StringComparison.Ordinal)}. Write it without the comma.";
            else if (double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double x) && x > 0 && x <= most) return x;
            Mistake ??= $"'{option} {typed}' is not a number above nothing{(most < 1e5 ? $" and at most {most.ToString(CultureInfo.InvariantCulture)}" : "")}.";
            return null;
        }
    }
}
