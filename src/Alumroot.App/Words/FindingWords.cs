using System.Globalization;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>One or two sentences for each finding of a plan: what happens, what it means, what to do.</summary>
public static class FindingWords
{
    /// <summary>Keys of all findings that have words; a test holds them against the ones a plan can make.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [
        "vessel-too-small", "stated-ph-quarrels", "alkali-too-much", "alkali-too-little", "metal-stays-dissolved", "lake-dissolves-again", "no-carbonate-no-gas",
        "ph-climbs-as-gas-leaves", "froth-comes-late", "froth", "scale-too-coarse", "steep-end", "two-solids", "first-ph-reads-low", "hot-bath", "hot-and-alkaline",
        "solid-without-enthalpy", "gel-holds-carbonate", "strong-solution", "small-batch", "ammonia-vapour", "wash-aim-not-reached", "two-solids-untold", "span-is-cut",
        "aim-keeps-metal-dissolved", "aim-from-other-order", "little-salt", "little-water", "near-freezing", "hard-wash-water", "coarse-strips",
    ];

    /// <summary>The sentences of a finding.</summary>
    /// <exception cref="ArgumentException">There are no words for it.</exception>
    public static string Of(Finding finding, LakePlan plan)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(plan);
        string salt = plan.Salts[0].Substance.PlainName, alkali = plan.Input.Alkali.PlainName, unit = plan.Input.Alkali.Unit == SubstanceUnit.Gram ? "g" : "mL";
        string V(string name, string? format = null) => finding.Values[name].ToString(format ?? (name is "held" or "gone" || name.StartsWith("ph", StringComparison.Ordinal) ? "0.0" : "0.#"), CultureInfo.InvariantCulture);
        string Whole(string name) => PlanNumbers.VesselLitres(finding.Values[name]).ToString(CultureInfo.InvariantCulture);   // As large as the vessel that the plan asks for.
        return finding.Key switch
        {
            "vessel-too-small" => $"{V("liquid_l")} L of liquid can froth up to about {Whole("least_l")} L; this vessel holds {V("vessel_l")} L. Use a larger one, or make it in {V("parts", "0")} parts.",
            "stated-ph-quarrels" => $"{V("alkali")} {unit} of {alkali} ends at pH {QuantityText.OfPh(plan.EndPh)} by the weights, and pH {V("stated_ph")} is stated. One of the two weights, the name on a packet or the reading is wrong: check which soda and which salt it is, then read the pH of the clear liquid with a fresh strip.",
            "alkali-too-much" => $"This is {V("ratio", "0.0")} times the {alkali} that brings all the metal down ({V("alkali_needed")} {unit}); the bath ends near pH {V("ph")}. Stop by the pH, or check whether the rule was made for another salt.",
            "alkali-too-little" => $"This is {V("ratio", "0.00")} of the {alkali} that brings all the metal down ({V("alkali_needed")} {unit}); about {V("dissolved_percent", "0")} % of the metal stays in the liquid. Add more by the pH, or throw less salt in.",
            "metal-stays-dissolved" => $"About {V("percent")} % of the metal (up to {V("percent_high", "0")} %) stays in the liquid at this pH. A little more {alkali} brings it down.",
            "lake-dissolves-again" => $"If the bath climbs to pH {V("ph")}, up to {V("percent", "0")} % of the metal dissolves again and takes colour with it. Stop at pH 7; if it is past that, a little {salt} solution brings it back.",
            "no-carbonate-no-gas" => $"{Capital(alkali)} holds no carbonate: nothing froths, and the pH turns at once. Look at the strip, not at the bubbles.",
            "ph-climbs-as-gas-leaves" => $"While gas is held in the bath reads about pH {V("held")}; when it has gone to the air the same bath reads about {V("gone")}. Wait until the froth is down and stir before you read.",
            "froth-comes-late" => $"A cold, thin bath keeps its gas and may not fizz at all at first, then froth at once when stirred or warmed. Leave room for all {V("gas_l")} L from the start.",
            "froth" => $"This sets free about {V("gas_l")} L of gas. Leave room for {Whole("least_l")} L in the vessel, add by portions, open a window; if anyone feels faint, fresh air and medical help first.",
            "scale-too-coarse" => $"Near the aim {V("per_tenth_g", "0.00")} g of {alkali} moves the pH by 0.1, less than the {V("scale_g", "0.##")} g that the scale shows. Add the last portions as a measured part of the solution.",
            "steep-end" => $"The end is steep: {V("per_half", "0.0#")} {unit} moves the pH by half a unit. Add the last portions as solution, a spoonful at a time.",
            "two-solids" => "Two kinds of solid may come down, plain hydroxide or a basic salt with sulfate or carbonate in it; they take different amounts of alkali. The reading at half the alkali tells which.",
            "first-ph-reads-low" => $"The first reading of an alum bath is often 0.3 to 0.8 below what is reckoned (here {V("ph_low")} to {V("ph_high")}). It moves the amounts by about one in a hundred and is no cause for alarm.",
            "hot-bath" => $"Above 45 °C the constants of the fresh solids are reckoned from heats measured near 25 °C. Trust the strip more than the path at {V("celsius", "0")} °C.",
            "hot-and-alkaline" => $"In a hot bath the lake begins to dissolve again from about pH 7.5; this one may reach {V("ph")}. Stop earlier, or let it cool before the last portions.",
            "solid-without-enthalpy" => "For one of the solids no heat of reaction is known, so its part of the path away from 25 °C is weakly founded; the span allows for that.",
            "gel-holds-carbonate" => "With the alkali in first the gel keeps some carbonate, which is not reckoned: less gas comes off than said, and the dry lake may fizz with acid.",
            "strong-solution" => $"The bath is strong (ionic strength {V("ionic_strength", "0.0")} mol/kg), beyond where the activity model is well tested. Take the path as a guide and the strip as the measure.",
            "small-batch" => $"With {V("dry_g")} g of dyestuff most of the lake can stay on the paper: 4 g of root once gave 0.03 g. Take 20 g or more, or filter on a small smooth disc.",
            "ammonia-vapour" => "Ammonia comes off this bath. It burns eyes and lungs: work outdoors or under a hood, and never near bleach.",
            "wash-aim-not-reached" => $"The washing water itself conducts about {V("water_us", "0")} µS/cm, so {V("aim_us", "0")} cannot be reached with it. Wash the last times with pure water, or set a higher aim.",
            "two-solids-untold" => "Two kinds of solid may come down, plain hydroxide or a basic salt; in this bath no reading on the way tells them apart, so the span covers both.",
            "span-is-cut" => $"In about {V("percent", "0")} % of the cases reckoned the aim is there from the start or is not reached with far more alkali; the ends of the span are cut there. Go by the strip.",
            "aim-keeps-metal-dissolved" => $"At this aim about {V("percent", "0")} % of the metal stays in the liquid, so little lake comes down. Aim between pH 5.5 and 7.5 for aluminium, or choose all metal down.",
            "aim-from-other-order" => "The amount was reckoned for alkali last. With the alkali in first the end is nearly the same, but more gas may be left in the bath; read the strip before the last of the salt.",
            "little-salt" => $"{V("salt_g", "0.##")} g of {salt} for {V("dry_g", "0.#")} g of plant is very little metal: most of the colour will stay in the liquid. A gram of salt for two of plant is usual.",
            "little-water" => $"{V("water_ml", "0")} mL of water hardly covers {V("dry_g", "0.#")} g of dry plant, so the figures mean little. Take ten times the plant's weight or more.",
            "near-freezing" => $"At {V("celsius", "0")} °C the bath is about to freeze and dissolves little. Work at 10 °C or above.",
            "coarse-strips" => $"With strips in steps of {V("step", "0.##")} three of four simulated batches ended within 0.3 of the aim; with steps of 0.2 or a meter nine of ten did. Take finer strips for the last portions.",
            "hard-wash-water" => $"Water of {V("degrees", "0")} °dH brings more salt than it takes away at the end. Wash the last times with rain or distilled water.",
            _ => throw new ArgumentException($"there are no words for the finding {finding.Key}", nameof(finding)),
        };
    }

    private static string Capital(string s) => char.ToUpperInvariant(s[0]) + s[1..];
}
