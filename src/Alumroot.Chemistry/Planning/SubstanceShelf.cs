using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Quantities;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Planning;

/// <summary>The salts and alkalis that a plan understands, and the ways to describe one more exactly: purity, hydrate, home-baked soda, ammonia and lye by strength.</summary>
public static class SubstanceShelf
{
    private const double BicarbonateGramsPerMole = 84.0066;
    private const double SodaGramsPerMole = 105.988;

    /// <summary>Part of its mass that pure baking soda loses when baked out: 1 - 105.988 / (2 x 84.0066), from the formula masses [prohaska_2022].</summary>
    public const double CompleteBakingLoss = 1 - SodaGramsPerMole / (2 * BicarbonateGramsPerMole);

    private static readonly Lazy<Dictionary<string, Substance>> Loaded = new(() => Read().ToDictionary(s => s.Key, StringComparer.Ordinal));

    /// <summary>All substances of the embedded table.</summary>
    public static IReadOnlyCollection<Substance> All => Loaded.Value.Values;

    /// <summary>The substance of this key, or null.</summary>
    public static Substance? Find(string key) => Loaded.Value.GetValueOrDefault(key);

    /// <summary>The same substance with a stated purity by mass; the rest counts as inert.</summary>
    public static Substance WithPurity(Substance substance, Fraction purity)
    {
        ArgumentNullException.ThrowIfNull(substance);
        return substance with
        {
            PerUnit = Scale(substance.PerUnit, purity.Ratio / substance.UsualPurityRatio),
            UsualPurityRatio = purity.Ratio,
            Strength = new Estimate(1, 0.985, 1.015),
            PlainName = string.Create(CultureInfo.InvariantCulture, $"{substance.PlainName} {purity.Percent:0.#} %"),
        };
    }

    /// <summary>The same salt or alkali with another number of hydrate waters for each formula unit.</summary>
    /// <exception cref="ArgumentException">The substance is a mixture or a solution, whose hydrate means nothing.</exception>
    public static Substance WithHydrate(Substance substance, double watersPerFormula)
    {
        ArgumentNullException.ThrowIfNull(substance);
        string[] parts = substance.Formula.Split('·');
        if (substance.Unit != SubstanceUnit.Gram) throw new ArgumentException("a solution has no hydrate", nameof(substance));
        double waterNow = parts.Length > 1 ? ChemicalFormula.Count(parts[1])["O"] : 0;
        double waterGrams = 18.015;
        double gramsNow = GramsPerFormula(substance);
        double gramsThen = gramsNow + (watersPerFormula - waterNow) * waterGrams;
        double perGram = gramsNow / gramsThen;
        Reaction delivers = Reaction.Of(substance.PerUnit.Delivers.Terms.Select(t => (t.Component, t.Coefficient * perGram))
            .Append((Component.Water, (watersPerFormula - waterNow) / gramsThen)));
        string formula = watersPerFormula == 0 ? parts[0] : string.Create(CultureInfo.InvariantCulture, $"{parts[0]}·{watersPerFormula:0.##}H2O");
        return substance with { PerUnit = substance.PerUnit with { Delivers = delivers, Formula = formula }, Formula = formula, Strength = new Estimate(1, 0.98, 1.02) };
    }

    /// <summary>Soda made by baking baking soda, from the part of its mass that it lost.</summary>
    /// <param name="loss">Mass lost over mass put in; pure bicarbonate loses <see cref="CompleteBakingLoss"/> when done.</param>
    /// <remarks>A loss above the complete one means the powder was damp or the scale was off; it counts as complete. One gram of powder always brings 1/(84.0066 (1 - loss)) mol of base.</remarks>
    public static Substance HomeBakedSoda(Fraction loss)
    {
        double converted = Math.Min(loss.Ratio / CompleteBakingLoss, 1);
        double left = 1 - converted * CompleteBakingLoss;
        double soda = converted / (2 * BicarbonateGramsPerMole) / left, bicarbonate = (1 - converted) / BicarbonateGramsPerMole / left;
        ConstantSet set = EmbeddedConstants.Set;
        Reaction delivers = Combine((set.FindReagent("sodium-carbonate")!, soda), (set.FindReagent("sodium-bicarbonate")!, bicarbonate));
        var reagent = new Reagent("home-baked-soda", "Na2CO3 and NaHCO3", 1, delivers);
        // Two weighings and moisture taken up while cooling: two parts in a hundred.
        return new Substance("home-baked-soda", SubstanceRole.Alkali, SubstanceUnit.Gram, "home-baked soda", "Na2CO3 + NaHCO3", reagent, new Estimate(1, 0.96, 1.02));
    }

    /// <summary>Ammonia solution by its strength.</summary>
    /// <param name="massFraction">Grams of NH3 in a gram of solution.</param>
    public static Substance Ammonia(Fraction massFraction)
    {
        // Density falls by about 0.0037 g/mL for each percent of NH3 (CRC Handbook table of ammonia solutions, from memory), good to 1 % below 30 %.
        double gramsPerMl = 0.998 - 0.37 * massFraction.Ratio;
        double molPerMl = massFraction.Ratio * gramsPerMl / 17.031;
        double waterPerMl = (1 - massFraction.Ratio) * gramsPerMl / 18.015;
        Reaction delivers = Reaction.Of(EmbeddedConstants.Set.FindReagent("ammonia")!.Delivers.Terms.Select(t => (t.Component, t.Coefficient * molPerMl)).Append((Component.Water, waterPerMl)));
        return new Substance("ammonia", SubstanceRole.Alkali, SubstanceUnit.Millilitre, string.Create(CultureInfo.InvariantCulture, $"ammonia {massFraction.Percent:0.#} %"), "NH3 in water",
            new Reagent("ammonia-solution", "NH3", 1, delivers), new Estimate(1, 0.8, 1.02))
        { GramsPerUnit = gramsPerMl };
    }

    /// <summary>Wood-ash lye by its measured alkalinity, taken as potash.</summary>
    public static Substance Lye(AlkalinityOfLye alkalinity)
    {
        double molPerMl = alkalinity.MolesPerLitre / 1000;
        Reaction delivers = Reaction.Of(EmbeddedConstants.Set.FindReagent("potassium-carbonate")!.Delivers.Terms.Select(t => (t.Component, t.Coefficient * molPerMl / 2)).Append((Component.Water, 1 / 18.015)));
        return new Substance("wood-ash-lye", SubstanceRole.Alkali, SubstanceUnit.Millilitre, "wood-ash lye", "K2CO3 in water", new Reagent("lye", "K2CO3", 1, delivers), new Estimate(1, 0.9, 1.1));
    }

    private static IEnumerable<Substance> Read()
    {
        ConstantSet set = EmbeddedConstants.Set;
        foreach (TableRow row in EmbeddedConstants.Table("substances.csv").Rows)
        {
            string[] part = row["parts"].Split('=');
            Reagent reagent = set.FindReagent(part[0]) ?? throw row.Wrong("parts", $"there is no reagent {part[0]}");
            double purity = double.Parse(part[1], CultureInfo.InvariantCulture), share = purity / reagent.GramsPerMole;
            yield return new Substance(row["key"], row["role"] == "salt" ? SubstanceRole.Salt : SubstanceRole.Alkali, SubstanceUnit.Gram, row["plain_name"], row["formula"],
                new Reagent(row["key"], reagent.Formula, 1, Combine((reagent, share))), new Estimate(1, row.Number("strength_low"), row.Number("strength_high")))
            { UsualPurityRatio = purity };
        }
    }

    private static double GramsPerFormula(Substance s)
    {
        // The embedded substances hold one reagent each; its moles per gram follow from any component it brings.
        ConstantSet set = EmbeddedConstants.Set;
        (string component, double perFormula) = set.Deliver(s.PerUnit.Formula).Terms.First(t => t.Component is not (Component.Water or Component.Proton));
        return perFormula / s.PerUnit.Delivers[component];
    }

    private static Reagent Scale(Reagent reagent, double factor) =>
        reagent with { Delivers = Reaction.Of(reagent.Delivers.Terms.Select(t => (t.Component, t.Coefficient * factor))) };

    private static Reaction Combine(params (Reagent Reagent, double Moles)[] parts) =>
        Reaction.Of(parts.SelectMany(p => p.Reagent.Delivers.Terms.Select(t => (t.Component, t.Coefficient * p.Moles))));
}
