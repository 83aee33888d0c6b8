using System.Globalization;
using Alumroot.Numerics;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Design;
using MathNet.Numerics.LinearRegression;

namespace Alumroot.Trials.Tests;

/// <summary>Effects against a published analysis, against a general library, and against hidden truths.</summary>
public sealed class EffectTests
{
    // NIST/SEMATECH e-Handbook 5.6.1, eddy current probe: 2^3 in standard order; effects and residual deviations as printed on pages 5.6.1.5 and 5.6.1.6.
    private static readonly double[] Probe = [1.70, 4.57, 0.55, 3.39, 1.51, 4.59, 0.67, 4.29];

    private static FactorColumn Signs(string name, int bit, int count) => Numbers(name, [.. Enumerable.Range(0, count).Select(i => (i >> bit & 1) == 0 ? -1.0 : 1.0)]);

    private static FactorColumn Numbers(string name, double[] values) => new(name, values, [.. values.Select(v => v.ToString(CultureInfo.InvariantCulture))]);

    private static FactorColumn Names(string name, string[] values) => new(name, null, values);

    [Fact]
    public void The_handbooks_effects_are_found()
    {
        ResponseFound found = EffectAnalysis.Of(new TrialData([Signs("1", 0, 8), Signs("2", 1, 8), Signs("3", 2, 8)], null), new Response("sensitivity", Probe));
        Assert.Equal(2.65875, found.Mean.Value, 9);
        // The first two as printed; the others by hand from the data.
        Assert.Equal([3.1025, -0.8675, 0.2125, 0.1275, 0.2475, 0.2975], found.Effects.Select(e => Math.Round(e.Change.Value, 9)));
        Assert.Equal(ScatterFrom.SmallEffects, found.From);
        Assert.Equal([Verdict.Sure, Verdict.CannotTell, Verdict.CannotTell, Verdict.CannotTell, Verdict.CannotTell, Verdict.CannotTell], found.Effects.Select(e => e.Verdict));
    }

    // The pilot plant of Box, Hunter and Hunter 1978, Statistics for Experimenters, chapter 10 (from memory): temperature and concentration lie along ranges, the catalysts have names.
    // A product has its sign from the first setting of each to its second, whichever kind they are.
    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void Products_have_the_printed_sign_for_ranges_and_names_alike(bool heatNamed, bool catalystNamed)
    {
        FactorColumn Of(string name, int bit, bool named) => named ? Names(name, [.. Enumerable.Range(0, 8).Select(i => (i >> bit & 1) == 0 ? "A" : "B")]) : Signs(name, bit, 8);
        ResponseFound found = EffectAnalysis.Of(new TrialData([Of("T", 0, heatNamed), Signs("C", 1, 8), Of("K", 2, catalystNamed)], null), new Response("yield", [60, 72, 54, 68, 52, 83, 45, 80]));
        Assert.Equal([23, -5, 1.5, 1.5, 10, 0], found.Effects.Select(e => Math.Round(e.Change.Value, 9) + 0.0));
    }

    [Theory]
    [InlineData(1, 0.57272)]
    [InlineData(2, 0.30429)]
    public void The_handbooks_residual_deviations_are_found(int factors, double deviation)
    {
        ResponseFound found = EffectAnalysis.Of(new TrialData([.. Enumerable.Range(0, factors).Select(i => Signs($"{i + 1}", i, 8))], null), new Response("sensitivity", Probe), products: false);
        // Jars alike in the factors that are left count as replicates, so the deviation is that of the pure scatter for two factors.
        double rest = Math.Sqrt(Rest(factors) / (8 - factors - 1));
        Assert.Equal(deviation, rest, 5);
        Assert.True(found.Scatter > 0);
    }

    private static double Rest(int factors)
    {
        double[][] columns = [[.. Enumerable.Repeat(1.0, 8)], .. Enumerable.Range(0, factors).Select(f => Enumerable.Range(0, 8).Select(i => (i >> f & 1) == 0 ? -1.0 : 1.0).ToArray())];
        return new OrderedLeastSquares(columns).Rest(Probe).Sum(r => r * r);
    }

    [Fact]
    public void Unbalanced_measured_factors_agree_with_a_general_library()
    {
        var random = new SeededRandom(3);
        double[] x = [.. Enumerable.Range(0, 17).Select(_ => 20 + 60 * random.NextFraction())], z = [.. x.Select(v => 0.02 * v + random.NextFraction())], y = [.. x.Select((v, i) => 3 + 0.1 * v - 2 * z[i] + random.NextNormal())];
        ResponseFound found = EffectAnalysis.Of(new TrialData([Numbers("x", x), Numbers("z", z)], null), new Response("y", y), products: false);
        double[] Code(double[] v) => [.. v.Select(a => 2 * (a - v.Min()) / (v.Max() - v.Min()) - 1)];
        double[] cx = Code(x), cz = Code(z);
        double mx = cx.Select(a => a * a).Average(), mz = cz.Select(a => a * a).Average();
        double[] b = MultipleRegression.QR([.. x.Select((_, i) => new[] { cx[i], cz[i], cx[i] * cx[i] - mx, cz[i] * cz[i] - mz })], y, intercept: true);
        Assert.Equal([2 * b[1], 2 * b[2], -b[3], -b[4]], found.Effects.Select(e => e.Change.Value), (a, c) => Math.Abs(a - c) < 1e-9);
    }

    [Fact]
    public void Deviations_of_names_sum_to_nothing_and_a_hidden_one_is_found()
    {
        var random = new SeededRandom(5);
        string[] salts = [.. Enumerable.Range(0, 24).Select(i => new[] { "alum", "iron", "tin" }[i % 3])];
        double[] y = [.. salts.Select(s => (s == "tin" ? 6 : 0) + random.NextNormal())];
        ResponseFound found = EffectAnalysis.Of(new TrialData([Names("salt", salts)], null), new Response("chroma", y));
        Assert.Equal(0, found.Effects.Sum(e => e.Change.Value), 9);
        Assert.Equal(ScatterFrom.Replicates, found.From);
        Effect tin = found.Effects.Single(e => e.Setting == "tin");
        Assert.Equal(Verdict.Sure, tin.Verdict);
        Assert.InRange(4, tin.Change.Low, tin.Change.High);
    }

    [Fact]
    public void Spans_hold_nine_times_in_ten()
    {
        int held = 0, all = 0;
        for (ulong seed = 1; seed <= 400; seed++)
        {
            var random = new SeededRandom(seed * 101);
            double[] truth = [.. Enumerable.Range(0, 4).Select(_ => 3 * random.NextNormal())];
            double[] y = [.. Enumerable.Range(0, 16).Select(i => Enumerable.Range(0, 4).Sum(f => truth[f] / 2 * ((i >> f & 1) == 0 ? -1 : 1)) + random.NextNormal())];
            ResponseFound found = EffectAnalysis.Of(new TrialData([.. Enumerable.Range(0, 4).Select(f => Signs($"{f}", f, 16))], null), new Response("y", y));
            for (int f = 0; f < 4; f++, all++) if (found.Effects[f].Change.Low <= truth[f] && truth[f] <= found.Effects[f].Change.High) held++;
        }
        Assert.InRange(held / (double)all, 0.87, 0.93);
    }

    [Fact]
    public void Where_nothing_is_left_over_the_small_effects_give_spans_that_hold()
    {
        TrialDesign design = Assert.IsType<DesignOutcome.Made>(Designer.Design(new TrialRequest([.. Enumerable.Range(0, 7).Select(i => new Factor.Named($"f{i}", ["a", "b"]))], TrialKind.Fraction) { Jars = 8 })).Design;
        int held = 0, all = 0;
        for (ulong seed = 1; seed <= 300; seed++)
        {
            var random = new SeededRandom(seed * 77);
            // Two factors act, five do not.
            double[] truth = [6, -5, 0, 0, 0, 0, 0];
            double[] y = [.. design.Jars.Select(j => j.Levels.Select((l, f) => truth[f] / 2 * (l == 0 ? -1 : 1)).Sum() + random.NextNormal())];
            ResponseFound found = EffectAnalysis.Of(new TrialData([.. Enumerable.Range(0, 7).Select(f => Names($"f{f}", [.. design.Jars.Select(j => j.Levels[f] == 0 ? "a" : "b")]))], null), new Response("y", y));
            Assert.Equal(ScatterFrom.SmallEffects, found.From);
            Assert.All(found.Effects, e => Assert.NotEmpty(e.SameAs));
            for (int f = 0; f < 7; f++, all++) if (found.Effects[f].Change.Low <= truth[f] && truth[f] <= found.Effects[f].Change.High) held++;
        }
        Assert.InRange(held / (double)all, 0.86, 0.98);
    }

    [Fact]
    public void A_hue_that_passes_the_seam_is_one_hue()
    {
        ResponseFound found = EffectAnalysis.Of(new TrialData([Signs("pH", 0, 4), Signs("salt", 1, 4)], null), new Response("hue", [352, 8, 354, 10], IsAngle: true), products: false);
        Assert.Equal(1, found.Mean.Value, 6);
        Assert.Equal(16, found.Effects[0].Change.Value, 6);
        Assert.Equal(2, found.Effects[1].Change.Value, 6);
    }

    [Fact]
    public void Blocks_are_taken_out_and_missing_values_passed_over()
    {
        string[] days = ["mon", "mon", "mon", "mon", "tue", "tue", "tue", "tue"];
        double[] y = [1, 3, 1, 3, 11, 13, 11, double.NaN];
        ResponseFound found = EffectAnalysis.Of(new TrialData([Signs("heat", 0, 8), Signs("salt", 1, 8)], days), new Response("yield", y), products: false);
        Assert.Equal(7, found.JarCount);
        Assert.Equal(2, found.Effects[0].Change.Value, 9);
        Assert.Equal(0, found.Effects[1].Change.Value, 9);
    }

    [Fact]
    public void A_bend_is_the_height_of_the_middle()
    {
        double[] ph = [5, 6, 7, 5, 6, 7], y = [10, 14, 12, 10.2, 14.2, 12.2];
        ResponseFound found = EffectAnalysis.Of(new TrialData([Numbers("pH", ph)], null), new Response("chroma", y));
        Assert.Equal(2, found.Effects[0].Change.Value, 9);
        Effect bend = found.Effects.Single(e => e.IsBend);
        Assert.Equal(3, bend.Change.Value, 9);
    }
}
