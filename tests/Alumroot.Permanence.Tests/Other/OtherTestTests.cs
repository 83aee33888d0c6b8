using Alumroot.Permanence.Published;
using Alumroot.Permanence.OtherTests;

namespace Alumroot.Permanence.Tests.Other;

/// <summary>The other tests: formulas of the standards, from memory, with values reckoned by hand.</summary>
public sealed class OtherTestTests
{
    [Theory]
    // ISO 787-2: 5.000 g become 4.550 g: 9 %.
    [InlineData("moisture", new[] { 5.0, 4.55 }, 9.0)]
    // ISO 787-3: 0.04 g from 100 mL of 250, of 10 g: 1 %.
    [InlineData("soluble-hot", new[] { 10.0, 0.04 }, 1.0)]
    // ISO 787-14: the blank taken off.
    [InlineData("conductivity", new[] { 350.0, 12.0 }, 338.0)]
    [InlineData("residue", new[] { 0.05, 10.0 }, 0.5)]
    // ISO 787-10: 2 g push out 1 g of a liquid of 0.8 g/mL, 1.25 mL: 1.6 g/cm3.
    [InlineData("density", new[] { 2.0, 20.0, 21.0, 0.8 }, 1.6)]
    // ASTM D281: 3.6 mL for 5 g: 93 x 3.6 / 5.
    [InlineData("oil-absorption", new[] { 3.6, 5.0 }, 66.96)]
    // ISO 787-24 with K/S of 50 % (0.25), 40 % (0.45) and a white of 90 % (0.005556).
    [InlineData("strength", new[] { 50.0, 40.0, 90.0 }, 55.0)]
    [InlineData("hiding", new[] { 30.0, 80.0 }, 37.5)]
    // ISO 105-A03: 4.3 is grade 4, 34.1 grade 1; 5.15 lies half way from 4 to 3-4.
    [InlineData("bleed-water", new[] { 4.3 }, 4.0)]
    [InlineData("bleed-oil", new[] { 34.1 }, 1.0)]
    [InlineData("bleed-alcohol", new[] { 5.15 }, 3.75)]
    [InlineData("lifting", new[] { 40.0, 10.0 }, 75.0)]
    [InlineData("ph", new[] { 6.8 }, 6.8)]
    public void Results_are_those_reckoned_by_hand(string key, double[] values, double result) => Assert.Equal(result, OtherTest.Find(key)!.Reckon(values)!.Value, 0.02);

    [Theory]
    [InlineData("moisture", new[] { 4.0, 5.0 })]
    [InlineData("residue", new[] { 0.1, 0.0 })]
    [InlineData("density", new[] { 2.0, 20.0, 22.0, 0.8 })]
    [InlineData("soluble-hot", new[] { 1.0, 0.9 })]
    [InlineData("conductivity", new[] { 10.0, 40.0 })]
    public void Values_that_cannot_be_give_no_result(string key, double[] values) => Assert.Null(OtherTest.Find(key)!.Reckon(values));

    [Fact]
    public void Every_test_has_steps_inputs_a_meaning_for_any_result_and_a_formula()
    {
        Assert.Equal(19, OtherTest.All.Count);
        Assert.Equal(OtherTest.All.Count, OtherTest.All.Select(t => t.Key).Distinct().Count());
        Assert.All(OtherTest.All, test =>
        {
            Assert.True(test.Steps.Count >= 2, test.Key);
            Assert.Equal(test.Bands.Select(b => b.Upto).Order(), test.Bands.Select(b => b.Upto));
            Assert.True(double.IsInfinity(test.Bands[^1].Upto), test.Key);
            foreach (double result in new[] { 0, 0.5, 3, 50, 1e6 }) Assert.NotEmpty(test.Meaning(result));
            _ = test.Reckon([.. test.Inputs.Where(i => !i.IsColour).Select((_, i) => 2.0 / (i + 1)), .. test.Inputs.Any(i => i.IsColour) ? (double[])[3.0] : []]);
        });
    }

    [Fact]
    public void Published_findings_name_their_source_and_own_ones_come_first()
    {
        Assert.All(PublishedFinding.All, f => Assert.True(f.Source.Length > 0 && f.Finding.EndsWith('.') && (f.ClassLow ?? 1) <= (f.ClassHigh ?? 8)));
        IReadOnlyList<PublishedFinding> madder = PublishedFinding.About("madder");
        Assert.False(madder[0].IsGeneral);
        Assert.True(madder[^1].IsGeneral);
        Assert.DoesNotContain(PublishedFinding.About(null), f => !f.IsGeneral);
    }
}
