namespace Alumroot.App.Parts;

/// <summary>One of the answers of a radio group or list.</summary>
/// <param name="Value">What is sent.</param>
/// <param name="Text">What the packet or the maker calls it.</param>
/// <param name="Formula">Its formula, when it has one.</param>
/// <param name="Note">A short remark under it.</param>
public sealed record Choice(string Value, string Text, string? Formula = null, string? Note = null);
