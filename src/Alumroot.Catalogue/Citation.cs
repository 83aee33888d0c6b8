namespace Alumroot.Catalogue;

/// <summary>Where a fact of the catalogue comes from.</summary>
/// <param name="SourceKeys">Keys of entries in <c>docs/sources.bib</c>; at least one.</param>
/// <param name="Where">The place in the source (page, table, article), how it was read, or "from memory".</param>
/// <param name="Confidence">How far it may be trusted.</param>
public sealed record Citation(IReadOnlyList<string> SourceKeys, string Where, Confidence Confidence);
