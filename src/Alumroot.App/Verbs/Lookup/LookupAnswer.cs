using Alumroot.Catalogue;
using Alumroot.Catalogue.Finding;

namespace Alumroot.App.Verbs.Lookup;

/// <summary>What <c>lookup --json</c> prints. Units are in the names; null is "not known"; a refused thing carries no amounts.</summary>
/// <param name="Query">The words as typed.</param>
/// <param name="Dyestuffs">Dyestuffs of exactly this name.</param>
/// <param name="Reagents">Salts, alkalis and acids of exactly this name; several when the packet's word names several.</param>
/// <param name="Hits">Everything that fits, best first.</param>
/// <param name="Suggestions">Near words, when nothing fits.</param>
public sealed record LookupAnswer(
    string Query,
    IReadOnlyList<DyestuffCard> Dyestuffs,
    IReadOnlyList<ReagentCard> Reagents,
    IReadOnlyList<HitCard> Hits,
    IReadOnlyList<string> Suggestions)
{
    /// <summary>Looks the words up.</summary>
    public static LookupAnswer To(string query, CatalogueData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        Found found = data.Search.Find(query);
        return new LookupAnswer(
            query,
            [.. data.DyestuffsNamed(query).Select(DyestuffCard.Of)],
            [.. data.ReagentsNamed(query).Select(ReagentCard.Of)],
            [.. found.Hits.Select(hit => new HitCard(hit.Kind, hit.Key, hit.Title, Words.HandbookAddress.Of(hit)))],
            found.Suggestions);
    }
}

/// <summary>One thing found.</summary>
/// <param name="Kind">Which part of the catalogue.</param>
/// <param name="Key">Its key there.</param>
/// <param name="Title">Its name.</param>
/// <param name="Page">Its address on the web pages.</param>
public sealed record HitCard(FoundKind Kind, string Key, string Title, string Page);

/// <summary>Where facts come from.</summary>
/// <param name="Sources">The sources spelt out.</param>
/// <param name="Where">The place in them.</param>
/// <param name="Confidence">How far they may be trusted.</param>
public sealed record CitationCard(IReadOnlyList<string> Sources, string Where, Confidence Confidence)
{
    internal static CitationCard Of(Citation citation) => new([.. citation.SourceKeys.Select(Words.SourceList.Spelt)], citation.Where, citation.Confidence);
}
