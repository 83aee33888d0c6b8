namespace Alumroot.Catalogue.Finding;

/// <summary>What a search found.</summary>
/// <param name="Query">The words as typed.</param>
/// <param name="Hits">Best first.</param>
/// <param name="Suggestions">Words of the catalogue nearest to what was typed; filled only when nothing was found.</param>
public sealed record Found(string Query, IReadOnlyList<Hit> Hits, IReadOnlyList<string> Suggestions)
{
    /// <summary>The hits by kind, the kind of the best hit first, each best first.</summary>
    public IReadOnlyList<IGrouping<FoundKind, Hit>> ByKind => [.. Hits.GroupBy(h => h.Kind)];
}
