using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Words;

/// <summary>How an alkali is brought into water: poured, stirred in, made to a milk, or sprinkled into cold water because it is caustic.</summary>
public static class AlkaliHandling
{
    /// <summary>Grams for 100 g of water below which an alkali is used as a milk and not dissolved (our own limit; slaked lime 0.17, soda ash 21 at 20 °C).</summary>
    public const double LeastSolubleGramsPer100g = 2;

    /// <summary>Whether it hardly dissolves.</summary>
    public static bool IsMilk(Reagent? reagent) => reagent is not null
        && (reagent.SolubilityKind == SolubilityKind.PracticallyInsoluble || (reagent.SolubilityGramsPer100GramsWater(20) ?? reagent.SolubilityGramsPer100GramsWater(25)) < LeastSolubleGramsPer100g);

    /// <summary>One sentence for the step.</summary>
    /// <param name="alkali">The alkali.</param>
    /// <param name="water">How much water, in words.</param>
    public static string Sentence(Substance alkali, string water)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        if (alkali.Unit == SubstanceUnit.Millilitre) return "It is poured as it is.";
        Reagent? reagent = CatalogueData.Embedded.FindReagent(alkali.Key);
        string dressed = IsCaustic(reagent) ? "Goggles and gloves on, " : "";
        string step = IsMilk(reagent) ? $"stir it with {water} of cold water to a thin milk, and keep it stirred."
            : IsCaustic(reagent) ? $"sprinkle it into {water} of cold water, never water onto it."
            : $"stir it into {water} of warm water.";
        return dressed.Length > 0 ? dressed + step : char.ToUpperInvariant(step[0]) + step[1..];
    }

    /// <summary>The water in a word or two, for the sheet.</summary>
    /// <param name="alkali">The alkali.</param>
    /// <param name="water">How much water, in words.</param>
    public static string Short(Substance alkali, string water)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        if (alkali.Unit == SubstanceUnit.Millilitre) return "as it is";
        Reagent? reagent = CatalogueData.Embedded.FindReagent(alkali.Key);
        return IsMilk(reagent) ? $"as a milk, {water} water" : IsCaustic(reagent) ? $"into {water} cold water" : $"{water} water";
    }

    /// <summary>What to wait for after a portion: the froth, or only the stirring.</summary>
    public static string Wait(Substance alkali)
    {
        ArgumentNullException.ThrowIfNull(alkali);
        return alkali.CarbonDioxideMolPerUnit > 0 ? "wait until the froth is down, stir, and read the pH" : "stir for a minute and read the pH; nothing froths";
    }

    private static bool IsCaustic(Reagent? reagent) => reagent?.CautionKeys.Contains("caustic") == true;
}
