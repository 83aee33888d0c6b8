namespace Alumroot.App.Words;

/// <summary>A piece of the plan's sentence.</summary>
/// <param name="Text">Its words, without blanks at the ends.</param>
/// <param name="Field">The field that it comes from and leads to; null for joining words.</param>
/// <param name="Before">What stands between it and the piece before: a blank, or a comma and a blank.</param>
public sealed record SentencePart(string Text, string? Field, string Before = " ");
