using System.Globalization;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>What the readings of an addition say, in sentences.</summary>
public static class BenchStateWords
{
    private const int MostExplanations = 3;
    private const double LeastWorthSaying = 0.02;

    /// <summary>Why to stop.</summary>
    public static string Stop(StopReason reason, BenchState state, PlanNumbers numbers, double? aimPh)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(numbers);
        string now = numbers.Ph90(state.PhNow).Line;
        string aim = aimPh is { } ph ? $", aim {ph.ToString("0.##", CultureInfo.InvariantCulture)}" : "";
        return reason switch
        {
            StopReason.Reached => $"The bath is at {now}{aim}. Another portion would not bring it nearer.",
            StopReason.Passed => $"The bath is at {now}{aim}: the aim is passed. A little more salt brings it back; more alkali begins to dissolve the lake.",
            StopReason.MoreWouldRedissolve => $"The bath is at {now}. More alkali would begin to dissolve the lake.",
            StopReason.NothingLeft => $"The given amount is in. The bath is at {now}.",
            _ => $"The bath is at {now}{aim}. What is left is finer than the scale shows.",
        };
    }

    /// <summary>What is to go and what the readings changed: "Less acid in the plant than assumed: 3.1 g to go (2.4 to 4.0), was 4.4."</summary>
    public static string ToGo(BenchState state, string remaining, string planned)
    {
        ArgumentNullException.ThrowIfNull(state);
        string toGo = $"{remaining} to go";
        if (state.Changes.Count == 0) return $"{toGo}.";
        string was = remaining.StartsWith(planned, StringComparison.Ordinal) ? "" : $", was {planned}";
        return $"{Changed(state.Changes[0])}: {toGo}{was}.";
    }

    /// <summary>A reading that does not fit: "Reading 5, expected 6.1 (5.9 to 7.0)."</summary>
    public static string Quarrel(Quarrel quarrel, PlanNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(quarrel);
        ArgumentNullException.ThrowIfNull(numbers);
        return $"Reading {quarrel.Reading.Value.ToString("0.##", CultureInfo.InvariantCulture)}, expected {numbers.Ph90(quarrel.ExpectedPh).Line}. Read again first; then look at the packets and the scale.";
    }

    /// <summary>What would explain it, the likeliest first, with what each would have read.</summary>
    public static IReadOnlyList<(BenchHypothesis Hypothesis, string Words)> Explanations(Quarrel quarrel, PlanNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(quarrel);
        ArgumentNullException.ThrowIfNull(numbers);
        return [.. quarrel.Explanations.Where(e => e.Hypothesis is not BenchHypothesis.AsRecorded && e.ProbabilityRatio >= LeastWorthSaying).Take(MostExplanations)
            .Select(e => (e.Hypothesis, $"{Capital(Of(e.Hypothesis))}{(e.WouldReadPh is { } would ? $": would read {numbers.Ph90(would).Line}" : "")}"))];
    }

    /// <summary>"soda crystals were in the packet".</summary>
    public static string Of(BenchHypothesis hypothesis) => hypothesis switch
    {
        BenchHypothesis.OtherAlkali other => $"it was {other.Instead.PlainName}",
        BenchHypothesis.OtherSalt other => $"it was {other.Instead.PlainName}",
        BenchHypothesis.SaltBowlNotTared bowl => $"the salt was weighed with its bowl ({Grams(bowl.Bowl)})",
        BenchHypothesis.PortionBowlNotTared bowl => $"portion {bowl.PortionNumber} was weighed with its bowl ({Grams(bowl.Bowl)})",
        BenchHypothesis.ColouredStrip => "the strip took the colour of the liquor",
        _ => "all is as recorded, and the reading was wrong",
    };

    private static string Changed(LearnedChange change) => (change.What, Down: change.ShiftFactor < 0) switch
    {
        (Unknown.PlantAcidAmount, true) => "Less acid in the plant than assumed",
        (Unknown.PlantAcidAmount, false) => "More acid in the plant than assumed",
        (Unknown.PlantAcidPk, true) => "The plant's acid is stronger than assumed",
        (Unknown.PlantAcidPk, false) => "The plant's acid is weaker than assumed",
        (Unknown.AlkaliStrength, true) => "The alkali is weaker than its packet says",
        (Unknown.AlkaliStrength, false) => "The alkali is stronger than its packet says",
        (Unknown.SaltStrength, true) => "The salt is weaker than its packet says",
        (Unknown.SaltStrength, false) => "The salt is stronger than its packet says",
        (Unknown.KindOfSolid, true) => "It looks like plain hydroxide",
        (Unknown.KindOfSolid, false) => "It looks like a basic salt",
        (Unknown.HydroxideSolubility or Unknown.BasicSaltSolubility, _) => "The fresh solid dissolves otherwise than assumed",
        (Unknown.GasHeld, true) => "Less gas stays in the bath than assumed",
        (Unknown.GasHeld, false) => "More gas stays in the bath than assumed",
        (Unknown.FreeAcid, true) => "Less free acid in the salt than assumed",
        (Unknown.FreeAcid, false) => "More free acid in the salt than assumed",
        (Unknown.Hardness, _) => "The water is harder or softer than stated",
        (Unknown.Water, _) => "The water is more or less than stated",
        (Unknown.Temperature, _) => "The bath is warmer or cooler than stated",
        (Unknown.StripBias, true) => "The strips seem to read low",
        (Unknown.StripBias, false) => "The strips seem to read high",
        (_, true) => "The meter seems to read low",
        _ => "The meter seems to read high",
    };

    private static string Grams(Mass mass) => string.Create(CultureInfo.InvariantCulture, $"{mass.Grams:0.#} g");

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
