using Alumroot.Paint.Labels;

namespace Alumroot.Paint.Tests;

/// <summary>Statements of precaution and sizes of labels against the European rules (CLP, Regulation (EC) No 1272/2008).</summary>
public sealed class LabelRuleTests
{
    // What the tables of label elements in Annex I name for each statement of hazard, from memory; ours must lie within.
    private static readonly Dictionary<string, string> Annex = new(StringComparer.Ordinal)
    {
        ["H226"] = "P210 P233 P240 P241 P242 P243 P280 P303+P361+P353 P370+P378 P403+P235 P501",
        ["H315"] = "P264 P280 P302+P352 P321 P332+P313 P362+P364",
        ["H317"] = "P261 P272 P280 P302+P352 P333+P313 P321 P362+P364 P501",
        ["H318"] = "P280 P305+P351+P338 P310",
        ["H319"] = "P264 P280 P305+P351+P338 P337+P313",
        ["H336"] = "P261 P271 P304+P340 P312 P403+P233 P405 P501",
        ["H360FD"] = "P201 P202 P280 P308+P313 P405 P501",
    };

    [Fact]
    public void Each_hazard_has_precautions_of_its_own_and_none_that_the_annex_does_not_name()
    {
        foreach ((string hazard, string named) in Annex)
        {
            string[] ours = [.. LabelPrecautions.All([Hazard(hazard)]).Select(p => p.Code)];
            Assert.Contains("P102", ours);
            Assert.True(ours.Length >= 4, hazard);
            Assert.All(ours.Except(["P101", "P102"]), code => Assert.Contains(code, named.Split(' ')));
        }
    }

    [Fact]
    public void Every_hazard_that_a_content_can_bring_has_precautions()
    {
        string[] codes = [.. LabelHazards.Known.SelectMany(s => LabelHazards.Of(new Dictionary<string, double> { [s] = 100 })).Select(h => h.Code).Where(c => c.StartsWith('H')).Distinct()];
        Assert.True(codes.Length >= 5);
        Assert.All(codes, c => Assert.Contains(c, Annex.Keys));
    }

    // Article 28: at most six unless the hazards ask for more; P102 for what anybody can buy, P501 for what is sold to the public (from memory).
    [Fact]
    public void At_most_six_stand_on_a_label_and_children_and_eyes_come_first()
    {
        LabelHazard[] all = [.. Annex.Keys.Select(Hazard)];
        IReadOnlyList<LabelPrecaution> said = LabelPrecautions.For(all);
        Assert.Equal(LabelPrecautions.Most, said.Count);
        Assert.Equal(said.Select(p => p.Code).Order(StringComparer.Ordinal), said.Select(p => p.Code));
        Assert.Contains(said, p => p.Code == "P102");
        Assert.Contains(said, p => p.Code == "P305+P351+P338");
        Assert.Equal(LabelPrecautions.All(all).Count, LabelPrecautions.All(all).Select(p => p.Code).Distinct().Count());
        Assert.Contains(LabelPrecautions.For([Hazard("H317")]), p => p.Code == "P501");
    }

    [Fact]
    public void Gloves_and_goggles_are_said_once_together()
    {
        Assert.Equal("Wear protective gloves.", Worn("H317"));
        Assert.Equal("Wear eye protection.", Worn("H319"));
        Assert.Equal("Wear protective gloves and eye protection.", Worn("H317", "H318"));

        static string Worn(params string[] codes) => LabelPrecautions.All([.. codes.Select(Hazard)]).Single(p => p.Code == "P280").Statement;
    }

    // Supplements of the European rules (EUH) bring no precautions.
    [Fact]
    public void A_supplement_alone_brings_none() => Assert.Empty(LabelPrecautions.For([Hazard("EUH208")]));

    // Annex I, 1.2.1.4, table 1.3: 52 x 74 mm to 3 L, 74 x 105 to 50 L, 105 x 148 to 500 L; signs of 10 (16), 23 and 32 mm.
    [Theory]
    [InlineData(15, 52, 74, false, 10, 16)]
    [InlineData(3000, 52, 74, false, 10, 16)]
    [InlineData(3001, 74, 105, true, 23, 23)]
    [InlineData(60000, 105, 148, true, 32, 32)]
    public void Sizes_are_those_of_the_table(double holds, double shorter, double longer, bool must, double least, double wanted)
    {
        LabelSize size = LabelSize.For(holds)!;
        Assert.Equal((shorter, longer, must, least, wanted), (size.ShortMillimetres, size.LongMillimetres, size.IsAskedOutright, size.SignLeastMillimetres, size.SignWantedMillimetres));
        Assert.True(size.IsKeptBy(longer, shorter));
        Assert.True(size.IsKeptBy(shorter, longer));
        Assert.False(size.IsKeptBy(longer, shorter - 1));
        // Each sign covers a fifteenth of the least label (the same table's text), to a twentieth.
        Assert.InRange(size.SignWantedMillimetres * size.SignWantedMillimetres, 0.95 * shorter * longer / 15, double.MaxValue);
    }

    [Fact]
    public void Beyond_the_table_nothing_is_said() => Assert.Null(LabelSize.For(600_000));

    private static LabelHazard Hazard(string code) => new("x", code, "", "", "", "memory");
}
