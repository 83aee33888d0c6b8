using System.Text.RegularExpressions;

namespace Alumroot.Catalogue.Tests;

public partial class SafetyTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;

    [Fact]
    public void Caution_texts_keep_the_rules_of_the_house() =>
        Assert.All(Data.Cautions, c =>
        {
            Assert.InRange(SentenceEnd().Count(c.Text), 1, 2);
            Assert.DoesNotMatch(@"(?i)!|\berror|\binvalid|\bplease|\boops", c.Text);
            Assert.Equal(Placeholder().Matches(c.Text).Select(m => m.Groups[1].Value).Order(), c.Placeholders.Order());
        });

    [Fact]
    public void Refusals_bear_no_amounts() =>
        Assert.All(Data.Cautions.Where(c => c.Severity == Severity.Refuse), c =>
        {
            Assert.StartsWith("Will not plan with", c.Text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\d+(\.\d+)? ?(g|mL|L)\b", c.Text);
        });

    [Fact]
    public void Strengths_of_one_substance_neither_gape_nor_overlap()
    {
        foreach (string key in (string[])["ammonia", "vinegar"])
        {
            Hazard[] rows = [.. Data.HazardsOf(key).OrderBy(h => h.StrengthFromPercent)];
            Assert.Equal(0, rows[0].StrengthFromPercent);
            Assert.Equal(100, rows[^1].StrengthBelowPercent);
            for (int i = 1; i < rows.Length; i++) Assert.Equal(rows[i - 1].StrengthBelowPercent, rows[i].StrengthFromPercent);
        }
    }

    [Theory]
    [InlineData(0, "ammonia-below-1")]
    [InlineData(9.9, "ammonia-5-10")]
    [InlineData(10, "ammonia-10-25")]
    [InlineData(100, "ammonia-25-up")]
    public void One_row_holds_at_a_strength(double percent, string key) =>
        Assert.Equal(key, Assert.Single(Data.HazardsOf("ammonia", percent)).Key);

    [Fact]
    public void Strong_ammonia_is_refused_and_household_ammonia_is_not()
    {
        Assert.Equal(Stance.Refused, Assert.Single(Data.HazardsOf("ammonia", 30)).Stance);
        Assert.NotEqual(Stance.Refused, Assert.Single(Data.HazardsOf("ammonia", 5)).Stance);
    }

    [Fact]
    public void Workplace_limits_are_those_of_the_pocket_guide()
    {
        // NIOSH Pocket Guide: ammonia 25 ppm and 35 ppm short term; carbon dioxide 5000 and 30000 ppm.
        Hazard ammonia = Data.FindHazard("ammonia-5-10")!;
        Assert.Equal((25, 35), (ammonia.LimitPpm, ammonia.ShortTermLimitPpm));
        Hazard gas = Data.FindHazard("carbon-dioxide")!;
        Assert.Equal((5000, 30000), (gas.LimitPpm, gas.ShortTermLimitPpm));
    }

    [Fact]
    public void Short_term_limits_are_not_below_the_daily_ones() =>
        Assert.All(Data.Hazards, h =>
        {
            Assert.True(h.ShortTermLimitPpm is not { } ppm || ppm >= h.LimitPpm, h.Key);
            Assert.True(h.ShortTermLimitMilligramsPerCubicMetre is not { } mass || mass >= h.LimitMilligramsPerCubicMetre, h.Key);
        });

    [Fact]
    public void Hazard_codes_are_codes_of_the_regulation() =>
        Assert.All(Data.Hazards.Where(h => h.HazardCodes.Length > 0), h => Assert.Matches(@"\b(H[234]\d\d|EUH\d{3})", h.HazardCodes));

    [Fact]
    public void Every_waste_says_whom_to_ask_and_where_never() =>
        Assert.All(Data.Waste, w =>
        {
            Assert.NotEmpty(w.AskFirst);
            Assert.NotEmpty(w.Never);
            Assert.True(w.LeastSolublePh is not { } ph || (ph.Low >= 4 && ph.High <= 12), w.Key);
        });

    [GeneratedRegex(@"[.?](\s|$)")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Placeholder();
}
