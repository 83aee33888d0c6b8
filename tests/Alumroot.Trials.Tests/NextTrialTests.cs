using System.Globalization;
using Alumroot.Numerics;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Learning;

namespace Alumroot.Trials.Tests;

/// <summary>The next jar, on published test functions with known least values and on made-up recipes.</summary>
public sealed class NextTrialTests
{
    // Branin: least value 0.397887 (Dixon and Szego 1978, Towards Global Optimisation 2; from memory).
    private static double Branin(double x, double y) =>
        Math.Pow(y - 5.1 / (4 * Math.PI * Math.PI) * x * x + 5 / Math.PI * x - 6, 2) + 10 * (1 - 1 / (8 * Math.PI)) * Math.Cos(x) + 10;

    // Hartmann with three factors: least value -3.86278 (the same book).
    private static double Hartmann(double[] x)
    {
        double[] c = [1, 1.2, 3, 3.2];
        double[,] a = { { 3, 10, 30 }, { 0.1, 10, 35 }, { 3, 10, 30 }, { 0.1, 10, 35 } };
        double[,] p = { { 0.3689, 0.1170, 0.2673 }, { 0.4699, 0.4387, 0.7470 }, { 0.1091, 0.8732, 0.5547 }, { 0.0381, 0.5743, 0.8828 } };
        return -Enumerable.Range(0, 4).Sum(i => c[i] * Math.Exp(-Enumerable.Range(0, 3).Sum(j => a[i, j] * Math.Pow(x[j] - p[i, j], 2))));
    }

    [Fact]
    public void Branins_least_value_is_found_in_thirty_jars() => Assert.True(Least(2, 8, 22, x => Branin(-5 + 15 * x[0], 15 * x[1])) < 0.397887 + 0.25);

    [Fact]
    public void Hartmanns_least_value_is_nearly_found_in_forty_jars() => Assert.True(Least(3, 10, 30, Hartmann) < -3.7);

    private static double Least(int factors, int first, int more, Func<double[], double> function)
    {
        double[,] spread = LatinHypercube.Make(first, factors, 4);
        var rows = new List<double[]>();
        // The ends belong to the rows, so that the whole range is open.
        rows.Add([.. Enumerable.Repeat(0.0, factors)]);
        rows.Add([.. Enumerable.Repeat(1.0, factors)]);
        for (int i = 2; i < first; i++) rows.Add([.. Enumerable.Range(0, factors).Select(d => spread[i, d])]);
        for (int i = 0; i < more; i++)
        {
            var response = new Response("loss", [.. rows.Select(function)]);
            NextFound next = NextTrial.Propose(Data(rows), [response], [v => v[0]], seed: (ulong)i + 1)!;
            rows.Add([.. next.Next.Settings.Select(s => s.Number!.Value)]);
        }
        return rows.Min(function);
    }

    private static TrialData Data(IReadOnlyList<double[]> rows) =>
        new([.. Enumerable.Range(0, rows[0].Length).Select(d => new FactorColumn($"x{d}", [.. rows.Select(r => r[d])], [.. rows.Select(r => r[d].ToString(CultureInfo.InvariantCulture))]))], null);

    private static TrialData Recipes(int count, ulong seed, out double[] chroma, out double[] yield)
    {
        var random = new SeededRandom(seed);
        double[] ph = [.. Enumerable.Range(0, count).Select(_ => Math.Round(5 + 3 * random.NextFraction(), 1))];
        string[] salt = [.. Enumerable.Range(0, count).Select(i => i % 2 == 0 ? "alum" : "tin")];
        chroma = [.. ph.Select((p, i) => 40 - 6 * Math.Pow(p - 6.4, 2) + (salt[i] == "tin" ? 5 : 0) + 0.5 * random.NextNormal())];
        yield = [.. ph.Select(p => 10 + 2 * (p - 5) + 0.3 * random.NextNormal())];
        return new TrialData([new FactorColumn("pH", ph, [.. ph.Select(p => p.ToString(CultureInfo.InvariantCulture))]), new FactorColumn("salt", null, salt)], null);
    }

    [Fact]
    public void Five_batches_suffice_and_the_sums_are_the_same_each_time()
    {
        TrialData data = Recipes(5, 2, out double[] chroma, out _);
        NextFound a = NextTrial.Propose(data, [new Response("chroma", chroma)], [v => -v[0]])!, b = NextTrial.Propose(data, [new Response("chroma", chroma)], [v => -v[0]])!;
        Assert.Equal(a.Next.Settings, b.Next.Settings);
        Assert.Equal(a.Next.Loss, b.Next.Loss);
        Assert.Null(NextTrial.Propose(Recipes(3, 2, out double[] few, out _), [new Response("chroma", few)], [v => -v[0]]));
    }

    // Each row stands under its own place in the table, and the summary follows from them by its definition.
    [Fact]
    public void Each_row_is_foretold_from_the_others_under_its_own_place()
    {
        TrialData data = Recipes(12, 5, out double[] chroma, out _);
        chroma[3] = double.NaN;
        Foretold foretold = Assert.Single(NextTrial.Propose(data, [new Response("chroma", chroma)], [v => -v[0]])!.Calibration);
        Assert.Equal([0, 1, 2, 4, 5, 6, 7, 8, 9, 10, 11], foretold.Each.Select(e => e.Row));
        Assert.Equal(Math.Sqrt(foretold.Each.Average(e => Math.Pow(chroma[e.Row] - e.Value.Value, 2))), foretold.Rms, 1e-9);
        Assert.Equal(foretold.Each.Count(e => chroma[e.Row] >= e.Value.Low && chroma[e.Row] <= e.Value.High) / 11.0, foretold.InsideRatio, 1e-9);
    }

    [Fact]
    public void Most_chroma_is_sought_where_it_is()
    {
        TrialData data = Recipes(24, 3, out double[] chroma, out _);
        NextFound found = NextTrial.Propose(data, [new Response("chroma", chroma)], [v => -v[0]])!;
        Assert.Equal("tin", found.Best.Settings.Single(s => s.Factor == "salt").Name);
        Assert.InRange(found.Best.Settings.Single(s => s.Factor == "pH").Number!.Value, 5.9, 6.9);
        Foretold calibration = Assert.Single(found.Calibration);
        Assert.True(calibration.Rms < 0.5 * calibration.ScatterSd);
        Assert.InRange(calibration.InsideRatio, 0.7, 1);
    }

    [Fact]
    public void With_two_aims_no_offered_recipe_is_worse_in_both_than_another()
    {
        TrialData data = Recipes(24, 4, out double[] chroma, out double[] yield);
        NextFound found = NextTrial.Propose(data, [new Response("chroma", chroma), new Response("yield", yield)], [v => -v[0], v => -v[1]])!;
        Assert.True(found.Trade.Count >= 3);
        foreach (RecipeProposal a in found.Trade)
            foreach (RecipeProposal b in found.Trade)
                Assert.False(b.Loss.Value < a.Loss.Value && b.OtherLosses[0].Value < a.OtherLosses[0].Value);
    }

    [Fact]
    public void What_may_not_stand_together_is_never_proposed()
    {
        TrialData data = Recipes(12, 5, out double[] chroma, out _);
        NextFound found = NextTrial.Propose(data, [new Response("chroma", chroma)], [v => -v[0]], allowed: s => s.Single(x => x.Factor == "salt").Name != "tin")!;
        Assert.All(found.Others.Prepend(found.Next), p => Assert.Equal("alum", p.Settings.Single(s => s.Factor == "salt").Name));
    }

    [Fact]
    public void Five_thousand_rows_are_held_by_some_of_them()
    {
        TrialData data = Recipes(5000, 6, out double[] chroma, out _);
        NextFound found = NextTrial.Propose(data, [new Response("chroma", chroma)], [v => -v[0]])!;
        Assert.Equal((5000, NextTrial.MostHeld), (found.RowCount, found.UsedCount));
        Assert.InRange(found.Best.Settings.Single(s => s.Factor == "pH").Number!.Value, 6, 6.8);
    }
}
