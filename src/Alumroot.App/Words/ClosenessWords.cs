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
    public static string? Of(Estimate estimate, SpanCause cause) => Of(estimate) is { } word ? $"{word}, mostly {CauseWords.Of(cause)}" : null;
}
