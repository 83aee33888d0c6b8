using Alumroot.Catalogue;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs.Lookup;

/// <summary>What is known of a dyestuff.</summary>
public sealed record DyestuffCard(
    string Key,
    string Name,
    string? Species,
    string? Part,
    string? ChemicalClass,
    string? ChelatingGroup,
    string? Colourants,
    IReadOnlyList<LakingCard> Laking,
    string LakingReason,
    Estimate? ContentPercentOfDry,
    string? ContentOf,
    string? Extraction,
    double? ExtractionC,
    double? TemperatureLimitC,
    Estimate? WaterMlPerG,
    Estimate? PotashAlumGPerG,
    string? PhBehaviour,
    string? Permanence,
    string? Hazard,
    Stance Stance,
    string? RefusalReason,
    string? UseInstead,
    CitationCard Citation)
{
    internal static DyestuffCard Of(Dyestuff d)
    {
        bool refused = d.Stance == Stance.Refused;
        return new DyestuffCard(
            d.Key, d.Name, Known(d.Species), Known(d.Part), Known(d.ChemicalClass), Known(d.ChelatingGroup), Known(d.Colourants),
            [.. d.Laking.Select(v => new LakingCard(v.Metal, d.WillTake(v.Metal).Answer, Known(v.Hue)))],
            d.LakingReason, d.ContentPercentOfDry, Known(d.ContentOf),
            refused ? null : Known(d.Extraction), refused ? null : d.ExtractionCelsius, refused ? null : d.TemperatureLimitCelsius,
            refused ? null : d.WaterMillilitresPerGram, refused ? null : d.SaltGramsPerGramDry,
            Known(d.PhBehaviour), Known(d.Lightfastness), Known(d.HazardNote), d.Stance, Known(d.RefusalReason), Known(d.UseInstead),
            CitationCard.Of(d.Citation));
    }

    private static string? Known(string text) => text.Length == 0 ? null : text;
}

/// <summary>How a dyestuff takes on one metal.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Takes">The answer.</param>
/// <param name="Hue">The hue, or null when not known.</param>
public sealed record LakingCard(LakeMetal Metal, LakingAnswer Takes, string? Hue);
