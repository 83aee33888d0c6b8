using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Words;

/// <summary>How close a number is, and what widens it.</summary>
public static class ClosenessWords
{
    /// <summary>One word: close, fair or rough; null for an exact value.</summary>
    public static string? Of(Estimate estimate) => estimate.High == estimate.Low ? null : estimate.Closeness() switch
    {
        Closeness.Close => "close",
        Closeness.Fair => "fair",
        _ => "rough",
    };

    /// <summary>The word and the main cause: "fair, mostly the plant's own acid"; null for an exact value.</summary>
    public static string? Of(Estimate estimate, SpanCause cause) => Of(estimate) is { } word ? $"{word}, mostly {Of(cause)}" : null;

    /// <summary>What makes a span as wide as it is.</summary>
    public static string Of(SpanCause cause) => cause switch
    {
        SpanCause.KindOfSolid => "which solid comes down",
        SpanCause.SolubilityOfSolid => "how little the fresh solid dissolves",
        SpanCause.GasHeld => "how much gas the bath still holds",
        SpanCause.PlantAcid => "the plant's own acid",
        SpanCause.AlkaliStrength => "the strength of the alkali",
        SpanCause.SaltStrength => "the strength of the salt",
        SpanCause.Hardness => "the hardness of the water",
        SpanCause.FreeAcid => "free acid in the salt",
        _ => "the temperature of the bath",
    };
}
