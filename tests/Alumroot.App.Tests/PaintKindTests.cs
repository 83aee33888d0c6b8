using Alumroot.App.Paints;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;

namespace Alumroot.App.Tests;

/// <summary>From dyestuffs to kinds of colour, and every reason in words.</summary>
public sealed class PaintKindTests
{
    [Fact]
    public void The_chemistry_of_every_dyestuff_was_considered() => Assert.All(CatalogueData.Embedded.Dyestuffs, d => Assert.True(ColourKinds.Considered(d.ChemicalClass), $"{d.Key}: {d.ChemicalClass}"));

    // Textbook classes of the dyes (Cardon 2007, from memory).
    [Theory]
    [InlineData("madder", null, "anthraquinone-madder")]
    [InlineData("cochineal", null, "anthraquinone-insect")]
    [InlineData("weld", "potash alum", "flavonoid")]
    [InlineData("weld", "copper sulfate", "copper-lake")]
    [InlineData("galls", "iron(II) sulfate", "tannin-iron")]
    [InlineData("safflower-red", null, "carthamin")]
    [InlineData("beetroot", null, "betalain")]
    [InlineData("coffee", null, null)]
    public void Known_dyestuffs(string dyestuff, string? salt, string? kind) => Assert.Equal(kind, ColourKinds.Of(CatalogueData.Embedded.FindDyestuff(dyestuff), salt));

    [Fact]
    public void Every_reason_has_words_and_every_kind_is_a_kind()
    {
        Assert.All(CatalogueData.Embedded.Dyestuffs, d => Assert.True(ColourKinds.Of(d, null) is not { } key || ColourantClass.Find(key) is not null));
        var used = new HashSet<string>();
        foreach (Suitability suits in ColourantClass.All.SelectMany(c => Medium.All.Select(m => Suitability.Of(m, c))))
            foreach (SuitReason reason in suits.Reasons)
            {
                string said = SuitWords.Of(reason, suits);
                Assert.EndsWith(".", said, StringComparison.Ordinal);
                used.Add(reason.Key);
            }
        // No words without a use but those of a pH.
        Assert.Empty(SuitWords.Known.Except(used).Except(ColourantClass.All.Select(c => c.Above)));
    }
}
