using Alumroot.Colour.Colorimetry;

namespace Alumroot.Colour.Tests.Published;

public class IlluminantTests
{
    [Fact]
    public void A_is_the_radiator_that_defines_it()
    {
        // ISO/CIE 11664-2: Planck's law at 2848 K with c2 = 0.01435 m K, 100 at 560 nm.
        for (int nm = 360; nm <= 780; nm += 5)
        {
            double Planck(double at) => Math.Pow(at, -5) / (Math.Exp(1.435e7 / (2848 * at)) - 1);
            Assert.Equal(100 * Planck(nm) / Planck(560), Illuminant.A.PowerAt(nm), 0.001);
        }
    }

    [Theory]
    // Chromaticities for the 2 degree observer as printed in CIE 015 (from memory).
    [InlineData("A", 0.4476, 0.4074)]
    [InlineData("D50", 0.3457, 0.3585)]
    [InlineData("D65", 0.3127, 0.3290)]
    [InlineData("F2", 0.3721, 0.3751)]
    [InlineData("F11", 0.3805, 0.3769)]
    [InlineData("LED-B3", 0.3756, 0.3723)]
    public void Lights_have_their_published_chromaticity(string key, double x, double y)
    {
        Spectrum neutral = Spectrum.Regular(380, 5, Enumerable.Repeat(1.0, 81));
        Xyz white = SpectralWeights.For(new ViewingCondition(Illuminant.Find(key)!, Observer.TwoDegrees), neutral).White;
        double sum = white.X + white.Y + white.Z;
        Assert.Equal(x, white.X / sum, 0.0001);
        Assert.Equal(y, white.Y / sum, 0.0001);
    }

    [Fact]
    public void A_name_is_found_in_any_case_or_not_at_all()
    {
        Assert.Same(Illuminant.D65, Illuminant.Find("d65"));
        Assert.Null(Illuminant.Find("D99"));
        Assert.Null(Observer.Find(4));
    }
}
