using System.Globalization;
using Alumroot.App.Paints;
using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;

namespace Alumroot.App.Words;

/// <summary>What a paint recipe says beside its figures. Orders of work and keeping are common practice, no source, where nothing else is said.</summary>
public static class PaintWords
{
    private static readonly (string Word, string What)[] Refused =
    [
        ("lead", "lead"), ("chrom", "chromates"), ("orpiment", "arsenic"), ("realgar", "arsenic"), ("arsen", "arsenic"), ("scheele", "arsenic"), ("emerald green", "arsenic"), ("paris green", "arsenic"), ("vermilion", "mercury"), ("cinnabar", "mercury"), ("mercur", "mercury"),
    ];

    /// <summary>Why a pigment is not made into paint here; null when it is.</summary>
    public static string? Refusal(string pigment)
    {
        ArgumentNullException.ThrowIfNull(pigment);
        return Refused.FirstOrDefault(r => pigment.Contains(r.Word, StringComparison.OrdinalIgnoreCase)) is { What: { } what }
            ? $"'{pigment}' holds {what}: its dust poisons, and it is not for a home bench. No recipe is given. Ask a licensed professional how to hand it in." : null;
    }

    /// <summary>What was taken for granted of a pigment.</summary>
    /// <param name="oil">Whether its oil absorption was.</param>
    /// <param name="density">Whether its density was.</param>
    public static IReadOnlyList<string> Assumed(bool oil, bool density)
    {
        var said = new List<string>();
        if (oil) said.Add("Oil absorption is taken as 60 g for 100 g, 40 to 110: hardly any are published for natural lakes. Measure it with linseed oil and a spatula, and the spans shrink.");
        if (density) said.Add("Density is taken as 2.1 g/ml, 1.7 to 2.4. A small flask and alcohol tell it.");
        return said;
    }

    /// <summary>The question in a sentence.</summary>
    public static string Sentence(PaintAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        string filled = answer is { Fill: { } fill, Filled: { } n } ? $", for {PaintFill.Counted(PaintFigures.Of(n), fill.Name)}" : "";
        return $"{PaintFigures.Of(answer.Recipe.Ask.PigmentGrams)} g of {answer.Pigment} in {answer.Recipe.Ask.Medium.Name}{filled}.";
    }

    /// <summary>A medium's name at the beginning of a sentence.</summary>
    public static string Opening(string medium) => Medium.Find(medium)?.Name is { Length: > 0 } name ? $"{char.ToUpperInvariant(name[0])}{name[1..]}" : medium;

    /// <summary>A rating in a word.</summary>
    public static string Of(SuitRating rating) => rating switch { SuitRating.Works => "works", SuitRating.Caution => "with care", _ => "avoid" };

    /// <summary>What happens to the water of a wet cake; null when the pigment is dry.</summary>
    public static string? Cake(PaintRecipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        if (recipe.Ask.CakeWaterFraction <= 0) return null;
        string weigh = string.Create(CultureInfo.InvariantCulture, $"Weigh {recipe.Ask.CakeGrams:0.0} g of the wet cake: it holds {recipe.Ask.PigmentGrams:0.0} g of pigment and {recipe.Ask.CakeGrams - recipe.Ask.PigmentGrams:0.0} g of water.");
        if (recipe.WaterToLeaveGrams < 0.05) return $"{weigh} Its water counts in the recipe: stir the gum or the egg into the paste as it is.";
        string leaves = string.Create(CultureInfo.InvariantCulture, $"{recipe.WaterToLeaveGrams:0.0} g");
        return recipe.Ask.Medium.Key switch
        {
            "oil" => $"{weigh} Flush it: knead the pressed cake with the oil a little at a time; the pigment goes over into the oil and the water stands clear. Pour it off, about {leaves} in all, knead on until no more comes, and warm the paste gently to lose the rest. Lakes that the oil does not wet will not flush; dry those.",
            "alkyd" or "encaustic" => $"{weigh} Its water, {leaves}, spoils this medium: dry the cake first, or flush it into oil.",
            _ => $"{weigh} {leaves} of its water is more than the paint takes: press or dry the cake until so much has gone.",
        };
    }

    /// <summary>The order of work.</summary>
    public static IReadOnlyList<string> Work(Medium medium) => medium?.Key switch
    {
        "watercolour" or "gouache" => ["Soak the gum overnight in the water, warm, strain, stir in glycerine and honey and the preservative.", "Wet the pigment on the slab with a little of it, then mull with the rest until the paste no longer hisses.", "Paint a stroke and let it dry: it rubs off, more gum; it shines or cracks, less; it stays sticky, less glycerine.", "Fill pans in layers of a third, a day or more apart."],
        "egg-tempera" => ["Mull the pigment with the water to a paste; it keeps under water for months.", "Take the yolk out of its skin, stir with a spoon of water.", "Mix yolk and paste on the palette, small amounts, thinned with water. Chalky when dry: more yolk; greasy: more water."],
        "glair" => ["Beat the white to a stiff foam, let it stand overnight, pour off the liquid.", "Mull the pigment with it, a little at a time."],
        "casein" => ["Stir the casein into two thirds of the water, let it swell, add the borax in the rest, warm to 60 °C and stir until clear.", "Mull the pigment with water to a paste, then with the cooled solution."],
        "soft-pastel" => ["Wet the gum with a little alcohol, add the water, let it swell a night, strain.", "Make a test row first: the solution as it is, let down with two parts of water, and again; roll a pea of each, dry it, mark paper. Dust: stronger; scratches or shines: weaker.", "Knead the powder with the solution to a dough, roll sticks, dry slowly."],
        "alkyd" => ["Mull the pigment with the medium, in the open air or at an open window.", "Fill at once; a skin forms within the hour."],
        "ink" => ["Grind and sieve the pigment to below 5 micrometres, or it settles.", "Dissolve the gum in the water, mull the pigment with a little, then let down."],
        "encaustic" => ["Melt the wax on a water bath or a plate that holds 95 °C, never over a flame, never above 120 °C.", "Stir in the damar, strain, stir in the pigment, pour into moulds."],
        _ => ["Put the pigment on the slab with two thirds of the oil, work it in with a knife, then mull small heaps.", "Add oil by drops until the paste stands in short peaks; write down what it took.", "Lakes dry slowly in oil: thin layers, fat over lean."],
    };

    /// <summary>What to mind.</summary>
    public static IReadOnlyList<string> Mind(Medium medium)
    {
        ArgumentNullException.ThrowIfNull(medium);
        var said = new List<string> { "Wear a dust mask while pigment is dry, wet it before mulling, and keep slab and spoons apart from the kitchen's." };
        if (medium.Preservative == "needed") said.Add("Gum spoils within days: a preservative that works at its pH, such as 0.2 % potassium sorbate below pH 6 or 0.8 % phenoxyethanol at any. Its data sheet comes first.");
        if (medium.Key is "glair" or "casein") said.Add("The medium is alkaline: colours that turn with pH turn in it. Try a drop first.");
        if (medium.Key == "gouache") said.Add("Chalk is alkaline and fizzes with acids: not with colours that need an acid ground.");
        if (medium.Key == "casein") said.Add("Borax harms the unborn at and above 0.3 % by European law; gloves, and nothing for food. Check local codes.");
        if (medium.Key is "oil" or "alkyd") said.Add("Rags with drying oil can catch fire by themselves: spread them flat outdoors or keep them under water in a metal can.");
        if (medium.Key == "alkyd") said.Add("The solvent's vapour burns and harms: no flame, open windows; 'alumroot lookup' and the handbook reckon the room.");
        if (medium.Key == "encaustic") said.Add("Hot wax burns and its fumes harm: a thermostat, air, no flame.");
        said.Add("Paint for sale must be labelled by the local law (EU CLP, ASTM D4236 in the United States); ask someone licensed to judge it.");
        return said;
    }

    /// <summary>What kind of film it makes.</summary>
    public static string Film(PaintRecipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return (recipe.VolumeFraction.Value / recipe.CriticalFraction.Value) switch
        {
            < 0.5 => "much binder: glossy, transparent, a glaze",
            < 0.9 => "binder to spare: a closed film with some gloss",
            <= 1.1 => "binder just fills the gaps: satin, at the edge of stiff",
            <= 2 => "less binder than gaps: matt, paler, rubs more easily",
            _ => "hardly any binder: dusty by intention",
        };
    }
}
