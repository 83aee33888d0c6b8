using System.Numerics;
using Alumroot.Trials.Design;
using CsCheck;

namespace Alumroot.Trials.Tests;

/// <summary>Designs against published tables and against what defines them.</summary>
public sealed class DesignTests
{
    private static TrialRequest Two(int factors, TrialKind kind, int? jars = null) =>
        new([.. Enumerable.Range(0, factors).Select(i => new Factor.Named($"f{i}", ["low", "high"]))], kind) { Jars = jars };

    private static TrialDesign Made(TrialRequest request) => Assert.IsType<DesignOutcome.Made>(Designer.Design(request)).Design;

    // Dataplot's reference file DEXRES4.TXT (NIST): the least number of runs for resolution IV and higher.
    [Theory]
    [InlineData(4, 8)]
    [InlineData(5, 16)]
    [InlineData(6, 16)]
    [InlineData(7, 16)]
    [InlineData(8, 16)]
    [InlineData(9, 32)]
    [InlineData(10, 32)]
    [InlineData(11, 32)]
    public void The_least_jars_of_resolution_four_are_those_of_the_published_table(int factors, int runs)
    {
        Assert.True(Made(Two(factors, TrialKind.Fraction, runs)).Resolution >= 4);
        if ((1 << BitOperations.Log2((uint)runs / 2)) - 1 >= factors) Assert.Equal(3, Made(Two(factors, TrialKind.Fraction, runs / 2)).Resolution);
    }

    // NIST/SEMATECH e-Handbook 5.3.3.4.7, summary table of two-level fractions (from memory).
    [Theory]
    [InlineData(3, 4, 3)]
    [InlineData(5, 16, 5)]
    [InlineData(5, 8, 3)]
    [InlineData(6, 32, 6)]
    [InlineData(7, 8, 3)]
    [InlineData(7, 32, 4)]
    [InlineData(8, 64, 5)]
    public void Resolutions_are_those_of_the_handbook(int factors, int runs, int resolution) => Assert.Equal(resolution, Made(Two(factors, TrialKind.Fraction, runs)).Resolution);

    // The same table: 2^(7-2) of least aberration has one word of four and two of five; 2^(6-2) three of four.
    [Theory]
    [InlineData(7, 5, new[] { 0, 0, 0, 0, 1, 2, 0, 0 })]
    [InlineData(6, 4, new[] { 0, 0, 0, 0, 3, 0, 0 })]
    [InlineData(5, 3, new[] { 0, 0, 0, 2, 1, 0 })]
    public void Words_are_those_of_least_aberration(int factors, int basis, int[] lengths) => Assert.Equal(lengths, FractionSearch.WordLengths(FractionSearch.Generators(factors, basis)!, basis));

    [Fact]
    public void What_is_mixed_up_is_told_and_is_true()
    {
        TrialDesign design = Made(Two(5, TrialKind.Fraction, 8));
        Assert.NotEmpty(design.Aliases);
        foreach (IReadOnlyList<IReadOnlyList<int>> group in design.Aliases)
        {
            int[] first = Signs(design, group[0]);
            foreach (IReadOnlyList<int> other in group.Skip(1)) Assert.Single(Signs(design, other).Zip(first, (a, b) => a * b).Distinct());
        }
        // Nothing else among single factors and pairs is the same.
        int[][] effects = [.. Enumerable.Range(0, 5).Select(i => new[] { i }), .. Enumerable.Range(0, 5).SelectMany(i => Enumerable.Range(i + 1, 4 - i).Select(j => new[] { i, j }))];
        foreach (int[] a in effects)
            foreach (int[] b in effects)
                if (a != b && Signs(design, a).Zip(Signs(design, b), (x, y) => x * y).Distinct().Count() == 1)
                    Assert.Contains(design.Aliases, g => g.Any(e => e.SequenceEqual(a)) && g.Any(e => e.SequenceEqual(b)));
    }

    [Fact]
    public void Every_full_trial_holds_each_combination_once_in_an_order_by_lot() => Gen.Select(Gen.Int[2, 4].Array[1, 4], Gen.ULong).Sample((levels, seed) =>
    {
        TrialDesign design = Made(new TrialRequest([.. levels.Select((n, i) => new Factor.Named($"f{i}", [.. Enumerable.Range(0, n).Select(l => $"{l}")]))], TrialKind.Full) { Seed = seed });
        Assert.Equal(levels.Aggregate(1, (a, b) => a * b), design.Jars.Select(j => string.Join(' ', j.Levels)).Distinct().Count());
        Assert.Equal(Enumerable.Range(1, design.Jars.Count), design.Jars.Select(j => j.Order));
    });

    [Fact]
    public void In_a_latin_square_each_name_stands_once_in_each_row_and_column() => Gen.Select(Gen.Int[2, 8], Gen.ULong).Sample((n, seed) =>
    {
        Factor Of(string name) => new Factor.Named(name, [.. Enumerable.Range(0, n).Select(l => $"{l}")]);
        TrialDesign design = Made(new TrialRequest([Of("day"), Of("place"), Of("salt")], TrialKind.LatinSquare) { Seed = seed });
        Assert.Equal(n * n, design.Jars.Count);
        foreach (int fixedFactor in new[] { 0, 1 })
            Assert.All(design.Jars.GroupBy(j => j.Levels[fixedFactor]), g => Assert.Equal(n, g.Select(j => j.Levels[2]).Distinct().Count()));
    });

    // Hadamard's bound: no design of two-level factors tells more than one with orthogonal columns, whose efficiency is 1.
    [Theory]
    [InlineData(3, 4, false)]
    [InlineData(7, 8, false)]
    [InlineData(3, 8, true)]
    [InlineData(4, 16, true)]
    public void The_best_choice_finds_the_orthogonal_one_where_there_is_one(int factors, int jars, bool interactions) =>
        Assert.Equal(1, Made(Two(factors, TrialKind.Best, jars) with { Interactions = interactions }).EfficiencyRatio!.Value, 9);

    [Fact]
    public void Forbidden_pairs_never_come_together_and_all_effects_stay_apart()
    {
        var request = new TrialRequest(
            [new Factor.Named("salt", ["alum", "tin", "iron"]), new Factor.Measured("pH", [5, 6, 7], ""), new Factor.Named("order", ["salt first", "alkali first"])], TrialKind.Best)
        {
            Forbidden = [new ForbiddenPair(0, 1, 1, 2), new ForbiddenPair(0, 2, 2, 1)],
            Interactions = false,
            Jars = 10,
        };
        TrialDesign design = Made(request);
        Assert.Equal(10, design.Jars.Count);
        Assert.DoesNotContain(design.Jars, j => (j.Levels[0] == 1 && j.Levels[1] == 2) || (j.Levels[0] == 2 && j.Levels[2] == 1));
        double[][] columns = Columns([.. design.Jars.Select(j => ModelColumns.Row(request.Factors, j.Levels, false))]);
        Assert.Equal(columns.Length, new Numerics.OrderedLeastSquares(columns).Kept.Count);
        Assert.Equal(design.Jars.Select(j => string.Join(' ', j.Levels)), Made(request).Jars.Select(j => string.Join(' ', j.Levels)));
    }

    // Box, Hunter and Hunter (from memory): 2^3 in two blocks hides the product of three only; 2^4 in four blocks must hide one product of two at least.
    [Theory]
    [InlineData(3, 2, 0)]
    [InlineData(4, 2, 0)]
    [InlineData(4, 4, 1)]
    [InlineData(5, 4, 0)]
    public void Blocks_hide_what_matters_least(int factors, int blocks, int pairs)
    {
        TrialDesign design = Made(Two(factors, TrialKind.Full) with { Blocks = blocks });
        Assert.Equal(pairs, design.HiddenByBlocks.Count);
        Assert.All(design.Jars.GroupBy(j => j.Block), g => Assert.Equal(design.Jars.Count / blocks, g.Count()));
        Assert.Equal(design.Jars.Select(j => j.Block).Order(), design.Jars.Select(j => j.Block));
        for (int f = 0; f < factors; f++)
            Assert.All(design.Jars.GroupBy(j => j.Block), g => Assert.Equal(g.Count() / 2, g.Count(j => j.Levels[f] == 0)));
    }

    [Theory]
    [InlineData(TrialKind.Fraction, 10, 8, DesignRefusal.TooFewJars)]
    [InlineData(TrialKind.Full, 10, null, DesignRefusal.TooManyJars)]
    [InlineData(TrialKind.LatinSquare, 2, null, DesignRefusal.NeedsSquare)]
    [InlineData(TrialKind.Best, 3, 3, DesignRefusal.TooFewJars)]
    [InlineData(TrialKind.Full, 13, null, DesignRefusal.FactorCount)]
    public void What_cannot_be_designed_is_refused_with_its_reason(TrialKind kind, int factors, int? jars, DesignRefusal why) =>
        Assert.Equal(why, Assert.IsType<DesignOutcome.Refused>(Designer.Design(Two(factors, kind, jars))).Why);

    private static int[] Signs(TrialDesign design, IReadOnlyList<int> of) => [.. design.Jars.Select(j => of.Aggregate(1, (s, f) => s * (j.Levels[f] == 0 ? -1 : 1)))];

    private static double[][] Columns(double[][] rows) => [.. Enumerable.Range(0, rows[0].Length).Select(c => rows.Select(r => r[c]).ToArray())];
}
