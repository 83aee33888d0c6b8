using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Trials;

/// <summary>Something that was otherwise in one batch than in another.</summary>
/// <param name="What">What.</param>
/// <param name="From">As it was in the standard.</param>
/// <param name="To">As it was in the repeat.</param>
public sealed record BatchChange(string What, string From, string To)
{
    // What a kitchen scale, a strip and a thermometer can tell apart; our choice, no source.
    private const double AmountShare = 0.05, PhSteps = 0.3, Degrees = 5;

    /// <summary>What differs, in the order of the work. Amounts are compared for each gram of dyestuff, so that a batch of another size is the same.</summary>
    public static IReadOnlyList<BatchChange> Between(BatchFacts standard, BatchFacts other)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(other);
        var changes = new List<BatchChange>();
        foreach (LotClass role in (LotClass[])[LotClass.Dyestuff, LotClass.Salt, LotClass.Alkali])
            Words($"{SubjectLine.Word(role)} lot", standard.Lots.GetValueOrDefault(role), other.Lots.GetValueOrDefault(role));
        Words("dyestuff", standard.Dyestuff, other.Dyestuff);
        Words("salt", standard.Salt, other.Salt);
        Words("alkali", standard.Alkali, other.Alkali);
        Shares("water", "mL for each g", Per(standard, standard.Input.Water.Millilitres), Per(other, other.Input.Water.Millilitres));
        Shares("salt", "g for each g", Per(standard, standard.SaltGrams), Per(other, other.SaltGrams));
        if (standard.Alkali == other.Alkali) Shares("alkali", standard.Input.Alkali.Unit == Chemistry.Planning.SubstanceUnit.Gram ? "g for each g" : "mL for each g", Per(standard, standard.AlkaliUnits), Per(other, other.AlkaliUnits));
        if (standard.FinalPh is { } one && other.FinalPh is { } two && Math.Abs(one - two) >= PhSteps) changes.Add(new BatchChange("final pH", Ph(standard), Ph(other)));
        if (Math.Abs(standard.TemperatureCelsius - other.TemperatureCelsius) >= Degrees) changes.Add(new BatchChange("temperature", Celsius(standard), Celsius(other)));
        return changes;

        void Words(string what, string? from, string? to)
        {
            if (from != to && from is not null && to is not null) changes.Add(new BatchChange(what, from, to));
        }

        void Shares(string what, string unit, double? from, double? to)
        {
            if (from is > 0 and var a && to is { } b && Math.Abs(b / a - 1) > AmountShare) changes.Add(new BatchChange(what, $"{TrialWords.Figure(a)} {unit}", $"{TrialWords.Figure(b)} {unit}"));
        }
    }

    private static double? Per(BatchFacts batch, double? amount) => batch.DryGrams is > 0 and var dry ? amount / dry : amount;

    private static string Ph(BatchFacts batch) => string.Create(CultureInfo.InvariantCulture, $"{batch.FinalPh:0.0}{(batch.PhIsRead ? "" : " as planned")}");

    private static string Celsius(BatchFacts batch) => string.Create(CultureInfo.InvariantCulture, $"{batch.TemperatureCelsius:0.#} °C");
}
