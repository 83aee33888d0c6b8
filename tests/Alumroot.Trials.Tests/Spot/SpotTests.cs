using Alumroot.Numerics;
using Alumroot.Trials.Spot;

namespace Alumroot.Trials.Tests.Spot;

/// <summary>Beliefs about a liquor against worked examples of Bayes' rule, against simulated lots, and the law of Beer.</summary>
public sealed class SpotTests
{
    // The worked example of Gelman and others, Bayesian Data Analysis, section 1.4 (from memory): a woman is a carrier with 1/2; two unaffected sons have probability 1/4 if she is one, else 1:
    // 0.2 remains; with a third unaffected son 1/9.
    [Fact]
    public void Bayes_rule_as_worked_in_a_textbook()
    {
        SpotBelief carrier = SpotBelief.Of([1, 1, 0, 0]);
        SpotBelief twoSons = carrier.After([0.25, 1, 1, 1]);
        Assert.Equal(0.2, twoSons.ChanceShares[0], 1e-12);
        Assert.Equal(1.0 / 9, twoSons.After([0.5, 1, 1, 1]).ChanceShares[0], 1e-12);
    }

    /// <summary>Lots drawn from a prior, drops drawn from the table: of lots believed with some chance, that share is so. The count is the outside check of the rule.</summary>
    [Fact]
    public void Beliefs_come_true_as_often_as_they_say()
    {
        var random = new SeededRandom(20261127);
        SpotBelief before = SpotBelief.Before(SpotStrength.Moderate, "low");
        double[][] sights = [.. TrialTables.Read("spot_sights.csv").Select(r => new[] { r.Number("nothing"), r.Number("pale"), r.Number("most_left"), r.Number("some_left"), r.Number("none_left") })];
        var told = new List<(double Said, bool Is)>();
        for (int i = 0; i < 20_000; i++)
        {
            int truth = Draw(before.ChanceShares, random);
            SpotBelief after = before.After((SpotSight)Draw(sights[truth], random)).After((SpotSight)Draw(sights[truth], random));
            told.Add((after.LakeChanceShare, truth >= (int)SpotStrength.Moderate));
        }
        foreach (IGrouping<int, (double Said, bool Is)> tenth in told.GroupBy(t => (int)(10 * t.Said)).Where(g => g.Count() > 300))
            Assert.Equal(tenth.Average(t => t.Said), tenth.Count(t => t.Is) / (double)tenth.Count(), 0.04);
    }

    [Fact]
    public void Rows_of_the_tables_add_to_one_and_nothing_says_nothing()
    {
        foreach (var row in TrialTables.Read("spot_sights.csv"))
            Assert.Equal(1, row.Number("nothing") + row.Number("pale") + row.Number("most_left") + row.Number("some_left") + row.Number("none_left"), 1e-9);
        foreach (var row in TrialTables.Read("spot_priors.csv"))
            Assert.Equal(1, row.Number("none") + row.Number("weak") + row.Number("moderate") + row.Number("strong"), 1e-9);
        foreach (SpotStrength stated in Enum.GetValues<SpotStrength>())
            foreach (string trust in new[] { "low", "medium", "high" })
            {
                SpotBelief before = SpotBelief.Before(stated, trust);
                Assert.Equal(stated, before.Likeliest);
                Assert.All(before.After(SpotSight.Nothing).ChanceShares.Zip(before.ChanceShares), p => Assert.Equal(p.Second, p.First, 1e-12));
                // What clears raises the chance of a lake, what keeps its colour lowers it.
                Assert.True(before.After(SpotSight.NoneLeft).LakeChanceShare > before.LakeChanceShare);
                Assert.True(before.After(SpotSight.Pale).LakeChanceShare < before.LakeChanceShare);
            }
        Assert.All(SpotBelief.Before(null, "low").ChanceShares, c => Assert.Equal(0.25, c));
        Assert.Throws<ArgumentException>(() => SpotBelief.Before(SpotStrength.Weak, "much"));
        Assert.Throws<ArgumentException>(() => SpotBelief.Of([0, 0, 0, 0]));
    }

    /// <summary>A second drop of the same liquor says less than the first, a doubtful row less than a clean one, and a drop in which nothing fell does not take the place of the first.</summary>
    [Fact]
    public void Repeats_and_doubtful_rows_count_less()
    {
        SpotBelief before = SpotBelief.Before(SpotStrength.Weak, "medium");
        double once = before.AfterAll([(SpotSight.NoneLeft, false)]).LakeChanceShare, twice = before.AfterAll([(SpotSight.NoneLeft, false), (SpotSight.NoneLeft, false)]).LakeChanceShare;
        Assert.True(once < twice && twice < before.After(SpotSight.NoneLeft).After(SpotSight.NoneLeft).LakeChanceShare);
        Assert.InRange(before.AfterAll([(SpotSight.NoneLeft, true)]).LakeChanceShare, before.LakeChanceShare, once);
        Assert.Equal(once, before.AfterAll([(SpotSight.Nothing, false), (SpotSight.NoneLeft, false)]).LakeChanceShare, 1e-12);
    }

    /// <summary>Beer's law: a liquor thinned to a quarter absorbs a quarter in every band.</summary>
    [Fact]
    public void What_is_left_follows_Beers_law()
    {
        double[] liquor = [0.1, 0.5, 0.9];
        Assert.Equal(0.25, SpotColour.LeftShare([0.025, 0.125, 0.225], liquor), 1e-12);
        Assert.Equal(0, SpotColour.LeftShare([0, 0, 0], liquor));
        Assert.Equal(SpotSight.NoneLeft, SpotColour.Of([0.1, 0.6, 0.7], [0.01, 0.05, 0.09], liquor));
        Assert.Equal(SpotSight.SomeLeft, SpotColour.Of([0.1, 0.6, 0.7], [0.03, 0.15, 0.27], liquor));
        Assert.Equal(SpotSight.MostLeft, SpotColour.Of([0.1, 0.6, 0.7], [0.09, 0.45, 0.8], liquor));
        Assert.Equal(SpotSight.Pale, SpotColour.Of([0.02, 0.02, 0.05], [0.09, 0.45, 0.8], liquor));
        Assert.Equal(SpotSight.Nothing, SpotColour.Of(null, [0.1, 0.5, 0.9], liquor));
    }

    private static int Draw(IReadOnlyList<double> shares, SeededRandom random)
    {
        double u = random.NextFraction();
        for (int i = 0; i < shares.Count; i++)
            if ((u -= shares[i]) < 0) return i;
        return shares.Count - 1;
    }
}
