namespace Alumroot.Catalogue.Tests;

public class CrossReferenceTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Every_table_is_read_and_full()
    {
        // The least numbers are the sizes of the tables when they were first written.
        Assert.True(Data.Dyestuffs.Count >= 109);
        Assert.True(Data.Reagents.Count >= 55);
        Assert.True(Data.PlantAcids.Count >= 15);
        Assert.True(Data.Hazards.Count >= 58);
        Assert.True(Data.Cautions.Count >= 57);
        Assert.True(Data.Incompatibilities.Count >= 44);
        Assert.True(Data.PlantHazards.Count >= 112);
        Assert.True(Data.Waste.Count >= 17);
        Assert.True(Data.ProcessFacts.Count >= 95);
        Assert.True(Data.Troubles.Count >= 25);
    }

    [Fact]
    public void Reagents_named_elsewhere_exist()
    {
        IEnumerable<string> named =
        [
            .. Data.Hazards.SelectMany(h => h.ReagentKeys),
            .. Data.Incompatibilities.SelectMany(i => i.FirstReagentKeys.Concat(i.SecondReagentKeys)),
        ];
        Assert.Empty(named.Except(Data.Reagents.Select(r => r.Key)));
    }

    [Fact]
    public void Cautions_named_elsewhere_exist()
    {
        IEnumerable<string> named =
        [
            .. Data.Reagents.SelectMany(r => r.CautionKeys),
            .. Data.PlantHazards.SelectMany(p => p.CautionKeys),
            .. Data.Waste.SelectMany(w => w.CautionKeys),
            .. Data.Incompatibilities.Select(i => i.CautionKey).Where(k => k.Length > 0),
        ];
        Assert.Empty(named.Except(Data.Cautions.Select(c => c.Key)));
    }

    [Fact]
    public void Dyestuffs_named_elsewhere_exist_and_each_has_its_hazard_row_and_acid_class()
    {
        IEnumerable<string> named =
        [
            .. Data.PlantHazards.Select(p => p.DyestuffKey).Where(k => k.Length > 0),
            .. Data.ProcessFacts.SelectMany(f => f.DyestuffKeys),
        ];
        Assert.Empty(named.Except(Data.Dyestuffs.Select(d => d.Key)));
        Assert.Empty(Data.Dyestuffs.Where(d => Data.FindPlantHazard(d.Key)?.DyestuffKey != d.Key).Select(d => d.Key));
        Assert.All(Data.Dyestuffs, d => Assert.Equal(d.AcidClass, Data.PlantAcidOf(d).Key));
    }

    [Fact]
    public void Every_acid_class_is_used() =>
        Assert.Empty(Data.PlantAcids.Select(p => p.Key).Except(Data.Dyestuffs.Select(d => d.AcidClass)));

    [Fact]
    public void Every_reagent_that_is_planned_or_refused_has_a_hazard_row_or_no_known_class()
    {
        // Lead, mercury and the like share rows; made mixtures and slurries without a class of their own are named here.
        string[] none = ["magnesia", "magnesium-hydroxide", "calcium-acetate", "calcium-acetate-anhydrous"];
        Assert.Empty(Data.Reagents.Select(r => r.Key).Where(k => Data.HazardsOf(k).Count == 0).Except(none));
    }

    [Fact]
    public void Incompatible_reagents_meet_in_either_order()
    {
        Incompatibility gas = Data.Incompatibilities.First(i => i.Concerns("soda-ash", "potash-alum"));
        Assert.True(gas.Concerns("potash-alum", "soda-ash"));
        Assert.Equal("co2-foam", gas.CautionKey);
        Assert.DoesNotContain(Data.Incompatibilities, i => i.Concerns("soda-ash", "soda-ash"));
    }
}
