using Alumroot.Colour.Colorimetry;
using CsCheck;

namespace Alumroot.Colour.Tests;

/// <summary>Three bands of a clear liquid. A neutral filter of density D lets 10^-D through: Beer's law is the outside check.</summary>
public sealed class BandAbsorbanceTests
{
    [Fact]
    public void A_grey_liquid_absorbs_its_density_in_each_band() => Gen.Double[0, 3].Sample(density =>
    {
        double through = Math.Pow(10, -density);
        Xyz white = ColourNames.White;
        Assert.All(BandAbsorbance.Of(Lab.From(new Xyz(through * white.X, through * white.Y, through * white.Z), white)), a => Assert.Equal(density, a, 1e-9));
    });

    [Fact]
    public void Forth_and_back_is_the_same_colour() => Gen.Select(Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0, 2]).Sample((a, b, c) =>
    {
        Lab lab = BandAbsorbance.ToLab([a, b, c]);
        if (lab.L < 1) return;
        Assert.Equal([a, b, c], BandAbsorbance.Of(lab), (x, y) => Math.Abs(x - y) < 1e-6);
    });
}
