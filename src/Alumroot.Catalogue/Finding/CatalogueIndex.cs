namespace Alumroot.Catalogue.Finding;

/// <summary>Says which words of each row can be searched.</summary>
internal sealed class CatalogueIndex(Lexicon lexicon)
{
    internal IReadOnlyList<IndexEntry> Of(CatalogueData data) =>
    [
        .. data.Dyestuffs.Select(Entry),
        .. data.Reagents.Select(Entry),
        .. data.Troubles.Select(Entry),
        .. data.ProcessFacts.Select(Entry),
        .. data.Hazards.Select(Entry),
        .. data.PlantHazards.Where(p => p.DyestuffKey.Length == 0).Select(Entry),
        .. data.Incompatibilities.Select(Entry),
        .. data.Waste.Select(Entry),
        .. data.Cautions.Select(Entry),
    ];

    private IndexEntry Entry(Dyestuff d) => new(
        lexicon, FoundKind.Dyestuff, d.Key, d.Name,
        names: [d.Name, .. d.Aliases],
        facets: [d.Species, d.Part, d.Colourants, d.ChemicalClass, d.ColourIndexName, .. d.ColourIndexNumbers],
        texts: [d.ChelatingGroup, d.LakingReason, .. d.Laking.Select(v => v.Hue), d.Extraction, d.HazardNote]);

    private IndexEntry Entry(Reagent r) => new(
        lexicon, FoundKind.Reagent, r.Key, r.Name,
        names: [r.Name, .. r.Aliases],
        facets: [r.Formula, r.ChemistryKey],
        texts: [r.WhichOne, r.Note, r.RefusalReason]);

    private IndexEntry Entry(Trouble t) => new(
        lexicon, FoundKind.Trouble, t.Key, t.Symptom,
        names: [t.Symptom, .. t.Words],
        facets: [t.Cause],
        texts: [t.HowToTell, t.WhatToDo]);

    private IndexEntry Entry(ProcessFact f) => new(
        lexicon, FoundKind.ProcessFact, f.Key, f.Rule,
        names: [],
        facets: [f.Rule, f.Topic],
        texts: [f.AppliesTo, f.Statement, f.Why]);

    private IndexEntry Entry(Hazard h) => new(
        lexicon, FoundKind.Hazard, h.Key, h.Name,
        names: [],
        facets: [h.Name, h.CasNumber, h.Formula],
        texts: [h.Note]);

    private IndexEntry Entry(PlantHazard p) => new(
        lexicon, FoundKind.PlantHazard, p.Key, p.Name,
        names: [p.Name],
        facets: [p.Species],
        texts: [p.Kind, p.Fact]);

    private IndexEntry Entry(Incompatibility i) => new(
        lexicon, FoundKind.Incompatibility, i.Key, $"{i.First} + {i.Second}",
        names: [],
        facets: [i.First, i.Second],
        texts: [i.WhatHappens]);

    private IndexEntry Entry(WasteAdvice w) => new(
        lexicon, FoundKind.Waste, w.Key, w.Stream,
        names: [],
        facets: [w.Stream],
        texts: [w.Contains, w.Harms]);

    private IndexEntry Entry(Caution c) => new(
        lexicon, FoundKind.Caution, c.Key, c.Text,
        names: [],
        facets: [],
        texts: [c.Text, c.Step]);
}
