using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Numerics;
using BenchmarkDotNet.Attributes;

namespace Alumroot.Benchmarks;

/// <summary>The nearest mixture of at most three of twenty pigments, 41 wavelengths: all 1,350 sets. The pigments are invented with seed 20261126.</summary>
[MemoryDiagnoser, MinColumn]
public class MatchBenchmarks
{
    private const int Pigments = 20, Wavelengths = 41;

    private MixtureAsk _oneLight = null!, _threeLights = null!;

    /// <summary>Makes the shelf and the aims: a colour in one light, and a spectrum in three.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        var random = new SeededRandom(20261126);
        double[] nanometres = [.. Enumerable.Range(0, Wavelengths).Select(i => 380 + 10.0 * i)];
        ShelfPigment[] shelf = [.. Enumerable.Range(0, Pigments).Select(p =>
        {
            double centre = 400 + 300 * random.NextFraction(), width = 30 + 60 * random.NextFraction(), strength = 0.5 + 4 * random.NextFraction(), scatter = 0.3 + 1.5 * random.NextFraction();
            return new ShelfPigment($"p{p}", [.. nanometres.Select(n => new Layer(p == 0 ? 0.004 : 0.02 + strength * Math.Exp(-(n - centre) * (n - centre) / (2 * width * width)), scatter))]);
        })];
        double[] shares = [0.5, 0.3, 0.2];
        ShelfPigment[] used = [shelf[0], shelf[7], shelf[12]];
        Spectrum made = Spectrum.Of(nanometres, nanometres.Select((_, b) => FilmOptics.Opaque(Mixture.TwoConstant(shares, [.. used.Select(p => p.Bands[b])]))));
        _threeLights = new MixtureAsk { Nanometres = nanometres, Pigments = shelf, Aims = MixtureAsk.AimsOf(made) };
        _oneLight = _threeLights with { Aims = [_threeLights.Aims[0]] };
    }

    /// <summary>By Lab in one light.</summary>
    [Benchmark]
    public IReadOnlyList<MixtureFound> OneLight() => MixtureSearch.Find(_oneLight);

    /// <summary>By a spectrum, which is Lab in three lights.</summary>
    [Benchmark]
    public IReadOnlyList<MixtureFound> ThreeLights() => MixtureSearch.Find(_threeLights);
}
