using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Verbs;
using Alumroot.App.Words;

namespace Alumroot.App.Tests.Recipes;

/// <summary>Published recipes against the plan. The source of each claim stands in its row.</summary>
public sealed class RecipeTests
{
    public static TheoryData<int> Claims => [.. Enumerable.Range(0, RecipeClaim.All.Count)];

    [Theory]
    [MemberData(nameof(Claims))]
    public void A_claim_is_met_or_its_miss_is_on_record(int row)
    {
        RecipeClaim claim = RecipeClaim.All[row];
        string? quarrel = claim.Quarrel(PlanMaker.Answer(claim.Request()));
        if (claim.KnownMiss.Length == 0) Assert.True(quarrel is null, quarrel);
        else Assert.True(quarrel is not null, $"{claim.Recipe}: {claim.Check} is met now; take its known_miss away.");
    }

    /// <summary>A miss is never added in silence: this list changes with it.</summary>
    [Fact]
    public void The_misses_on_record_are_these() => Assert.Equal(["madder-cold-beaten yield-g"], RecipeClaim.All.Where(c => c.KnownMiss.Length > 0).Select(c => $"{c.Recipe} {c.Check}"));

    [Fact]
    public void Every_claim_names_a_source_that_is_listed() =>
        Assert.All(RecipeClaim.All, c => Assert.Contains(SourceList.All, s => s.Key == c.Source));

    /// <summary>Claims made wrong on purpose: a check that cannot fail is none.</summary>
    [Theory]
    [InlineData("end-ph", "2..3")]
    [InlineData("start-ph", "7..8")]
    [InlineData("alkali", "20..30")]
    [InlineData("base-per-metal", "3.5")]
    [InlineData("just-hydroxide", "5")]
    [InlineData("all-gas-l", "9")]
    [InlineData("yield-g", "0.5")]
    [InlineData("gas-gone-above", "11")]
    [InlineData("dissolved-least-percent", "50")]
    [InlineData("solid", "Gypsum")]
    [InlineData("finding", "alkali-too-much")]
    [InlineData("no-finding", "froth")]
    [InlineData("mix-up", "soda-crystals")]
    [InlineData("refused", "Lead acetate")]
    [InlineData("no-such-check", "1")]
    public void A_wrong_claim_is_noticed(string check, string expected)
    {
        RecipeClaim wrong = RecipeClaim.Read($"recipe,plan,check,expected,remark,source,known_miss\nwrong,water=1 L; salt=potash-alum; salt-amount=20 g; alkali=soda-ash; alkali-amount=6.5 g; temp=20 C,{check},{expected},,computed,\n").Single();
        Assert.NotNull(wrong.Quarrel(PlanMaker.Answer(wrong.Request())));
    }

    [Fact]
    public async Task A_refused_recipe_gives_no_digit_of_an_amount()
    {
        RecipeClaim[] refused = [.. RecipeClaim.All.Where(c => c.Check == "refused")];
        Assert.Equal(3, refused.Length);
        foreach (RecipeClaim claim in refused)
        {
            string[] words = ["plan", .. claim.Plan.Split(';').SelectMany(p => p.Trim().Split('=', 2) is var f ? new[] { "--" + f[0], f[1] } : [])];
            using var data = new StringWriter();
            using var messages = new StringWriter();
            int code = await CommandLine.RunAsync(words, new Channels(data, messages), TestContext.Current.CancellationToken);
            Assert.Equal(ExitCode.CannotBeMet, code);
            Assert.StartsWith("Will not plan with", messages.ToString(), StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\d", data.ToString() + messages);
        }
    }
}
