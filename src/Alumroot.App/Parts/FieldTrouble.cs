namespace Alumroot.App.Parts;

/// <summary>What is wrong with one field, for the summary at the top.</summary>
/// <param name="FieldId">The id to lead to.</param>
/// <param name="Sentence">The field's name, what was typed, what was expected.</param>
public sealed record FieldTrouble(string FieldId, string Sentence);
