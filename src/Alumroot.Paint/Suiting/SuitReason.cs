namespace Alumroot.Paint.Suiting;

/// <summary>One reason why a medium bears a colour well or ill.</summary>
/// <param name="Key">What it is: <c>ph-above</c>, <c>ph-may-pass</c>, <c>ph-below</c>, <c>heat</c>, <c>near-heat</c>, or an effect of the table.</param>
/// <param name="Rating">How grave it is; <see cref="SuitRating.Works"/> for what is only to be known.</param>
/// <param name="Sources">Keys of the sources.</param>
/// <param name="Confidence">How sure it is: high, medium, low.</param>
public sealed record SuitReason(string Key, SuitRating Rating, IReadOnlyList<string> Sources, string Confidence);
