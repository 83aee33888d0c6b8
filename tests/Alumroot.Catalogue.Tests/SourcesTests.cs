namespace Alumroot.Catalogue.Tests;

public class SourcesTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Sources_stand_once_and_in_order()
    {
        Assert.True(Sources.Keys.Count > 50);
        Assert.Equal(Sources.Keys.Order(StringComparer.Ordinal), Sources.Keys);
        Assert.Equal(Sources.Keys.Distinct(), Sources.Keys);
    }

    [Fact]
    public void Every_cited_source_is_in_the_list()
    {
        IEnumerable<Citation> citations =
        [
            .. Data.Dyestuffs.Select(d => d.Citation), .. Data.Reagents.Select(r => r.Citation),
            .. Data.PlantAcids.Select(p => p.Citation), .. Data.Hazards.Select(h => h.Citation),
            .. Data.Cautions.Select(c => c.Citation), .. Data.Incompatibilities.Select(i => i.Citation),
            .. Data.PlantHazards.Select(p => p.Citation), .. Data.Waste.Select(w => w.Citation),
            .. Data.ProcessFacts.Select(f => f.Citation), .. Data.Troubles.Select(t => t.Citation),
            .. Data.AmmoniaStrengths.Select(a => a.Citation),
            .. Data.Reagents.Where(r => r.Solubility is not null).SelectMany(r => r.Solubility!.Points).Select(p => p.Citation),
        ];
        Assert.Empty(citations.SelectMany(c => c.SourceKeys).Except(Sources.Keys));
        Assert.Empty(Data.Dyestuffs.SelectMany(d => d.ContentSourceKeys.Concat(d.LightfastnessSourceKeys)).Except(Sources.Keys));
    }

    [Fact]
    public void A_figure_or_claim_never_stands_without_its_source()
    {
        Assert.Empty(Data.Dyestuffs.Where(d => d.ContentPercentOfDry is not null && d.ContentSourceKeys.Count == 0).Select(d => d.Key));
        Assert.Empty(Data.Dyestuffs.Where(d => d.Lightfastness.Length > 0 && d.LightfastnessSourceKeys.Count == 0).Select(d => d.Key));
        Assert.Empty(Data.Reagents.Where(r => r.PurityPercent is not null && r.PurityWhere.Length == 0).Select(r => r.Key));
    }
}
