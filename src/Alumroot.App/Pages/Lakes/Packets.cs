using Alumroot.App.Parts;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Catalogue;

namespace Alumroot.App.Pages.Lakes;

/// <summary>The packets most often found in a studio, as the answers of the first two questions.</summary>
public static class Packets
{
    /// <summary>What is sent when the packet says only "alum".</summary>
    public const string AlumAlone = "alum";

    /// <summary>What is sent when the packet says only "soda".</summary>
    public const string SodaAlone = "soda";

    /// <summary>The key of soda baked at home.</summary>
    public const string HomeBaked = "home-baked-soda";

    /// <summary>Keys of alkalis that are poured, whose strength must be known.</summary>
    public static IReadOnlyList<string> ByStrength { get; } = ["ammonia", "wood-ash-lye"];

    /// <summary>Salts, the usual one first.</summary>
    public static IReadOnlyList<Choice> Salts { get; } =
    [
        Of("potash-alum", "potassium alum, kali alum, E522"),
        Of("ammonium-alum", "ammonia alum, E523"),
        Of("aluminium-sulfate", "dull white lumps or powder, E520"),
        new Choice(AlumAlone, "It says only \"alum\", or I am not sure", Note: "there is a test for it"),
    ];

    /// <summary>Alkalis, the usual one first.</summary>
    public static IReadOnlyList<Choice> Alkalis { get; } =
    [
        Of("soda-ash", "dry fine powder, sodium carbonate without water"),
        Of("soda-crystals", "washing soda in clear lumps"),
        Of("baking-soda", "bicarbonate, as it comes from the kitchen"),
        Of(HomeBaked, "baking soda from the oven, weighed before and after"),
        Of("potash", "potassium carbonate"),
        Of("ammonia", "poured, by its strength"),
        Of("wood-ash-lye", "poured, by its measured strength"),
        new Choice(SodaAlone, "It says only \"soda\", or I am not sure", Note: "there is a test for it"),
    ];

    /// <summary>The answer that a typed name stands for: a packet of the list, <see cref="PacketField.Another"/> for any other text, null for nothing.</summary>
    public static string? ChoiceOf(PlanRequest request, string field, IReadOnlyList<Choice> choices)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(choices);
        if (request[field] is not { } typed) return null;
        if (choices.FirstOrDefault(c => string.Equals(c.Value, typed, StringComparison.OrdinalIgnoreCase)) is { } same) return same.Value;
        return CatalogueData.Embedded.ReagentsNamed(typed) is [var only] && choices.Any(c => c.Value == only.Key) ? only.Key : PacketField.Another;
    }

    private static Choice Of(string key, string note)
    {
        Reagent reagent = CatalogueData.Embedded.FindReagent(key) ?? throw new InvalidOperationException($"the catalogue has no {key}");
        return new Choice(key, CatalogueWords.Printed(reagent.Name), reagent.Formula.Length > 0 ? FormulaWords.Printed(reagent.Formula) : null, note);
    }
}
