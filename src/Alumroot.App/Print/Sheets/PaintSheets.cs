using System.Globalization;
using Alumroot.App.Paints;
using Alumroot.App.Words;
using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Print.Sheets;

/// <summary>The sheets of a paint.</summary>
internal static class PaintSheets
{
    /// <summary>The recipe on a card, with blanks for what was weighed.</summary>
    public static PrintSheet Card(PaintAnswer answer)
    {
        PaintRecipe recipe = answer.Recipe;
        return new PrintSheet(SheetWords.RecipeCard(answer.Pigment, recipe.Ask.Medium.Name),
        [
            new PrintBlock.Words(PaintWords.Sentence(answer), PrintTone.Lead),
            .. PaintWords.Cake(recipe) is { } cake ? (PrintBlock[])[new PrintBlock.Words(cake)] : [],
            new PrintBlock.Grid(SheetWords.InOrderOfUse, SheetWords.RecipeHeads, [4, 2, 4, 2, 3], [.. recipe.Parts.Select((p, i) => (IReadOnlyList<string>)[i == 0 ? answer.Pigment : p.Name, PaintFigures.Of(p.Grams.Value), PaintFigures.Span(p.Grams) ?? "as weighed", PaintFigures.Of(p.Millilitres.Value), ""])]),
            new PrintBlock.Words(KeepingWords.Loss(answer)),
            .. answer.Dose is { } dose ? (PrintBlock[])[new PrintBlock.Words($"Preservative: {KeepingWords.Take(dose)} {KeepingWords.Works(dose)}")] : [],
            new PrintBlock.Items(PaintWords.Work(recipe.Ask.Medium), Numbered: true),
            new PrintBlock.Words($"{SheetWords.Expected(answer)} Keeps, assumed: {KeepingWords.Keeps(recipe.Ask.Medium, answer.Dose)}."),
            .. answer.Suits is { } suits ? suits.Reasons.Where(r => r.Rating != SuitRating.Works).Select(r => new PrintBlock.Mind(SuitWords.Of(r, suits))) : [],
            .. PaintWords.Mind(recipe.Ask.Medium).Select(c => new PrintBlock.Mind(c)),
            .. answer.Assumptions.Select(a => new PrintBlock.Words(a, PrintTone.Small)),
        ]);
    }

    /// <summary>A paint as it was made.</summary>
    public static PrintSheet Made(PaintState paint, PaintMade made)
    {
        var medium = Medium.Find(made.Medium);
        return new PrintSheet($"{paint.Key} {made.Title}",
        [
            new PrintBlock.Words($"{PaintWords.Opening(made.Medium)}{(made.Lakes.Count > 0 ? $" of {string.Join(", ", made.Lakes.Select(l => l.Lake))}" : "")}, {TimeWords.Day(paint.At)}.", PrintTone.Lead),
            new PrintBlock.Grid(SheetWords.WentIn, SheetWords.WentInHeads, [4, 3], [.. made.Parts.Select(p => (IReadOnlyList<string>)[p.Name, made.Uses.FirstOrDefault(u => u.Amount.Name == p.Name) is { } use ? $"{p.Typed} of {use.Lot}" : p.Typed])]),
            .. made.Filled.Select(f => new PrintBlock.Words($"Filled {PaintFill.Counted(f.Count.ToString(CultureInfo.InvariantCulture), f.What)}{(f.Where is { } where ? $", in {where}" : "")}.")),
            .. made.Preservative is { } kept ? (PrintBlock[])[new PrintBlock.Words(LabelWords.Preservative(made.PreservativeAmount is { } weighed ? $"{kept}, {weighed.Typed}" : kept))] : [],
            .. made.CameOff is { } off ? (PrintBlock[])[new PrintBlock.Words(KeepingWords.CameOff(made, off))] : [],
            .. medium is null ? (PrintBlock[])[] : [new PrintBlock.Items(PaintWords.Work(medium), Numbered: true), .. PaintWords.Mind(medium).Select(c => new PrintBlock.Mind(c))],
        ])
        { Code = paint.Key.ToString() };
    }

    /// <summary>A handout for a class: the recipe for one, what to bring for all, cautions.</summary>
    public static PrintSheet Handout(PaintAnswer answer, int people)
    {
        PaintRecipe recipe = answer.Recipe;
        return new PrintSheet(SheetWords.HandoutName(answer.Pigment, recipe.Ask.Medium.Name),
        [
            new PrintBlock.Words(SheetWords.HandoutLead(answer, people), PrintTone.Lead),
            new PrintBlock.Grid(SheetWords.InOrderOfUse, SheetWords.HandoutHeads(people), [4, 3, 3, 3], [.. recipe.Parts.Select((p, i) => (IReadOnlyList<string>)[i == 0 ? answer.Pigment : p.Name, $"{PaintFigures.Of(p.Grams.Value)} g", $"{PaintFigures.Of(p.Millilitres.Value)} mL", $"{PaintFigures.Of(people * p.Grams.Value)} g"])]),
            new PrintBlock.Words(KeepingWords.Loss(answer)),
            .. answer.Dose is { } dose ? (PrintBlock[])[new PrintBlock.Words($"Preservative for each: {KeepingWords.Take(dose)} {dose.What.Caution}")] : [],
            new PrintBlock.Heading(SheetWords.WorkHeading),
            new PrintBlock.Items(PaintWords.Work(recipe.Ask.Medium), Numbered: true),
            new PrintBlock.Heading(SheetWords.KitHeading),
            new PrintBlock.Grid(SheetWords.KitName(people), SheetWords.KitHeads, [5, 2, 2], [.. SheetWords.Kit(recipe.Ask.Medium, answer.Fill?.Name).Select(k => (IReadOnlyList<string>)[k.What, k.Each is { } each ? each.ToString("0.##", CultureInfo.InvariantCulture) : "shared", Math.Ceiling(k.Each is { } e ? e * people : Math.Max(1, people / k.PeopleToOne)).ToString("0", CultureInfo.InvariantCulture)])]),
            new PrintBlock.Heading(SheetWords.MindHeading),
            .. PaintWords.Mind(recipe.Ask.Medium).Select(c => new PrintBlock.Mind(c)),
            new PrintBlock.Mind(SheetWords.ClassCaution),
        ]);
    }
}
