using Alumroot.Catalogue;
using Alumroot.Catalogue.Finding;

namespace Alumroot.App.Words;

/// <summary>Where things of the catalogue are found on the pages. Every address is built here.</summary>
public static class HandbookAddress
{
    /// <summary>The page of a dyestuff.</summary>
    public static string Dyestuff(string key) => $"/handbook/dyestuffs/{key}";

    /// <summary>The page of a salt, alkali or acid.</summary>
    public static string Reagent(string key) => $"/handbook/reagents/{key}";

    /// <summary>The page and name of a dyestuff or reagent by key; the address is null when the word is no key.</summary>
    public static (string Name, string? Address) OfKey(string key, CatalogueData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        return data.FindReagent(key) is { } reagent ? (reagent.Name, Reagent(key))
            : data.FindDyestuff(key) is { } dyestuff ? (dyestuff.Name, Dyestuff(key))
            : (key, null);
    }

    /// <summary>The page of the hazards of one substance.</summary>
    public static string Hazard(string key) => $"/handbook/hazards/{key}";

    /// <summary>The place of a thing found.</summary>
    public static string Of(Hit hit)
    {
        ArgumentNullException.ThrowIfNull(hit);
        return hit.Kind switch
        {
            FoundKind.Dyestuff => Dyestuff(hit.Key),
            FoundKind.Reagent => Reagent(hit.Key),
            FoundKind.Trouble => $"/handbook/trouble#{hit.Key}",
            FoundKind.ProcessFact => $"/handbook/rules#{hit.Key}",
            FoundKind.Hazard => Hazard(hit.Key),
            FoundKind.PlantHazard => $"/handbook/safety#plant-{hit.Key}",
            FoundKind.Incompatibility => $"/handbook/safety#pair-{hit.Key}",
            FoundKind.Waste => $"/handbook/safety#waste-{hit.Key}",
            _ => $"/handbook/safety#caution-{hit.Key}",
        };
    }
}
