using System.Globalization;
using Alumroot.App.Trials.Spot;
using Alumroot.Catalogue;
using Alumroot.Studio.Documents;
using Alumroot.Trials.Spot;

namespace Alumroot.App.Words;

/// <summary>The words of the spot test.</summary>
internal static class SpotWords
{
    /// <summary>What to look for, in the order of how firmly a dye is held.</summary>
    internal static IReadOnlyList<(SpotSeen Seen, string Words)> Sights { get; } =
    [
        (SpotSeen.NoneLeft, "coloured solid, drop clears"),
        (SpotSeen.SomeLeft, "coloured solid, some colour left"),
        (SpotSeen.MostLeft, "coloured solid, most colour left"),
        (SpotSeen.Pale, "pale solid, drop keeps its colour"),
        (SpotSeen.Nothing, "stays clear, nothing falls"),
    ];

    /// <summary>What soda alone may show.</summary>
    internal static IReadOnlyList<(SpotSeen Seen, string Words)> SodaSights { get; } =
        [(SpotSeen.Nothing, "stays clear"), (SpotSeen.Pale, "cloudy, pale"), (SpotSeen.SomeLeft, "coloured solid falls")];

    /// <summary>When neither a sight nor an area was chosen.</summary>
    internal const string NothingChosen = "Nothing was kept: say of at least one drop with a salt what it shows, and of which lot the liquor is.";

    /// <summary>When areas were chosen of which some are missing.</summary>
    internal const string AreasMissing = "Nothing was kept: from a photograph the bare tile and the drop with soda alone are needed, and of each salt its clear part; the solid may be missing.";

    /// <summary>What soda alone says of the rest.</summary>
    internal const string HardWater = "Soda alone threw down colour: lime of hard water takes part in every drop, and the salts' drops count half. Try again with rain water or bought pure water.";

    /// <summary>A drop as the record tells it.</summary>
    internal static string Of(SpotDrop drop)
    {
        string what = drop.Salt == SpotDrop.SodaAlone ? "soda alone" : CatalogueData.Embedded.FindReagent(drop.Salt)?.Name ?? drop.Salt;
        string left = drop.LeftShare is { } share ? string.Create(CultureInfo.InvariantCulture, $" ({100 * share:0} % of the colour left, by photograph)") : "";
        return $"{what}, {Of(drop.Seen)}{left}";
    }

    /// <summary>What a drop showed.</summary>
    internal static string Of(SpotSeen seen) => Sights.First(s => s.Seen == seen).Words;

    /// <summary>A strength as an answer: "takes well".</summary>
    internal static string Of(SpotStrength strength) => strength switch
    {
        SpotStrength.Strong => CatalogueWords.Short(LakingAnswer.TakesWell),
        SpotStrength.Moderate => CatalogueWords.Short(LakingAnswer.TakesPartly),
        SpotStrength.Weak => CatalogueWords.Short(LakingAnswer.HardlyTakes),
        _ => CatalogueWords.Short(LakingAnswer.DoesNotTake),
    };

    /// <summary>"takes well, 93 in a hundred".</summary>
    internal static string Of(SpotBelief belief) => $"{Of(belief.Likeliest)}, {InHundred(belief.ChanceShares[(int)belief.Likeliest])}";

    /// <summary>"a lake 97 in a hundred".</summary>
    internal static string Lake(SpotBelief belief) => InHundred(belief.LakeChanceShare);

    /// <summary>What the drops of this lot say on one metal, in a sentence.</summary>
    internal static string Sentence(SpotVerdict verdict) =>
        $"Spot test of this lot on {CatalogueWords.Of(verdict.Metal)} ({verdict.Count} {(verdict.Count == 1 ? "drop" : "drops")}, last {TimeWords.Day(verdict.Last!.Value)}): it {Of(verdict.After)}; a lake of some use {Lake(verdict.After)}. Before it was {Of(verdict.Before)}.";

    /// <summary>The next thing to do after a row.</summary>
    internal static string Advice(SpotVerdict verdict) => verdict.After.LakeChanceShare switch
    {
        > 0.85 => "Plan a lake of it.",
        > 0.4 => "Make one jar of a few grams before a batch.",
        _ => "Do not spend a day on it; another metal or another plant serves better.",
    };

    private static string InHundred(double share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Clamp(Math.Round(100 * share), 1, 99):0} in a hundred");
}
