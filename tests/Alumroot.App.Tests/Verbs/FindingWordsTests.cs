using System.Text.RegularExpressions;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Tests.Verbs;

/// <summary>The sentences of findings. They are kept whole, so that a change of words is seen and meant.</summary>
public sealed partial class FindingWordsTests
{
    private static readonly string[] NotSaid = ["error", "invalid", "please", "oops", "!"];

    [Fact]
    public void There_are_words_for_every_finding_a_plan_can_make_and_for_no_other()
    {
        string source = File.ReadAllText(Path.Combine(Folder.Repository, "src/Alumroot.Chemistry/Planning/PlanFindings.cs"));
        string[] made = [.. Said().Matches(source).Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal)];
        Assert.True(made.Length > 15, "The findings were not found in their source.");
        Assert.Equal(made, FindingWords.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_sentences_are_the_ones_agreed_upon()
    {
        LakePlan plan = Plans.Madder.Plan! with { EndPh = new Estimate(9, 8.2, 9.4) };
        string now = string.Join("\n", FindingWords.Keys.Select(key => $"{key}: {FindingWords.Of(Made(key), plan)}")) + "\n";
        Golden.Same("findings.txt", now);
    }

    [Fact]
    public void A_message_is_two_sentences_at_most_and_blames_nobody()
    {
        foreach (string key in FindingWords.Keys)
        {
            string text = FindingWords.Of(Made(key), Plans.Madder.Plan!);
            Assert.EndsWith(".", text, StringComparison.Ordinal);
            Assert.InRange(SentenceEnd().Count(text), 1, 2);
            Assert.All(NotSaid, word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void A_finding_without_words_is_not_passed_over() =>
        Assert.Throws<ArgumentException>(() => FindingWords.Of(Made("unheard-of"), Plans.Madder.Plan!));

    private static Finding Made(string key) => new(key, FindingLevel.Mind, new Dictionary<string, double>(StringComparer.Ordinal)
    {
        ["vessel_l"] = 5,
        ["least_l"] = 14.7,
        ["liquid_l"] = 3.34,
        ["parts"] = 3,
        ["stated_ph"] = 6.5,
        ["step"] = 0.5,
        ["ph"] = 9.04,
        ["ph_low"] = 3.2,
        ["ph_high"] = 4.2,
        ["alkali"] = 30,
        ["ratio"] = 1.72,
        ["base_per_metal"] = 5.4,
        ["alkali_needed"] = 17.4,
        ["dissolved_percent"] = 22.3,
        ["percent"] = 12.4,
        ["percent_high"] = 31,
        ["held"] = 5.5,
        ["gone"] = 7.6,
        ["gas_l"] = 4.78,
        ["per_tenth_g"] = 0.05,
        ["scale_g"] = 0.1,
        ["per_half"] = 0.23,
        ["celsius"] = 60,
        ["ionic_strength"] = 0.62,
        ["dry_g"] = 4,
        ["water_us"] = 462,
        ["aim_us"] = 200,
        ["salt_g"] = 3,
        ["water_ml"] = 150,
        ["degrees"] = 42,
    });

    [GeneratedRegex("Say\\(\"([a-z-]+)\"")]
    private static partial Regex Said();

    [GeneratedRegex(@"\.(?= |$)")]
    private static partial Regex SentenceEnd();
}
