using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Quantities;

namespace Alumroot.Colour.Tests.Matching;

/// <summary>Draws of measured pigments against the definition of their spans: nine times in ten inside.</summary>
public sealed class BandPigmentTests
{
    [Fact]
    public void Nine_draws_in_ten_lie_within_the_span()
    {
        var bands = new List<(Estimate, Estimate)> { (new Estimate(0.5, 0.42, 0.65), new Estimate(1.2, 1.1, 1.3)), (new Estimate(0.02, 0, 0.06), new Estimate(0.8, 0.7, 1)) };
        IReadOnlyList<Layer>[] drawn = [.. Enumerable.Range(1, 40).SelectMany(seed => BandPigments.Of("a", bands, (ulong)seed).Drawn)];
        for (int i = 0; i < bands.Count; i++)
        {
            (Estimate k, Estimate s) = bands[i];
            // 8,000 draws: three standard deviations of the share are 0.01; a draw that would fall below nothing still lies outside the span.
            Assert.Equal(0.05, drawn.Count(d => d[i].AbsorbedUnits > k.High) / (double)drawn.Length, 0.01);
            Assert.Equal(0.05, drawn.Count(d => d[i].ScatteredUnits < s.Low) / (double)drawn.Length, 0.01);
            Assert.Equal(0.05, drawn.Count(d => d[i].ScatteredUnits > s.High) / (double)drawn.Length, 0.01);
            Assert.Equal(0.5, drawn.Count(d => d[i].AbsorbedUnits > k.Value) / (double)drawn.Length, 0.02);
        }
        Assert.All(drawn, d => Assert.All(d, layer => Assert.True(layer.AbsorbedUnits > 0 && layer.ScatteredUnits > 0)));
    }
}
