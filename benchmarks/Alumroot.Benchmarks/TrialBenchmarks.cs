using System.Globalization;
using Alumroot.Numerics;
using Alumroot.Trials.Analysis;
using Alumroot.Trials.Design;
using Alumroot.Trials.Ladder;
using Alumroot.Trials.Learning;
using BenchmarkDotNet.Attributes;

namespace Alumroot.Benchmarks;

/// <summary>Trials: a hundred and five thousand batches learned from and the next jar proposed toward a colour; a choice of twenty jars; a ladder of nine jars.</summary>
[MemoryDiagnoser, MinColumn]
public class TrialBenchmarks
{
    private readonly (TrialData Data, Response[] Lab) _hundred = Batches(100), _thousands = Batches(5000);

    private readonly TrialRequest _best = new(
        [new Factor.Named("salt", ["alum", "tin", "iron"]), new Factor.Named("alkali", ["soda", "potash"]), new Factor.Measured("pH", [5, 6, 7], ""), new Factor.Measured("heat", [20, 40, 60], "C")], TrialKind.Best)
    { Jars = 24 };

    private readonly double[] _ph = [3, 4, 5, 6, 7, 8, 9, 10, 11];

    private double[][] _spectra = [];

    /// <summary>Makes the spectra of a dye that turns at 6.86 and 9.9.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        var random = new SeededRandom(1);
        double[] shares = new double[3];
        _spectra = [.. _ph.Select(p =>
        {
            AcidForms.Shares(p, [6.86, 9.9], shares);
            return Enumerable.Range(0, 41).Select(b => shares.Select((s, f) => s * Math.Exp(-Math.Pow((b / 40.0 - 0.2 - 0.25 * f) / 0.2, 2))).Sum() + 0.005 * random.NextNormal()).ToArray();
        })];
    }

    /// <summary>From 100 batches with four factors to the next jar toward a colour.</summary>
    [Benchmark]
    public NextFound? NextOfHundred() => Next(_hundred);

    /// <summary>The same from 5,000.</summary>
    [Benchmark]
    public NextFound? NextOfThousands() => Next(_thousands);

    /// <summary>Twenty-four jars for four factors with all products of two.</summary>
    [Benchmark]
    public DesignOutcome BestChoice() => Designer.Design(_best);

    /// <summary>Nine spectra of 41 wavelengths: number of forms, steps, spans.</summary>
    [Benchmark]
    public LadderFound? Ladder() => LadderAnalysis.Fit(_ph, _spectra, 0.1);

    private static NextFound? Next((TrialData Data, Response[] Lab) of) =>
        NextTrial.Propose(of.Data, of.Lab, [v => Math.Sqrt(Math.Pow(v[0] - 60, 2) + Math.Pow(v[1] - 30, 2) + Math.Pow(v[2] - 20, 2))]);

    private static (TrialData, Response[]) Batches(int count)
    {
        var random = new SeededRandom(7);
        double[] ph = [.. Enumerable.Range(0, count).Select(_ => 5 + 3 * random.NextFraction())], heat = [.. ph.Select(_ => 20 + 40 * random.NextFraction())], alum = [.. ph.Select(_ => 0.2 + random.NextFraction())];
        string[] salt = [.. ph.Select(_ => random.NextBelow(3) switch { 0 => "alum", 1 => "tin", _ => "iron" })];
        FactorColumn Numbers(string name, double[] values) => new(name, values, [.. values.Select(v => v.ToString(CultureInfo.InvariantCulture))]);
        Response Of(string name, Func<int, double> value) => new(name, [.. Enumerable.Range(0, count).Select(i => value(i) + random.NextNormal())]);
        return (new TrialData([Numbers("pH", ph), Numbers("heat", heat), Numbers("alum", alum), new FactorColumn("salt", null, salt)], null),
            [Of("L", i => 70 - 3 * ph[i] + (salt[i] == "iron" ? -15 : 0)), Of("a", i => 40 * Math.Sin(ph[i]) + 0.1 * heat[i]), Of("b", i => 10 + 20 * alum[i])]);
    }
}
