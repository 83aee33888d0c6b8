using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Numerics;

namespace Alumroot.Colour.Tests.Matching;

/// <summary>Pigments made of measured reflectances: K/S of a chip from reflectances.csv, scattering invented and smooth.</summary>
internal static class Shelf
{
    public static IReadOnlyList<double> Nanometres { get; } = [.. Enumerable.Range(0, 41).Select(i => 380 + 10.0 * i)];

    public static IReadOnlyList<ShelfPigment> Pigments(int count)
    {
        var random = new SeededRandom(20261126);
        IReadOnlyList<(string Id, Spectrum Spectrum)> chips = Given.Reflectances(10);
        var pigments = new List<ShelfPigment> { new("white", [.. Nanometres.Select(_ => new Layer(0.004, 2))]) };
        for (int i = 0; pigments.Count < count; i++)
        {
            double scatter = 0.3 + 1.5 * random.NextFraction(), tilt = 0.3 * random.NextNormal();
            pigments.Add(new ShelfPigment(chips[i].Id, [.. chips[i].Spectrum.Values.Select((r, b) =>
            {
                double s = scatter * (1 + tilt * (b - 20) / 40.0);
                return new Layer(s * FilmOptics.AbsorptionRatio(Math.Clamp(r, 0.01, 0.98)), s);
            })]));
        }
        return pigments;
    }

    public static Lab LabOf(IReadOnlyList<ShelfPigment> pigments, IReadOnlyList<double> shares, ViewingCondition seen) => LabOf(Reflectance(pigments, shares), seen);

    public static Lab LabOf(Spectrum spectrum, ViewingCondition seen) => SpectralWeights.For(seen, spectrum).LabOf(spectrum.ValueSpan);

    public static Spectrum Reflectance(IReadOnlyList<ShelfPigment> pigments, IReadOnlyList<double> shares) =>
        Spectrum.Of(Nanometres, Nanometres.Select((_, b) => FilmOptics.Opaque(Mixture.TwoConstant([.. shares], [.. pigments.Select(p => p.Bands[b])]))));
}
