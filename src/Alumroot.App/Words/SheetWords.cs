using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Paints;
using Alumroot.Paint.Recipes;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>A thing that a class needs.</summary>
/// <param name="What">The thing.</param>
/// <param name="Each">How many each person has; null when it is shared.</param>
/// <param name="PeopleToOne">How many people share one.</param>
public sealed record KitItem(string What, double? Each, double PeopleToOne = 4);

/// <summary>The words of printed sheets. Kit lists are common practice, no source.</summary>
public static class SheetWords
{
    /// <summary>Headings and names of tables.</summary>
    public const string PlannedActual = "Planned and actual; spans hold nine times in ten", Kept = "Kept", InOrderOfUse = "In order of use; spans hold nine times in ten", Portions = "Portions", Washes = "Washes",
        Reckoned = "All figures reckoned unless measured. How each was reckoned stands in the handbook.", SwatchBoxes = "Paint these, let them dry, then look", SwatchNotes = "Beside them",
        WentIn = "What went in, as weighed", WorkHeading = "Work", KitHeading = "What to bring", MindHeading = "Mind",
        ColourCardHow = "Left in each box the colour as it was read, right an empty half for the real one: paint or rub it there and let it dry. Printed colour is not the record.",
        ColourCardNumbers = "Numbers are CIELAB in D50 for 2 degrees; within means that nine times in ten the truth is no farther, in CIEDE2000.",
        SwatchHow = "Masstone thick enough to hide the line, wash thinned until paper shows, tints by weight with one white. Cover the right half of one strip and put it in a window.",
        ClassCaution = "Eating and drinking elsewhere; hands washed at the end; children only with a grown person beside them. Whoever runs the class answers for it by local rules: check local codes, ask a licensed professional.";

    /// <summary>The sheet of a trial.</summary>
    public const string TrialRow = "The row, in the order of making; spans hold nine times in ten", TrialReadings = "What came of it", TrialSwatches = "A swatch of each jar, dry", ReadHeading = "Read",
        JarHead = "jar", AmountHead = "goes in", DoneHead = "done", ColourHead = "colour", RemarkHead = "remark",
        TrialHow = "Keep to the order: it is by lot. Same liquor, same glass, same spoon for every jar; tick each when it is made.",
        TrialCaution = "Glasses and gloves for salts and alkalis; label every jar; nothing back into kitchen use. Rules of your place come first.";

    /// <summary>Columns of the tables.</summary>
    public static readonly IReadOnlyList<string> PlannedActualHeads = ["what", "planned", "actual"], AmountHeads = ["what", "plan", "span", "with", "actual"], PortionHeads = ["portion", "so far", "pH to expect", "read"],
        WashHeads = ["wash", "µS/cm at 25 °C", "read"], SwatchNoteHeads = ["about it", "to write"], RecipeHeads = ["part", "g", "span", "mL", "weighed"], WentInHeads = ["part", "measured"], KitHeads = ["thing", "each", "in all"];

    /// <summary>What stands below the boxes of a swatch card.</summary>
    public static readonly IReadOnlyList<string> SwatchCaptions = ["masstone", "thin wash", "glaze over a black line", "1 part to 1 of white", "1 part to 4 of white", "strip for the window, half covered"];

    /// <summary>What is written beside them.</summary>
    public static readonly IReadOnlyList<string> SwatchNoteRows = ["medium and binder", "paper or ground", "painted on", "to the window on", "covered half against open half"];

    /// <summary>Name of the batch sheet.</summary>
    public static string BatchSheet(BatchState state) => $"Batch sheet {state?.Key}";

    /// <summary>Name of the bench card.</summary>
    public static string BenchCard(BatchState state) => $"Bench card {state?.Key}";

    /// <summary>Name of a trial's sheet.</summary>
    public static string TrialSheet(TrialState trial) => $"Trial {trial?.Key}";

    /// <summary>The first words of a trial's sheet.</summary>
    public static string TrialLead(TrialState trial, Alumroot.Studio.Documents.TrialBegun begun) => $"{begun?.Title}: {KeptTrialWords.About(trial)}.";

    /// <summary>Name of the swatch card.</summary>
    public static string SwatchCard(BatchState state) => $"Swatch card {state?.Key}";

    /// <summary>Name of a card of colours.</summary>
    /// <param name="narrowed">What narrows them, or nothing.</param>
    public static string ColourCard(string narrowed) => string.IsNullOrEmpty(narrowed) ? "Colours of the studio" : $"Colours: {narrowed}";

    /// <summary>How many colours stand on the card.</summary>
    public static string ColourCardCount(int shown, int found) => shown == found ? $"{found} {(found == 1 ? "colour" : "colours")}" : $"The first {shown} of {found} colours";

    /// <summary>What stands below a colour on a card.</summary>
    public static IReadOnlyList<string> Patch(LakeColour colour)
    {
        ArgumentNullException.ThrowIfNull(colour);
        string vivid = colour.Screen.InGamut ? "" : "; more vivid than print or screen";
        return [$"{colour.Subject} {colour.Dyestuff}{(colour.Salt.Length > 0 ? $", {colour.Salt}" : "")}", SwatchWords.MadeOn(colour), $"{colour.Name}{vivid}", $"{SwatchWords.Numbers(colour.Lab)}; {SwatchWords.WithinShort(colour.Read.WithinDeltaE2000)}", TimeWords.Day(colour.At)];
    }

    /// <summary>Name of the card of a row at several pH.</summary>
    public static string LadderCard(string? dyestuff) => $"A pH ladder of {dyestuff?.ToLowerInvariant() ?? "plain water"}";

    /// <summary>Name of a recipe card.</summary>
    public static string RecipeCard(string pigment, string medium) => $"{CatalogueWords.AsHeading(pigment)}, {medium}";

    /// <summary>Name of a handout.</summary>
    public static string HandoutName(string pigment, string medium) => $"Making {medium} of {pigment}";

    /// <summary>How far a lake has come.</summary>
    public static string Stage(BatchState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return $"State: {StageWords.Of(state.Stage)}{(state.GivenUp is { } given ? $" ({given.Reason})" : "")}.";
    }

    /// <summary>What is expected of a paint, in a line.</summary>
    public static string Expected(PaintAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        PaintRecipe r = answer.Recipe;
        string filled = answer is { Fill: { } fill, Filled: { } n } ? $" Fills {PaintFigures.Of(n)} ({PaintFigures.Span(answer.FilledSpan!.Value)}) {fill.Name}{(answer.Pours > 1 ? $", each poured {answer.Pours} times" : "")}." : "";
        return $"Pigment {PaintFigures.Percent(r.VolumeFraction.Value)} % of the dry film by volume, critical {PaintFigures.Percent(r.CriticalFraction.Value)} %: {PaintWords.Film(r)}. Wet {PaintFigures.Of(r.WetMillilitres.Value)} mL, dry {PaintFigures.Of(r.DryMillilitres.Value)} mL.{filled} Touch dry: {r.Ask.Medium.TouchDry}. Through: {r.Ask.Medium.ThroughDry}.";
    }

    /// <summary>The first words of a handout.</summary>
    public static string HandoutLead(PaintAnswer answer, int people)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return $"For {people} people, each with {PaintFigures.Of(answer.Recipe.Ask.PigmentGrams)} g of {answer.Pigment}.";
    }

    /// <summary>Columns of a handout's recipe.</summary>
    public static IReadOnlyList<string> HandoutHeads(int people) => ["part", "each, weight", "each, volume", string.Create(CultureInfo.InvariantCulture, $"for {people}")];

    /// <summary>Name of the kit list.</summary>
    public static string KitName(int people) => string.Create(CultureInfo.InvariantCulture, $"Kit for {people}");

    /// <summary>What is needed to make a paint in a medium.</summary>
    public static IReadOnlyList<KitItem> Kit(Medium medium, string? fill)
    {
        ArgumentNullException.ThrowIfNull(medium);
        var kit = new List<KitItem> { new("dust mask", 1), new("apron, gloves", 1), new("scale to 0.1 g", null), new("rags or paper towels, several", 1) };
        if (medium.Key is not ("soft-pastel" or "encaustic")) kit.AddRange([new("slab of glass or stone with a sheet below", 1), new("muller", null, 2), new("palette knife", 1), new("card to try a stroke on", 2)]);
        if (medium.Key == "soft-pastel") kit.AddRange([new("bowl to knead in", 1), new("absorbent paper to dry on", 2)]);
        if (medium.Key == "encaustic") kit.AddRange([new("hot plate with a thermostat, below 120 °C", null), new("thermometer", null), new("tin to melt in", 1), new("fire blanket and a lid", null, 8)]);
        if (medium.Key is "oil" or "alkyd") kit.Add(new("metal can with water and a lid, for oily rags", null, 8));
        if (medium.Key == "egg-tempera") kit.Add(new("egg", 1));
        if (fill is not null) kit.Add(new($"empty {fill}", 2));
        kit.Add(new("label and pen", 2));
        return kit;
    }
}
