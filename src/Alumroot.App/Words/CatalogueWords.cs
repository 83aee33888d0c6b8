using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.Catalogue;
using Alumroot.Catalogue.Finding;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>What the catalogue knows, as words. An unknown thing is said to be unknown.</summary>
public static partial class CatalogueWords
{
    /// <summary>What stands where the catalogue has nothing.</summary>
    public const string NotKnown = "not known";

    /// <summary>The text, or "not known".</summary>
    public static string OrNotKnown(string text) => string.IsNullOrEmpty(text) ? NotKnown : text;

    /// <summary>The metal's name inside a sentence.</summary>
    public static string Of(LakeMetal metal) => metal.ToString().ToLowerInvariant();

    /// <summary>One sentence: does it take on this metal?</summary>
    public static string Sentence(LakingFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        string metal = Of(finding.Metal);
        string answer = finding.Answer switch
        {
            LakingAnswer.TakesWell => $"Takes well on {metal}.",
            LakingAnswer.TakesPartly => $"Takes on {metal}, and leaves colour in the liquor.",
            LakingAnswer.HardlyTakes => $"Hardly takes on {metal}: pale, and it bleeds.",
            LakingAnswer.DoesNotTake => $"Does not take on {metal}: the colour washes out.",
            LakingAnswer.NotMadeHere => "Not planned here.",
            _ => $"Whether it takes on {metal} is not known; a jar with a few grams would tell.",
        };
        return finding.BetterMetal is { } better && finding.Answer is not (LakingAnswer.TakesWell or LakingAnswer.NotKnown)
            ? $"{answer} {char.ToUpperInvariant(Of(better)[0])}{Of(better)[1..]} holds it more firmly."
            : answer;
    }

    /// <summary>The answer in a few words, for a table or a heading.</summary>
    public static string Short(LakingAnswer answer) => answer switch
    {
        LakingAnswer.TakesWell => "takes well",
        LakingAnswer.TakesPartly => "takes partly",
        LakingAnswer.HardlyTakes => "hardly takes",
        LakingAnswer.DoesNotTake => "does not take",
        LakingAnswer.NotMadeHere => "not planned here",
        _ => NotKnown,
    };

    /// <summary>How far a fact may be trusted.</summary>
    public static string Of(Confidence confidence) => confidence switch
    {
        Confidence.High => "well founded",
        Confidence.Medium => "fairly founded",
        _ => "thinly founded",
    };

    /// <summary>The program's stance in one sentence; empty for ordinary things.</summary>
    public static string Of(Stance stance) => stance switch
    {
        Stance.Care => "Used with care: its cautions are always shown.",
        Stance.StrongCare => "Used with great care: corrosive, sensitising, or poisonous to water life.",
        _ => "",
    };

    /// <summary>What a reagent does.</summary>
    public static string Of(ReagentRole role) => role switch
    {
        ReagentRole.Salt => "Metal salts",
        ReagentRole.Alkali => "Alkalis",
        ReagentRole.Acid => "Acids",
        _ => "Other",
    };

    /// <summary>The heading over hits of one kind.</summary>
    public static string Of(FoundKind kind) => kind switch
    {
        FoundKind.Dyestuff => "Dyestuffs",
        FoundKind.Reagent => "Salts, alkalis, acids",
        FoundKind.Trouble => "Troubles",
        FoundKind.ProcessFact => "Rules of the trade",
        FoundKind.Hazard => "Hazards of substances",
        FoundKind.PlantHazard => "Hazards of plants",
        FoundKind.Incompatibility => "Must not meet",
        FoundKind.Waste => "Waste",
        _ => "Cautions",
    };

    /// <summary>A range with its unit: "2 to 3.5 %".</summary>
    public static string Range(Estimate range, string unit) =>
        range.Low == range.High ? $"{Number(range.Value)} {unit}" : $"{Number(range.Low)} to {Number(range.High)} {unit}";

    /// <summary>A number without needless zeros.</summary>
    public static string Number(double value) =>
        value.ToString(Math.Abs(value) switch { >= 1000 => "0", >= 10 => "0.#", >= 1 => "0.##", _ => "0.###" }, CultureInfo.InvariantCulture).Replace('-', '\u2212');

    /// <summary>A text of the tables as a sentence: a capital first, a full stop at the end.</summary>
    public static string AsSentence(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length == 0) return "";
        string capital = char.ToUpperInvariant(text[0]) + text[1..];
        return Printed(capital[^1] is '.' or '?' or ':' ? capital : capital + ".");
    }

    /// <summary>A text of the tables as a heading: a capital first, no full stop.</summary>
    public static string AsHeading(string text) => AsSentence(text).TrimEnd('.');

    /// <summary>Plain letters of the tables as they are printed: degrees and the formula of water.</summary>
    public static string Printed(string text) =>
        Degrees().Replace(text, "$1 °C").Replace("H2O", "H\u2082O", StringComparison.Ordinal);

    [GeneratedRegex(@"(\d) C\b")]
    private static partial Regex Degrees();
}
