using Alumroot.Colour.Film;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Colour.Matching;

/// <summary>A pigment for a mixture by its K and S at many wavelengths, each with its span, as a measured drawdown tells them.</summary>
public static class BandPigments
{
    /// <summary>How many times each pigment is drawn.</summary>
    public const int Draws = 200;

    /// <summary>Half the span of K and of S, nine times in ten, where none is told: a tenth of either. Our judgement, no source.</summary>
    public const double UntoldHalfWidthShare = 0.1;

    /// <summary>The pigment with its draws. All its wavelengths err alike, K by one draw and S by another: the worst that spans can do, as where a drawdown is told.</summary>
    /// <param name="key">What it is called.</param>
    /// <param name="bands">K and S at each wavelength; their spans hold nine times in ten.</param>
    /// <param name="seed">Seed of its draws.</param>
    public static ShelfPigment Of(string key, IReadOnlyList<(Estimate Absorption, Estimate Scattering)> bands, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(bands);
        var random = new SeededRandom(seed);
        return new ShelfPigment(key, [.. bands.Select(b => new Layer(b.Absorption.Value, b.Scattering.Value))])
        {
            Drawn = [.. Enumerable.Range(0, Draws).Select(_ => (K: random.NextNormal(), S: random.NextNormal())).Select(z => (IReadOnlyList<Layer>)[.. bands.Select(b => new Layer(Moved(b.Absorption, z.K), Moved(b.Scattering, z.S)))])],
        };
    }

    /// <summary>Above the value by the upper half of the span, below it by the lower; in proportion where the span lies above nothing, so that no draw falls below it.</summary>
    private static double Moved(Estimate of, double deviations)
    {
        double end = deviations > 0 ? of.High : of.Low, share = Math.Abs(deviations) / Distributions.NormalHalfWidth90;
        return of.Low > 0 ? of.Value * Math.Pow(end / of.Value, share) : Math.Max(of.Value * 1e-3, of.Value + share * (end - of.Value));
    }
}
