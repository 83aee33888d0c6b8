using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>A plan read aloud as one sentence, each phrase with the field that it comes from.</summary>
public static class PlanSentence
{
    // Names that begin with the name of a place, a people or a person.
    private static readonly string[] ProperNames = ["Amur", "Aleppo", "Armenian", "Dragon's", "Himalayan", "Indian", "Lady's", "Osage", "Persian", "Polish", "St"];

    /// <summary>The pieces in reading order; empty when the request was not understood in full.</summary>
    public static IReadOnlyList<SentencePart> Of(PlanAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Input is not { } input) return [];
        TextStyle style = PlanNumbers.StyleOf(answer.Request);
        var parts = new List<SentencePart>();
        if (input.DryDyestuff is { } dry)
        {
            bool fresh = answer.Request[PlanFields.Dry] is null;
            parts.Add(new SentencePart($"{Said(dry, style)} dry {NounOf(answer.Dyestuff)}{(fresh ? " (from fresh)" : "")}", fresh ? PlanFields.Fresh : PlanFields.Dry, ""));
            parts.Add(new SentencePart("in", null));
        }
        bool hardnessAssumed = Assumed(answer, PlanFields.Hardness);
        parts.Add(new SentencePart($"{About(answer, PlanFields.Water)}{Said(input.Water, style)} water", PlanFields.Water, parts.Count == 0 ? "" : " "));
        parts.Add(new SentencePart($"({Said(input.Hardness, style)}{(hardnessAssumed ? ", assumed" : "")})", PlanFields.Hardness));
        for (int i = 0; i < input.Salts.Count; i++)
        {
            SaltPortion salt = input.Salts[i];
            parts.Add(new SentencePart($"{(i == 0 ? About(answer, PlanFields.SaltAmount) : "")}{Said(salt.Amount, style)} {salt.Substance.PlainName}", i == 0 ? PlanFields.SaltAmount : PlanFields.SecondSaltAmount, ", "));
        }
        string poured = input.Alkali.Unit == SubstanceUnit.Gram ? " in water" : "";
        parts.Add(new SentencePart($"{input.Alkali.PlainName}{poured}", PlanFields.Alkali, ", "));
        if (input.Order == OrderOfAddition.AlkaliFirst) parts.Add(new SentencePart("first", PlanFields.Order));
        parts.Add(new SentencePart($"at {About(answer, PlanFields.Temperature)}{Said(input.Temperature, style)}", PlanFields.Temperature, ", "));
        parts.Add(AimOf(answer, input, style));
        return parts;
    }

    /// <summary>The sentence with its full stop; empty when there is none.</summary>
    public static string Text(PlanAnswer answer)
    {
        IReadOnlyList<SentencePart> parts = Of(answer);
        return parts.Count == 0 ? "" : string.Concat(parts.Select(p => p.Before + p.Text)) + ".";
    }

    /// <summary>The dyestuff inside a sentence: "madder root".</summary>
    public static string NounOf(Dyestuff? dyestuff)
    {
        if (dyestuff is null) return "dyestuff";
        string first = dyestuff.Name.Split(' ')[0];
        string name = ProperNames.Contains(first) ? dyestuff.Name : char.ToLowerInvariant(dyestuff.Name[0]) + dyestuff.Name[1..];
        bool plainPart = dyestuff.Part.Length > 0 && !dyestuff.Part.Contains(' ', StringComparison.Ordinal) && !dyestuff.Part.Contains(',', StringComparison.Ordinal);
        bool said = dyestuff.Name.Contains(' ', StringComparison.Ordinal) || dyestuff.Part is "insect" or "lichen" or "flower" or "berry" or "resin";
        return plainPart && !said ? $"{name} {dyestuff.Part}" : name;
    }

    private static SentencePart AimOf(PlanAnswer answer, LakePlanInput input, TextStyle style) => input.Aim switch
    {
        PlanAim.ToPh to => new SentencePart($"to {About(answer, PlanFields.ToPh)}pH {Said(to.Ph, style)}", PlanFields.ToPh, ", "),
        PlanAim.AlkaliAmount given => new SentencePart($"with {AmountOf(given.Units, input.Alkali, style)} of it", PlanFields.AlkaliAmount, ", "),
        _ => new SentencePart("until all the metal is down", PlanFields.Aim, ", "),
    };

    // "About" is said of assumed values only.
    private static string About(PlanAnswer answer, string field) => Assumed(answer, field) ? "about " : "";

    private static string AmountOf(double units, Substance alkali, TextStyle style) =>
        alkali.Unit == SubstanceUnit.Gram ? Said(Mass.FromGrams(units), style) : Said(Volume.FromMillilitres(units), style);

    // What she typed is shown without filling noughts.
    private static string Said(Mass mass, TextStyle style) => PlanNumbers.Bare(QuantityText.Of(mass, style));

    private static string Said(Volume volume, TextStyle style) => PlanNumbers.Bare(QuantityText.Of(volume, style));

    private static string Said(Hardness hardness, TextStyle style) => PlanNumbers.Bare(QuantityText.Of(hardness, style));

    private static string Said(Temperature temperature, TextStyle style) => QuantityText.Of(temperature, style);

    private static string Said(Ph ph, TextStyle style) => PlanNumbers.Bare(QuantityText.Of(ph, style));

    private static bool Assumed(PlanAnswer answer, string field) => answer.Assumptions.Any(a => a.Field == field);
}
