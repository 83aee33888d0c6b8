using System.Globalization;
using Alumroot.App.Paints;
using Alumroot.Paint.Keeping;
using Alumroot.Paint.Recipes;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Words;

/// <summary>What is said of losses, preservatives, keeping and cost of a paint.</summary>
public static class KeepingWords
{
    // Below this a kitchen scale of 0.1 g does not weigh to a tenth; a solution of 1 % is weighed instead.
    private const double LeastWeighedGrams = 1, SolutionPercent = 1;

    private static readonly string[] Poisons = ["formal", "naphthol", "mercur", "sublimate", "arsen", "lead", "chrom", "methanol", "borax", "boric"];

    /// <summary>What is said of a preservative that is not in the table: old poisons are refused, others are not known.</summary>
    /// <param name="field">What the asker calls the field.</param>
    /// <param name="typed">What was typed.</param>
    public static string NoPreservative(string field, string typed)
    {
        string known = string.Join(", ", Preservative.All.Select(p => p.Key));
        bool poison = string.Equals(typed.Trim(), "phenol", StringComparison.OrdinalIgnoreCase) || Poisons.Any(p => typed.Contains(p, StringComparison.OrdinalIgnoreCase));
        return poison
            ? $"Will not reckon with '{typed}' as a preservative: old books name such things, and they poison, cause cancer or harm the unborn. Take one of {known}."
            : $"'{field} {typed}' is not known. There are {known}, or none.";
    }

    /// <summary>What stays on slab and muller, in one line.</summary>
    public static string Loss(PaintAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        SlabLoss loss = answer.Loss;
        string share = $"{Percent(loss.Fraction.Value)} %{(loss.Fraction.High > loss.Fraction.Low ? $" ({Percent(loss.Fraction.Low)} to {Percent(loss.Fraction.High)})" : "")}";
        string known = loss.Origin switch
        {
            LossOrigin.Stated => "as you say",
            LossOrigin.Weighed => loss.Weighings == 1 ? "by your one weighing" : $"by your {loss.Weighings} weighings",
            _ => "a judgement, from memory: weigh the paste before filling, and yours is known",
        };
        return answer.IsScaledUp
            ? string.Create(CultureInfo.InvariantCulture, $"All amounts are scaled up {answer.Loss.ScaleUp.Value:0.00} times{Span(loss.ScaleUp)}, since {share} stays on slab and muller ({known}).")
            : $"{share} is taken to stay on slab and muller ({known}){(answer.Fill is null ? "" : "; the number filled is less by that")}.";
    }

    /// <summary>How much of the preservative to take, and how to weigh so little.</summary>
    public static string Take(PreservativeDose dose)
    {
        ArgumentNullException.ThrowIfNull(dose);
        string grams = string.Create(CultureInfo.InvariantCulture, $"{dose.Grams.Value:0.000} g of {dose.What.Name} ({dose.Grams.Low:0.000} to {dose.Grams.High:0.000}), {dose.What.TypicalPercent:0.##} % of the {(dose.What.OfBinder ? "dry binder" : "water")}");
        if (dose.Grams.Value >= LeastWeighedGrams) return $"{grams}.";
        return dose.What.DropGrams is { } drop
            ? string.Create(CultureInfo.InvariantCulture, $"{grams}: about {(dose.Grams.Value < 1.5 * drop ? "1 drop" : $"{Math.Round(dose.Grams.Value / drop):0} drops")} of {drop:0.###} g (common practice, no source); weigh ten of yours.")
            : string.Create(CultureInfo.InvariantCulture, $"{grams}. To weigh so little: dissolve 1.0 g in 99 g of water, and take {100 / SolutionPercent * dose.Grams.Value:0.0} g of that in place of as much water.");
    }

    /// <summary>Whether it works at the paint's pH.</summary>
    public static string Works(PreservativeDose dose)
    {
        ArgumentNullException.ThrowIfNull(dose);
        string film = string.Create(CultureInfo.InvariantCulture, $"pH {dose.PaintPh.Low:0.#} to {dose.PaintPh.High:0.#}");
        string acid = dose.What.AcidPka is null ? "" : string.Create(CultureInfo.InvariantCulture, $" Of its acid {100 * dose.ActiveFraction.Value:0} % is free there ({100 * dose.ActiveFraction.Low:0} to {100 * dose.ActiveFraction.High:0}), and only that works.");
        string most = dose.What.MostPh.ToString("0.#", CultureInfo.InvariantCulture);
        return dose.Working switch
        {
            PreservativeWorking.Works => $"Works up to pH {most}; this paint has {film}.{acid}",
            PreservativeWorking.MayFail => $"Works up to pH {most}, and this paint may have {film}: hold a strip to the paste and write its pH below.{acid}",
            _ => $"Does nothing here: it works up to pH {most}, and this paint has {film}. Choose another.",
        };
    }

    /// <summary>How long the paint keeps.</summary>
    /// <param name="medium">The medium.</param>
    /// <param name="dose">Its preservative, or null.</param>
    public static string Keeps(Medium medium, PreservativeDose? dose)
    {
        ArgumentNullException.ThrowIfNull(medium);
        return dose is { Working: PreservativeWorking.Works } && medium.KeepsWith.Length > 0 ? $"{medium.KeepsWith} (without preservative: {medium.KeepsWithout})" : medium.KeepsWithout;
    }

    /// <summary>What one costs and what is not in it; null when nothing has a price.</summary>
    public static string? CostParts(PaintAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.CostEach is null) return null;
        IEnumerable<string> counted = (answer.Cost is not null ? (string[])["pigment"] : []).Concat(answer.PartCosts.Select(p => p.Part));
        IEnumerable<string> missing = (answer.Cost is null ? (string[])["pigment"] : []).Concat(answer.Unpriced);
        return $"in your money: {string.Join(", ", counted)}{(missing.Any() ? $"; no price for {string.Join(", ", missing)}" : "")}";
    }

    /// <summary>What came off the slab, and what did not.</summary>
    internal static string CameOff(PaintMade made, Measured off) => $"Came off the slab: {off.Typed}{(PaintOwn.LostFraction(made) is { } lost ? $"; {Percent(lost)} % stayed or dried away" : "")}.";

    /// <summary>A share in percent: "5", "0.5".</summary>
    internal static string Percent(double fraction) => (100 * fraction).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Span(Estimate e) => e.High > e.Low ? string.Create(CultureInfo.InvariantCulture, $" ({e.Low:0.00} to {e.High:0.00})") : "";
}
